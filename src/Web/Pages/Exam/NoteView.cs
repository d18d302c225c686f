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

    /// <summary>What was measured and seen.</summary>
    public static IReadOnlyList<string> Measured(PatientCase patientCase)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        return [$"Danger signs: {patientCase.Gate.Headline}", .. Lines(patientCase, m => m.Position != ExamPosition.Interview)];
    }

    /// <summary>What follows from it: findings not dismissed, and irritability.</summary>
    public static IReadOnlyList<string> Found(PatientCase patientCase)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        var irritability = patientCase.Reading.Irritability;
        return
        [
            .. patientCase.Accepted.Where(f => f.BeyondError != false).Select(f => $"{f.Headline}. {f.Detail}"),
            $"Irritability: {irritability.Grade?.ToString().ToLowerInvariant() ?? "not asked"}; load window {ExamWords.Window(irritability.Window)}.",
        ];
    }

    private static List<string> Lines(PatientCase patientCase, Func<Measure, bool> which)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        var lines = new List<string>();
        foreach (var said in patientCase.Reading.Interpretations.Where(i => which(i.Measure)))
        {
            lines.Add($"{said.Measure.Name}: {string.Join(' ', RowSays.ForNote(said).Select(s => s.Text))}");
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
