using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MomentArm.Records.Tests;

public sealed class DatabaseTests
{
    [Fact]
    public async Task A_second_server_on_the_same_file_refuses_to_start_until_the_first_stops()
    {
        using var folder = new TempFolder();
        var path = folder.File("records.db");
        var first = await PrepareAsync(path);
        var fault = await Assert.ThrowsAsync<DatabaseNotUsableException>(() => PrepareAsync(path));
        Assert.Contains("Another server", fault.Message, StringComparison.Ordinal);
        first.Dispose();
        using var second = await PrepareAsync(path);
    }

    [Fact]
    public async Task A_folder_that_can_not_be_written_gives_a_sentence_that_names_it()
    {
        using var folder = new TempFolder();
        var blocked = folder.File("not-a-folder");
        await File.WriteAllTextAsync(blocked, "a file stands where the folder should be");
        var fault = await Assert.ThrowsAsync<DatabaseNotUsableException>(() => PrepareAsync(Path.Combine(blocked, "records.db")));
        Assert.Contains(blocked, fault.Message, StringComparison.Ordinal);
        Assert.Contains("can't be written", fault.Message, StringComparison.Ordinal);
        // Not even an administrator can make a file in the system's process folder.
        fault = await Assert.ThrowsAsync<DatabaseNotUsableException>(() => PrepareAsync("/proc/1/records.db"));
        Assert.Contains("can't be written", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_database_of_a_newer_version_is_refused_and_left_alone()
    {
        using var folder = new TempFolder();
        var path = folder.File("records.db");
        (await PrepareAsync(path)).Dispose();
        TestRecords.Raw(path, "INSERT INTO __EFMigrationsHistory VALUES ('29991231000000_FromTheFuture', '99.0.0')");
        var before = SqliteFile.CountRows(path);
        var fault = await Assert.ThrowsAsync<DatabaseNotUsableException>(() => PrepareAsync(path));
        Assert.Contains("newer version", fault.Message, StringComparison.Ordinal);
        Assert.Equal(before, SqliteFile.CountRows(path));
    }

    [Fact]
    public async Task A_migration_that_fails_puts_the_old_database_back_and_keeps_the_backup()
    {
        using var folder = new TempFolder();
        var path = folder.File("records.db");
        // A table of the same name stands in the way of the first migration.
        TestRecords.Raw(path, "CREATE TABLE Visits (Id TEXT); INSERT INTO Visits VALUES ('kept')");
        var fault = await Assert.ThrowsAsync<DatabaseNotUsableException>(() => PrepareAsync(path));
        Assert.Contains("put back as it was", fault.Message, StringComparison.Ordinal);
        Assert.Equal(new Dictionary<string, long> { ["Visits"] = 1 }, SqliteFile.CountRows(path));
        var backup = Assert.Single(Directory.GetFiles(folder.Root, "records.db.before-*"));
        Assert.Contains(backup, fault.Message, StringComparison.Ordinal);
        Assert.Equal(1, SqliteFile.CountRows(backup)["Visits"]);
        // The lock has been let go, so that a mended start is possible.
        ServerLock.Take(path).Dispose();
    }

    [Fact]
    public async Task A_damaged_database_is_refused_with_the_way_out()
    {
        using var folder = new TempFolder();
        var path = folder.File("records.db");
        (await PrepareAsync(path)).Dispose();
        SqliteConnection.ClearAllPools();
        var bytes = await File.ReadAllBytesAsync(path);
        Array.Fill(bytes, (byte)0xA5, 4096, bytes.Length / 2);
        await File.WriteAllBytesAsync(path, bytes);
        var fault = await Assert.ThrowsAsync<DatabaseNotUsableException>(() => PrepareAsync(path));
        Assert.Contains("damaged", fault.Message, StringComparison.Ordinal);
        Assert.Contains("Restore", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_migration_lock_left_by_a_killed_server_does_not_stop_the_next_start()
    {
        using var folder = new TempFolder();
        var path = folder.File("records.db");
        // What a server killed in its first migration leaves: the tool's own lock row, and nothing else.
        TestRecords.Raw(path,
            "CREATE TABLE __EFMigrationsLock (Id INTEGER PRIMARY KEY, Timestamp TEXT NOT NULL); "
            + "INSERT INTO __EFMigrationsLock VALUES (1, '2026-01-01 00:00:00+00:00')");
        using var held = await PrepareAsync(path).WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Contains("Patients", SqliteFile.CountRows(path).Keys);
    }

    [Fact]
    public async Task A_second_start_needs_no_migration_and_makes_no_backup()
    {
        using var folder = new TempFolder();
        var path = folder.File("records.db");
        (await PrepareAsync(path)).Dispose();
        (await PrepareAsync(path)).Dispose();
        Assert.Empty(Directory.GetFiles(folder.Root, "*.before-*"));
    }

    [Fact]
    public async Task A_ready_database_says_so_and_one_that_is_gone_does_not()
    {
        await using var records = await TestRecords.CreateAsync();
        Assert.True(await records.Services.GetRequiredService<Database>().IsReadyAsync());
        records.Raw("ALTER TABLE Clinics RENAME TO Elsewhere");
        Assert.False(await records.Services.GetRequiredService<Database>().IsReadyAsync());
    }

    private static async Task<ServerLock> PrepareAsync(string path)
    {
        var services = new ServiceCollection();
        services.AddLogging();
        services.AddRecords(path);
        await using var provider = services.BuildServiceProvider();
        return await provider.GetRequiredService<Database>().PrepareAsync();
    }
}
