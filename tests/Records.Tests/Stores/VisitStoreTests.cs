using System.Text.Json;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Records.Tests;

public sealed class VisitStoreTests
{
    private static readonly DateOnly Day = new(2026, 3, 2);

    [Fact]
    public async Task A_measurement_comes_back_as_it_was_typed()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, visit) = await records.AddVisitAsync(records.Ana);
        var typed = Samples.Strength(112.5, 0.1 + 0.2, 1e-17) with { Activity = "going down stairs" };
        (await records.Stores.Visits.SaveMeasurementAsync(records.Ana, visit.Id, typed, null)).Require();
        var back = Assert.Single(await records.Stores.Visits.MeasurementsOfEpisodeAsync(records.Ana, episode.Id)).Row.ToMeasurement();
        Assert.Equal(typed.Trials, back.Trials);
        Assert.Equal(typed, back with { Trials = typed.Trials });
    }

    [Fact]
    public async Task Two_people_editing_the_same_cell_both_keep_their_value()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var read = (await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(100), null)).Require();
        records.Clock.Advance(TimeSpan.FromMinutes(1));
        (await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(110), read.RowVersion)).Require();
        var changedAt = records.Clock.Now.UtcDateTime;
        records.Clock.Advance(TimeSpan.FromMinutes(1));
        var late = Samples.Strength(120);

        var theirs = Samples.Conflict(await visits.SaveMeasurementAsync(records.Ben, visit.Id, late, read.RowVersion), out var conflict);

        Assert.Equal([110], theirs.Trials);
        Assert.Equal(records.Ana.Name, conflict.Who);
        Assert.Equal(changedAt, conflict.AtUtc);
        Assert.Equal(VisitStore.MeasurementDraftKey(visit.Id, late), conflict.DraftKey);
        var draft = await records.Stores.Drafts.GetAsync(records.Ben, conflict.DraftKey!);
        Assert.Equal(120, JsonDocument.Parse(draft!.Text).RootElement.GetProperty("trials")[0].GetDouble());
        Assert.Equal([110], Assert.Single((await visits.GetAsync(records.Ana, visit.Id))!.Measurements).Trials);

        // Having seen theirs, the second person decides; the draft is then done with.
        (await visits.SaveMeasurementAsync(records.Ben, visit.Id, late, theirs.RowVersion)).Require();
        Assert.Null(await records.Stores.Drafts.GetAsync(records.Ben, conflict.DraftKey!));
    }

    [Fact]
    public async Task Two_people_filling_the_same_empty_cell_conflict_and_the_same_value_twice_does_not()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var first = (await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(100), null)).Require();
        var again = (await visits.SaveMeasurementAsync(records.Ben, visit.Id, Samples.Strength(100), null)).Require();
        Assert.Equal(first.Id, again.Id);
        Assert.Equal(first.RowVersion, again.RowVersion);
        Samples.Conflict(await visits.SaveMeasurementAsync(records.Ben, visit.Id, Samples.Strength(101), null), out _);
    }

    [Fact]
    public async Task Many_people_filling_one_cell_at_once_leave_one_value_and_lose_none()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 12).Select(n => Task.Run(() =>
            records.Stores.Visits.SaveMeasurementAsync(n % 2 == 0 ? records.Ana : records.Ben, visit.Id, Samples.Strength(n), null))));
        Assert.Single(outcomes, o => o is SaveOutcome<MeasurementRow>.Saved);
        Assert.Equal(11, outcomes.Count(o => o is SaveOutcome<MeasurementRow>.Conflict));
        Assert.Single((await records.Stores.Visits.GetAsync(records.Ana, visit.Id))!.Measurements);
    }

    [Fact]
    public async Task A_cell_emptied_by_someone_else_is_a_conflict_without_their_value()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var read = (await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(100), null)).Require();
        (await visits.RemoveMeasurementAsync(records.Ana, visit.Id, read.Id, read.RowVersion)).Require();
        var outcome = await visits.SaveMeasurementAsync(records.Ben, visit.Id, Samples.Strength(120), read.RowVersion);
        var conflict = Assert.IsType<SaveOutcome<MeasurementRow>.Conflict>(outcome);
        Assert.Null(conflict.Theirs);
        Assert.NotNull(conflict.DraftKey);
    }

    [Fact]
    public async Task Left_and_right_and_each_activity_are_cells_of_their_own()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var typed = Samples.Strength(5);
        foreach (var one in (Measurement[])[typed, typed with { Side = Side.Right }, typed with { Side = null }, typed with { Activity = "stairs" }])
            (await records.Stores.Visits.SaveMeasurementAsync(records.Ana, visit.Id, one, null)).Require();
        Assert.Equal(4, (await records.Stores.Visits.GetAsync(records.Ana, visit.Id))!.Measurements.Count);
    }

    [Fact]
    public async Task Values_that_are_no_numbers_are_refused()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        Samples.Refused(await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(), null));
        Samples.Refused(await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(5) with { PainDuring = 11 }, null));
        var fault = await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(double.NaN), null);
        Assert.Contains("not a number", Samples.Refused(fault), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Opening_a_visit_twice_on_a_day_gives_the_same_visit_and_days_count_up()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, visit) = await records.AddVisitAsync(records.Ana);
        Assert.Equal(visit.Id, (await records.Stores.Visits.OpenAsync(records.Ben, episode.Id, Day)).Require().Id);
        var next = (await records.Stores.Visits.OpenAsync(records.Ana, episode.Id, Day.AddDays(7))).Require();
        Assert.Equal((1, 2), (visit.Number, next.Number));
        var open = (await records.Stores.Episodes.GetAsync(records.Ana, episode.Id))!;
        (await records.Stores.Episodes.CloseAsync(records.Ana, episode.Id, Day.AddDays(8), open.RowVersion)).Require();
        Samples.Refused(await records.Stores.Visits.OpenAsync(records.Ana, episode.Id, Day.AddDays(9)));
    }

    [Fact]
    public async Task Danger_answers_and_decisions_are_kept_and_a_decision_needs_a_reason()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var rows = (await visits.AnswerDangerSignsAsync(
            records.Ana, visit.Id, [new("night-pain", DangerAnswer.Yes), new("fever", DangerAnswer.No)])).Require();
        Assert.Equal(2, rows.Count);
        Samples.Conflict(
            await visits.AnswerDangerSignsAsync(records.Ben, visit.Id, [new("weight-loss", DangerAnswer.No), new("fever", DangerAnswer.Yes)]),
            out _);
        Samples.Refused(await visits.DecideDangerAsync(records.Ana, visit.Id, "night-pain", " "));
        (await visits.DecideDangerAsync(records.Ana, visit.Id, "night-pain", "seen by a physician, invented")).Require();
        (await visits.DecideFindingAsync(records.Ana, visit.Id, "finding-1", false, "old injury")).Require();
        var record = (await visits.GetAsync(records.Ana, visit.Id))!;
        Assert.Equal(
            [("fever", DangerAnswer.No), ("night-pain", DangerAnswer.Yes)],
            record.DangerAnswers.Select(a => (a.SignId, a.Answer)).Order());
        Assert.Equal(records.Ana.Name, Assert.Single(record.DangerDecisions).ByName);
        Assert.False(Assert.Single(record.FindingDecisions).Accepted);
    }

    [Fact]
    public async Task A_note_based_on_an_older_version_conflicts_and_stays_in_the_draft()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        (await visits.SaveNoteAsync(records.Ana, visit.Id, new VisitNote(Plan: "hers"), visit.RowVersion)).Require();
        var theirs = Samples.Conflict(
            await visits.SaveNoteAsync(records.Ben, visit.Id, new VisitNote(Plan: "his"), visit.RowVersion), out var conflict);
        Assert.Equal("hers", theirs.Plan);
        Assert.Contains("his", (await records.Stores.Drafts.GetAsync(records.Ben, conflict.DraftKey!))!.Text, StringComparison.Ordinal);
    }
}
