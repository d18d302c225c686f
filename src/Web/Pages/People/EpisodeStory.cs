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
/// <param name="Number">The first week is 0.</param>
/// <param name="LastNumber">The same, or the last of a run of weeks in which nothing happened.</param>
/// <param name="From">First day.</param>
/// <param name="Visits">Visits, latest first.</param>
/// <param name="Programs">Program versions handed over or written, latest first.</param>
/// <param name="Days">Days with a home session.</param>
public sealed record WeekStory(
    int Number, int LastNumber, DateOnly From, ImmutableArray<VisitStory> Visits, ImmutableArray<ProgramStory> Programs, ImmutableArray<ProgressDay> Days)
{
    /// <summary>Last day of the week or of the run of weeks.</summary>
    public DateOnly To => From.AddDays(7 * (LastNumber - Number) + 6);

    /// <summary>"Week 3", "Weeks 4 to 6".</summary>
    public string Title => LastNumber == Number
        ? FormattableString.Invariant($"Week {Number}")
        : FormattableString.Invariant($"Weeks {Number} to {LastNumber}");

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

    /// <summary>Its weeks, latest first, from the first with anything in it to this one or the last before closing.</summary>
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
            Weeks = episode is null ? [] : await WeeksAsync(desk, who, patient, episode, time, episode.ClosedOn ?? desk.Today(clinic)),
            Time = time,
            Today = desk.Today(clinic),
        };
    }

    /// <summary>The name of an exercise with its side, as a clinician reads it.</summary>
    public static string NameOf(ClinicLibrary library, string exerciseId, Body.Side? side, bool bothSides = false)
    {
        ArgumentNullException.ThrowIfNull(library);
        var name = library.Exercise(exerciseId)?.Name ?? exerciseId;
        var where = bothSides ? "both sides in turn" : Say.Side(side);
        return where.Length == 0 ? name : $"{name}, {where}";
    }

    private static async Task<ImmutableArray<WeekStory>> WeeksAsync(
        CaseDesk desk, Acting who, Patient patient, Episode episode, ClinicTime time, DateOnly until)
    {
        var stores = desk.Stores;
        var visits = await VisitsAsync(desk, who, patient, episode);
        var history = await stores.Programs.HistoryAsync(who, episode.Id);
        var library = await desk.LibraryAsync(who);
        var programs = history.Select(version => Told(library, version, time)).ToArray();
        var sessions = await stores.Logs.SessionsAsync(who, episode.Id);
        var mornings = await stores.Logs.MorningsAsync(who, episode.Id);
        var ceiling = history.FirstOrDefault(v => v.State == ProgramState.HandedOver)?.ToProgram().PainCeiling ?? HomeWork.UsualCeiling;
        var days = Progress.Days([.. sessions.Select(s => s.ToLog())], [.. mornings.Select(m => m.ToLog())], ceiling);
        int WeekOf(DateOnly day) => (int)Math.Floor((day.DayNumber - episode.StartedOn.DayNumber) / 7.0);
        int[] used = [.. visits.Select(v => WeekOf(v.Visit.Day)), .. programs.Select(p => WeekOf(p.Day)), .. days.Select(d => WeekOf(d.Day))];
        if (used.Length == 0)
            return [];
        var last = Math.Max(used.Max(), WeekOf(until));
        return Folded(
            Enumerable.Range(used.Min(), last - used.Min() + 1).Reverse().Select(week => new WeekStory(
                week,
                week,
                episode.StartedOn.AddDays(7 * week),
                [.. visits.Where(v => WeekOf(v.Visit.Day) == week).OrderByDescending(v => v.Visit.Number)],
                [.. programs.Where(p => WeekOf(p.Day) == week).OrderByDescending(p => p.Version.Number)],
                [.. days.Where(d => WeekOf(d.Day) == week)])));
    }

    /// <summary>Takes weeks in a row in which nothing happened together.</summary>
    private static ImmutableArray<WeekStory> Folded(IEnumerable<WeekStory> latestFirst)
    {
        var weeks = new List<WeekStory>();
        foreach (var week in latestFirst)
        {
            if (week.IsEmpty && weeks.Count > 0 && weeks[^1].IsEmpty)
                weeks[^1] = week with { LastNumber = weeks[^1].LastNumber };
            else
                weeks.Add(week);
        }

        return [.. weeks];
    }

    private static ProgramStory Told(ClinicLibrary library, ProgramVersion version, ClinicTime time)
    {
        var program = version.ToProgram();
        return new ProgramStory(
            version,
            time.DayOf(version.HandedOverAtUtc ?? version.CreatedAtUtc),
            [.. program.Items.Select(item => NameOf(library, item.ExerciseId, item.WorkingSide, item.BothSides)
                + ": " + DoseText.ForClinician(item.Dose))],
            program.DaysPerWeek);
    }

    private static async Task<IReadOnlyList<VisitStory>> VisitsAsync(CaseDesk desk, Acting who, Patient patient, Episode episode)
    {
        var records = await EpisodeRecords.LoadAsync(desk, who, patient, episode);
        var told = new List<VisitStory>();
        foreach (var visit in records.Visits)
        {
            if (records.IsBlank(visit))
            {
                told.Add(new VisitStory(visit, [], []));
                continue;
            }

            var reading = records.ReadingAt(desk.Content.Basis, visit.Number);
            var decisions = (await desk.Stores.Visits.GetAsync(who, visit.Id))?.FindingDecisions ?? [];
            told.Add(new VisitStory(
                visit,
                [.. reading.Interpretations.Select(Short)],
                [.. reading.Findings.Where(f => decisions.FirstOrDefault(d => d.FindingId == f.Id) is not { Accepted: false })
                    .Select(f => f.Headline)]));
        }

        return told;
    }

    private static string Short(Interpretation found) => found.Measure.Name + " " + string.Join(", ", found.Readings.Select(r =>
        string.Join(' ', new[] { r.Measurement.Activity, Say.Side(r.Measurement.Side), r.Shown }.Where(t => !string.IsNullOrWhiteSpace(t)))));
}
