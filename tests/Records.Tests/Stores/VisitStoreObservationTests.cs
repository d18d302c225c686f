using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Records.Tests;

public sealed class VisitStoreObservationTests
{
    private static readonly Observation Grade = new("hip-abduction-strength", Side.Left, "4+/5", "4+/5");

    [Fact]
    public async Task Words_and_grades_come_back_as_they_were_typed()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        (await visits.SaveObservationAsync(records.Ana, visit.Id, Grade, "4+/5 shaky", null)).Require();
        var words = new Observation("hip-flexion-range", Side.Right, "limited", null);
        (await visits.SaveObservationAsync(records.Ana, visit.Id, words, "limited", null)).Require();

        var record = (await visits.GetAsync(records.Ana, visit.Id))!;
        Assert.Equal([Grade, words], record.Observations.Select(o => o.ToObservation()).OrderBy(o => o.MeasureId, StringComparer.Ordinal));
        Assert.Equal("4+/5 shaky", record.Observations.Single(o => o.Grade is not null).AsTyped);
        Assert.Equal(2, (await visits.ObservationsOfEpisodeAsync(records.Ana, episode.Id)).Count);
        Assert.Null(await visits.GetAsync(records.Cleo, visit.Id));
        Assert.Empty(await visits.ObservationsOfEpisodeAsync(records.Cleo, episode.Id));
    }

    [Fact]
    public async Task Two_people_observing_in_one_cell_conflict_and_the_same_words_twice_do_not()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var first = (await visits.SaveObservationAsync(records.Ana, visit.Id, Grade, "4+/5", null)).Require();
        Assert.Equal(first.RowVersion, (await visits.SaveObservationAsync(records.Ben, visit.Id, Grade, "4+/5", null)).Require().RowVersion);
        var other = Grade with { Text = "3/5", Grade = "3/5" };
        var theirs = Samples.Conflict(await visits.SaveObservationAsync(records.Ben, visit.Id, other, "3/5", null), out var conflict);
        Assert.Equal("4+/5", theirs.Grade);
        Assert.Equal(VisitStore.ObservationDraftKey(visit.Id, other), conflict.DraftKey);
        Assert.Contains("3/5", (await records.Stores.Drafts.GetAsync(records.Ben, conflict.DraftKey!))!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_observation_is_on_the_audit_trail_without_its_words()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, _, visit) = await records.AddVisitAsync(records.Ana);
        (await records.Stores.Visits.SaveObservationAsync(
            records.Ana, visit.Id, Grade with { Text = "said something private" }, "said something private", null)).Require();
        var line = (await records.Stores.Audit.ListByPatientAsync(records.Ana, patient.Id))[0];
        Assert.Equal("observation", line.SubjectType);
        Assert.Contains("\"grade\":{\"after\":\"4", line.Changes, StringComparison.Ordinal);
        Assert.DoesNotContain("private", line.Changes, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_signed_visit_takes_no_observation_and_gives_none_up()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var row = (await visits.SaveObservationAsync(records.Ana, visit.Id, Grade, "4+/5", null)).Require();
        (await visits.SignAsync(records.Ana, visit.Id, visit.RowVersion)).Require();
        Samples.Refused(await visits.SaveObservationAsync(records.Ana, visit.Id, Grade, "5/5", row.RowVersion));
        Samples.Refused(await visits.RemoveObservationAsync(records.Ana, visit.Id, row.Id, row.RowVersion));
        Assert.ThrowsAny<Exception>(() => records.Raw("DELETE FROM Observations"));
        Assert.Single((await visits.GetAsync(records.Ana, visit.Id))!.Observations);
    }

    [Fact]
    public async Task An_observation_can_be_taken_back_while_the_visit_is_open()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var row = (await visits.SaveObservationAsync(records.Ana, visit.Id, Grade, "4+/5", null)).Require();
        Samples.Conflict(await visits.RemoveObservationAsync(records.Ben, visit.Id, row.Id, Guid.NewGuid()), out _);
        (await visits.RemoveObservationAsync(records.Ben, visit.Id, row.Id, row.RowVersion)).Require();
        Assert.Empty((await visits.GetAsync(records.Ana, visit.Id))!.Observations);
    }
}
