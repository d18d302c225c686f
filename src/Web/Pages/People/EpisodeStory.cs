using System.Collections.Immutable;
using MomentArm.FollowUp;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.People;

/// <summary>One visit in the story: what was measured, in short, and what it led to.</summary>
public sealed record VisitStory(Visit Visit, ImmutableArray<string> Measured, ImmutableArray<string> Findings);

/// <summary>One version of the program in the story.</summary>
public sealed record ProgramStory(ProgramVersion Version, DateOnly Day, ImmutableArray<string> Exercises, int DaysPerWeek)
{
    /// <summary>Whether the patient has this version.</summary>
    public bool IsWithPatient => Version.State == ProgramState.HandedOver;

    /// <summary>Where the version is in its life, in words.</summary>
    public string State => Version.State switch
    {
        ProgramState.Draft => "Not handed over yet",
        ProgramState.HandedOver => "With the patient",
        ProgramState.Replaced => Version.HandedOverAtUtc is null ? "Never handed over" : "Replaced",
    };
}

/// <summary>One week of an episode, counted from the day it began.</summary>
public sealed record WeekStory(
    int Number, DateOnly From, ImmutableArray<VisitStory> Visits, ImmutableArray<ProgramStory> Programs, ImmutableArray<ProgressDay> Days)
{
    /// <summary>Last day of the week.</summary>
    public DateOnly To => From.AddDays(6);

    /// <summary>Whether nothing happened.</summary>
    public bool IsEmpty => Visits.IsEmpty && Programs.IsEmpty && Days.IsEmpty;
}

/// <summary>An episode of care told in order, from the records.</summary>
public sealed record EpisodeStory
{
    public required Patient Patient { get; init; }

    /// <summary>All episodes, latest first.</summary>
    public required IReadOnlyList<Episode> Episodes { get; init; }

    /// <summary>The one told; null when there is none.</summary>
    public required Episode? Episode { get; init; }

    /// <summary>Its weeks, latest first, from the first to the last with anything in it.</summary>
    public required ImmutableArray<WeekStory> Weeks { get; init; }

    public required ClinicTime Time { get; init; }

    public required DateOnly Today { get; init; }

    /// <summary>Number of the latest visit; null when there is none.</summary>
    public int? LastVisit => Weeks.SelectMany(w => w.Visits).Select(v => (int?)v.Visit.Number).Max();

    /// <summary>Weeks since the episode began; null without one.</summary>
    public int? Week => Episode is { } e ? Math.Max(0, (Today.DayNumber - e.StartedOn.DayNumber) / 7) : null;

    /// <summary>Loads the story; null when this clinic has no such patient.</summary>
    public static async Task<EpisodeStory?> LoadAsync(CaseDesk desk, Acting who, Guid patientId, Guid? episodeId)
    {
        ArgumentNullException.ThrowIfNull(desk);
        var stores = desk.Stores;
        if (await stores.Patients.GetAsync(who, patientId) is not { } patient)
            return null;
        var clinic = await stores.Patients.ClinicAsync(who);
        var time = new ClinicTime(clinic);
        var episodes = await stores.Episodes.ListAsync(who, patientId);
        var episode = episodes.FirstOrDefault(e => e.Id == episodeId)
            ?? episodes.OrderBy(e => e.ClosedOn is null ? 0 : 1).ThenByDescending(e => e.StartedOn).FirstOrDefault();
        return new EpisodeStory
        {
            Patient = patient,
            Episodes = episodes,
            Episode = episode,
            Weeks = episode is null ? [] : await WeeksAsync(desk, who, patient, episode, time),
            Time = time,
            Today = desk.Today(clinic),
        };
    }

    /// <summary>The name of an exercise with its side, as a clinician reads it.</summary>
    public static string NameOf(CaseDesk desk, string exerciseId, Body.Side? side, bool bothSides = false)
    {
        ArgumentNullException.ThrowIfNull(desk);
        var name = desk.Content.Exercise(exerciseId)?.Name ?? exerciseId;
        var where = bothSides ? "both sides in turn" : Say.Side(side);
        return where.Length == 0 ? name : $"{name}, {where}";
    }

    private static async Task<ImmutableArray<WeekStory>> WeeksAsync(
        CaseDesk desk, Acting who, Patient patient, Episode episode, ClinicTime time)
    {
        var stores = desk.Stores;
        var visits = await VisitsAsync(desk, who, patient, episode);
        var history = await stores.Programs.HistoryAsync(who, episode.Id);
        var programs = history.Select(version => Told(desk, version, time)).ToArray();
        var sessions = await stores.Logs.SessionsAsync(who, episode.Id);
        var mornings = await stores.Logs.MorningsAsync(who, episode.Id);
        var ceiling = history.FirstOrDefault(v => v.State == ProgramState.HandedOver)?.ToProgram().PainCeiling ?? HomeWork.UsualCeiling;
        var days = Progress.Days([.. sessions.Select(s => s.ToLog())], [.. mornings.Select(m => m.ToLog())], ceiling);
        int WeekOf(DateOnly day) => (int)Math.Floor((day.DayNumber - episode.StartedOn.DayNumber) / 7.0);
        int[] used = [.. visits.Select(v => WeekOf(v.Visit.Day)), .. programs.Select(p => WeekOf(p.Day)), .. days.Select(d => WeekOf(d.Day))];
        if (used.Length == 0)
            return [];
        return
        [
            .. Enumerable.Range(used.Min(), used.Max() - used.Min() + 1).Reverse().Select(week => new WeekStory(
                week,
                episode.StartedOn.AddDays(7 * week),
                [.. visits.Where(v => WeekOf(v.Visit.Day) == week).OrderByDescending(v => v.Visit.Number)],
                [.. programs.Where(p => WeekOf(p.Day) == week).OrderByDescending(p => p.Version.Number)],
                [.. days.Where(d => WeekOf(d.Day) == week)])),
        ];
    }

    private static ProgramStory Told(CaseDesk desk, ProgramVersion version, ClinicTime time)
    {
        var program = version.ToProgram();
        return new ProgramStory(
            version,
            time.DayOf(version.HandedOverAtUtc ?? version.CreatedAtUtc),
            [.. program.Items.Select(item => NameOf(desk, item.ExerciseId, item.WorkingSide, item.BothSides)
                + ": " + DoseText.ForClinician(item.Dose))],
            program.DaysPerWeek);
    }

    private static async Task<IReadOnlyList<VisitStory>> VisitsAsync(CaseDesk desk, Acting who, Patient patient, Episode episode)
    {
        var visits = await desk.Stores.Visits.ListAsync(who, episode.Id);
        var measured = await desk.Stores.Visits.MeasurementsOfEpisodeAsync(who, episode.Id);
        var told = new List<VisitStory>();
        foreach (var visit in visits)
        {
            if (measured.All(m => m.VisitId != visit.Id))
            {
                told.Add(new VisitStory(visit, [], []));
                continue;
            }

            var reading = ReadingAt(desk, patient, episode, visits, measured, visit.Number);
            var decisions = (await desk.Stores.Visits.GetAsync(who, visit.Id))?.FindingDecisions ?? [];
            told.Add(new VisitStory(
                visit,
                [.. reading.Interpretations.Select(Short)],
                [.. reading.Findings.Where(f => decisions.FirstOrDefault(d => d.FindingId == f.Id) is not { Accepted: false })
                    .Select(f => f.Headline)]));
        }

        return told;
    }

    /// <summary>The case as it stood at a visit.</summary>
    public static CaseReading ReadingAt(
        CaseDesk desk, Patient patient, Episode episode, IReadOnlyList<Visit> visits, IReadOnlyList<DatedMeasurement> measured, int number)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(episode);
        var until = visits.Where(v => v.Number <= number).OrderBy(v => v.Number).ToArray();
        return CaseReading.Of(desk.Content.Basis, new CaseFacts(
            patient.PhysiqueOn(until[^1].Day),
            episode.AffectedSide,
            [.. until.Select(v => new CaseVisit(
                v.Number, v.Day, [.. measured.Where(m => m.VisitId == v.Id).Select(m => m.Row.ToMeasurement())], []))],
            episode.Irritability));
    }

    private static string Short(Interpretation found) => found.Measure.Name + " " + string.Join(", ", found.Readings.Select(r =>
        string.Join(' ', new[] { r.Measurement.Activity, Say.Side(r.Measurement.Side), r.Shown }.Where(t => !string.IsNullOrWhiteSpace(t)))));
}
