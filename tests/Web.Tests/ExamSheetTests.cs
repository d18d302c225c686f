using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Pages.Exam;

namespace MomentArm.Web;

public sealed class ExamSheetTests
{
    private static readonly CellKey Left = new("hip-abduction-strength", Side.Left);
    private static readonly CellKey Right = new("hip-abduction-strength", Side.Right);
    private static readonly CellKey Raise = new("straight-leg-raise", Side.Left);
    private static readonly CellKey Bend = new("knee-flexion-range", Side.Left);
    private static readonly CellKey Function = new("patient-specific-function", null);

    [Fact]
    public async Task A_cell_is_saved_when_it_is_left_and_both_sides_make_a_finding_at_once()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        await sheet.LeaveAsync(Left, "100 N at 36 cm pain 3");
        Assert.Equal(CellState.Settled, sheet.Cell(Left).State);
        await sheet.LeaveAsync(Right, "150 at 36 cm");

        Assert.Contains(sheet.Reading.Findings, f => f.Headline.Contains("weaker than the right", StringComparison.Ordinal));
        var rows = (await made.RecordAsync()).Measurements;
        Assert.Equal([100d, 150d], rows.OrderBy(r => r.Side).Select(r => r.Trials[0]));
        Assert.Equal("100 N at 36 cm pain 3", rows.Single(r => r.Side == Side.Left).AsTyped);
    }

    [Theory]
    [InlineData("knee-flexion-range", "200 degrees", "200° cannot be a knee flexion range")]
    [InlineData("knee-extension-strength", "400 N at 4 m", "Did you mean 40 cm?")]
    public async Task An_impossible_measurement_is_told_in_words_is_not_saved_and_is_kept_as_typed(string measure, string typed, string words)
    {
        await using var made = await ExamCase.CreateAsync();
        var key = new CellKey(measure, Side.Left);
        using var sheet = await made.SheetAsync();
        await sheet.LeaveAsync(key, typed);
        Assert.Equal(CellState.Faulty, sheet.Cell(key).State);
        Assert.Contains(words, Assert.Single(sheet.Cell(key).Faults).Sentence, StringComparison.Ordinal);
        Assert.Empty((await made.RecordAsync()).Measurements);

        using var later = await made.SheetAsync();
        Assert.Equal(typed, later.Cell(key).Typed);
        Assert.Equal(CellState.Faulty, later.Cell(key).State);
        Assert.Equal("", later.Cell(key).Saved);
    }

    [Fact]
    public async Task The_unusual_is_asked_about_and_saved_once_it_is_kept_as_typed()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        await sheet.LeaveAsync(Raise, "12");
        Assert.Equal(CellState.Asking, sheet.Cell(Raise).State);
        Assert.Contains("unusual", Assert.Single(sheet.Cell(Raise).Questions).Sentence, StringComparison.Ordinal);
        Assert.Empty((await made.RecordAsync()).Measurements);
        await sheet.LeaveAsync(Raise, "12", asTyped: true);
        Assert.Equal(CellState.Settled, sheet.Cell(Raise).State);
        Assert.Equal("12", Assert.Single((await made.RecordAsync()).Measurements).AsTyped);
        Assert.Empty(await made.Desk.Stores.Drafts.ListAsync(made.Ada, ExamSheet.DraftPrefix(made.Visit.Id)));
    }

    [Fact]
    public async Task Of_two_people_in_one_cell_the_second_sees_both_values_and_nothing_is_lost()
    {
        await using var made = await ExamCase.CreateAsync();
        using var hers = await made.SheetAsync(made.Ada);
        using var his = await made.SheetAsync(made.Ben);
        await hers.LeaveAsync(Left, "110 at 36 cm");
        await his.LeaveAsync(Left, "125 at 36 cm");

        var cell = his.Cell(Left);
        Assert.Equal(CellState.Conflict, cell.State);
        Assert.Equal(("110 at 36 cm", "125 at 36 cm"), (cell.Theirs, cell.Typed));
        Assert.Contains(made.Ada.Name, cell.Sentence, StringComparison.Ordinal);
        Assert.Equal([110d], Assert.Single((await made.RecordAsync()).Measurements).Trials);

        // Not even a lost browser loses his value.
        using var after = await made.SheetAsync(made.Ben);
        Assert.Equal(("110 at 36 cm", "125 at 36 cm"), (after.Cell(Left).Saved, after.Cell(Left).Typed));

        await his.UseMineAsync(Left);
        Assert.Equal(CellState.Settled, cell.State);
        Assert.Equal([125d], Assert.Single((await made.RecordAsync()).Measurements).Trials);
        await hers.LeaveAsync(Left, "111 at 36 cm");
        Assert.Equal(CellState.Conflict, hers.Cell(Left).State);
        await hers.KeepTheirsAsync(Left);
        Assert.Equal("125 at 36 cm", hers.Cell(Left).Typed);
        Assert.Equal([125d], Assert.Single((await made.RecordAsync()).Measurements).Trials);
    }

    [Fact]
    public async Task A_cell_that_someone_emptied_meanwhile_says_so_and_keeps_the_typing()
    {
        await using var made = await ExamCase.CreateAsync();
        using var hers = await made.SheetAsync(made.Ada);
        await hers.LeaveAsync(Raise, "72");
        using var his = await made.SheetAsync(made.Ben);
        await hers.LeaveAsync(Raise, "");
        Assert.Empty((await made.RecordAsync()).Measurements);
        await his.LeaveAsync(Raise, "74");
        Assert.Equal(CellState.Conflict, his.Cell(Raise).State);
        Assert.Null(his.Cell(Raise).Theirs);
        await his.UseMineAsync(Raise);
        Assert.Equal("74", Assert.Single((await made.RecordAsync()).Measurements).AsTyped);
    }

    [Fact]
    public async Task Words_and_manual_grades_are_stored_and_a_number_takes_their_place()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        await sheet.LeaveAsync(Left, "4+/5");
        await sheet.LeaveAsync(Bend, "limited");
        var seen = (await made.RecordAsync()).Observations;
        Assert.Equal(["4+/5", null], seen.OrderBy(o => o.MeasureId).Select(o => o.Grade));
        Assert.Equal("limited", seen.Single(o => o.Grade is null).Text);
        Assert.Contains(sheet.Reading.Findings, f => f.Headline.Contains("limited", StringComparison.Ordinal));

        using var again = await made.SheetAsync();
        Assert.Equal("limited", again.Cell(Bend).Typed);
        await again.LeaveAsync(Bend, "118");
        Assert.Single((await made.RecordAsync()).Observations);
        Assert.Equal("118", Assert.Single((await made.RecordAsync()).Measurements).AsTyped);
    }

    [Fact]
    public async Task Activities_get_rows_of_their_own_and_can_be_scored_again_renamed_and_taken_back()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        await sheet.LeaveAsync(Function, "stairs 4, running 2");
        var stairs = Function with { Activity = "stairs" };
        Assert.Equal("stairs 4", sheet.Cell(stairs).Typed);
        Assert.Equal("", sheet.Cell(Function).Typed);
        Assert.Equal(2, sheet.Rows.Count(row => row.Activity is not null));

        await sheet.LeaveAsync(stairs, "stairs 6");
        await sheet.LeaveAsync(Function with { Activity = "running" }, "sprinting 2");
        Assert.Equal(
            [("sprinting", 2d), ("stairs", 6d)],
            (await made.RecordAsync()).Measurements.Select(m => (m.Activity!, m.Trials[0])).Order());
        await sheet.LeaveAsync(stairs, "");
        Assert.Equal("sprinting", Assert.Single((await made.RecordAsync()).Measurements).Activity);
        Assert.Single(sheet.Rows, row => row.Activity is not null);
    }

    [Fact]
    public async Task The_shorthand_line_takes_over_what_it_understands_and_keeps_what_it_does_not()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        var done = await sheet.TakeOverAsync("hip abd L 118 N at 36 cm pain 3, R 149");
        Assert.True(done.IsDone);
        Assert.Equal(2, done.Taken.Length);
        Assert.Equal(("118 N at 36 cm pain 3", "149 N at 36 cm"), (sheet.Cell(Left).Typed, sheet.Cell(Right).Typed));
        Assert.Equal("", sheet.Line);

        const string Half = "elbow wobble 3, slr L 72";
        var half = await sheet.TakeOverAsync(Half);
        Assert.Contains(half.Taken, t => t.Contains("72°", StringComparison.Ordinal));
        Assert.NotEmpty(half.Faults);
        using var later = await made.SheetAsync();
        Assert.Equal(Half, later.Line);
        Assert.Equal(3, (await made.RecordAsync()).Measurements.Count);
    }

    [Fact]
    public async Task An_unusual_line_waits_for_a_second_enter()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        var asked = await sheet.TakeOverAsync("slr L 12");
        Assert.NotEmpty(asked.Questions);
        Assert.Empty((await made.RecordAsync()).Measurements);
        Assert.Single((await sheet.TakeOverAsync("slr L 12", asTyped: true)).Taken);
    }

    [Fact]
    public async Task A_visit_signed_meanwhile_refuses_the_cell_in_words_and_keeps_the_typing()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        await made.SignAsync();
        await sheet.LeaveAsync(Raise, "72");
        Assert.Equal(CellState.Refused, sheet.Cell(Raise).State);
        Assert.Contains("signed", sheet.Cell(Raise).Sentence, StringComparison.Ordinal);
        Assert.Equal("72", sheet.Cell(Raise).Typed);
        Assert.Empty((await made.RecordAsync()).Measurements);
        Assert.NotEmpty(await made.Desk.Stores.Drafts.ListAsync(made.Ada, ExamSheet.DraftPrefix(made.Visit.Id)));
    }

    [Fact]
    public async Task The_visit_of_another_clinic_or_another_patient_is_not_there()
    {
        await using var made = await ExamCase.CreateAsync();
        Assert.Null(await ExamSheet.LoadAsync(made.Desk, made.Stranger, made.Patient.Id, made.Visit.Id));
        Assert.Null(await DangerSheet.LoadAsync(made.Desk, made.Stranger, made.Patient.Id, made.Visit.Id));
        var (other, _, _) = await made.AddVisitAsync(made.Ada);
        Assert.Null(await ExamSheet.LoadAsync(made.Desk, made.Ada, other.Id, made.Visit.Id));
        Assert.Null(await DangerSheet.LoadAsync(made.Desk, made.Ada, other.Id, made.Visit.Id));
    }
}
