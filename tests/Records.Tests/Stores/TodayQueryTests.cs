namespace MomentArm.Records.Tests;

public sealed class TodayQueryTests
{
    [Fact]
    public async Task Open_episodes_come_with_last_visit_program_and_recent_pains()
    {
        await using var records = await TestRecords.CreateAsync();
        var stores = records.Stores;
        var (_, episode, _) = await records.AddVisitAsync(records.Ana, "Zoe (invented)");
        var (_, quiet, _) = await records.AddVisitAsync(records.Ana, "Abe (invented)");
        var (_, closed, _) = await records.AddVisitAsync(records.Ana, "Moe (invented)");
        (await stores.Episodes.CloseAsync(records.Ana, closed.Id, new DateOnly(2026, 3, 9), closed.RowVersion)).Require();
        var past = stores.At(new DateTime(2026, 3, 9, 9, 0, 0));
        var second = (await past.Visits.OpenAsync(records.Ana, episode.Id, new DateOnly(2026, 3, 9))).Require();
        var version = (await past.Programs.SaveAsync(records.Ana, episode.Id, Samples.Program(), null, null)).Require();
        (await past.Programs.HandOverAsync(records.Ana, version.Id, [])).Require();
        for (var day = 10; day <= 22; day++)
            Assert.Equal(LogOutcome.Saved, await stores.Logs.AddSessionAsync(
                records.Ana, episode.Id, version.Id, Samples.Session(Guid.CreateVersion7(), new DateOnly(2026, 3, day), day % 10)));
        await stores.Logs.AddMorningAsync(records.Ana, episode.Id, Samples.Morning(Guid.CreateVersion7(), new DateOnly(2026, 3, 11)));

        var rows = await stores.Today.ListAsync(records.Ana);

        Assert.Equal([quiet.Id, episode.Id], rows.Select(r => r.Episode.Id));
        Assert.Null(rows[0].LastLogDay);
        Assert.Null(rows[0].CurrentProgram);
        Assert.Equal(second.Id, rows[1].LastVisit!.Id);
        Assert.Equal(new DateOnly(2026, 3, 22), rows[1].LastLogDay);
        Assert.Equal([2, 1, 0, 9, 8, 7, 6, 5, 4, 3], rows[1].RecentPains);
        Assert.Single(rows[1].RecentMornings);
        Assert.Equal(version.Id, rows[1].CurrentProgram!.Id);
        Assert.Equal(new DateTime(2026, 3, 9, 9, 0, 0, DateTimeKind.Utc), rows[1].CurrentProgram!.HandedOverAtUtc);
        Assert.False(rows[1].HasDraftProgram);
    }
}
