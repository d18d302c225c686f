using System.IO.Compression;
using System.Text.Json.Nodes;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace MomentArm.Records.Tests;

public sealed class BackupArchiveTests
{
    private const int Trials = 150;

    private static readonly TestClock Clock = new();

    [Fact]
    public async Task A_backup_of_a_database_in_use_restores_to_the_same_rows_and_a_whole_trail()
    {
        using var folder = new TempFolder();
        var archive = folder.File("backup.zip");
        var restored = folder.File("restored/records.db");
        await using var records = await TestRecords.CreateAsync();
        var (patient, episode, visit) = await records.AddVisitAsync(records.Ana, "Özge (invented)");
        (await records.Stores.Visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(100), null)).Require();
        (await records.Stores.Programs.SaveAsync(records.Ana, episode.Id, Samples.Program(), null, null)).Require();
        await using var reader = records.Open(records.Ana);
        await using var open = await reader.Database.BeginTransactionAsync();
        await open.DisposeAsync();

        var manifest = await BackupArchive.WriteAsync(records.Path, archive, Clock);
        var report = await BackupArchive.RestoreAsync(archive, restored, Clock);

        Assert.Null(report.KeptAs);
        Assert.Equal(manifest.Rows, report.Manifest.Rows);
        Assert.Equal(Clock.Now.UtcDateTime, report.Manifest.CreatedAtUtc);
        Assert.Equal(Dump(records.Path), Dump(restored));
        await using var copied = new ServiceCollection().AddLogging().AddRecords(restored).Services.BuildServiceProvider();
        var copy = copied.GetRequiredService<RecordsStores>();
        Assert.Equal("Özge (invented)", (await copy.Patients.GetAsync(records.Ana, patient.Id))!.DisplayName);
        Assert.True((await copy.Audit.VerifyAsync(records.Ana)).IsWhole);
    }

    [Fact]
    public async Task Restoring_over_a_database_keeps_the_old_one_whole_beside_it()
    {
        using var folder = new TempFolder();
        var archive = folder.File("backup.zip");
        var path = folder.File("records.db");
        await using (var records = await TestRecords.CreateAsync())
        {
            await BackupArchive.WriteAsync(records.Path, archive, Clock);
            await records.AddVisitAsync(records.Ana);
            // As after a crash: the latest commits are still in the log only.
            File.Copy(records.Path, path);
            File.Copy(records.Path + "-wal", path + "-wal");
        }
        var report = await BackupArchive.RestoreAsync(archive, path, Clock);
        Assert.Equal($"{path}.before-restore-20260302T150000Z", report.KeptAs);
        Assert.Equal(1, SqliteFile.CountRows(report.KeptAs!)["Visits"]);
        Assert.Equal(0, SqliteFile.CountRows(path)["Visits"]);
        Assert.Equal(path + ".before-restore-20260302T150000Z-2", (await BackupArchive.RestoreAsync(archive, path, Clock)).KeptAs);
        Assert.Empty(Directory.GetFiles(folder.Root, "*.restoring*"));
    }

    [Fact]
    public async Task A_damaged_database_can_be_replaced_and_is_kept_as_it_was()
    {
        using var folder = new TempFolder();
        var (archive, path) = await BackedUpAsync(folder);
        await File.WriteAllTextAsync(path, "no database at all");
        var report = await BackupArchive.RestoreAsync(archive, path, Clock);
        Assert.Equal("no database at all", await File.ReadAllTextAsync(report.KeptAs!));
        Assert.Null(SqliteFile.Fault(path));
    }

    [Fact]
    public async Task A_restore_under_a_running_server_is_refused()
    {
        using var folder = new TempFolder();
        var (archive, path) = await BackedUpAsync(folder);
        using var server = ServerLock.Take(path);
        var fault = await Assert.ThrowsAsync<DatabaseNotUsableException>(() => BackupArchive.RestoreAsync(archive, path, Clock));
        Assert.Contains("Stop it first", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_newer_format_another_zip_no_zip_and_no_file_are_each_refused_in_words()
    {
        using var folder = new TempFolder();
        var (archive, path) = await BackedUpAsync(folder);
        var before = await File.ReadAllBytesAsync(path);

        await EditManifestAsync(archive, folder.File("newer.zip"), m => { m["formatVersion"] = 2; m["somethingNew"] = true; });
        await RefusedAsync(folder.File("newer.zip"), path, "newer version");
        await EditManifestAsync(archive, folder.File("rows.zip"), m => m["rows"]!["Visits"] = 7);
        await RefusedAsync(folder.File("rows.zip"), path, "rows in the backup differ");
        await EditManifestAsync(archive, folder.File("hash.zip"), m => m["databaseSha256"] = new string('0', 64));
        await RefusedAsync(folder.File("hash.zip"), path, "differs from its manifest");
        await EditManifestAsync(archive, folder.File("size.zip"), m => m["databaseBytes"] = 12);
        await RefusedAsync(folder.File("size.zip"), path, "is damaged");
        await EditManifestAsync(archive, folder.File("missing.zip"), m => m.Remove("rows"));
        await RefusedAsync(folder.File("missing.zip"), path, "is damaged");

        await using (var zip = await ZipFile.OpenAsync(folder.File("other.zip"), ZipArchiveMode.Create))
            zip.CreateEntry("photo.jpg");
        await RefusedAsync(folder.File("other.zip"), path, "is not a backup");
        await File.WriteAllTextAsync(folder.File("text.zip"), "hello");
        await RefusedAsync(folder.File("text.zip"), path, "is not a backup");
        await RefusedAsync(folder.File("none.zip"), path, "no file");
        Assert.Equal(before, await File.ReadAllBytesAsync(path));
    }

    [Fact]
    public async Task A_database_from_a_newer_program_inside_a_sound_archive_is_refused()
    {
        using var folder = new TempFolder();
        var (_, path) = await BackedUpAsync(folder);
        TestRecords.Raw(path, "INSERT INTO __EFMigrationsHistory VALUES ('29991231000000_FromTheFuture', '99.0.0')");
        var newer = folder.File("newer.zip");
        await BackupArchive.WriteAsync(path, newer, Clock);
        await RefusedAsync(newer, folder.File("target.db"), "newer version");
        Assert.False(File.Exists(folder.File("target.db")));
    }

    [Fact]
    public async Task An_archive_cut_or_altered_anywhere_is_refused_and_changes_nothing()
    {
        using var folder = new TempFolder();
        var (archive, path) = await BackedUpAsync(folder);
        var whole = await File.ReadAllBytesAsync(archive);
        var before = await File.ReadAllBytesAsync(path);
        var bad = folder.File("bad.zip");
        var refused = 0;
        // Seeded, so that a failure comes back.
        var chance = new Random(20260302);
        for (var trial = 0; trial < Trials; trial++)
        {
            var cut = trial % 3 == 0;
            var place = chance.Next(whole.Length);
            var bytes = cut ? whole[..place] : [.. whole];
            if (!cut)
                bytes[place] ^= (byte)chance.Next(1, 256);
            await File.WriteAllBytesAsync(bad, bytes);
            try
            {
                // A bit flipped in the zip's own bookkeeping (a time stamp) may leave both files whole.
                await BackupArchive.RestoreAsync(bad, folder.File("scratch.db"), Clock);
                Assert.False(cut);
                Assert.Null(SqliteFile.Fault(folder.File("scratch.db")));
            }
            catch (BackupNotUsableException)
            {
                refused++;
            }
        }
        Assert.True(refused > Trials * 9 / 10, $"only {refused} of {Trials} damaged archives were refused");
        Assert.Equal(before, await File.ReadAllBytesAsync(path));
    }

    [Fact]
    public async Task A_file_that_is_no_database_of_this_program_is_not_backed_up()
    {
        using var folder = new TempFolder();
        TestRecords.Raw(folder.File("other.db"), "CREATE TABLE t (x)");
        await Assert.ThrowsAsync<DatabaseNotUsableException>(
            () => BackupArchive.WriteAsync(folder.File("other.db"), folder.File("b.zip"), Clock));
        await Assert.ThrowsAsync<DatabaseNotUsableException>(
            () => BackupArchive.WriteAsync(folder.File("none.db"), folder.File("b.zip"), Clock));
        Assert.Equal([folder.File("other.db")], Directory.GetFiles(folder.Root));
    }

    private static async Task<(string Archive, string Path)> BackedUpAsync(TempFolder folder)
    {
        var path = folder.File("records.db");
        await using (var records = await TestRecords.CreateAsync())
        {
            await records.AddVisitAsync(records.Ana);
            SqliteFile.CopyOnline(records.Path, path);
        }
        await BackupArchive.WriteAsync(path, folder.File("backup.zip"), Clock);
        return (folder.File("backup.zip"), path);
    }

    private static async Task RefusedAsync(string archive, string path, string because)
    {
        var fault = await Assert.ThrowsAsync<BackupNotUsableException>(() => BackupArchive.RestoreAsync(archive, path, Clock));
        Assert.Contains(because, fault.Message, StringComparison.Ordinal);
    }

    private static async Task EditManifestAsync(string from, string to, Action<JsonObject> edit)
    {
        File.Copy(from, to);
        await using var zip = await ZipFile.OpenAsync(to, ZipArchiveMode.Update);
        var entry = zip.GetEntry("manifest.json")!;
        JsonObject manifest;
        await using (var stream = await entry.OpenAsync())
            manifest = (JsonObject)(await JsonNode.ParseAsync(stream))!;
        edit(manifest);
        entry.Delete();
        await using var writer = new StreamWriter(await zip.CreateEntry("manifest.json").OpenAsync());
        await writer.WriteAsync(manifest.ToJsonString());
    }

    /// <summary>Every value of every table, as text.</summary>
    private static string Dump(string path)
    {
        var lines = new List<string>();
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        foreach (var table in SqliteFile.CountRows(path).Keys)
        {
            using var command = connection.CreateCommand();
            command.CommandText = $"SELECT * FROM \"{table}\" ORDER BY 1, 2";
            using var reader = command.ExecuteReader();
            while (reader.Read())
            {
                lines.Add(table + ": " + string.Join('|', Enumerable.Range(0, reader.FieldCount).Select(n =>
                    reader.GetValue(n) is byte[] bytes ? Convert.ToHexString(bytes) : $"{reader.GetValue(n)}")));
            }
        }
        Assert.True(lines.Count > 10);
        return string.Join('\n', lines);
    }
}
