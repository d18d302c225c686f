using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>One row of the exam: two cells, left and right, or one that takes both columns.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Cells">Its cells, left first.</param>
/// <param name="Activity">The activity of the row; null for the row that is always there.</param>
/// <param name="Moment">The moment of the row, such as "after"; null for the row that is always there.</param>
public sealed record ExamRow(Measure Measure, IReadOnlyList<CellKey> Cells, string? Activity, string? Moment = null)
{
    /// <summary>Whether one more activity is added by typing here.</summary>
    public bool AddsActivities => IsFirst && TakesActivities(Measure);

    /// <summary>Whether it is the row that is always there.</summary>
    public bool IsFirst => Activity is null && Moment is null;

    /// <summary>Whether the patient may name activities for a measure, each with a row of its own.</summary>
    public static bool TakesActivities(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return !measure.Sided && measure.Kind is MeasureKind.PatientSpecific or MeasureKind.PainRating;
    }

    /// <summary>What the row is called.</summary>
    public string Name => IsFirst ? Measure.Name : $"{Measure.Name}: {Part}";

    /// <summary>What tells it from the row that is always there; empty for that one.</summary>
    public string Part => string.Join(", ", new[] { Activity, Moment }.OfType<string>());
}

/// <summary>In which order an exam is typed.</summary>
public static class ExamOrder
{
    /// <summary>The rows: measures in working order, activities in the order they were named, before the row that adds one.</summary>
    /// <param name="measures">All measures.</param>
    /// <param name="named">Cells with an activity, in the order they were named.</param>
    public static IReadOnlyList<ExamRow> Rows(IEnumerable<Measure> measures, IReadOnlyList<CellKey> named)
    {
        ArgumentNullException.ThrowIfNull(named);
        var rows = new List<ExamRow>();
        foreach (var measure in TypedEntry.InExamOrder(measures))
        {
            foreach (var key in named.Where(key => key.MeasureId == measure.Id).DistinctBy(key => (key.Activity, key.Moment)))
                rows.Add(new ExamRow(measure, Cells(measure, key.Activity, key.Moment), key.Activity, key.Moment));
            rows.Add(new ExamRow(measure, Cells(measure, null, null), null));
        }

        return rows;
    }

    private static CellKey[] Cells(Measure measure, string? activity, string? moment) => measure.Sided
        ? [new(measure.Id, Side.Left, activity, moment), new(measure.Id, Side.Right, activity, moment)]
        : [new(measure.Id, null, activity, moment)];

    /// <summary>The cell that Enter goes to; null at the end.</summary>
    public static CellKey? Next(IReadOnlyList<ExamRow> rows, CellKey from) => Step(rows, from, 1);

    /// <summary>The cell that Shift and Enter go to; null at the beginning.</summary>
    public static CellKey? Previous(IReadOnlyList<ExamRow> rows, CellKey from) => Step(rows, from, -1);

    private static CellKey? Step(IReadOnlyList<ExamRow> rows, CellKey from, int by)
    {
        var cells = rows.SelectMany(row => row.Cells).ToList();
        var at = cells.IndexOf(from);
        return at < 0 || at + by < 0 || at + by >= cells.Count ? null : cells[at + by];
    }
}
