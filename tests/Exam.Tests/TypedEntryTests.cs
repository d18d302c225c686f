using CsCheck;
using MomentArm.Body;

namespace MomentArm.Exam.Tests;

public class TypedEntryTests
{
    private static readonly Measure Abduction = Shipped.Measure("hip-abduction-strength");
    private static readonly Measure Knee = Shipped.Measure("knee-flexion-range");
    private static readonly Measure Pain = Shipped.Measure("pain-now");
    private static readonly Measure Function = Shipped.Measure("patient-specific-function");

    [Theory]
    [InlineData("118", 118.0)]
    [InlineData("118 N", 118.0)]
    [InlineData("118N", 118.0)]
    // 26.5 kgf = 259.88 N, standard gravity.
    [InlineData("26.5 kgf", 259.88)]
    [InlineData("26,5 kg", 259.88)]
    [InlineData("26 lb at 36 cm", 115.65)]
    public void A_force_in_any_unit(string text, double newtons)
    {
        var result = TypedEntry.Parse(text, Abduction, Side.Left);
        Assert.Empty(result.Faults);
        var one = Assert.Single(result.Measurements);
        Assert.Equal(newtons, Assert.Single(one.Trials), 0.01);
        Assert.Equal(Side.Left, one.Side);
        Assert.Equal(text, one.AsTyped);
    }

    [Theory]
    [InlineData("118 121 116")]
    [InlineData("118/121/116")]
    [InlineData("118,121,116")]
    [InlineData("118, 121, 116 N")]
    [InlineData("118; 121; 116")]
    public void Several_trials(string text)
    {
        var result = TypedEntry.Parse(text, Abduction, Side.Left);
        Assert.Empty(result.Faults);
        Assert.Equal([118.0, 121, 116], Assert.Single(result.Measurements).Trials);
    }

    [Theory]
    [InlineData("118 N at 36 cm pain 3", 0.36)]
    [InlineData("118 N 36cm pain 3", 0.36)]
    [InlineData("118 at 0.36 m, pain 3/10", 0.36)]
    [InlineData("118 at 36 pain 3", 0.36)]
    [InlineData("118 at 360 mm pain 3", 0.36)]
    [InlineData("118 N @ 14 in pain 3", 0.3556)]
    public void Lever_arm_and_pain(string text, double metres)
    {
        var one = Assert.Single(TypedEntry.Parse(text, Abduction, Side.Right).Measurements);
        Assert.Equal(metres, one.LeverArmM!.Value, 1e-9);
        Assert.Equal(3, one.PainDuring);
    }

    [Theory]
    [InlineData("72°", 72)]
    [InlineData("72 deg", 72)]
    [InlineData("72.5", 72.5)]
    [InlineData("72,5°", 72.5)]
    [InlineData("72", 72)]
    public void An_angle_is_stored_in_radians(string text, double degrees) =>
        Assert.Equal(degrees * Math.PI / 180, Assert.Single(Assert.Single(TypedEntry.Parse(text, Knee, Side.Left).Measurements).Trials), 1e-12);

    [Fact]
    public void A_pair_with_a_slash_is_taken_as_two_trials_and_asked_about()
    {
        var result = TypedEntry.Parse("71/80", Knee, Side.Left);
        Assert.Equal(2, Assert.Single(result.Measurements).Trials.Length);
        Assert.Contains("L 71, R 80", Assert.Single(result.Questions).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("4+/5", "4+/5")]
    [InlineData("4/5", "4/5")]
    [InlineData("3-/5", "3-/5")]
    [InlineData("4+", "4+/5")]
    public void A_manual_grade_is_kept_as_a_note_and_said_so(string text, string grade)
    {
        var result = TypedEntry.Parse(text, Abduction, Side.Left);
        Assert.Empty(result.Measurements);
        Assert.Empty(result.Faults);
        Assert.Equal(grade, Assert.Single(result.Observations).Grade);
        Assert.Contains("not a force", Assert.Single(result.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Words_are_kept_as_words()
    {
        var result = TypedEntry.Parse("limited, firm end feel", Knee, Side.Left);
        Assert.Empty(result.Faults);
        Assert.Equal("limited firm end feel", Assert.Single(result.Observations).Text);
    }

    [Fact]
    public void The_shorthand_line_gives_both_sides()
    {
        var result = TypedEntry.Parse("hip abd L 118 N at 36 cm pain 3, R 149", Shipped.Exam.Measures);
        Assert.Empty(result.Faults);
        Assert.Collection(
            result.Measurements,
            left =>
            {
                Assert.Equal(("hip-abduction-strength", Side.Left, 0.36, 3), (left.MeasureId, left.Side, left.LeverArmM, left.PainDuring));
                Assert.Equal([118.0], left.Trials);
            },
            right =>
            {
                Assert.Equal((Side.Right, 0.36), (right.Side, right.LeverArmM));
                Assert.Null(right.PainDuring);
                Assert.Equal([149.0], right.Trials);
            });
        Assert.Contains(result.Notes, n => n.Contains("as on the other side", StringComparison.Ordinal));
    }

    [Fact]
    public void The_shorthand_line_takes_several_measures()
    {
        var result = TypedEntry.Parse("pain now 4, worst pain 7; knee flex L 118 R 135, ober r 12 l 20; slr L 62° R 71", Shipped.Exam.Measures);
        Assert.Empty(result.Faults);
        Assert.Equal(
            ["pain-now", "pain-worst", "knee-flexion-range", "knee-flexion-range", "modified-ober", "modified-ober", "straight-leg-raise", "straight-leg-raise"],
            result.Measurements.Select(m => m.MeasureId));
    }

    [Theory]
    [InlineData("hip-abduction-strength L 100", "hip-abduction-strength")]
    [InlineData("Hip abduction strength L 100", "hip-abduction-strength")]
    [InlineData("hip int rotation L 30", "hip-internal-rotation-range")]
    [InlineData("KNEE EXT L 300", "knee-extension-strength")]
    [InlineData("modif ober L 12", "modified-ober")]
    public void Measures_are_found_by_id_name_words_and_alias(string text, string id) =>
        Assert.Equal(id, Assert.Single(TypedEntry.Parse(text, Shipped.Exam.Measures).Measurements).MeasureId);

    [Fact]
    public void A_name_that_fits_two_measures_is_asked_for_more()
    {
        var fault = Assert.Single(TypedEntry.Parse("knee L 118", Shipped.Exam.Measures).Faults);
        Assert.Contains("Knee flexion range", fault.Sentence, StringComparison.Ordinal);
        Assert.Contains("Knee extension strength", fault.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_named_activity_keeps_its_words()
    {
        var result = TypedEntry.Parse("running downhill 3/10, stairs 5", Function, null);
        Assert.Empty(result.Faults);
        Assert.Equal([("running downhill", 3.0), ("stairs", 5.0)], result.Measurements.Select(m => (m.Activity, m.Trials[0])));
    }

    [Fact]
    public void A_torque_is_kept_as_the_same_torque()
    {
        var result = TypedEntry.Parse("54 Nm", Abduction, Side.Left);
        var one = Assert.Single(result.Measurements);
        Assert.Equal(54, one.Trials[0] * one.LeverArmM!.Value, 1e-9);
        Assert.Contains(result.Notes, n => n.Contains("torque", StringComparison.Ordinal));
    }

    [Fact]
    public void Four_hundred_newtons_at_four_metres_is_refused_with_the_likely_meaning()
    {
        var result = TypedEntry.Parse("400 N at 4 m", Abduction, Side.Left);
        Assert.Empty(result.Measurements);
        var fault = Assert.Single(result.Faults);
        Assert.Contains("longer than a leg", fault.Sentence, StringComparison.Ordinal);
        Assert.Contains("Did you mean 40 cm?", fault.Sentence, StringComparison.Ordinal);
        Assert.Equal("400 N at 40 cm", fault.Suggestion);
        Assert.Equal("400 N at 4 m", result.AsTyped);
        Assert.Empty(TypedEntry.Parse(fault.Suggestion!, Abduction, Side.Left).Faults);
    }

    [Fact]
    public void Two_hundred_degrees_is_refused_with_the_range()
    {
        var fault = Assert.Single(TypedEntry.Parse("200 degrees", Knee, Side.Left).Faults);
        Assert.Contains("200°", fault.Sentence, StringComparison.Ordinal);
        Assert.Contains("170°", fault.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("NaN")]
    [InlineData("infinity")]
    [InlineData("-118")]
    [InlineData("0")]
    [InlineData("1e9")]
    [InlineData("118 cm")]
    [InlineData("118 °")]
    [InlineData("118 pain 11")]
    [InlineData("118 pain 3.5")]
    [InlineData("118 at 1 cm")]
    [InlineData("at 36 cm")]
    public void What_cannot_be_a_force_is_a_fault_and_never_a_number(string text)
    {
        var result = TypedEntry.Parse(text, Abduction, Side.Left);
        Assert.Empty(result.Measurements);
        Assert.NotEmpty(result.Faults);
        Assert.All(result.Faults, f => Assert.True(f.What.Length > 5 && f.Mend.Length > 5));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("\t\n")]
    public void Nothing_typed_is_no_fault(string text)
    {
        var result = TypedEntry.Parse(text, Knee, Side.Left);
        Assert.True(result.IsEmpty);
        Assert.Empty(result.Faults);
        Assert.Empty(result.Measurements);
    }

    [Theory]
    [InlineData("hip abd L 118 R 149 at 36 cm")]
    [InlineData("hip abd at 36 cm L 118 R 149")]
    [InlineData("hip abd 118 L 149 R at 36 cm")]
    [InlineData("hip abd l118@36cm r149")]
    [InlineData("hip abd L: 118 at 36 cm | R: 149")]
    public void Sides_may_stand_before_or_after_and_share_a_lever_arm(string text)
    {
        var result = TypedEntry.Parse(text, Shipped.Exam.Measures);
        Assert.Empty(result.Faults);
        Assert.Equal([(Side.Left, 118.0), (Side.Right, 149.0)], result.Measurements.Select(m => (m.Side!.Value, m.Trials[0])));
        Assert.All(result.Measurements, m => Assert.Equal(0.36, m.LeverArmM!.Value, 1e-9));
    }

    [Fact]
    public void Both_sides_at_once()
    {
        var result = TypedEntry.Parse("knee flex both 135", Shipped.Exam.Measures);
        Assert.Empty(result.Faults);
        Assert.Equal([Side.Left, Side.Right], result.Measurements.Select(m => m.Side!.Value));
    }

    [Fact]
    public void A_number_without_side_is_never_given_to_the_wrong_side()
    {
        var result = TypedEntry.Parse("hip abd 118 L 149", Shipped.Exam.Measures);
        Assert.Equal((Side.Left, 118.0), (Assert.Single(result.Measurements).Side!.Value, result.Measurements[0].Trials[0]));
        Assert.Single(result.Faults);
    }

    [Fact]
    public void The_two_ends_of_a_range_are_not_averaged()
    {
        var result = TypedEntry.Parse("0-118", Knee, Side.Left);
        var one = Assert.Single(result.Measurements);
        Assert.Equal(118, Say.Degrees(Assert.Single(one.Trials)), 9);
        Assert.Equal("0-118", one.Conditions.Printed);
        Assert.Contains("two ends of a range", Assert.Single(result.Questions).Sentence, StringComparison.Ordinal);
        Assert.Single(TypedEntry.Parse("4-5", Pain, null).Questions);
    }

    [Fact]
    public void A_missing_side_is_asked_for() =>
        Assert.Contains("L or R", Assert.Single(TypedEntry.Parse("hip abd 118", Shipped.Exam.Measures).Faults).Mend, StringComparison.Ordinal);

    [Fact]
    public void An_unknown_measure_does_not_swallow_the_rest()
    {
        var result = TypedEntry.Parse("moon phase 4, pain now 4", Shipped.Exam.Measures);
        Assert.Equal("moon phase 4", Assert.Single(result.Faults).Where);
        Assert.Equal("pain-now", Assert.Single(result.Measurements).MeasureId);
    }

    [Theory]
    [InlineData("11", false)]
    [InlineData("-1", false)]
    [InlineData("71/80", false)]
    [InlineData("4/10", true)]
    [InlineData("0", true)]
    [InlineData("6.5", true)]
    public void A_rating_stays_on_its_scale(string text, bool taken) =>
        Assert.Equal(taken, TypedEntry.Parse(text, Pain, null).Faults.IsEmpty);

    [Fact]
    public void Unusual_values_are_taken_and_asked_about()
    {
        var result = TypedEntry.Parse("600 N at 36 cm", Abduction, Side.Left);
        Assert.Single(result.Measurements);
        Assert.Contains("unusual", Assert.Single(result.Questions).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_makes_it_throw_and_all_text_is_kept()
    {
        const string Alphabet = "0123456789.,;/+-−–°%\"' @lLrRnNmMkKgGbBcCpPaAiIeEtTdDhHsS\t\n×∞é";
        var text = Gen.Int[0, Alphabet.Length - 1].Array[0, 30].Select(a => new string([.. a.Select(i => Alphabet[i])]));
        string[] starts = ["", "hip abd L ", "pain now ", "psfs ", "knee "];
        var start = Gen.Int[0, starts.Length - 1].Select(i => starts[i]);
        text.Select(start, (t, s) => s + t).Sample(typed =>
        {
            var line = TypedEntry.Parse(typed, Shipped.Exam.Measures);
            Check(line, typed);
            Assert.Equal(typed, Narrative.Read(typed, Shipped.Exam.Measures).Text);
            foreach (var measure in Shipped.Exam.Measures)
                Check(TypedEntry.Parse(typed, measure, measure.Sided ? Side.Left : null), typed);
        }, iter: 3000);
    }

    [Fact]
    public void A_typed_force_comes_back_whatever_the_decimal_mark() =>
        Gen.Int[10, 9000].Sample(tenths =>
        {
            var (whole, part) = (tenths / 10, tenths % 10);
            var point = TypedEntry.Parse(FormattableString.Invariant($"{whole}.{part} N"), Abduction, Side.Left);
            var comma = TypedEntry.Parse(FormattableString.Invariant($"{whole},{part} N"), Abduction, Side.Left);
            Assert.Equal(tenths / 10.0, point.Measurements.Single().Trials.Single(), 1e-9);
            Assert.Equal(point.Measurements.Single().Trials.Single(), comma.Measurements.Single().Trials.Single());
        });

    private static void Check(EntryResult result, string typed)
    {
        Assert.Equal(typed, result.AsTyped);
        foreach (var measurement in result.Measurements)
        {
            var measure = Shipped.Measure(measurement.MeasureId);
            Assert.NotEmpty(measurement.Trials);
            Assert.All(measurement.Trials, t => Assert.True(measurement.Conditions.UnknownUnit is not null || measure.HardRange.Holds(t)));
            Assert.Equal(measure.Sided, measurement.Side is not null);
            Assert.True(measurement.LeverArmM is null or (>= 0.03 and <= 1.2));
        }
    }
}
