using MomentArm.Body;

namespace MomentArm.Exam.Tests;

/// <summary>
/// What published case reports and trial programs write down, demand by demand: each row is a way of writing that turned up in them,
/// and what must become of it. A row's answer is written short, see <see cref="Short"/>.
/// </summary>
public class FieldDemandTests
{
    private static readonly EntryContext Known = new() { MassKg = 70, StatureM = 1.75, AffectedSide = Side.Left };

    /// <summary>What is typed, whether the person's build and side are known, and what is read.</summary>
    public static readonly TheoryData<string, bool, string> Demands = new()
    {
        // Start with age, sex or side missing.
        { "pain now 4", false, "pain-now=4" },
        { "slr worst side 62", false, "fault:No affected side is named" },
        // Left, right, both, worst side.
        { "slr L 62 R 71", true, "straight-leg-raise.L=62 straight-leg-raise.R=71" },
        { "slr both 70", true, "straight-leg-raise.L=70 straight-leg-raise.R=70" },
        { "slr 70 each way", true, "straight-leg-raise.L=70 straight-leg-raise.R=70" },
        { "slr worst side 62 other side 71", true, "straight-leg-raise.L=62 straight-leg-raise.R=71" },
        // Symmetry typed as a percent, with and without the values.
        { "hip abd LSI 82 %", true, "hip-abduction-strength.L:symmetry 82 %" },
        { "hip abd LSI 82 %", false, "fault:needs the affected side" },
        { "hip abd L 118 LSI 82 %, R 149", true, "hip-abduction-strength.L=118[LSI 82 %] hip-abduction-strength.R=149" },
        // Qualitative findings without a number.
        { "knee flex L limited", true, "knee-flexion-range.L:limited" },
        { "slr L tight R ok", true, "straight-leg-raise.L:tight straight-leg-raise.R:ok" },
        { "ober R positive", true, "modified-ober.R:positive" },
        { "groc a great deal better", true, "global-change:a great deal better" },
        // Manual grades, below 3 too; one without a muscle is told.
        { "hip abd L 4+/5 R 5/5", true, "hip-abduction-strength.L:4+/5 hip-abduction-strength.R:5/5" },
        { "hip abd L 3-/5", true, "hip-abduction-strength.L:3-/5" },
        { "hip abd L 2+", true, "hip-abduction-strength.L:2+/5" },
        { "4+/5 L", true, "fault:grade needs the muscle" },
        // Strength in every unit. 26 lb = 115.65 N; 1.05 Nm/kg x 70 kg = 73.5 Nm; 8 % x 70 kg x 9.80665 x 1.75 m = 96.11 Nm;
        // 20 % of 70 kg x 9.80665 = 137.29 N.
        { "hip abd L 26 lb", true, "hip-abduction-strength.L=115.65" },
        { "hip abd L 15 kg", true, "hip-abduction-strength.L=147.1" },
        { "hip abd L 54 Nm", true, "hip-abduction-strength.L=54@1" },
        { "hip abd L 1.05 Nm/kg", true, "hip-abduction-strength.L=73.5@1[1.05 Nm/kg]" },
        { "hip abd L 1.05 Nm/kg", false, "hip-abduction-strength.L=1.05{Nm/kg}" },
        { "hip abd L 8 % body weight x height", true, "hip-abduction-strength.L=96.11@1[8 % body weight x height]" },
        { "hip abd L 8 %BWH", false, "hip-abduction-strength.L=8{%BWH}" },
        { "hip abd L 20 % BW", true, "hip-abduction-strength.L=137.29[20 % BW]" },
        { "hip abd L 59 %", true, "hip-abduction-strength.L=59{%}" },
        { "hip abd L 80 % of 1RM", true, "hip-abduction-strength.L=80{% of 1RM}" },
        { "hip abd L 96 Nm x deg", true, "hip-abduction-strength.L=96{Nm x deg}" },
        { "hip abd L 24 mmHg", true, "hip-abduction-strength.L=24{mmHg}" },
        { "hip abd L 24kpx", true, "hip-abduction-strength.L=24{kpx}" },
        { "hip abd L <100 lb", true, "hip-abduction-strength.L=444.82<" },
        { "hip abd L 30 kg 8RM or lighter", true, "hip-abduction-strength.L=294.2<(8RM)" },
        { "hip abd L 118 supine strap by J.", true, "hip-abduction-strength.L=118/supine/strap/by J" },
        // A change in percent without values.
        { "hip abd L up 30 %", true, "hip-abduction-strength.L:up 30 %" },
        { "hip abd L +30 %", true, "hip-abduction-strength.L:+30 %" },
    };

    /// <summary>More of the same.</summary>
    public static readonly TheoryData<string, bool, string> MoreDemands = new()
    {
        // Range as angle, deficit, sum; active and passive; knee bent.
        { "knee flex R 135, L lacks 10", true, "knee-flexion-range.R=135 knee-flexion-range.L=125[lacks 10]?" },
        { "knee flex L lacks 10", true, "knee-flexion-range.L:lacks 10" },
        { "hip ir L total 75 deg", true, "hip-internal-rotation-range.L:total 75 deg" },
        { "hip ir L -7 to +7", true, "hip-internal-rotation-range.L=7[-7-+7]?" },
        { "knee flex L active 118 passive 125", true, "knee-flexion-range.L=118 knee-flexion-range.L=125|passive" },
        { "hip ir L 30 knee bent", true, "hip-internal-rotation-range.L=30(knee bent)" },
        // Pain in many ways.
        { "pain worst 62 mm", true, "pain-worst=6.2[62 mm]" },
        { "pain worst 6.2 cm", true, "pain-worst=6.2[6.2 cm]" },
        { "pain worst 62/100", true, "pain-worst=6.2[62/100]?" },
        { "pain worst L 6 R 3", true, "pain-worst<left>=6 pain-worst<right>=3" },
        { "pain worst back 4, hip 6", true, "pain-worst<back>=4 pain-worst<hip>=6" },
        { "pain during stairs down 5", true, "pain-task<stairs down>=5" },
        { "pain now 3 before, 5 after", true, "pain-now=3|before pain-now=5|after" },
        { "next morning 2", true, "pain-next-morning=2" },
        { "hip abd L 118 pain 3", true, "hip-abduction-strength.L=118 p3" },
        // Questionnaires: own end, percent, a raw score of another length, an end that nothing fits, a scale printed backwards.
        { "lefs 54/80", true, "lower-limb-function=54" },
        { "lefs 71/80", true, "lower-limb-function=71" },
        { "lefs 60 %", true, "lower-limb-function=48[60 %]?" },
        { "faam adl 102/136", true, "foot-ankle-daily=75[102/136]?" },
        { "lefs 40/72", true, "lower-limb-function=40{of 72}" },
        { "lefs 34 (80-0)", true, "lower-limb-function=34[80-0]?" },
        { "tampa 34/68", true, "fear-of-movement=34" },
        { "lefs 52 (IQR 40-60)", true, "lower-limb-function=52[IQR 40-60]" },
        // Re-test times.
        { "slr L before 62 after 70", true, "straight-leg-raise.L=62|before straight-leg-raise.L=70|after" },
        { "slr L 70 week 6", true, "straight-leg-raise.L=70|week 6" },
        { "slr L 70 post-op", true, "straight-leg-raise.L=70|post-op" },
        // Why a force was low.
        { "hip abd L 60 limited by pain", true, "hip-abduction-strength.L=60!Pain(limited by pain)" },
        { "hip abd L 60 fear", true, "hip-abduction-strength.L=60!Fear(fear)" },
        { "hip abd L 60 numbness", true, "hip-abduction-strength.L=60!Nerve(numbness)" },
        { "hip abd L 60 weakness", true, "hip-abduction-strength.L=60!Weakness(weakness)" },
        // What was printed stays beside what is computed; two values for one cell are asked about.
        { "hip abd L 118 printed 121 N", true, "hip-abduction-strength.L=118[121 N]" },
        { "slr L 62, L 70", true, "straight-leg-raise.L=62,70?" },
        { "sls L 45+", true, "single-leg-stance-open.L=45>" },
        { "km week over 20", true, "run-distance-week=20000>" },
        { "sls L as long as possible", true, "single-leg-stance-open.L:as long as possible" },
    };

    [Theory]
    [MemberData(nameof(Demands))]
    [MemberData(nameof(MoreDemands))]
    public void What_is_written_becomes_this(string typed, bool isKnown, string expected)
    {
        var read = TypedEntry.Parse(typed, Shipped.Exam.Measures, isKnown ? Known : null);
        if (expected.StartsWith("fault:", StringComparison.Ordinal))
        {
            Assert.Contains(expected[6..], Assert.Single(read.Faults).Sentence, StringComparison.Ordinal);
            return;
        }

        Assert.Empty(read.Faults);
        Assert.Equal(expected, string.Join(' ', read.Measurements.Select(m => Short(m, read)).Concat(read.Observations.Select(Short))));
        Assert.Equal(typed, read.AsTyped);
    }

    [Fact]
    public void A_deficit_of_straightening_is_negative_and_hyperextension_positive()
    {
        var straightening = Shipped.Measure("knee-flexion-range") with
        {
            Id = "straightening", Action = JointAction.KneeExtension, HardRange = new ValueRange(-1.5, 0.5), SoftRange = new ValueRange(-0.8, 0.3),
        };
        Assert.Equal(-10, Degrees(straightening, "lacks 10"), 9);
        Assert.Equal(5, Degrees(straightening, "+5"), 9);
        Assert.Equal(5, Degrees(straightening, "hyper 5"), 9);
    }

    [Fact]
    public void Stature_mass_and_index_are_held_against_each_other_with_room_for_rounding()
    {
        Assert.Null(BodySizeCheck.Question(null, 70, 22.9));
        Assert.Null(BodySizeCheck.Question(1.75, 70, 22.9));
        Assert.Null(BodySizeCheck.Question(1.75, 70.4, 22.9));
        Assert.Contains("give 22.9", BodySizeCheck.Question(1.75, 70, 27.1)!.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_scales_that_disagree_both_stay_and_worse_is_said_as_plainly_as_better()
    {
        var read = TypedEntry.Parse("pain worst 8, groc +4", Shipped.Exam.Measures);
        Assert.Equal(["pain-worst", "global-change"], read.Measurements.Select(m => m.MeasureId));
        var worst = Shipped.Measure("pain-worst");
        var said = Interpreter.Interpret(new InterpretationInput
        {
            Measure = worst, Now = read.Measurements,
            Earlier = [new EarlierVisit(1, new DateOnly(2026, 1, 5), [.. TypedEntry.Parse("4", worst, null).Measurements])],
        });
        Assert.Contains(said.Statements, s => s.Text.Contains("worse", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_reading_in_an_unknown_unit_or_of_another_moment_is_kept_and_not_judged()
    {
        var read = TypedEntry.Parse("hip abd L 59 %, R 149; slr L 62, L 70 after", Shipped.Exam.Measures, Known);
        Assert.Equal(4, read.Measurements.Length);
        Assert.Equal(["hip-abduction-strength", "straight-leg-raise"], JudgedReadings.Of(read.Measurements).Select(m => m.MeasureId));
    }

    private static double Degrees(Measure measure, string typed) =>
        Say.Degrees(Assert.Single(Assert.Single(TypedEntry.Parse(typed, measure, Side.Left).Measurements).Trials));

    /// <summary>measure.side=value, then: bound, @lever, |moment, pPain, /conditions, !reason, (note), {unknown unit}, [printed], ? for a question.</summary>
    private static string Short(Measurement m, EntryResult read)
    {
        var shown = Shipped.Measure(m.MeasureId).Unit == MeasureUnit.Radians ? 180 / Math.PI : 1;
        var values = string.Join(',', m.Trials.Select(t => Say.Number(m.Conditions.UnknownUnit is null ? t * shown : t, 2)));
        var c = m.Conditions;
        return m.MeasureId + SideOf(m.Side) + (m.Activity is { } a ? $"<{a}>" : "") + "=" + values
            + (c.Bound switch { ValueBound.AtLeast => ">", ValueBound.AtMost => "<", _ => "" })
            + (m.LeverArmM is { } lever ? $"@{Say.Number(lever, 2)}" : "") + (m.Moment is { } moment ? $"|{moment}" : "")
            + (m.PainDuring is { } pain ? FormattableString.Invariant($" p{pain}") : "")
            + (c.Position is { } p ? $"/{p.ToString().ToLowerInvariant()}" : "") + (c.Device is { } d ? $"/{d}" : "") + (c.Examiner is { } e ? $"/by {e}" : "")
            + (c.LowForce is { } low ? $"!{low}" : "") + (m.Note is { } note ? $"({note})" : "")
            + (c.UnknownUnit is { } unit ? "{" + unit + "}" : "") + (c.Printed is { } printed ? $"[{printed}]" : "")
            + (read.Questions.IsEmpty || m != read.Measurements[^1] ? "" : "?");
    }

    private static string Short(Observation o) => o.MeasureId + SideOf(o.Side) + ":" + o.Text;

    private static string SideOf(Side? side) => side switch { Side.Left => ".L", Side.Right => ".R", null => "" };
}
