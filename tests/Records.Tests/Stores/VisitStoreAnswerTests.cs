using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Records.Tests;

public sealed class VisitStoreAnswerTests
{
    [Fact]
    public async Task Answers_come_back_by_sheet_and_the_same_again_changes_nothing()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        VisitAnswerInput[] typed = [new("test", "compression", Side.Left, "positive"), new("rule/ankle", "walk", null, " yes ")];
        var first = (await visits.SaveAnswersAsync(records.Ana, visit.Id, typed)).Require();
        var again = (await visits.SaveAnswersAsync(records.Ben, visit.Id, typed)).Require();
        Assert.Equal(first.Select(a => a.RowVersion), again.Select(a => a.RowVersion));
        var back = await visits.AnswersOfEpisodeAsync(records.Ana, episode.Id);
        Assert.Equal(
            [("rule/ankle", "walk", null, "yes"), ("test", "compression", Side.Left, "positive")],
            back.Select(a => (a.Row.Sheet, a.Row.Item, a.Row.Side, a.Row.Value)).OrderBy(a => a.Sheet, StringComparer.Ordinal));
        Assert.Equal(2, (await visits.GetAsync(records.Ana, visit.Id))!.Answers.Count);
        Assert.Empty(await visits.AnswersOfEpisodeAsync(records.Cleo, episode.Id));
    }

    [Fact]
    public async Task An_answer_changed_by_someone_else_is_a_conflict_and_none_of_the_others_is_saved()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var read = Assert.Single((await visits.SaveAnswersAsync(records.Ana, visit.Id, [new("test", "a", null, "positive")])).Require());
        (await visits.SaveAnswersAsync(records.Ana, visit.Id, [new("test", "a", null, "negative", read.RowVersion)])).Require();
        VisitAnswerInput[] late = [new("test", "b", null, "positive"), new("test", "a", null, "unclear", read.RowVersion)];
        var theirs = Samples.Conflict(await visits.SaveAnswersAsync(records.Ben, visit.Id, late), out var conflict);
        Assert.Contains(theirs, a => a.Value == "negative");
        Assert.NotNull(await records.Stores.Drafts.GetAsync(records.Ben, conflict.DraftKey!));
        Assert.Equal("negative", Assert.Single((await visits.GetAsync(records.Ana, visit.Id))!.Answers).Value);
    }

    [Fact]
    public async Task A_blank_answer_takes_it_back_and_the_trail_shows_both()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var row = Assert.Single((await visits.SaveAnswersAsync(records.Ana, visit.Id, [new("test", "a", null, "positive")])).Require());
        Assert.Empty((await visits.SaveAnswersAsync(records.Ana, visit.Id, [new("test", "a", null, " ", row.RowVersion)])).Require());
        var trail = await records.Stores.Audit.ListByPatientAsync(records.Ana, patient.Id);
        Assert.Equal(["added", "removed"], trail.Where(e => e.SubjectType == "answer").OrderBy(e => e.Sequence).Select(e => e.Action));
    }

    [Fact]
    public async Task A_signed_visit_takes_no_answer_not_even_by_a_hand_written_statement_but_an_amendment_that_stays()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        Samples.Refused(await visits.AmendNoteAsync(records.Ana, visit.Id, "too early"));
        (await visits.SaveAnswersAsync(records.Ana, visit.Id, [new("test", "a", null, "positive")])).Require();
        (await visits.SignAsync(records.Ana, visit.Id, visit.RowVersion)).Require();
        Samples.Refused(await visits.SaveAnswersAsync(records.Ana, visit.Id, [new("test", "b", null, "positive")]));
        Samples.Refused(await visits.SaveFindingAsync(records.Ana, visit.Id, new FindingJudgment("own/1", true) { Headline = "late" }));
        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => records.RawValue("UPDATE VisitAnswers SET Value = 'x' RETURNING 1"));
        Samples.Refused(await visits.AmendNoteAsync(records.Ana, visit.Id, " "));
        (await visits.AmendNoteAsync(records.Ben, visit.Id, "Seen again by phone, invented.")).Require();
        Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => records.RawValue("DELETE FROM NoteAmendments RETURNING 1"));
        var line = Assert.Single((await visits.GetAsync(records.Ana, visit.Id))!.Amendments);
        Assert.Equal((records.Ben.Name, "Seen again by phone, invented."), (line.ByName, line.Text));
    }

    [Fact]
    public async Task A_finding_can_be_put_in_other_words_moved_or_written_anew()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        Samples.Refused(await visits.SaveFindingAsync(records.Ana, visit.Id, new FindingJudgment("own/1", true)));
        (await visits.SaveFindingAsync(records.Ana, visit.Id, new FindingJudgment("own/1", true) 
        {
            Headline = "Fears stairs",
            Rank = 1,
            Impairment = new Impairment(ImpairmentKind.PoorControl, Side.Left, JointAction.HipAbduction, null, 0.25),
        })).Require();
        Assert.Equal(
            new Impairment(ImpairmentKind.PoorControl, Side.Left, JointAction.HipAbduction, null, 0.25),
            Assert.Single((await visits.GetAsync(records.Ana, visit.Id))!.FindingDecisions).ToJudgment().Impairment);
        (await visits.SaveFindingAsync(records.Ana, visit.Id, new FindingJudgment("own/1", false) { Headline = "Fears stairs", Reason = "gone" })).Require();
        var row = Assert.Single((await visits.GetAsync(records.Ana, visit.Id))!.FindingDecisions);
        Assert.Equal((false, "Fears stairs", null, "gone"), (row.Accepted, row.Headline, row.Rank, row.Reason));
    }
}
