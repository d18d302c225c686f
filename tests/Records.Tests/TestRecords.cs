using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace MomentArm.Records.Tests;

/// <summary>A real database in a folder of its own, with two invented clinics in it.</summary>
internal sealed class TestRecords : IAsyncDisposable
{
    private readonly TempFolder folder;
    private readonly ServiceProvider services;
    private readonly ServerLock held;

    // Stays open, so that the log is not folded into the database when a pool is emptied by a test beside this one.
    private readonly SqliteConnection keeper;

    private TestRecords(ServiceProvider services, ServerLock held, string path, TestClock clock, TempFolder folder)
    {
        this.services = services;
        this.held = held;
        this.folder = folder;
        Path = path;
        Clock = clock;
        keeper = SqliteFile.Open(path, SqliteOpenMode.ReadWrite);
        SqliteFile.Run(keeper, "SELECT count(*) FROM sqlite_master");
    }

    public string Path { get; }

    public TestClock Clock { get; }

    public IServiceProvider Services => services;

    public IDbContextFactory<RecordsContext> Contexts => services.GetRequiredService<IDbContextFactory<RecordsContext>>();

    public RecordsStores Stores => services.GetRequiredService<RecordsStores>();

    /// <summary>Clinic A, first therapist.</summary>
    public Acting Ana { get; private set; } = null!;

    /// <summary>Clinic A, second therapist.</summary>
    public Acting Ben { get; private set; } = null!;

    /// <summary>The therapist of clinic B.</summary>
    public Acting Cleo { get; private set; } = null!;

    public static async Task<TestRecords> CreateAsync()
    {
        var folder = new TempFolder();
        var clock = new TestClock();
        var path = folder.File("records.db");
        var collection = new ServiceCollection();
        collection.AddLogging();
        collection.AddSingleton<TimeProvider>(clock);
        collection.AddRecords(path);
        var services = collection.BuildServiceProvider();
        var held = await services.GetRequiredService<Database>().PrepareAsync();
        var records = new TestRecords(services, held, path, clock, folder);
        (records.Ana, records.Ben) = await records.AddClinicAsync("Clinic A (invented)", "Ana (invented)", "Ben (invented)");
        (records.Cleo, _) = await records.AddClinicAsync("Clinic B (invented)", "Cleo (invented)", "Dev (invented)");
        return records;
    }

    public RecordsContext Open(Acting who) => Contexts.CreateDbContext().ActAs(who, Clock);

    /// <summary>A patient with one open episode and today's visit.</summary>
    public async Task<(Patient Patient, Episode Episode, Visit Visit)> AddVisitAsync(Acting who, string name = "Pat (invented)")
    {
        var patient = (await Stores.Patients.AddAsync(who, new PatientDetails(name))).Require();
        var episode = (await Stores.Episodes.AddAsync(
            who, patient.Id, new EpisodeDetails("left hip, outer side", new DateOnly(2026, 3, 2)))).Require();
        var visit = (await Stores.Visits.OpenAsync(who, episode.Id, new DateOnly(2026, 3, 2))).Require();
        return (patient, episode, visit);
    }

    /// <summary>Runs a statement by hand, past all of the program's own rules.</summary>
    public int Raw(string statement) => Raw(Path, statement);

    public static int Raw(string path, string statement)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=True");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = statement;
        return command.ExecuteNonQuery();
    }

    public string? RawValue(string statement)
    {
        using var connection = new SqliteConnection($"Data Source={Path};Pooling=False");
        connection.Open();
        return SqliteFile.Run(connection, statement);
    }

    public async ValueTask DisposeAsync()
    {
        await services.DisposeAsync();
        await keeper.DisposeAsync();
        held.Dispose();
        folder.Dispose();
    }

    private async Task<(Acting First, Acting Second)> AddClinicAsync(string name, string first, string second)
    {
        var clinicId = Guid.CreateVersion7();
        Clinician[] people = [Person(clinicId, first), Person(clinicId, second)];
        await using var db = Open(Acting.As(people[0]));
        await using var transaction = await db.Database.BeginTransactionAsync();
        db.Clinics.Add(new Clinic { Id = clinicId, Name = name, TimeZone = "America/Chicago" });
        db.Users.AddRange(people);
        await db.SaveChangesAsync();
        await transaction.CommitAsync();
        return (Acting.As(people[0]), Acting.As(people[1]));
    }

    private static Clinician Person(Guid clinicId, string name)
    {
        var id = Guid.CreateVersion7();
        return new Clinician
        {
            Id = id,
            ClinicId = clinicId,
            DisplayName = name,
            UserName = $"{id:N}@example.test",
            NormalizedUserName = $"{id:N}@EXAMPLE.TEST",
            Role = ClinicianRole.Therapist,
        };
    }
}
