using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Which rows are shown, and what is known beside the typing.</summary>
public sealed partial class ExamSheet
{
    private const string PlanSheet = "exam";
    private readonly Dictionary<string, VisitAnswerRow> kept = [];
    private ImmutableArray<Measurement> last = [];

    /// <summary>What is chosen to be shown.</summary>
    public ExamPlan Plan { get; private set; } = null!;

    /// <summary>The units of this user.</summary>
    public UnitChoice Units { get; private init; }

    /// <summary>What is known beside the typing of a cell.</summary>
    public EntryContext Context => new()
    {
        MassKg = facts.Person.MassKg,
        StatureM = facts.Person.StatureM,
        AffectedSide = facts.AffectedSide,
        Units = Units,
        Now = [.. cells.Values.Where(c => c.Measured is not null).Select(c => c.Measured!.ToMeasurement())],
        Last = last,
    };

    /// <summary>Changes what is shown and keeps it with the visit.</summary>
    public Task ShowAsync(ExamPlan plan) => OneAtATimeAsync(async () =>
    {
        ArgumentNullException.ThrowIfNull(plan);
        Plan = plan;
        shown = null;
        if (Record.Visit.State == VisitState.Signed)
            return;
        var inputs = plan.Kept
            .Select(k => new VisitAnswerInput(PlanSheet, k.Item, null, k.Value.Length > 0 ? k.Value : "none", kept.GetValueOrDefault(k.Item)?.RowVersion))
            .ToArray();
        switch (await desk.Stores.Visits.SaveAnswersAsync(who, Record.Visit.Id, inputs))
        {
            case SaveOutcome<IReadOnlyList<VisitAnswerRow>>.Saved saved:
                KeepRows(saved.Value);
                break;
            case SaveOutcome<IReadOnlyList<VisitAnswerRow>>.Conflict { Theirs: { } theirs }:
                // Someone else chose other rows: only what is shown differs, so mine stands until the page is read again.
                KeepRows(theirs);
                break;
        }
    });

    /// <summary>Shows a measure that has no row yet.</summary>
    public async Task AddAsync(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        if (!Rows.Any(row => row.Measure.Id == measure.Id))
            await ShowAsync(Plan with { Added = Plan.Added.Add(measure.Id) });
    }

    private void ReadPlan()
    {
        Plan = ExamPlan.For(Record.Episode.Region, Record.Episode.Title);
        KeepRows(Record.Answers);
        foreach (var row in kept.Values)
            Plan = Plan.With(row.Item, row.Value == "none" ? "" : row.Value);
        last = [.. facts.Visits.Where(v => v.Order < Record.Visit.Number)
            .SelectMany(v => v.Measurements.Select(m => (v.Order, Measurement: m)))
            .GroupBy(m => (m.Measurement.MeasureId, m.Measurement.Side, m.Measurement.Activity))
            .SelectMany(g => g.Where(m => m.Order == g.Max(o => o.Order)).Select(m => m.Measurement))];
    }

    private void KeepRows(IEnumerable<VisitAnswerRow> rows)
    {
        kept.Clear();
        foreach (var row in rows.Where(r => r.Sheet == PlanSheet))
            kept[row.Item] = row;
    }

    private HashSet<string> ShownIds()
    {
        if (shown is not null)
            return shown;
        var core = Plan.Core(Measures).Select(m => m.Id);
        shown = [.. Measures.Where(Plan.Shows).Select(m => m.Id), .. core, .. last.Select(m => m.MeasureId)];
        return shown;
    }

    private HashSet<string>? shown;

    /// <summary>"=" stands for last time's value of a cell, "==" for the other side's; null when there is none.</summary>
    private string? Meant(SheetCell cell, string text) => text switch
    {
        "=" => last.FirstOrDefault(m => CellKey.Of(m) == cell.Key) is { } before
            ? CellText.Short(cell.Measure, before with { PainDuring = null, Note = null, Activity = null, Moment = null }, Units) : null,
        "==" => cell.Key.Side is { } side && cells.TryGetValue(cell.Key with { Side = side == Side.Left ? Side.Right : Side.Left }, out var other)
            && other.Saved.Length > 0 ? other.Saved : null,
        _ => text,
    };
}
