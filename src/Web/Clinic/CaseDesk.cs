using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;

namespace MomentArm.Web.Clinic;

/// <summary>Loads a case from the records and has it computed; the one way in which pages get numbers.</summary>
public sealed class CaseDesk(RecordsStores stores, ContentLibrary content, ClinicLibraries libraries, TimeProvider clock)
{
    private readonly CaseLoads loads = new();

    /// <summary>Version of the computing engine, kept with every stored program.</summary>
    public static string EngineVersion { get; } = typeof(CaseReading).Assembly.GetName().Version?.ToString(3) ?? "0";

    /// <summary>The records.</summary>
    public RecordsStores Stores => stores;

    /// <summary>The content.</summary>
    public ContentLibrary Content => content;

    /// <summary>The exercises of a clinic: shipped and its own.</summary>
    public Task<ClinicLibrary> LibraryAsync(Acting who, CancellationToken cancellationToken = default) => libraries.ForAsync(who, cancellationToken);

    /// <summary>Today in a clinic's time zone.</summary>
    public DateOnly Today(Records.Clinic clinic) => DateOnly.FromDateTime(Now(clinic));

    /// <summary>Day and time in a clinic's time zone.</summary>
    public DateTime Now(Records.Clinic clinic) => At(clinic, clock.GetUtcNow());

    /// <summary>An instant in a clinic's time zone.</summary>
    public static DateTime At(Records.Clinic clinic, DateTimeOffset instant)
    {
        ArgumentNullException.ThrowIfNull(clinic);
        var zone = TimeZoneInfo.TryFindSystemTimeZoneById(clinic.TimeZone, out var found) ? found : TimeZoneInfo.Utc;
        return TimeZoneInfo.ConvertTime(instant, zone).DateTime;
    }

    /// <summary>A patient's case.</summary>
    /// <param name="who">Who asks.</param>
    /// <param name="patientId">The patient.</param>
    /// <param name="visitId">The visit to show; null for the latest.</param>
    /// <param name="episodeId">The episode to show; null for the open one, else the latest.</param>
    /// <returns>The case, or null when this clinic has no such patient or the patient has no episode.</returns>
    public async Task<PatientCase?> LoadAsync(Acting who, Guid patientId, Guid? visitId = null, Guid? episodeId = null)
    {
        var patient = await stores.Patients.GetAsync(who, patientId);
        if (patient is null)
            return null;
        var episodes = await stores.Episodes.ListAsync(who, patientId);
        var episode = episodeId is { } id
            ? episodes.FirstOrDefault(e => e.Id == id)
            : episodes.OrderBy(e => e.ClosedOn is null ? 0 : 1).ThenByDescending(e => e.StartedOn).FirstOrDefault();
        if (episode is null)
            return null;
        var clinic = await stores.Patients.ClinicAsync(who);
        var visits = (await stores.Visits.ListAsync(who, episode.Id)).OrderBy(v => v.Number).ToArray();
        var shownRow = visitId is { } wanted ? visits.FirstOrDefault(v => v.Id == wanted) : visits.LastOrDefault();
        var shown = shownRow is null ? null : await stores.Visits.GetAsync(who, shownRow.Id);
        var measured = await stores.Visits.MeasurementsOfEpisodeAsync(who, episode.Id);
        var seen = await stores.Visits.ObservationsOfEpisodeAsync(who, episode.Id);
        var facts = new CaseFacts(
            patient.PhysiqueOn(shownRow?.Day ?? Today(clinic)),
            episode.AffectedSide,
            [.. visits.Where(v => shownRow is null || v.Number <= shownRow.Number).Select(v => new CaseVisit(
                v.Number, v.Day, [.. measured.Where(m => m.VisitId == v.Id).Select(m => m.Row.ToMeasurement())],
                [.. seen.Where(o => o.VisitId == v.Id).Select(o => o.Row.ToObservation())]))],
            episode.Irritability)
        {
            Relevance = await RelevanceAsync(who, episode.Id),
        };
        return new PatientCase
        {
            Patient = patient,
            Episode = episode,
            Visits = visits,
            Shown = shown,
            Facts = facts,
            Reading = CaseReading.Of(content.Basis, facts),
            Gate = GateOf(shown),
            Current = await stores.Programs.CurrentAsync(who, episode.Id),
            Latest = await stores.Programs.LatestAsync(who, episode.Id),
            Today = Today(clinic),
            Clinic = clinic,
            Library = await libraries.ForAsync(who),
        };
    }

    // Findings that an open goal is counted by rank higher.
    private async Task<FindingRelevance> RelevanceAsync(Acting who, Guid episodeId) => FindingRelevance.None with
    {
        GoalMeasures =
        [
            .. (await stores.Goals.ListAsync(who, episodeId)).Where(g => g.State == GoalState.Open)
                .Select(g => g.MeasureId).OfType<string>().Distinct().Order(StringComparer.Ordinal),
        ],
    };

    /// <summary>
    /// The gate of a visit: the general danger signs, those of its regions, and the rules that came out positive; everything
    /// unasked when there is no visit.
    /// </summary>
    public DangerGate GateOf(VisitRecord? visit)
    {
        if (visit is null)
            return DangerScreen.Judge(content.Exam.DangerSigns, new ScreenedPerson([], null), new Dictionary<string, DangerAnswer>(), []);
        var answers = visit.DangerAnswers.ToDictionary(a => a.SignId, a => a.Answer);
        var positive = RuleSigns.Of(VisitRules.Of(visit, content.Exam.Rules).Select(r => r.Told));
        foreach (var sign in positive)
            answers[sign.Id] = DangerAnswer.Yes;
        return DangerScreen.Judge(
            [.. content.Exam.DangerSigns, .. positive],
            VisitRules.PersonOf(visit),
            answers,
            [
                .. visit.DangerDecisions.OrderBy(d => d.AtUtc)
                    .Select(d => new Exam.DangerDecision(d.SignId, d.ByName, d.Reason, DateOnly.FromDateTime(d.AtUtc))),
            ]);
    }

    /// <summary>Every exercise as a candidate for a case, under what was agreed.</summary>
    public ImmutableArray<Candidate> CandidatesFor(PatientCase patientCase, AgreedLimits agreed, int? daysPerWeek)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        return Candidates.For(
            patientCase.Library.Exercises,
            loads.Of(patientCase),
            patientCase.Accepted,
            patientCase.LimitsUnder(agreed, daysPerWeek),
            patientCase.WorkingSide);
    }
}
