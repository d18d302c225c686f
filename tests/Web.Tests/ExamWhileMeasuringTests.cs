using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Pages.Exam;

namespace MomentArm.Web;

/// <summary>What stands beside the cells: the row's sentences, the last visit, the picture of the test.</summary>
public sealed class ExamWhileMeasuringTests
{
    [Fact]
    public async Task A_row_says_torque_pain_and_the_other_side_and_leaves_quality_to_the_panel()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        await sheet.TakeOverAsync("hip abd L 100 N at 36 cm pain 4, R 150");
        var said = sheet.Says(sheet.Measures.Single(m => m.Id == "hip-abduction-strength"))!;
        var row = RowSays.Short(said);
        // 100 N at 0.36 m is 36 N m, 150 N at 0.36 m is 54 N m; the person weighs 66 kg: 0.55 and 0.82 N m/kg.
        Assert.StartsWith("Left 36 N m (0.55 N m/kg), right 54 N m (0.82 N m/kg)", row[0].Text, StringComparison.Ordinal);
        Assert.Contains(row, s => s.Topic == StatementTopic.Pain && s.Text.Contains("pain 4/10", StringComparison.Ordinal));
        Assert.Contains(row, s => s.Topic == StatementTopic.OtherSide && s.Tone == Tone.Watch);
        Assert.DoesNotContain(row, s => s.Topic == StatementTopic.Quality);
        Assert.Contains(said.Statements, s => s.Topic == StatementTopic.Quality);
    }

    [Fact]
    public async Task An_empty_cell_shows_the_last_visit_to_be_read_and_takes_nothing_over()
    {
        await using var made = await ExamCase.CreateAsync();
        using (var first = await made.SheetAsync())
            await first.TakeOverAsync("slr L 72; psfs stairs 4, running 2");
        var tomorrow = made.Visit.Day.AddDays(1);
        var next = (await made.Desk.Stores.Visits.OpenAsync(made.Ada, made.Episode.Id, tomorrow)).Require();
        using var sheet = (await ExamSheet.LoadAsync(made.Desk, made.Ada, made.Patient.Id, next.Id))!;
        Assert.Equal("last 72°", sheet.LastTime(new CellKey("straight-leg-raise", Side.Left)));
        Assert.Null(sheet.LastTime(new CellKey("straight-leg-raise", Side.Right)));
        Assert.Equal("last stairs 4, running 2", sheet.LastTime(new CellKey("patient-specific-function", null)));
        Assert.Empty((await made.Desk.Stores.Visits.GetAsync(made.Ada, next.Id))!.Measurements);
    }

    [Fact]
    public async Task Each_strength_test_is_drawn_on_either_side()
    {
        await using var made = await ExamCase.CreateAsync();
        using var sheet = await made.SheetAsync();
        foreach (var test in sheet.Measures.Select(m => m.Strength).OfType<StrengthSetUp>())
        {
            var left = TestPicture.Of(sheet.Reading.Loads, test, Side.Left);
            var right = TestPicture.Of(sheet.Reading.Loads, test, Side.Right);
            Assert.Contains("fig-working", left.Inner, StringComparison.Ordinal);
            Assert.NotEqual(left.Inner, right.Inner);
        }
    }

    [Fact]
    public async Task What_the_record_says_is_assembled_for_the_note_and_never_stored_in_it()
    {
        await using var made = await ExamCase.CreateAsync();
        using (var sheet = await made.SheetAsync())
            await sheet.TakeOverAsync("pain now 3; hip abd L 4+/5; slr L 72, R 74");
        var patientCase = (await VisitPages.FindAsync(made.Desk, made.Ada, made.Patient.Id, made.Visit.Id))!;
        Assert.Contains(NoteView.Said(patientCase), line => line.StartsWith("Pain now: 3/10", StringComparison.Ordinal));
        Assert.Contains(NoteView.Measured(patientCase), line => line.Contains("Left: 72°. Right: 74°.", StringComparison.Ordinal));
        Assert.Equal(["Hip abduction strength, left: 4+/5 by hand."], NoteView.Observed(patientCase, made.Desk.Content.Exam.Measures));
        Assert.Equal(new VisitNote(), VisitNote.Of(patientCase.Shown!.Visit));
    }
}
