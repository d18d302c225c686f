using MomentArm.Exam;
using MomentArm.FollowUp;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.BodyChart;
using MomentArm.Web.Pages.Exam;
using MomentArm.Web.Pages.People;
using MomentArm.Web.Parts;

namespace MomentArm.Web.Pages.Report;

/// <summary>A goal with where it stands by what was measured last.</summary>
public sealed record ReportedGoal(Goal Goal, string Standing);

/// <summary>The body chart of one visit.</summary>
public sealed record DatedChart(Guid VisitId, DateOnly Day, IReadOnlyList<ChartMark> Marks);

/// <summary>Start against now of one episode, read from the records; nothing of it is stored but the clinician's own sentences.</summary>
public sealed record CareReport
{
    /// <summary>The sheet of a visit that holds the clinician's sentences of a report.</summary>
    public const string Sheet = "report";

    /// <summary>The case at the visit with the latest measurements, else at the latest visit.</summary>
    public required PatientCase Case { get; init; }

    /// <summary>Visits, first to last.</summary>
    public required IReadOnlyList<Visit> Visits { get; init; }

    /// <summary>Each measure and side, start and now.</summary>
    public required IReadOnlyList<MeasureLine> Measures { get; init; }

    public required IReadOnlyList<ReportedGoal> Goals { get; init; }

    /// <summary>Days done at home under each version, latest first.</summary>
    public required IReadOnlyList<AdherenceLine> Adherences { get; init; }

    /// <summary>Home sessions reported.</summary>
    public required int Sessions { get; init; }

    /// <summary>The first and the last body chart; one when there is one, none when nothing was marked.</summary>
    public required IReadOnlyList<DatedChart> Charts { get; init; }

    public required IReadOnlyList<string> Codes { get; init; }

    /// <summary>The clinician's sentences, one row a kind of report and visit, latest visit first.</summary>
    public required IReadOnlyList<DatedAnswer> Own { get; init; }

    /// <summary>Whether there is something to compare.</summary>
    public bool Compares => Visits.Count >= 2;

    /// <summary>The visit that the sentences are kept with: the latest.</summary>
    public Visit? Last => Visits.Count == 0 ? null : Visits[^1];

    /// <summary>Lines that were measured at two visits or more.</summary>
    public IEnumerable<MeasureLine> Compared => Measures.Where(m => m.First is not null);

    /// <summary>Lines that were measured once.</summary>
    public IEnumerable<MeasureLine> Once => Measures.Where(m => m.First is null);

    /// <summary>The clinician's sentences for one kind of report.</summary>
    public DatedAnswer? OwnOf(string kind) => Own.FirstOrDefault(a => a.Row.Item == kind);

    /// <summary>What came of it in counts: goals, and values beyond error.</summary>
    public IReadOnlyList<string> Outcome()
    {
        var counted = Goals.Count(g => g.Goal.State == GoalState.Reached);
        var (better, worse) = (Compared.Count(m => m.Tone == Tone.Good), Compared.Count(m => m.Tone == Tone.Watch));
        var rest = Compared.Count() - better - worse;
        return
        [
            Goals.Count == 0 ? "No goal was set." : FormattableString.Invariant($"{counted} of {Goals.Count} goals marked as reached."),
            FormattableString.Invariant($"Measured at start and now: {better} better beyond error, {worse} worse beyond error, {rest} within error or not judged."),
        ];
    }

    /// <summary>Loads the report; null when this clinic has no such patient or the patient no episode.</summary>
    public static async Task<CareReport?> LoadAsync(CaseDesk desk, Acting who, Guid patientId)
    {
        ArgumentNullException.ThrowIfNull(desk);
        if (await desk.LoadAsync(who, patientId) is not { } found)
            return null;
        var (stores, episode) = (desk.Stores, found.Episode);
        var records = await EpisodeRecords.LoadAsync(desk, who, found.Patient, episode);
        if (found.Shown?.Measurements.Count == 0 && records.Measured.Count > 0)
            found = await desk.LoadAsync(who, patientId, records.Measured.MaxBy(m => m.VisitNumber)!.VisitId, episode.Id) ?? found;
        var answers = await stores.Visits.AnswersOfEpisodeAsync(who, episode.Id);
        SessionLog[] sessions = [.. (await stores.Logs.SessionsAsync(who, episode.Id)).Select(s => s.ToLog())];
        var until = episode.ClosedOn is { } closed && closed < found.Today ? closed : found.Today;
        return new CareReport
        {
            Case = found,
            Visits = [.. records.Visits.OrderBy(v => v.Number)],
            Measures = ProgressReport.Measures(desk, records),
            Goals = [.. (await stores.Goals.ListAsync(who, episode.Id)).Select(g => new ReportedGoal(g, Standing(desk, g, records.Measured)))],
            Adherences = ProgressReport.Adherences(await stores.Programs.HistoryAsync(who, episode.Id), sessions, new ClinicTime(found.Clinic), until),
            Sessions = sessions.Length,
            Charts = await ChartsAsync(desk, who, answers),
            Codes = LastOf(answers, CodeList.Sheet),
            Own = [.. answers.Where(a => a.Row.Sheet == Sheet).OrderByDescending(a => a.VisitNumber)],
        };
    }

    private static IReadOnlyList<string> LastOf(IReadOnlyList<DatedAnswer> answers, string sheet)
    {
        var there = answers.Where(a => a.Row.Sheet == sheet).ToList();
        return there.Count == 0 ? [] : [.. there.Where(a => a.VisitNumber == there.Max(x => x.VisitNumber)).Select(a => a.Row.Value)];
    }

    private static string Standing(CaseDesk desk, Goal goal, IReadOnlyList<DatedMeasurement> measured)
    {
        var measure = goal.MeasureId is { } id ? desk.Content.Exam.Measure(id) : null;
        var last = measure is null ? null : measured
            .Where(m => m.Row.MeasureId == measure.Id && m.Row.Side == goal.Side
                && string.Equals(m.Row.Activity ?? "", goal.Activity ?? "", StringComparison.OrdinalIgnoreCase))
            .MaxBy(m => m.VisitNumber);
        return GoalView.Standing(goal, measure, last is null ? null : measure!.Combine([.. last.Row.Trials]));
    }

    private static async Task<IReadOnlyList<DatedChart>> ChartsAsync(CaseDesk desk, Acting who, IReadOnlyList<DatedAnswer> answers)
    {
        var marked = answers.Where(a => a.Row.Sheet == ChartMark.Sheet).Select(a => (a.VisitId, a.VisitNumber)).Distinct().OrderBy(v => v.VisitNumber).ToList();
        var charts = new List<DatedChart>();
        foreach (var (id, _) in marked.Count > 1 ? [marked[0], marked[^1]] : marked)
        {
            if (await desk.Stores.Visits.GetAsync(who, id) is { } visit && ChartMark.Of(visit) is { Count: > 0 } marks)
                charts.Add(new DatedChart(id, visit.Visit.Day, marks));
        }

        return charts;
    }
}
