using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>One row of the exam: two cells, left and right, or one that takes both columns.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Cells">Its cells, left first.</param>
/// <param name="Activity">The activity of the row; null for the row that is always there.</param>
public sealed record ExamRow(Measure Measure, IReadOnlyList<CellKey> Cells, string? Activity)
{
    /// <summary>Whether one more activity is added by typing here.</summary>
    public bool AddsActivities => Activity is null && TakesActivities(Measure);

    /// <summary>Whether the patient may name activities for a measure, each with a row of its own.</summary>
    public static bool TakesActivities(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return !measure.Sided && measure.Kind is MeasureKind.PatientSpecific or MeasureKind.PainRating;
    }

    /// <summary>What the row is called.</summary>
    public string Name => Activity is null ? Measure.Name : $"{Measure.Name}: {Activity}";
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
            rows.AddRange(named.Where(key => key.MeasureId == measure.Id && key.Activity is not null)
                .Select(key => new ExamRow(measure, [key], key.Activity)));
            CellKey[] cells = measure.Sided
                ? [new(measure.Id, Side.Left), new(measure.Id, Side.Right)]
                : [new(measure.Id, null)];
            rows.Add(new ExamRow(measure, cells, null));
        }

        return rows;
    }

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
