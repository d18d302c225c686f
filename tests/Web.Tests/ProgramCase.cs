using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web;

/// <summary>An invented patient in a running app, with a weak left hip, ready for a program.</summary>
internal sealed class ProgramCase
{
    public required ClinicApp App { get; init; }

    public required Acting Who { get; init; }

    public required Patient Patient { get; init; }

    public required Episode Episode { get; init; }

    public RecordsStores Stores => App.Services.GetRequiredService<RecordsStores>();

    public CaseDesk Desk => App.Services.GetRequiredService<CaseDesk>();

    public ContentLibrary Content => App.Services.GetRequiredService<ContentLibrary>();

    /// <summary>Sets the app up and adds the patient.</summary>
    /// <param name="app">The app.</param>
    /// <param name="stopped">Whether the first danger sign is answered yes, with no decision.</param>
    public static async Task<ProgramCase> CreateAsync(ClinicApp app, bool stopped = false)
    {
        await app.SetUpAsync();
        return await AddAsync(app, await OwnerAsync(app), stopped);
    }

    /// <summary>Adds a patient to the acting person's clinic.</summary>
    public static async Task<ProgramCase> AddAsync(ClinicApp app, Acting who, bool stopped = false)
    {
        var stores = app.Services.GetRequiredService<RecordsStores>();
        var content = app.Services.GetRequiredService<ContentLibrary>();
        var today = app.Services.GetRequiredService<CaseDesk>().Today(await stores.Patients.ClinicAsync(who));
        var patient = (await stores.Patients.AddAsync(who, new PatientDetails(
            "Pat Invented", BirthYear: 1985, Sex: Sex.Female, StatureM: 1.68, MassKg: 66))).Require();
        var episode = (await stores.Episodes.AddAsync(
            who, patient.Id, new EpisodeDetails("left hip, outer side", today, AffectedSide: Side.Left, Irritability: Irritability.Moderate))).Require();
        var visit = (await stores.Visits.OpenAsync(who, episode.Id, today)).Require();
        (await stores.Visits.AnswerDangerSignsAsync(who, visit.Id,
        [
            .. content.Exam.DangerSigns.OrderByDescending(s => s.Urgency)
                .Select((sign, i) => new DangerAnswerInput(sign.Id, stopped && i == 0 ? DangerAnswer.Yes : DangerAnswer.No)),
        ])).Require();
        foreach (var (side, newtons) in new[] { (Side.Left, 98.0), (Side.Right, 149.0) })
        {
            (await stores.Visits.SaveMeasurementAsync(who, visit.Id, new Measurement
            {
                MeasureId = "hip-abduction-strength", Side = side, Trials = [newtons], LeverArmM = 0.41, AsTyped = "typed",
            }, null)).Require();
        }

        return new ProgramCase { App = app, Who = who, Patient = patient, Episode = episode };
    }

    /// <summary>The owner of the app's first clinic.</summary>
    public static async Task<Acting> OwnerAsync(ClinicApp app)
    {
        await using var scope = app.Services.CreateAsyncScope();
        var clinician = await scope.ServiceProvider.GetRequiredService<RecordsContext>().Users.FirstAsync(u => u.Email == ClinicApp.Email);
        return Acting.As(clinician);
    }

    /// <summary>Someone of another clinic on the same server.</summary>
    public static async Task<Acting> OtherClinicAsync(ClinicApp app)
    {
        var who = new Acting(Guid.CreateVersion7(), Guid.CreateVersion7(), "Someone Else");
        await using var scope = app.Services.CreateAsyncScope();
        var db = await scope.ServiceProvider.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        await using var open = db.ActAs(who, TimeProvider.System);
        await using var transaction = await open.Database.BeginTransactionAsync();
        open.Clinics.Add(new Records.Clinic { Id = who.ClinicId, Name = "Other clinic (invented)", TimeZone = "America/Chicago" });
        open.Users.Add(new Clinician
        {
            Id = who.ClinicianId!.Value, ClinicId = who.ClinicId, DisplayName = who.Name, UserName = "else@clinic.example",
            NormalizedUserName = "ELSE@CLINIC.EXAMPLE",
        });
        await open.SaveChangesAsync();
        await transaction.CommitAsync();
        return who;
    }

    /// <summary>Side-lying clam on the left, a strap stretch on both sides in turn, sit to stand.</summary>
    public HomeProgram Program(int days = 4) => new()
    {
        Items =
        [
            Item("clam", Side.Left, false), Item("hamstring-strap-stretch", Side.Left, true), Item("sit-to-stand", null, false),
        ],
        DaysPerWeek = days,
        EngineVersion = CaseDesk.EngineVersion,
        ContentVersion = Content.Version,
    };

    /// <summary>Saves a program and hands it over, past the pages; gives the version.</summary>
    public async Task<ProgramVersion> HandOverAsync(HomeProgram? program = null)
    {
        var before = await Stores.Programs.LatestAsync(Who, Episode.Id);
        var version = (await Stores.Programs.SaveAsync(Who, Episode.Id, program ?? Program(), "reason", before?.Id)).Require();
        return (await Stores.Programs.HandOverAsync(Who, version.Id, [])).Require();
    }

    /// <summary>A link that opens for a day; gives its token.</summary>
    public async Task<CreatedLink> LinkAsync(TimeSpan? lifetime = null) =>
        (await Stores.Links.CreateAsync(Who, Episode.Id, lifetime ?? TimeSpan.FromDays(1))).Require();

    private ProgramItem Item(string id, Side? side, bool both) => new()
    {
        ExerciseId = id, WorkingSide = side, BothSides = both, Dose = Content.Exercise(id)!.Dose,
    };
}
