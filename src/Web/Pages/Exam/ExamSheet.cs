using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Exam;

/// <summary>
/// One visit's exam as one person types it: the cells, what they mean together, and what waits to be saved. What it shows of the
/// record is what was read; a save tells when someone else was faster.
/// </summary>
public sealed partial class ExamSheet : IDisposable
{
    private readonly CaseDesk desk;
    private readonly Acting who;
    private readonly CaseFacts facts;
    private readonly Dictionary<CellKey, SheetCell> cells = [];
    private readonly List<CellKey> named = [];
    private readonly HashSet<CellKey> drafted = [];
    private readonly SemaphoreSlim oneAtATime = new(1, 1);

    private ExamSheet(CaseDesk desk, Acting who, PatientCase patientCase, UnitChoice units)
    {
        Units = units;
        (this.desk, this.who, facts) = (desk, who, patientCase.Facts);
        Record = patientCase.Shown!;
        Reading = patientCase.Reading;
        foreach (var measure in Measures)
        {
            Side?[] sides = measure.Sided ? [Side.Left, Side.Right] : [null];
            foreach (var side in sides)
                Add(new CellKey(measure.Id, side), measure);
        }

        ReadPlan();
    }

    /// <summary>The visit as it was read.</summary>
    public VisitRecord Record { get; }

    /// <summary>The measures.</summary>
    public ImmutableArray<Measure> Measures => desk.Content.Exam.Measures;

    /// <summary>What the exam says as it now stands.</summary>
    public CaseReading Reading { get; private set; }

    /// <summary>The rows in working order.</summary>
    public IReadOnlyList<ExamRow> Rows
    {
        get
        {
            var filled = cells.Values.Where(c => c.IsOpen || c.Measured is not null || c.Observed is not null).Select(c => c.Measure.Id).ToHashSet();
            return ExamOrder.Rows(Measures.Where(m => ShownIds().Contains(m.Id) || filled.Contains(m.Id)), named);
        }
    }

    /// <summary>Whether anything typed waits to be saved.</summary>
    public int OpenCells => cells.Values.Count(cell => cell.IsOpen);

    /// <summary>Reads a visit's exam with what was typed and never saved.</summary>
    public static async Task<ExamSheet?> LoadAsync(CaseDesk desk, Acting who, Guid patientId, Guid visitId, UnitChoice units = UnitChoice.Metric)
    {
        ArgumentNullException.ThrowIfNull(desk);
        var patientCase = await desk.LoadAsync(who, patientId, visitId);
        if (patientCase?.Shown is not { } record)
            return null;
        var sheet = new ExamSheet(desk, who, patientCase, units);
        foreach (var row in record.Measurements)
            sheet.CellFor(CellKey.Of(row.ToMeasurement()))?.Settle(row, null);
        foreach (var row in record.Observations)
        {
            if (sheet.CellFor(CellKey.Of(row.ToObservation())) is { } cell)
                cell.Settle(cell.Measured, row);
        }

        await sheet.RestoreAsync();
        return sheet;
    }

    public void Dispose() => oneAtATime.Dispose();

    /// <summary>A cell that is there.</summary>
    public SheetCell Cell(CellKey key) => cells[key];

    /// <summary>What a measure says; null before it was measured.</summary>
    public Interpretation? Says(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return Reading.Interpretations.FirstOrDefault(i => i.Measure.Id == measure.Id);
    }

    /// <summary>What the latest earlier visit with this cell says, to be read and never taken over; null when there is none.</summary>
    public string? LastTime(CellKey key)
    {
        ArgumentNullException.ThrowIfNull(key);
        var measure = cells[key].Measure;
        var asked = ExamRow.TakesActivities(measure) && key.Activity is null;
        bool Fits(Measurement m) => m.MeasureId == key.MeasureId && m.Side == key.Side && (asked || m.Activity == key.Activity) && m.Moment == key.Moment;
        var last = facts.Visits.Where(v => v.Order < Record.Visit.Number && v.Measurements.Any(Fits)).MaxBy(v => v.Order);
        return last is null ? null : "last " + string.Join(", ", last.Measurements.Where(Fits).Select(m => CellText.Short(measure, m with { Note = null }, Units)));
    }

    private SheetCell Add(CellKey key, Measure measure)
    {
        if (key.Activity is not null || key.Moment is not null)
            named.Add(key);
        // A reading of another moment has its other side beside it.
        if (measure.Sided && key.Moment is not null && key.Side is { } side)
        {
            var other = key with { Side = side == Side.Left ? Side.Right : Side.Left };
            if (!cells.ContainsKey(other))
            {
                named.Add(other);
                cells[other] = new SheetCell(other, measure, Units);
            }
        }

        return cells[key] = new SheetCell(key, measure, Units);
    }

    /// <summary>The cell of a key, made when it names a new activity; null when the measure is not in the content any more.</summary>
    private SheetCell? CellFor(CellKey key)
    {
        if (cells.TryGetValue(key, out var cell))
            return cell;
        return Measures.FirstOrDefault(m => m.Id == key.MeasureId) is { } measure && measure.Sided == key.Side is not null
            ? Add(key, measure)
            : null;
    }

    private void Forget(SheetCell cell)
    {
        if (cell is not { Measured: null, Observed: null } || cell.Key is { Activity: null, Moment: null })
            return;
        named.Remove(cell.Key);
        if (cell.Key.Moment is null)
            cells.Remove(cell.Key);
    }

    private void ReadAgain()
    {
        var visit = Record.Visit;
        var today = new CaseVisit(
            visit.Number,
            visit.Day,
            [.. cells.Values.Where(c => c.Measured is not null).Select(c => c.Measured!.ToMeasurement())],
            [.. cells.Values.Where(c => c.Observed is not null).Select(c => c.Observed!.ToObservation())]);
        var visits = facts.Visits.Where(v => v.Order != visit.Number).Append(today);
        Reading = CaseReading.Of(desk.Content.Basis, facts with { Visits = [.. visits] });
    }
}
