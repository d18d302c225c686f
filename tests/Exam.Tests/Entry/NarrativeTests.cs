using MomentArm.Body;

namespace MomentArm.Exam.Tests;

public class NarrativeTests
{
    private const string Paragraph =
        "Knee flexion 118 left, 135 right, strong but painful, runs 20 km a week, LEFS 54/80, worst pain 6";

    [Fact]
    public void A_paragraph_is_read_piece_by_piece_and_what_is_not_understood_stays_text()
    {
        var read = Narrative.Read(Paragraph, Shipped.Exam.Measures);
        Assert.True(Narrative.IsProse(Paragraph));
        Assert.Equal(
            ["knee-flexion-range L 118", "knee-flexion-range R 135", "run-distance-week - 20", "lower-limb-function - 54", "pain-worst - 6"],
            read.Parts.Select(Short));
        Assert.Equal("strong but painful", read.Rest);
        Assert.Equal(["118 left", "135 right", "20 km", "54/80", "6"], read.Pieces.Select(p => Paragraph.Substring(p.From, p.Length).Replace(" a week", "", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("Straight leg raise was sixty two on the left and seventy one on the right.", "straight-leg-raise L 62|straight-leg-raise R 71", "")]
    [InlineData("Knee flexion left one hundred and eighteen, right one thirty five.", "knee-flexion-range L 118|knee-flexion-range R 135", "")]
    [InlineData("Worst pain seven over ten. Pain now two point five. She likes hiking.", "pain-worst - 7|pain-now - 2.5", "She likes hiking")]
    [InlineData("There was 118 degrees of knee flexion on the left.", "knee-flexion-range L 118", "")]
    [InlineData("Six minute walk 420 m. Timed up and go nine seconds.", "walk-six-minutes - 420|timed-up-and-go - 9", "")]
    [InlineData("Hip abduction 118 N at 36 cm on the left and 149 on the right.", "hip-abduction-strength L 118|hip-abduction-strength R 149", "")]
    [InlineData("The knee gave way three times on the left. He sits nine hours a day.", "giving-way L 3|sitting-hours - 9", "")]
    [InlineData("She went running with a friend and took two steps to hop over a log.", "", "She went running with a friend and took two steps to hop over a log")]
    [InlineData("Grade 4+/5 somewhere in the leg.", "", "Grade 4+/5 somewhere in the leg")]
    public void Dictated_sentences(string text, string parts, string rest)
    {
        var read = Narrative.Read(text, Shipped.Exam.Measures);
        Assert.Equal(parts, string.Join('|', read.Parts.Select(Short)));
        Assert.Equal(rest, read.Rest);
    }

    [Fact]
    public void An_impossible_value_in_a_sentence_stays_text_and_spoils_nothing_else()
    {
        var read = Narrative.Read("Knee flexion 300 on the left. Worst pain 6.", Shipped.Exam.Measures);
        Assert.Equal("pain-worst - 6", Short(Assert.Single(read.Parts)));
        Assert.Equal("Knee flexion 300 on the left", read.Rest);
    }

    [Theory]
    [InlineData("psfs running 2, stairs 5, hop 4, kneeling 3")]
    [InlineData("psfs stairs 9, walking 4, function in the garden 3, standing hours 2")]
    [InlineData("psfs knee bends 2, lateral steps 3, single leg dance 4")]
    public void A_plain_word_in_an_activity_starts_no_other_measure(string typed)
    {
        var read = TypedEntry.Parse(typed, Shipped.Exam.Measures);
        Assert.Empty(read.Faults);
        Assert.All(read.Measurements.Take(3), m => Assert.Equal("patient-specific-function", m.MeasureId));
    }

    [Fact]
    public void A_surely_named_measure_ends_a_list_of_activities()
    {
        var read = TypedEntry.Parse("psfs running 2, stairs 5, lefs 54, hop L 120, knee flex L 118", Shipped.Exam.Measures);
        Assert.Empty(read.Faults);
        Assert.Equal(
            ["patient-specific-function", "patient-specific-function", "lower-limb-function", "hop-single", "knee-flexion-range"],
            read.Measurements.Select(m => m.MeasureId));
    }

    [Fact]
    public void A_lever_arm_need_not_be_typed_twice_nor_again_at_the_next_visit()
    {
        var abduction = Shipped.Measure("hip-abduction-strength");
        var left = TypedEntry.Parse("118 at 36 cm", abduction, Side.Left).Measurements[0];
        var right = TypedEntry.Parse("149", abduction, Side.Right, new EntryContext { Now = [left] }).Measurements[0];
        Assert.Equal(0.36, right.LeverArmM!.Value, 9);
        var later = TypedEntry.Parse("125", abduction, Side.Left, new EntryContext { Last = [left] });
        Assert.Equal(0.36, later.Measurements[0].LeverArmM!.Value, 9);
        Assert.Contains(later.Notes, n => n.Contains("as last time", StringComparison.Ordinal));
    }

    [Fact]
    public void Pounds_typed_as_newtons_are_asked_about_with_what_was_meant()
    {
        var abduction = Shipped.Measure("hip-abduction-strength");
        var last = TypedEntry.Parse("116 at 36 cm", abduction, Side.Left).Measurements[0];
        var asked = Assert.Single(TypedEntry.Parse("26", abduction, Side.Left, new EntryContext { Last = [last] }).Questions);
        Assert.Contains("Were pounds meant? 26 lb is 116 N.", asked.Sentence, StringComparison.Ordinal);
        Assert.Equal("26 lb", asked.Suggestion);
        Assert.Contains("Were pounds meant?", Assert.Single(TypedEntry.Parse("20", abduction, Side.Left).Questions).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_works_in_pounds_and_inches_types_bare_numbers_in_them()
    {
        var us = new EntryContext { Units = UnitChoice.Us };
        var read = Assert.Single(TypedEntry.Parse("26 at 14", Shipped.Measure("hip-abduction-strength"), Side.Left, us).Measurements);
        Assert.Equal((115.65, 0.3556), (Math.Round(read.Trials[0], 2), Math.Round(read.LeverArmM!.Value, 4)));
        Assert.Equal(5 * 1609.344, TypedEntry.Parse("5", Shipped.Measure("run-longest"), null, us).Measurements[0].Trials[0], 6);
        Assert.Equal(118, Say.Degrees(TypedEntry.Parse("118", Shipped.Measure("knee-flexion-range"), Side.Left, us).Measurements[0].Trials[0]), 9);
    }

    [Fact]
    public void Swapped_sides_are_asked_about_and_unswapped_ones_are_not()
    {
        IReadOnlyList<Measurement> Of(string typed) => TypedEntry.Parse(typed, Shipped.Exam.Measures).Measurements;
        var last = Of("knee flex L 118 R 140");
        var asked = Assert.Single(EntryGuard.Questions(Shipped.Exam.Measures, Of("knee flex L 139 R 120"), last));
        Assert.Contains("Are the sides right?", asked.Sentence, StringComparison.Ordinal);
        Assert.Empty(EntryGuard.Questions(Shipped.Exam.Measures, Of("knee flex L 120 R 139"), last));
        Assert.Empty(EntryGuard.Questions(Shipped.Exam.Measures, Of("knee flex L 139 R 141"), last));
    }

    [Fact]
    public void Ratings_that_contradict_each_other_are_asked_about()
    {
        var now = TypedEntry.Parse("pain now 6, pain worst 3", Shipped.Exam.Measures).Measurements;
        Assert.Contains("Pain now (6) is more than worst pain", Assert.Single(EntryGuard.Questions(Shipped.Exam.Measures, now, [])).Sentence, StringComparison.Ordinal);
    }

    private static string Short(NarrativePart part)
    {
        var side = (part.Measurement?.Side ?? part.Observation?.Side) switch { Side.Left => "L", Side.Right => "R", _ => "-" };
        var value = part.Measurement is { } m
            ? Say.Number(m.Trials[0] / part.Measure.Shown.StoredPerShown)
            : part.Observation!.Text;
        return $"{part.Measure.Id} {side} {value}";
    }
}
