using MomentArm.Exam;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Exam;

/// <summary>What the record itself says for each part of a note. It is assembled for reading and never stored as text.</summary>
public static class NoteView
{
    /// <summary>What the patient said in numbers: pain and named activities.</summary>
    public static IReadOnlyList<string> Said(PatientCase patientCase) => [.. Lines(patientCase, m => m.Position == ExamPosition.Interview), .. Marked(patientCase)];

    private static IEnumerable<string> Marked(PatientCase patientCase) =>
        patientCase.Shown is { } visit && BodyChart.ChartMark.Of(visit) is { Count: > 0 } marks
            ? [$"Body chart: {string.Join("; ", marks.Select(m => m.Words))}."]
            : [];

    private static IEnumerable<string> Screened(PatientCase patientCase)
    {
        var gate = patientCase.Gate;
        yield return $"Danger signs: {gate.Headline}" + (gate.Unasked.Length > 0 ? FormattableString.Invariant($" Not asked: {gate.Unasked.Length}.") : "");
        foreach (var present in gate.Present)
        {
            var decided = present.Decision is { } decision ? $" Decided by {decision.Who} on {ExamWords.Day(decision.Day)}: {decision.Reason.TrimEnd('.')}." : " No decision is recorded.";
            yield return $"Yes to \"{present.Sign.Question}\" ({ExamWords.Urgency(present.Sign.Urgency).ToLowerInvariant()}).{decided}";
        }
    }

    /// <summary>The lines of one part, in its order.</summary>
    public static IReadOnlyList<string> Part(string name, CaseDesk desk, PatientCase patientCase, NoteFacts facts)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(facts);
        return name switch
        {
            "Subjective" => Said(patientCase),
            "Objective" => [.. Measured(patientCase), .. Observed(patientCase, desk.Content.Exam.Measures)],
            "Assessment" => [.. Found(patientCase), .. Coded(patientCase)],
            "Plan" => facts.Lines(desk, patientCase),
            _ => [],
        };
    }

    /// <summary>What was typed with the lines below it; lines that stand there already are not put a second time.</summary>
    /// <param name="typed">The typed text; null for none.</param>
    /// <param name="lines">Lines of the record.</param>
    /// <returns>The longer text. Nothing typed is changed.</returns>
    public static string TakeOver(string? typed, IReadOnlyList<string> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var there = (typed ?? "").ReplaceLineEndings("\n");
        var known = there.Split('\n').Select(l => l.Trim()).ToHashSet(StringComparer.Ordinal);
        var more = string.Join('\n', lines.Where(l => !known.Contains(l.Trim())));
        return more.Length == 0 ? there : there.Trim().Length == 0 ? more : $"{there.TrimEnd()}\n{more}";
    }

    private static IEnumerable<string> Coded(PatientCase patientCase)
    {
        var codes = patientCase.Shown?.Answers.Where(a => a.Sheet == CodeList.Sheet).Select(a => a.Value).ToList() ?? [];
        return codes.Count == 0 ? [] : [$"Codes: {string.Join("; ", codes)}."];
    }

    /// <summary>What was measured and seen.</summary>
    public static IReadOnlyList<string> Measured(PatientCase patientCase)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        return [.. Screened(patientCase), .. Lines(patientCase, m => m.Position != ExamPosition.Interview)];
    }

    /// <summary>What follows from it: findings not dismissed, and irritability.</summary>
    public static IReadOnlyList<string> Found(PatientCase patientCase)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        var irritability = patientCase.Reading.Irritability;
        return
        [
            .. patientCase.Accepted.Where(f => f.BeyondError != false || f.Id == "no-change").Select(f => $"{f.Headline}. {f.Detail}"),
            .. patientCase.Reviewed.Where(r => !r.Counts).Select(r => $"Dismissed: {r.Finding.Headline} ({r.Judgment!.Reason ?? "no reason given"})."),
            $"Irritability: {irritability.Grade?.ToString().ToLowerInvariant() ?? "not asked"}; load window {ExamWords.Window(irritability.Window)}.",
        ];
    }

    private static List<string> Lines(PatientCase patientCase, Func<Measure, bool> which)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        var lines = new List<string>();
        foreach (var said in patientCase.Reading.Interpretations.Where(i => which(i.Measure)))
        {
            var how = ConditionWords.Of(said);
            lines.Add($"{said.Measure.Name}: {string.Join(' ', RowSays.ForNote(said).Select(s => s.Text))}{(how.Length > 0 ? $" Taken: {how.TrimEnd('.')}." : "")}");
        }

        return lines;
    }

    /// <summary>Words and manual grades.</summary>
    public static IReadOnlyList<string> Observed(PatientCase patientCase, IEnumerable<Measure> measures)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        return
        [
            .. from row in patientCase.Shown?.Observations ?? []
               let measure = measures.FirstOrDefault(m => m.Id == row.MeasureId)
               let side = row.Side is null ? "" : ", " + Say.Side(row.Side)
               select $"{measure?.Name ?? row.MeasureId}{side}: {row.Grade ?? row.Text}{(row.Grade is null ? "" : " by hand")}.",
        ];
    }
}
