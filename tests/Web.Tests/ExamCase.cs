using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MomentArm.Body;
using MomentArm.Records;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.Exam;

namespace MomentArm.Web;

/// <summary>A clinic with two clinicians and one invented patient with today's open visit, for tests of the visit's pages.</summary>
internal sealed class ExamCase : IAsyncDisposable
{
    private ExamCase(ClinicApp app) => App = app;

    public ClinicApp App { get; }

    public CaseDesk Desk => App.Services.GetRequiredService<CaseDesk>();

    public Acting Ada { get; private set; } = null!;

    public Acting Ben { get; private set; } = null!;

    /// <summary>Someone of another clinic.</summary>
    public Acting Stranger { get; private set; } = null!;

    public Patient Patient { get; private set; } = null!;

    public Episode Episode { get; private set; } = null!;

    public Visit Visit { get; private set; } = null!;

    public static async Task<ExamCase> CreateAsync()
    {
        var made = new ExamCase(new ClinicApp());
        await made.App.SetUpAsync();
        await using var scope = made.App.Services.CreateAsyncScope();
        var setup = scope.ServiceProvider.GetRequiredService<ClinicSetup>();
        var db = scope.ServiceProvider.GetRequiredService<IDbContextFactory<RecordsContext>>();
        await using (var context = await db.CreateDbContextAsync())
            made.Ada = Acting.As(await context.Users.AsNoTracking().SingleAsync());
        var second = await setup.AddClinicianAsync(
            made.Ada, new ClinicianDetails("Ben Second", "ben@clinic.example", ClinicApp.Password), ClinicianRole.Therapist);
        made.Ben = Acting.As(second.Clinician!);
        made.Stranger = await AddStrangerAsync(db);
        (made.Patient, made.Episode, made.Visit) = await made.AddVisitAsync(made.Ada);
        return made;
    }

    /// <summary>A patient with one open episode and today's visit.</summary>
    public async Task<(Patient Patient, Episode Episode, Visit Visit)> AddVisitAsync(Acting who)
    {
        var stores = Desk.Stores;
        var today = Desk.Today(await stores.Patients.ClinicAsync(who));
        var patient = (await stores.Patients.AddAsync(who, new PatientDetails("Pat Invented", BirthYear: 1985, Sex: Sex.Female, StatureM: 1.7, MassKg: 66))).Require();
        var episode = (await stores.Episodes.AddAsync(who, patient.Id, new EpisodeDetails("left hip, outer side", today, AffectedSide: Side.Left))).Require();
        return (patient, episode, (await stores.Visits.OpenAsync(who, episode.Id, today)).Require());
    }

    public async Task<ExamSheet> SheetAsync(Acting? who = null) =>
        (await ExamSheet.LoadAsync(Desk, who ?? Ada, Patient.Id, Visit.Id))!;

    public async Task<VisitRecord> RecordAsync() => (await Desk.Stores.Visits.GetAsync(Ada, Visit.Id))!;

    public async Task SignAsync() =>
        (await Desk.Stores.Visits.SignAsync(Ada, Visit.Id, (await RecordAsync()).Visit.RowVersion)).Require();

    public ValueTask DisposeAsync() => App.DisposeAsync();

    private static async Task<Acting> AddStrangerAsync(IDbContextFactory<RecordsContext> contexts)
    {
        var (clinicId, id) = (Guid.CreateVersion7(), Guid.CreateVersion7());
        var person = new Clinician
        {
            Id = id, ClinicId = clinicId, DisplayName = "Cleo Elsewhere", UserName = "cleo@elsewhere.example",
            NormalizedUserName = "CLEO@ELSEWHERE.EXAMPLE", Role = ClinicianRole.Owner,
        };
        var who = Acting.As(person);
        await using var db = (await contexts.CreateDbContextAsync()).ActAs(who);
        await using var transaction = await db.Database.BeginTransactionAsync();
        db.Clinics.Add(new Records.Clinic { Id = clinicId, Name = "Elsewhere (invented)", TimeZone = "America/Chicago" });
        db.Users.Add(person);
        await db.SaveChangesAsync();
        await transaction.CommitAsync();
        return who;
    }
}
