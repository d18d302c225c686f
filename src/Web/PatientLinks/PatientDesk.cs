using MomentArm.FollowUp;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.PatientLinks;

/// <summary>What a link's token lets the patient do: see the program, report a session, answer the morning question.</summary>
internal sealed class PatientDesk(CaseDesk desk, OpenedItems items)
{
    private RecordsStores Stores => desk.Stores;

    /// <summary>The link a token opens, noted in the trail; null for any reason not to.</summary>
    internal Task<LinkAccess?> OpenAsync(string token, CancellationToken cancellationToken) =>
        Stores.Links.OpenAsync(token, cancellationToken);

    /// <summary>As <see cref="OpenAsync"/> for reports, which leave their own mark in the trail.</summary>
    internal Task<LinkAccess?> FindAsync(string token, CancellationToken cancellationToken) =>
        Stores.Links.FindAsync(token, cancellationToken);

    /// <summary>Today where the clinic is.</summary>
    internal async Task<DateOnly> TodayAsync(LinkAccess access, CancellationToken cancellationToken) =>
        desk.Today(await Stores.Patients.ClinicAsync(access.Acting, cancellationToken));

    /// <summary>The program the patient has; null when none was handed over.</summary>
    internal async Task<OpenedProgram?> ProgramAsync(LinkAccess access, CancellationToken cancellationToken)
    {
        if (await Stores.Programs.CurrentAsync(access.Acting, access.EpisodeId, cancellationToken) is not { } version)
            return null;
        var program = version.ToProgram();
        var clinic = await Stores.Patients.ClinicAsync(access.Acting, cancellationToken);
        var today = desk.Today(clinic);
        var days = (await Stores.Logs.SessionsAsync(access.Acting, access.EpisodeId, cancellationToken))
            .Select(row => row.Day).ToHashSet();
        var asked = (await Stores.Logs.MorningsAsync(access.Acting, access.EpisodeId, cancellationToken)).Any(row => row.Day == today);
        var monday = today.AddDays(-(((int)today.DayOfWeek + 6) % 7));
        var library = await desk.LibraryAsync(access.Acting, cancellationToken);
        var seconds = SessionTime.Seconds(program.Items, library.Exercise);
        return new OpenedProgram(
            version.Number,
            new OpenedClinic(clinic.Name, clinic.Phone ?? ""),
            "en",
            today,
            program.DaysPerWeek,
            days.Count(day => day >= monday && day <= today),
            (int)Math.Max(1, Math.Round(seconds / 60)),
            program.PainCeiling,
            days.Contains(today.AddDays(-1)) && !asked ? new OpenedMorning(today) : null,
            string.IsNullOrWhiteSpace(program.Note) ? null : program.Note,
            items.Of(program, library),
            items.CardsOf(program),
            items.StopSigns(program),
            desk.Content.PatientWords.About);
    }

    /// <summary>Takes in a session. It belongs to the newest version the patient was given that has all its exercises.</summary>
    internal async Task<LogOutcome> TakeSessionAsync(LinkAccess access, SessionLog log, CancellationToken cancellationToken)
    {
        var versions = await Stores.Programs.HistoryAsync(access.Acting, access.EpisodeId, cancellationToken);
        var version = versions.Where(v => v.HandedOverAtUtc is not null).FirstOrDefault(v =>
        {
            var has = v.ToProgram().Items.Select(i => i.ExerciseId).ToHashSet();
            return log.Exercises.All(e => has.Contains(e.ExerciseId));
        });
        return await Stores.Logs.AddSessionAsync(access.Acting, access.EpisodeId, version?.Id, log, cancellationToken);
    }

    /// <summary>Takes in a next-morning answer.</summary>
    internal Task<LogOutcome> TakeMorningAsync(LinkAccess access, MorningLog log, CancellationToken cancellationToken) =>
        Stores.Logs.AddMorningAsync(access.Acting, access.EpisodeId, log, cancellationToken);
}
