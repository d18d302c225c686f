using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam.Tests.Reasoning;

/// <summary>
/// Twelve whole patients, written as cases with a known answer: the behaviour is our design, the figures behind it are named in
/// the content. Cases that danger signs decide are held through the screen, which comes before any hypothesis.
/// </summary>
public class WholeCaseTests
{
    private static ReasoningBasis Basis => Shipped.Exam.Reasoning;

    private static ReasoningInput Told(BodyRegion region, Side side, double age, Sex sex, string yes, string no = "") => new()
    {
        Region = region,
        Side = side,
        AgeYears = age,
        Sex = sex,
        Answers = Words(yes).Select(q => (q, ItemAnswer.Yes)).Concat(Words(no).Select(q => (q, ItemAnswer.No)))
            .ToImmutableDictionary(a => Basis.Question(a.q) is null ? throw new ArgumentException(a.q) : a.q, a => a.Item2),
    };

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static Hypothesis Of(ReasoningInput input, string pattern) => Reasoner.Judge(Basis, input).Single(h => h.Pattern.Id == pattern);

    private static DangerGate Gate(params string[] yes) => DangerScreen.Judge(
        Shipped.Exam.DangerSigns,
        Shipped.Exam.DangerSigns.ToDictionary(s => s.Id, s => yes.Contains(s.Id) ? DangerAnswer.Yes : DangerAnswer.No), []);

    private static ReasoningInput Runner() => Told(
        BodyRegion.Knee, Side.Right, 34, Sex.Female, "runner injured-runner outer-knee-pain constant-onset worse-downhill settles-with-rest",
        "joint-line-pain knee-effusion knee-locking rest-pain front-knee-pain") with
    {
        Tests = [new TestResult("noble-compression", Side.Right, TestOutcome.Positive)],
    };

    [Fact]
    public void Case_1_the_runner_with_outer_knee_pain_shows_the_pattern_at_the_start_of_60_percent_that_no_test_moves()
    {
        var first = Reasoner.Judge(Basis, Runner())[0];
        Assert.Equal("iliotibial-band-syndrome", first.Pattern.Id);
        Assert.Equal(PatternFit.Fits, first.Fit);
        Assert.Equal(0.60, first.Probability!.Value, 1e-12);
        Assert.All(first.Probability.Steps, s => Assert.Equal(0, s.Weight));
        Assert.Contains(first.NotKnown, n => n.StartsWith("No accuracy data", StringComparison.Ordinal));
    }

    [Fact]
    public void Case_1_right_abductors_79_percent_of_the_left_are_a_finding_and_an_adduction_range_within_error_is_not()
    {
        // 1.05 and 1.32 N m/kg at 60 kg and a lever arm of 0.36 m: 175 and 220 N, index 79.5 %. The range differs by 4 degrees.
        string[] entries = ["hip abd R 175 N at 36 cm, L 220 N at 36 cm", "ober R 14, L 18"];
        var typed = entries.Select(e => TypedEntry.Parse(e, Shipped.Exam.Measures)).ToArray();
        Assert.All(typed, t => Assert.Empty(t.Faults));
        var interpretations = typed.SelectMany(t => t.Measurements).GroupBy(m => m.MeasureId).Select(g => Interpreter.Interpret(new InterpretationInput
        {
            Measure = Shipped.Measure(g.Key), Now = [.. g], Person = new Physique(Sex.Female, 34, 1.70, 60), AffectedSide = Side.Right,
        })).ToArray();
        var findings = FindingsMaker.From(interpretations, Side.Right);
        Assert.Contains(findings, f => f is { BeyondError: true, Impairment: { Kind: ImpairmentKind.Weak, Side: Side.Right } });
        Assert.DoesNotContain(findings, f => f.Impairment?.Kind == ImpairmentKind.Short);
        var found = Of(Runner() with { Findings = findings }, "iliotibial-band-syndrome");
        Assert.Contains(found.Supporting, l => l.Id == "weak-hip-abductors");
    }

    [Fact]
    public void Case_2_the_same_runner_with_one_spot_bone_pain_at_night_goes_to_the_bone_stress_pathway()
    {
        Assert.True(Gate("one-spot-bone-pain").PrescribingStopped);
        var input = Runner();
        input = input with { Answers = input.Answers.SetItem("bone-one-spot", ItemAnswer.Yes).SetItem("bone-pain-rising", ItemAnswer.Yes).SetItem("night-bone-pain", ItemAnswer.Yes) };
        Assert.Equal(PatternFit.Fits, Of(input, "bone-stress-injury").Fit);
        Assert.Contains(Of(input, "iliotibial-band-syndrome").Opposing, l => l.Id == "bone-one-spot");
        Assert.Contains("Image it", Of(input, "bone-stress-injury").Pattern.Caution, StringComparison.Ordinal);
    }

    [Theory]
    // Case 3 boy of 12 (Peck 2017), case 5 and 6 a swollen calf after hip replacement and after birth, case 7 new trouble passing urine.
    [InlineData("young-hip", GateState.SameDay)]
    [InlineData("calf-clot", GateState.SameDay)]
    [InlineData("saddle-numbness-or-bladder", GateState.Emergency)]
    public void Cases_3_5_6_and_7_are_stopped_by_the_danger_signs_before_any_hypothesis(string sign, GateState state)
    {
        var gate = Gate(sign);
        Assert.Equal(state, gate.State);
        Assert.True(gate.PrescribingStopped);
    }

    [Fact]
    public void Case_4_lateral_hip_pain_worse_lying_on_it_shows_gluteal_tendinopathy_and_forbids_the_stretch_across()
    {
        var input = Told(BodyRegion.Hip, Side.Left, 52, Sex.Female, "lateral-hip-pain side-lying-pain single-leg-pain") with
        {
            Tests =
            [
                new TestResult("single-leg-stance-30", Side.Left, TestOutcome.Positive),
                new TestResult("trochanter-tenderness", Side.Left, TestOutcome.Positive),
            ],
        };
        var first = Reasoner.Judge(Basis, input)[0];
        Assert.Equal("gluteal-tendinopathy", first.Pattern.Id);
        Assert.Contains("No stretch across the body", first.Pattern.Caution, StringComparison.Ordinal);
        // Grimaldi 2017 is known from memory only: its figures move nothing until a clinician confirms them.
        Assert.Null(first.Probability);
        Assert.All(first.InWords, w => Assert.Contains("from memory", w, StringComparison.Ordinal));
    }

    [Fact]
    public void A_figure_from_memory_counts_once_the_clinician_has_confirmed_it()
    {
        var input = Told(BodyRegion.Hip, Side.Left, 52, Sex.Female, "lateral-hip-pain") with
        {
            Tests = [new TestResult("single-leg-stance-30", Side.Left, TestOutcome.Positive), new TestResult("hip-external-derotation", Side.Left, TestOutcome.Positive)],
            Priors = ImmutableDictionary<string, OwnPrior>.Empty.Add("gluteal-tendinopathy", new OwnPrior(0.3)),
        };
        Assert.Equal(0.3, Of(input, "gluteal-tendinopathy").Probability!.Value, 1e-12);
        var confirmed = Of(input with { Confirmed = ["t046"] }, "gluteal-tendinopathy").Probability!;
        Assert.Equal(Odds.After(0.3, 6.29), confirmed.Value, 1e-9);
    }

    [Fact]
    public void Case_8_a_tender_patellar_tendon_without_pain_on_load_is_no_hypothesis()
    {
        // Cook 2001: 99 of 299 tendons without symptoms were mildly tender.
        var input = Told(BodyRegion.Knee, Side.Left, 19, Sex.Male, "jumping-athlete", "rises-with-load tendon-one-finger") with
        {
            Tests = [new TestResult("patellar-tendon-tenderness", Side.Left, TestOutcome.Positive)],
        };
        var found = Of(input, "patellar-tendinopathy");
        Assert.Equal(PatternFit.Against, found.Fit);
        Assert.Null(found.Probability);
        Assert.Contains("33 %", found.Pattern.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_9_the_stiff_shoulder_is_highly_irritable_and_gets_short_holds()
    {
        var reading = IrritabilityReading.Of(new IrritabilityAnswers(8, RestPain.Constant, InRange: PainInRange.BeforeEnd));
        Assert.Equal(Irritability.High, reading.Grade.Grade);
        Assert.Contains(reading.Permits, p => p.Contains("1 to 5 s", StringComparison.Ordinal));
        var input = Told(BodyRegion.Shoulder, Side.Left, 58, Sex.Female, "gradual-onset passive-loss-planes rest-pain");
        var first = Reasoner.Judge(Basis, input)[0];
        Assert.Equal("adhesive-capsulitis", first.Pattern.Id);
        Assert.Contains("no forceful stretch", first.Pattern.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_10_bruise_and_weakness_at_the_sitting_bone_speak_against_a_simple_strain_and_ask_for_a_surgeon()
    {
        var found = Of(Told(BodyRegion.Hip, Side.Right, 24, Sex.Male, "sudden-back-thigh resisted-flexion-weak sitting-bone-bruise"), "hamstring-strain");
        Assert.Contains(found.Opposing, l => l.Id == "sitting-bone-bruise");
        Assert.Contains("surgical opinion before any program", found.Pattern.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_11_a_negative_drawer_on_day_one_has_no_weight_and_the_next_examination_is_proposed()
    {
        var input = Told(BodyRegion.AnkleFoot, Side.Right, 25, Sex.Male, "inversion-injury front-ligament-tender") with
        {
            DaysSinceInjury = 1,
            Tests = [new TestResult("ankle-anterior-drawer", Side.Right, TestOutcome.Negative), new TestResult("ankle-delayed-exam", Side.Right, TestOutcome.Negative)],
        };
        var found = Of(input, "lateral-ankle-sprain");
        Assert.Equal(0.40, found.Probability!.Value, 1e-12);
        Assert.Contains(found.InWords, w => w.Contains("on day 1 it has no weight: examine again on day 4", StringComparison.Ordinal));
        Assert.Contains("day 4 to 5", found.Pattern.Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Case_12_knee_criteria_of_a_person_of_62_move_33_percent_by_the_community_ratio()
    {
        // Peat 2006: 33 %, ratio 1.64 give 44.7 %, the published predictive value of 44 %.
        var input = Told(BodyRegion.Knee, Side.Left, 62, Sex.Female, "use-pain stiff-under-30 crepitus") with
        {
            Tests = [new TestResult("knee-oa-clinical-criteria", Side.Left, TestOutcome.Positive)],
        };
        Assert.Equal(0.447, Of(input, "knee-osteoarthritis").Probability!.Value, 0.001);
    }

    [Fact]
    public void Results_of_the_other_side_are_not_used()
    {
        var input = Told(BodyRegion.Knee, Side.Left, 25, Sex.Female, "pivot-landing") with
        {
            Priors = ImmutableDictionary<string, OwnPrior>.Empty.Add("acl-tear", new OwnPrior(0.3, new RatioSpan(0.2, 0.4))),
            Tests = [new TestResult("lachman", Side.Right, TestOutcome.Positive)],
        };
        Assert.Equal(0.3, Of(input, "acl-tear").Probability!.Value, 1e-12);
        var own = Of(input with { Side = Side.Right }, "acl-tear");
        Assert.Equal(Odds.After(0.3, 5.65), own.Probability!.Value, 1e-9);
        Assert.Equal("your own starting value", own.Prior!.Words);
    }

    [Fact]
    public void Age_answers_a_question_of_age_and_alone_fits_nothing()
    {
        var input = new ReasoningInput { Region = BodyRegion.Hip, AgeYears = 70 };
        Assert.All(Reasoner.Judge(Basis, input).Where(h => h.Pattern.Id != "hip-osteoarthritis"), h => Assert.NotEqual(PatternFit.Fits, h.Fit));
        Assert.Equal(PatternFit.NotAsked, Of(input, "hip-osteoarthritis").Fit);
        // Metcalfe 2019: under 60 the ratio is 0.11.
        Assert.Equal(Odds.After(0.34, 0.11), Of(input with { AgeYears = 45 }, "hip-osteoarthritis").Probability!.Value, 1e-9);
    }
}
