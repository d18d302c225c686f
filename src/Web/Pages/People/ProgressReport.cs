using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.FollowUp;
using MomentArm.Records;
using MomentArm.Web.Clinic;
using MomentArm.Web.Parts;

namespace MomentArm.Web.Pages.People;

/// <summary>Days done against days prescribed under one version of the program.</summary>
public sealed record AdherenceLine(int Version, int DaysPerWeek, DateOnly From, DateOnly To, Adherence Adherence)
{
    /// <summary>"14 of 16 days, 88 % (64–97 %)".</summary>
    public string Text
    {
        get
        {
            var a = Adherence;
            return a.Share is not { } share
                ? string.Create(CultureInfo.InvariantCulture, $"{a.DoneDays} days done, none was due yet")
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"{a.DoneDays} of {a.PlannedDays} days, {Say.Percent(share)} ({Say.Number(100 * a.Low, 0)}–{Say.Percent(a.High)})");
        }
    }
}

/// <summary>What was reported of one exercise in all sessions.</summary>
public sealed record ExerciseLine(string Name, int Sessions, int Sets, int TooEasy, int TooHard, int Hurt, int Skipped);

/// <summary>One measure and side over the episode.</summary>
/// <param name="Measure">Trade name.</param>
/// <param name="Of">The side, the activity, or what the mean is of; empty for none.</param>
/// <param name="First">First value; null when it was taken once only.</param>
/// <param name="FirstDay">Its day.</param>
/// <param name="Last">Latest value.</param>
/// <param name="LastDay">Its day.</param>
/// <param name="Verdict">What the change amounts to; null when it was taken once only.</param>
/// <param name="Tone">How the verdict is meant.</param>
public sealed record MeasureLine(
    string Measure, string Of, string? First, DateOnly? FirstDay, string Last, DateOnly LastDay, string? Verdict, Tone Tone);

/// <summary>What the progress page shows, made from the records.</summary>
public static class ProgressReport
{
    /// <summary>Adherence under each version the patient had, latest first. Today counts only when its session is done.</summary>
    public static IReadOnlyList<AdherenceLine> Adherences(
        IReadOnlyList<ProgramVersion> history, IReadOnlyCollection<SessionLog> sessions, ClinicTime time, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(history);
        ArgumentNullException.ThrowIfNull(time);
        var days = sessions.Select(s => s.Day).ToHashSet();
        var last = days.Contains(today) ? today : today.AddDays(-1);
        var lines = new List<AdherenceLine>();
        foreach (var version in history.Where(v => v.HandedOverAtUtc is not null).OrderByDescending(v => v.Number))
        {
            var from = time.DayOf(version.HandedOverAtUtc!.Value);
            var perWeek = version.ToProgram().DaysPerWeek;
            lines.Add(new AdherenceLine(version.Number, perWeek, from, last, Adherence.Of(days, from, last, perWeek)));
            last = from.AddDays(-1);
        }

        return lines;
    }

    /// <summary>What was reported of each exercise and side, in order of first report.</summary>
    public static IReadOnlyList<ExerciseLine> Exercises(ClinicLibrary library, IReadOnlyCollection<SessionLog> sessions) =>
    [
        .. sessions.SelectMany(s => s.Exercises).GroupBy(e => (e.ExerciseId, e.Side)).Select(g => new ExerciseLine(
            EpisodeStory.NameOf(library, g.Key.ExerciseId, g.Key.Side),
            g.Count(e => e.Difficulty != ExerciseReport.Skipped),
            g.Sum(e => e.SetsDone),
            g.Count(e => e.Difficulty == ExerciseReport.TooEasy),
            g.Count(e => e.Difficulty == ExerciseReport.TooHard),
            g.Count(e => e.Difficulty == ExerciseReport.Hurt),
            g.Count(e => e.Difficulty == ExerciseReport.Skipped))),
    ];

    /// <summary>Days of the chart without gaps, eight weeks at most.</summary>
    public static IReadOnlyList<PainDay> Chart(
        HomeWork home, IReadOnlyCollection<MorningLog> mornings, int? daysPerWeek, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(home);
        ArgumentNullException.ThrowIfNull(mornings);
        var byDay = home.Days.ToDictionary(d => d.Day);
        var morning = mornings.GroupBy(m => m.Day).ToDictionary(g => g.Key, g => g.Max(m => m.Pain));
        DateOnly[] known = [.. byDay.Keys, .. morning.Keys];
        if (known.Length == 0)
            return [];
        var first = new[] { known.Min(), today.AddDays(-55) }.Max();
        // Only a daily program names its days; with fewer days a week the patient chooses them.
        bool Planned(DateOnly day) => daysPerWeek == 7 && day >= home.ProgramFrom && day < today;
        return
        [
            .. Enumerable.Range(0, Math.Max(1, today.DayNumber - first.DayNumber + 1)).Select(i => first.AddDays(i)).Select(day => new PainDay(
                day, Planned(day), byDay.ContainsKey(day), byDay.GetValueOrDefault(day)?.WorstPain,
                morning.TryGetValue(day, out var pain) ? pain : null)),
        ];
    }

    /// <summary>Each measure and side: first, latest, and what the change amounts to.</summary>
    public static IReadOnlyList<MeasureLine> Measures(CaseDesk desk, EpisodeRecords records)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(records);
        var measured = records.Measured;
        var readings = new Dictionary<int, ImmutableArray<Interpretation>>();
        var lines = new List<(int Order, MeasureLine Line)>();
        foreach (var visitNumber in measured.GroupBy(m => m.Row.Cell).Select(g => g.Max(m => m.VisitNumber)).Distinct())
            readings[visitNumber] = records.ReadingAt(desk.Content.Basis, visitNumber).Interpretations;
        foreach (var cell in measured.GroupBy(m => m.Row.Cell))
        {
            var last = cell.MaxBy(m => m.VisitNumber)!;
            var found = readings[last.VisitNumber].FirstOrDefault(i => i.Measure.Id == last.Row.MeasureId);
            if (found is not null)
                lines.Add((found.Measure.Order + 100 * (int)found.Measure.Position, Line(found, last, cell.MinBy(m => m.VisitNumber)!)));
        }

        return
        [
            .. lines.OrderBy(l => l.Order).ThenBy(l => l.Line.Measure, StringComparer.Ordinal)
                .ThenBy(l => l.Line.Of, StringComparer.Ordinal).Select(l => l.Line),
        ];
    }

    private static MeasureLine Line(Interpretation found, DatedMeasurement last, DatedMeasurement first)
    {
        var (measure, row) = (found.Measure, last.Row);
        var once = first.VisitNumber == last.VisitNumber;
        var change = found.Changes.Zip(ChangeTexts(found))
            .FirstOrDefault(c => c.First.SinceFirst && c.First.Side == row.Side && Same(c.First.Activity, row.Activity));
        return new MeasureLine(
            measure.Name,
            row.Activity ?? Say.Side(row.Side),
            once ? null : Say.Shown(measure, measure.Combine([.. first.Row.Trials])),
            once ? null : first.Day,
            Say.Shown(measure, measure.Combine([.. row.Trials])),
            last.Day,
            change.Second is { } statement ? Tail(statement.Text) : null,
            change.Second?.Tone ?? Tone.Neutral);
    }

    // The sentences about change are written one for each change, in the same order.
    private static IEnumerable<Statement> ChangeTexts(Interpretation found) =>
        found.Statements.Where(s => s.Topic is StatementTopic.SinceFirst or StatementTopic.SinceLast);

    private static bool Same(string? one, string? other) =>
        string.Equals((one ?? "").Trim(), (other ?? "").Trim(), StringComparison.OrdinalIgnoreCase);

    /// <summary>The verdict of a sentence such as "Left: 92 N to 120 N since 2026-01-12: really better (beyond 11 N).".</summary>
    private static string Tail(string sentence)
    {
        var at = sentence.LastIndexOf(": ", StringComparison.Ordinal);
        return sentence[(at < 0 ? 0 : at + 2)..].TrimEnd('.');
    }
}
