using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Pages.Exam;

namespace MomentArm.Web;

/// <summary>What the exam sheet spares the therapist, and what it asks before it takes a value.</summary>
public sealed class ExamEntryTests
{
    private static readonly CellKey Left = new("hip-abduction-strength", Side.Left);
    private static readonly CellKey Right = new("hip-abduction-strength", Side.Right);
    private static readonly CellKey BendLeft = new("knee-flexion-range", Side.Left);
    private static readonly CellKey BendRight = new("knee-flexion-range", Side.Right);

    [Fact]
    public async Task A_lever_arm_is_typed_once_and_last_time_s_and_the_other_side_s_value_need_one_or_two_keys()
    {
        await using var made = await ExamCase.CreateAsync();
        using (var first = await made.SheetAsync())
        {
            await first.LeaveAsync(Left, "118 at 36 cm");
            await first.LeaveAsync(Right, "149");
            Assert.Equal("149 N at 36 cm", first.Cell(Right).Typed);
            await first.LeaveAsync(BendLeft, "118");
            await first.LeaveAsync(BendRight, "==");
            Assert.Equal("118", first.Cell(BendRight).Typed);
        }

        using var next = await NextVisitAsync(made);
        await next.LeaveAsync(Left, "=");
        Assert.Equal((CellState.Settled, "118 N at 36 cm"), (next.Cell(Left).State, next.Cell(Left).Typed));
        await next.LeaveAsync(Right, "152");
        Assert.Equal("152 N at 36 cm", next.Cell(Right).Typed);
        await next.LeaveAsync(new CellKey("straight-leg-raise", Side.Left), "=");
        Assert.Contains("nothing to take over", Assert.Single(next.Cell(new CellKey("straight-leg-raise", Side.Left)).Faults).Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("knee-flexion-range", "300", "Give a value from")]
    [InlineData("hip-abduction-strength", "20", "Were pounds meant?")]
    [InlineData("lower-limb-function", "90", "Give a value from 0/80 to 80/80")]
    public async Task Bad_input_says_what_to_do(string measure, string typed, string words)
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        var key = new CellKey(measure, measure == "lower-limb-function" ? null : Side.Left);
        await sheet.LeaveAsync(key, typed);
        var cell = sheet.Cell(key);
        Assert.Contains(words, string.Join(' ', cell.Faults.Select(f => f.Sentence).Concat(cell.Questions.Select(q => q.Sentence))), StringComparison.Ordinal);
        Assert.Empty((await made.RecordAsync()).Measurements);
    }

    [Fact]
    public async Task Swapped_sides_are_asked_about_and_saved_when_they_are_right()
    {
        await using var made = await ExamCase.CreateAsync();
        using (var first = await made.SheetAsync())
            await first.TakeOverAsync("knee flex L 118 R 140");
        using var next = await NextVisitAsync(made);
        await next.LeaveAsync(BendLeft, "139");
        await next.LeaveAsync(BendRight, "120");
        Assert.Equal(CellState.Asking, next.Cell(BendRight).State);
        Assert.Contains("Are the sides right?", Assert.Single(next.Cell(BendRight).Questions).Sentence, StringComparison.Ordinal);
        await next.LeaveAsync(BendRight, "120", asTyped: true);
        Assert.Equal(CellState.Settled, next.Cell(BendRight).State);
    }

    [Fact]
    public async Task Readings_before_and_after_stand_in_rows_of_their_own_and_the_plain_one_is_kept()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        await sheet.LeaveAsync(BendLeft, "118");
        await sheet.LeaveAsync(BendLeft, "126 after");
        var after = BendLeft with { Moment = "after" };
        Assert.Equal(("118", "126 after"), (sheet.Cell(BendLeft).Typed, sheet.Cell(after).Typed));
        Assert.Contains(sheet.Rows, row => row.Moment == "after" && row.Cells.Count == 2);
        await sheet.LeaveAsync(after, "130");
        Assert.Equal([118d, 130], (await made.RecordAsync()).Measurements.Select(m => Math.Round(Say.Degrees(m.Trials[0]))).Order());
        Assert.Equal("118", Say.Number(Say.Degrees(sheet.Says(sheet.Cell(BendLeft).Measure)!.Readings.Single().Value)));
        await sheet.LeaveAsync(after, "");
        Assert.Single((await made.RecordAsync()).Measurements);
    }

    [Fact]
    public async Task Rows_are_of_the_episode_s_part_of_the_body_and_a_name_adds_one()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        Assert.Equal([BodyRegion.Hip], sheet.Plan.Regions);
        Assert.Contains(sheet.Rows, row => row.Measure.Id == "hip-abduction-strength");
        Assert.DoesNotContain(sheet.Rows, row => row.Measure.Id is "knee-extension-strength" or "neck-disability" or "hop-single");
        Assert.InRange(sheet.Plan.Core(sheet.Measures).Sum(m => m.CoreMinutes!.Value), 0.1, ExamPlan.CoreMinutes);

        await sheet.AddAsync(Assert.Single(TypedEntry.Find("ndi", sheet.Measures)));
        await sheet.ShowAsync(sheet.Plan.Toggle(BodyRegion.Knee));
        using var again = await made.SheetAsync();
        Assert.Contains(again.Rows, row => row.Measure.Id == "neck-disability");
        Assert.Contains(again.Rows, row => row.Measure.Id == "knee-extension-strength");
        await again.TakeOverAsync("spadi 40");
        Assert.Contains(again.Rows, row => row.Measure.Id == "shoulder-disability");
    }

    [Fact]
    public async Task A_paragraph_waits_to_be_confirmed_and_the_rest_goes_into_the_note()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        var read = sheet.ReadParagraph("Knee flexion 118 left, 135 right, strong but painful, runs 20 km a week, LEFS 54/80, worst pain 6");
        Assert.Empty((await made.RecordAsync()).Measurements);
        foreach (var part in read.Parts)
            Assert.Single((await sheet.TakeAsync(part)).Taken);
        Assert.Null(await sheet.AddToNoteAsync(read.Rest));
        var record = await made.RecordAsync();
        Assert.Equal(5, record.Measurements.Count);
        Assert.Equal("strong but painful", record.Visit.Subjective);
        Assert.Equal("LEFS 54/80", record.Measurements.Single(m => m.MeasureId == "lower-limb-function").AsTyped);
    }

    [Fact]
    public async Task A_questionnaire_is_answered_in_a_row_and_too_many_left_out_give_no_score()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        var key = new CellKey("lower-limb-function", null);
        var form = sheet.Cell(key).Measure.Questionnaire!;
        Assert.True(form.ItemCount <= 54);
        await sheet.ScoreAsync(key, ExamItemsText.Read("33332222111144443210", form));
        Assert.Equal((CellState.Settled, "46"), (sheet.Cell(key).State, sheet.Cell(key).Saved));
        using var again = await made.SheetAsync();
        Assert.Equal("33332222111144443210", again.AnswersOf(again.Cell(key).Measure));

        var short1 = form.Score(ExamItemsText.Read(new string('-', 19) + "3", form));
        Assert.Null(short1.Value);
        Assert.Contains("ask the open ones", short1.Sentence, StringComparison.Ordinal);
        Assert.Contains("answers go from", form.Score(ExamItemsText.Read(new string('3', 19) + "9", form)).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_works_in_pounds_types_and_reads_pounds_and_the_record_stays_the_same()
    {
        await using var made = await ExamCase.CreateAsync();
        using (var us = (await ExamSheet.LoadAsync(made.Desk, made.Ada, made.Patient.Id, made.Visit.Id, UnitChoice.Us))!)
        {
            await us.LeaveAsync(Left, "26 at 14");
            Assert.Equal(115.65, (await made.RecordAsync()).Measurements[0].Trials[0], 2);
        }

        using var metric = await made.SheetAsync();
        Assert.Equal("115.65 N at 35.6 cm", metric.Cell(Left).Typed);
        using var again = (await ExamSheet.LoadAsync(made.Desk, made.Ada, made.Patient.Id, made.Visit.Id, UnitChoice.Us))!;
        Assert.Equal("26 at 14", again.Cell(Left).Typed);
        Assert.Equal("Left 26 lb at 14.2 in, 36 N m (0.55 N m/kg).", ExamWords.InUnits("Left 115.65 N at 36 cm, 36 N m (0.55 N m/kg).", UnitChoice.Us));
    }

    private static async Task<ExamSheet> NextVisitAsync(ExamCase made)
    {
        var next = (await made.Desk.Stores.Visits.OpenAsync(made.Ada, made.Episode.Id, made.Visit.Day.AddDays(7))).Require();
        return (await ExamSheet.LoadAsync(made.Desk, made.Ada, made.Patient.Id, next.Id))!;
    }
}
