namespace MomentArm.Records.Tests;

public sealed class LogStoreTests
{
    private static readonly DateOnly Day = new(2026, 3, 3);

    [Fact]
    public async Task Fifty_identical_sends_at_once_are_one_session()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, episode, _) = await records.AddVisitAsync(records.Ana);
        var patientActs = new LinkAccess(records.Ana.ClinicId, episode.Id, Guid.CreateVersion7()).Acting;
        var log = Samples.Session(Guid.CreateVersion7(), Day);
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 50).Select(_ => Task.Run(() =>
            records.Stores.Logs.AddSessionAsync(patientActs, episode.Id, null, log with { Exercises = [.. log.Exercises] }))));
        Assert.Single(outcomes, LogOutcome.Saved);
        Assert.Equal(49, outcomes.Count(o => o == LogOutcome.AlreadySaved));
        var stored = Assert.Single(await records.Stores.Logs.SessionsAsync(records.Ana, episode.Id)).ToLog();
        Assert.Equal(log.Exercises, stored.Exercises);
        Assert.Equal(log, stored with { Exercises = log.Exercises });
        Assert.Single(
            await records.Stores.Audit.ListByPatientAsync(records.Ana, patient.Id), e => e.SubjectType == "session log");
    }

    [Fact]
    public async Task The_same_id_with_other_content_or_for_another_episode_is_conflicting_and_changes_nothing()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var (_, other, _) = await records.AddVisitAsync(records.Ana, "Quinn (invented)");
        var logs = records.Stores.Logs;
        var log = Samples.Session(Guid.CreateVersion7(), Day);
        Assert.Equal(LogOutcome.Saved, await logs.AddSessionAsync(records.Ana, episode.Id, null, log));
        Assert.Equal(LogOutcome.Conflicting, await logs.AddSessionAsync(records.Ana, episode.Id, null, log with { PainAfter = 9 }));
        Assert.Equal(LogOutcome.Conflicting, await logs.AddSessionAsync(records.Ana, other.Id, null, log));
        Assert.Equal(1, Assert.Single(await logs.SessionsAsync(records.Ana, episode.Id)).ToLog().PainAfter);
        Assert.Empty(await logs.SessionsAsync(records.Ana, other.Id));
    }

    [Fact]
    public async Task A_morning_answer_is_taken_once_and_comes_back_whole()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var log = Samples.Morning(Guid.CreateVersion7(), Day);
        var logs = records.Stores.Logs;
        Assert.Equal(LogOutcome.Saved, await logs.AddMorningAsync(records.Ana, episode.Id, log));
        Assert.Equal(LogOutcome.AlreadySaved, await logs.AddMorningAsync(records.Ana, episode.Id, log));
        Assert.Equal(LogOutcome.Conflicting, await logs.AddMorningAsync(records.Ana, episode.Id, log with { Pain = 8 }));
        Assert.Equal(log, Assert.Single(await logs.MorningsAsync(records.Ana, episode.Id)).ToLog());
    }

    [Fact]
    public async Task Numbers_out_of_range_and_programs_of_another_episode_are_refused()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var (_, other, _) = await records.AddVisitAsync(records.Ana, "Quinn (invented)");
        var program = (await records.Stores.Programs.SaveAsync(records.Ana, other.Id, Samples.Program(), null, null)).Require();
        var logs = records.Stores.Logs;
        var log = Samples.Session(Guid.CreateVersion7(), Day);
        Assert.Equal(LogOutcome.Refused, await logs.AddSessionAsync(records.Ana, episode.Id, null, log with { Effort = 11 }));
        Assert.Equal(LogOutcome.Refused, await logs.AddSessionAsync(records.Ana, episode.Id, null, log with { Exercises = default }));
        Assert.Equal(LogOutcome.Refused, await logs.AddSessionAsync(records.Ana, episode.Id, program.Id, log));
        Assert.Equal(
            LogOutcome.Refused, await logs.AddMorningAsync(records.Ana, episode.Id, Samples.Morning(Guid.Empty, Day)));
        Assert.Empty(await logs.SessionsAsync(records.Ana, episode.Id));
    }
}
