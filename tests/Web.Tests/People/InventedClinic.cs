using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.FollowUp;
using MomentArm.Prescribing;
using MomentArm.Records;

namespace MomentArm.Web.People;

/// <summary>Five invented people at different points of their care, entered as if over the last weeks.</summary>
internal sealed class InventedClinic(RecordsStores stores, Acting who, DateOnly today)
{
    /// <summary>Red days at home: urgent.</summary>
    public Patient Mara { get; private set; } = null!;

    /// <summary>Nothing reported for ten days: quiet.</summary>
    public Patient Teo { get; private set; } = null!;

    /// <summary>A program waits to be handed over: due.</summary>
    public Patient Ines { get; private set; } = null!;

    /// <summary>All well.</summary>
    public Patient Jun { get; private set; } = null!;

    /// <summary>A name and nothing else.</summary>
    public Patient Oskar { get; private set; } = null!;

    public async Task FillAsync()
    {
        Mara = await PatientAsync("Mara Quillon (invented)", 1984, Sex.Female, 1.68, 64, "ferry deckhand");
        await MaraAsync();
        Teo = await PatientAsync("Teo Brandvik (invented)", 1971, Sex.Male, 1.81, 88, "tiler");
        var knee = await EpisodeAsync(Teo, "right knee, below the kneecap", Side.Right, 30, "Kneel at work for an hour");
        await VisitAsync(knee, 30, [Pain("pain-worst", 6)], sign: true);
        await ProgramAsync(knee, 29, 4, ["seated-knee-extension", "sit-to-stand"], Side.Right, null);
        for (var back = 27; back >= 11; back -= 3)
            await SessionAsync(knee, back, 2, 1, null);
        await VisitAsync(knee, 10, [Pain("pain-worst", 5)], sign: true);
        Ines = await PatientAsync("Inés Halloran (invented)", 1999, Sex.Female, 1.62, 57, "student");
        var shin = await EpisodeAsync(Ines, "left thigh, back", Side.Left, 1, "Run the 400 m in June");
        await VisitAsync(shin, 1, [Pain("pain-worst", 4)]);
        await DraftAsync(shin, 1, 5, ["bridge"], Side.Left, null);
        Jun = await PatientAsync("Jun Okabe-Lund (invented)", 1958, null, null, 71, null);
        var stairs = await EpisodeAsync(Jun, "both knees, stairs", null, 20, "Carry the shopping up two floors");
        await VisitAsync(stairs, 6, [Pain("pain-worst", 3)], sign: true);
        await ProgramAsync(stairs, 6, 7, ["sit-to-stand"], null, null);
        for (var back = 5; back >= 1; back--)
            await SessionAsync(stairs, back, 1, 1, null);
        Oskar = await PatientAsync("Oskar Lindhe (invented)", null, null, null, null, null);
    }

    private async Task MaraAsync()
    {
        var hip = await EpisodeAsync(Mara, "left hip, outer side", Side.Left, 37, "Climb the gangway forty times a day without holding on");
        await VisitAsync(
            hip, 36,
            [Pain("pain-worst", 7), Strength("hip-abduction-strength", Side.Left, 92, 4), Strength("hip-abduction-strength", Side.Right, 131, 0),
                Degrees("straight-leg-raise", Side.Left, 64), Degrees("straight-leg-raise", Side.Right, 71), Function("climb the gangway", 3), Function("sleep on the left side", 4)],
            sign: true);
        await ProgramAsync(hip, 36, 4, ["clam", "bridge"], Side.Left, null);
        for (var back = 35; back >= 16; back -= 2)
            await SessionAsync(hip, back, 3 - back % 3 % 2, back % 4, back == 25 ? "Easier than last week, the left side shakes at the end." : null);
        await VisitAsync(
            hip, 15,
            [Pain("pain-worst", 5), Strength("hip-abduction-strength", Side.Left, 109, 2), Strength("hip-abduction-strength", Side.Right, 133, 0),
                Function("climb the gangway", 5), Function("sleep on the left side", 7)],
            sign: true);
        await ProgramAsync(hip, 15, 5, ["side-lying-leg-raise", "bridge", "lateral-step-down"], Side.Left, "Clams were too easy; step up the side-lying work");
        for (var back = 14; back >= 6; back -= 2)
            await SessionAsync(hip, back, 3, 2, null);
        await SessionAsync(hip, 4, 4, 4, "A double shift on Sunday.");
        await SessionAsync(hip, 2, 6, 5, "Sharp on the stairs, had to stop the step-down.", ExerciseReport.Hurt);
        await VisitAsync(hip, 1, [Pain("pain-worst", 6), Strength("hip-abduction-strength", Side.Left, 121, 3), Function("climb the gangway", 6), Function("sleep on the left side", 7)]);
    }

    private RecordsStores On(int daysBack, int hour = 16) =>
        stores.At(today.AddDays(-daysBack).ToDateTime(new TimeOnly(hour, 5), DateTimeKind.Utc));

    private async Task<Patient> PatientAsync(string name, int? born, Sex? sex, double? stature, double? mass, string? occupation) =>
        (await On(38).Patients.AddAsync(who, new PatientDetails(name, BirthYear: born, Sex: sex, StatureM: stature, MassKg: mass, Occupation: occupation))).Require();

    private async Task<Episode> EpisodeAsync(Patient patient, string title, Side? side, int daysBack, string goal) =>
        (await On(daysBack).Episodes.AddAsync(who, patient.Id, new EpisodeDetails(
            title, today.AddDays(-daysBack), AffectedSide: side, Goal: goal, Irritability: Irritability.Moderate))).Require();

    private async Task VisitAsync(Episode episode, int daysBack, Measurement[] measured, bool sign = false)
    {
        var on = On(daysBack);
        var visit = (await on.Visits.OpenAsync(who, episode.Id, today.AddDays(-daysBack))).Require();
        foreach (var measurement in measured)
            (await on.Visits.SaveMeasurementAsync(who, visit.Id, measurement, null)).Require();
        if (sign)
            (await on.Visits.SignAsync(who, visit.Id, visit.RowVersion)).Require();
    }

    private async Task<ProgramVersion> DraftAsync(Episode episode, int daysBack, int perWeek, string[] exercises, Side? side, string? reason) =>
        (await On(daysBack).Programs.SaveAsync(
            who, episode.Id,
            new HomeProgram
            {
                Items = [.. exercises.Select(id => new ProgramItem
                {
                    ExerciseId = id, WorkingSide = side, Dose = new Dose { Sets = 3, Repetitions = 10, DaysPerWeek = perWeek },
                })],
                DaysPerWeek = perWeek,
                EngineVersion = "0.1.0",
                ContentVersion = "test",
            },
            reason, (await stores.Programs.LatestAsync(who, episode.Id))?.Id)).Require();

    private async Task ProgramAsync(Episode episode, int daysBack, int perWeek, string[] exercises, Side? side, string? reason)
    {
        var version = await DraftAsync(episode, daysBack, perWeek, exercises, side, reason);
        (await On(daysBack, 17).Programs.HandOverAsync(
            who, version.Id, [.. exercises.Select(id => new TeachBackInput(id, side, true, true))])).Require();
    }

    private async Task SessionAsync(
        Episode episode, int daysBack, int worst, int nextMorning, string? note, ExerciseReport last = ExerciseReport.Done)
    {
        var on = On(daysBack, 22);
        var version = (await stores.Programs.CurrentAsync(who, episode.Id))!;
        var items = version.ToProgram().Items;
        await on.Logs.AddSessionAsync(who, episode.Id, version.Id, new SessionLog
        {
            Id = Guid.NewGuid(),
            Day = today.AddDays(-daysBack),
            Exercises = [.. items.Select((item, i) => new ExerciseLog(
                item.ExerciseId, item.WorkingSide, i == items.Length - 1 && last != ExerciseReport.Done ? 1 : 3, 30,
                i == items.Length - 1 ? last : ExerciseReport.Done))],
            Effort = 6,
            PainDuring = worst,
            PainAfter = Math.Max(0, worst - 1),
            Note = note,
        });
        await On(daysBack - 1, 13).Logs.AddMorningAsync(
            who, episode.Id, new MorningLog(Guid.NewGuid(), today.AddDays(1 - daysBack), nextMorning, MorningChange.Same));
    }

    private static Measurement Pain(string measure, double points) => new() { MeasureId = measure, Trials = [points] };

    private static Measurement Degrees(string measure, Side side, double degrees) =>
        new() { MeasureId = measure, Side = side, Trials = [degrees * Math.PI / 180] };

    private static Measurement Strength(string measure, Side side, double newtons, int pain) => new()
    {
        MeasureId = measure, Side = side, Trials = [newtons, newtons - 3], LeverArmM = 0.36, PainDuring = pain,
        AsTyped = newtons.ToString(CultureInfo.InvariantCulture) + " N at 36 cm",
    };

    private static Measurement Function(string activity, double points) =>
        new() { MeasureId = "patient-specific-function", Activity = activity, Trials = [points] };
}
