using Microsoft.Extensions.DependencyInjection;
using MomentArm.Records;

namespace MomentArm.Cli.Tests;

public sealed class BackupCommandsTests
{
    private const string Name = "Pat Example (invented)";

    [Fact]
    public async Task A_backup_restores_what_was_there_and_keeps_what_it_replaces()
    {
        using var folder = new TempFolder();
        var (database, archive) = (folder.File("clinic.db"), folder.File("backup.zip"));
        var who = await MakeAsync(database);

        var backup = await Momentarm.RunAsync("backup", database, archive);
        Assert.Equal((0, ""), (backup.Code, backup.Error));
        Assert.Contains(archive, backup.Out, StringComparison.Ordinal);

        await UseAsync(database, async stores => Assert.IsType<SaveOutcome<Patient>.Saved>(
            await stores.Patients.AddAsync(who, new PatientDetails("Later Example (invented)"), TestContext.Current.CancellationToken)));
        Assert.Equal(2, (await NamesAsync(database, who)).Count);

        var restore = await Momentarm.RunAsync("restore", archive, database, "--json");
        Assert.Equal((0, ""), (restore.Code, restore.Error));
        Assert.Equal([Name], await NamesAsync(database, who));
        var kept = restore.Json.GetProperty("keptAs").GetString()!;
        Assert.Equal(2, (await NamesAsync(kept, who)).Count);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.6)]
    public async Task A_damaged_archive_is_refused_and_the_database_stays(double place)
    {
        using var folder = new TempFolder();
        var (database, archive) = (folder.File("clinic.db"), folder.File("backup.zip"));
        var who = await MakeAsync(database);
        Assert.Equal(0, (await Momentarm.RunAsync("backup", database, archive)).Code);
        var bytes = await File.ReadAllBytesAsync(archive, TestContext.Current.CancellationToken);
        for (var i = 0; i < 64; i++)
            bytes[(int)(bytes.Length * place) + i] ^= 0x5a;
        await File.WriteAllBytesAsync(archive, bytes, TestContext.Current.CancellationToken);

        var ran = await Momentarm.RunAsync("restore", archive, database);
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        Assert.NotEmpty(ran.Error);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        Assert.Equal([Name], await NamesAsync(database, who));
    }

    [Fact]
    public async Task A_text_file_is_no_backup()
    {
        using var folder = new TempFolder();
        var ran = await Momentarm.RunAsync("restore", folder.Write("notes.zip", "notes"), folder.File("clinic.db"));
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        Assert.NotEmpty(ran.Error);
        Assert.False(File.Exists(folder.File("clinic.db")));
    }

    private static async Task<Acting> MakeAsync(string database)
    {
        Acting? who = null;
        await WithServicesAsync(database, async services =>
        {
            await using var scope = services.CreateAsyncScope();
            var made = await scope.ServiceProvider.GetRequiredService<ClinicSetup>().CreateFirstAsync(
                new ClinicDetails("Clinic (invented)", "America/Chicago"),
                new ClinicianDetails("Ana (invented)", "ana@example.test", "long enough, and invented"),
                TestContext.Current.CancellationToken);
            Assert.Empty(made.Faults);
            who = Acting.As(made.Clinician!);
            (await services.GetRequiredService<RecordsStores>().Patients.AddAsync(
                who, new PatientDetails(Name), TestContext.Current.CancellationToken)).Require();
        });
        return who!;
    }

    private static async Task<IReadOnlyList<string>> NamesAsync(string database, Acting who)
    {
        IReadOnlyList<string> names = [];
        await UseAsync(database, async stores =>
            names = [.. (await stores.Patients.ListAsync(who, null, TestContext.Current.CancellationToken)).Select(p => p.DisplayName)]);
        return names;
    }

    private static Task UseAsync(string database, Func<RecordsStores, Task> use) =>
        WithServicesAsync(database, services => use(services.GetRequiredService<RecordsStores>()));

    /// <summary>Opens the database as the server does, and lets go of it again.</summary>
    private static async Task WithServicesAsync(string database, Func<ServiceProvider, Task> use)
    {
        var collection = new ServiceCollection();
        collection.AddLogging();
        collection.AddRecords(database);
        await using var services = collection.BuildServiceProvider();
        using (await services.GetRequiredService<Database>().PrepareAsync(TestContext.Current.CancellationToken))
        {
            await use(services);
        }

        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
    }
}
