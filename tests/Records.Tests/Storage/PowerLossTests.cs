using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MomentArm.Records.Tests;

/// <summary>
/// What a power cut can leave of the write-ahead log is a beginning of it, perhaps with garbage at the end. Whatever the
/// place of the cut, what can be read is a run of whole saves from the first on: each with its audit line.
/// </summary>
public sealed class PowerLossTests
{
    private const int Saves = 40;
    private const int Cuts = 120;

    [Fact]
    public async Task A_log_cut_anywhere_leaves_whole_saves_from_the_first_on()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, visit) = await records.AddVisitAsync(records.Ana);
        // Whoever closes the last connection empties the log; other tests close all that rest.
        await using var held = records.Open(records.Ana);
        await held.Database.OpenConnectionAsync();
        for (var save = 0; save < Saves; save++)
        {
            (await records.Stores.Visits.SaveMeasurementAsync(
                records.Ana, visit.Id, Samples.Strength(save) with { Activity = $"{save:D3}" }, null)).Require();
        }
        using var folder = new TempFolder();
        var (database, log) = (folder.File("whole.db"), folder.File("whole.db-wal"));
        File.Copy(records.Path, database);
        File.Copy(records.Path + "-wal", log);
        var logBytes = await File.ReadAllBytesAsync(log);
        var databaseBytes = await File.ReadAllBytesAsync(database);
        Assert.True(logBytes.Length > Saves * 4096, "the saves are no longer in the log");

        // Seeded, so that a failure comes back.
        var chance = new Random(20260302);
        var seen = new HashSet<int>();
        for (var cut = 0; cut < Cuts; cut++)
        {
            var left = logBytes[..chance.Next(logBytes.Length + 1)];
            if (cut % 2 == 1 && left.Length > 0)
                left[^(1 + chance.Next(Math.Min(64, left.Length)))] ^= 0x5A;
            var path = folder.File($"cut-{cut}.db");
            await File.WriteAllBytesAsync(path, databaseBytes);
            await File.WriteAllBytesAsync(path + "-wal", left);
            seen.Add(await CheckAsync(path, records.Ana, episode.Id));
        }
        Assert.True(seen.Count > 10, $"only {seen.Count} different states were seen");
    }

    private static async Task<int> CheckAsync(string path, Acting who, Guid episodeId)
    {
        if (SqliteFile.CountRows(path).Count == 0)
            return -1;
        Assert.Null(SqliteFile.Fault(path));
        // Cut within the migrations: the last of them made this table.
        if (!SqliteFile.CountRows(path).ContainsKey("Goals"))
            return -1;
        var services = new ServiceCollection();
        services.AddLogging();
        services.AddRecords(path);
        await using var provider = services.BuildServiceProvider();
        var stores = provider.GetRequiredService<RecordsStores>();
        var measured = await stores.Visits.MeasurementsOfEpisodeAsync(who, episodeId);
        Assert.Equal(Enumerable.Range(0, measured.Count).Select(n => $"{n:D3}"), measured.Select(m => m.Row.Activity).Order());
        var trail = await stores.Audit.ListByClinicAsync(who, 1000);
        Assert.Equal(measured.Count, trail.Count(line => line.SubjectType == "measurement"));
        var check = await stores.Audit.VerifyAsync(who);
        Assert.True(check.IsWhole, check.Sentence);
        return measured.Count + (trail.Count > 0 ? 1000 : 0);
    }
}
