using System.Collections.Immutable;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>From typing to the record.</summary>
public sealed partial class ExamSheet
{
    /// <summary>Reads what stands in a cell and saves it, or says why not; the typing stays either way.</summary>
    /// <param name="key">The cell.</param>
    /// <param name="text">What stands in it.</param>
    /// <param name="asTyped">Whether the unusual is confirmed.</param>
    public Task LeaveAsync(CellKey key, string text, bool asTyped = false) => OneAtATimeAsync(async () =>
    {
        if (!cells.TryGetValue(key, out var cell))
            return;
        var before = cell.State;
        if (Meant(cell, text.Trim()) is not { } meant)
        {
            cell.Type(text);
            cell.Fault([new EntryFault("There is nothing to take over.", text.Trim(), "\"=\" takes last time's value and \"==\" the other side's; type the value instead.")]);
            return;
        }

        text = meant;
        cell.Type(text);
        if (text.Trim() == cell.Saved)
        {
            cell.Settle(cell.Measured, cell.Observed, before == CellState.Settled ? cell.Notes : []);
            await DropAsync(key);
            return;
        }

        await TakeAsync(cell, text.Trim(), asTyped);
        if (cell.IsOpen)
            await DraftAsync(key, text);
        else
            await DropAsync(key);
        ReadAgain();
    });

    /// <summary>After a conflict: leaves theirs as it is.</summary>
    public Task KeepTheirsAsync(CellKey key) => OneAtATimeAsync(async () =>
    {
        if (!cells.TryGetValue(key, out var cell))
            return;
        cell.Settle(cell.Measured, cell.Observed);
        await DropAsync(key);
        Forget(cell);
        ReadAgain();
    });

    /// <summary>After a conflict, having seen theirs: saves what was typed here in its place.</summary>
    public Task UseMineAsync(CellKey key) => LeaveAsync(key, cells[key].Typed, asTyped: true);

    private async Task TakeAsync(SheetCell cell, string text, bool asTyped)
    {
        if (text.Length == 0)
        {
            await EmptyAsync(cell);
            return;
        }

        var read = Placed(cell, TypedEntry.Parse(text, cell.Measure, cell.Key.Side, Context));
        var questions = read.Questions.AddRange(Doubts(cell.Measure, read.Measurements));
        if (!read.Faults.IsEmpty)
            cell.Fault(read.Faults);
        else if (!questions.IsEmpty && !asTyped)
            cell.Ask(questions);
        else
            await TakeAsync(cell, read);
    }

    /// <summary>In the cell of an activity or a moment the number alone is enough.</summary>
    private static EntryResult Placed(SheetCell cell, EntryResult read) => cell.Key is { Activity: null, Moment: null } ? read : read with
    {
        Measurements = [.. read.Measurements.Select(m => m with { Activity = m.Activity ?? cell.Key.Activity, Moment = m.Moment ?? cell.Key.Moment })],
    };

    /// <summary>What does not fit with the rest of the visit or with the last one, once the new readings stand in it.</summary>
    private ImmutableArray<EntryQuestion> Doubts(Measure measure, ImmutableArray<Measurement> read)
    {
        var keys = read.Select(CellKey.Of).ToHashSet();
        var now = Context.Now.Where(m => !keys.Contains(CellKey.Of(m))).Concat(read).ToList();
        var concerned = Measures.Where(m => m.Id == measure.Id || (measure.Kind == MeasureKind.PainRating && m.Kind == MeasureKind.PainRating));
        return EntryGuard.Questions(concerned, now, last);
    }

    /// <summary>Saves all that one cell's typing says; other activities go into cells of their own.</summary>
    private async Task TakeAsync(SheetCell cell, EntryResult read)
    {
        var saved = ImmutableArray<SheetCell>.Empty;
        foreach (var measurement in read.Measurements)
        {
            var target = CellFor(CellKey.Of(measurement)) ?? cell;
            if (!await SaveAsync(cell, target, measurement))
                return;
            saved = saved.Add(target);
        }

        var observation = read.Observations.FirstOrDefault();
        if (observation is not null && !await SaveAsync(cell, observation, read.AsTyped))
            return;
        var keepsMeasured = saved.Contains(cell) || (cell.Key is { Activity: null, Moment: null } && saved.Length > 0);
        if (!keepsMeasured && !await TakeBackMeasuredAsync(cell))
            return;
        if (observation is null && cell.Observed is not null && !await TakeBackObservedAsync(cell))
            return;
        foreach (var one in saved)
            one.Settle(one.Measured, one.Observed, one == cell ? read.Notes : []);
        cell.Settle(cell.Measured, cell.Observed, read.Notes);
        Forget(cell);
    }

    private async Task EmptyAsync(SheetCell cell)
    {
        if (!await TakeBackMeasuredAsync(cell) || !await TakeBackObservedAsync(cell))
            return;
        cell.Settle(null, null);
        Forget(cell);
    }

    private async Task<bool> SaveAsync(SheetCell cell, SheetCell target, Measurement measurement)
    {
        var outcome = await desk.Stores.Visits.SaveMeasurementAsync(who, Record.Visit.Id, measurement, target.Measured?.RowVersion);
        return Took(cell, target, outcome, row =>
        {
            target.Stand(row, target.Observed);
            if (target != cell)
                target.Settle(target.Measured, target.Observed);
        });
    }

    private async Task<bool> SaveAsync(SheetCell cell, Observation observation, string asTyped)
    {
        var outcome = await desk.Stores.Visits.SaveObservationAsync(
            who, Record.Visit.Id, observation, asTyped, cell.Observed?.RowVersion);
        return Took(cell, cell, outcome, row => cell.Stand(cell.Measured, row));
    }

    private async Task<bool> TakeBackMeasuredAsync(SheetCell cell)
    {
        if (cell.Measured is not { } row)
            return true;
        var outcome = await desk.Stores.Visits.RemoveMeasurementAsync(who, Record.Visit.Id, row.Id, row.RowVersion);
        return Took(cell, cell, outcome, theirs => cell.Stand(outcome is SaveOutcome<MeasurementRow>.Saved ? null : theirs, cell.Observed));
    }

    private async Task<bool> TakeBackObservedAsync(SheetCell cell)
    {
        if (cell.Observed is not { } row)
            return true;
        var outcome = await desk.Stores.Visits.RemoveObservationAsync(who, Record.Visit.Id, row.Id, row.RowVersion);
        return Took(cell, cell, outcome, theirs => cell.Stand(cell.Measured, outcome is SaveOutcome<ObservationRow>.Saved ? null : theirs));
    }

    private static bool Took<TRow>(SheetCell cell, SheetCell target, SaveOutcome<TRow> outcome, Action<TRow?> stand)
        where TRow : class
    {
        switch (outcome)
        {
            case SaveOutcome<TRow>.Saved saved:
                stand(saved.Value);
                return true;
            case SaveOutcome<TRow>.Conflict conflict:
                stand(conflict.Theirs);
                cell.Collide(conflict.Sentence, target.Saved);
                return false;
            case SaveOutcome<TRow>.Refused refused:
                cell.Refuse(refused.Sentence);
                return false;
            default:
                throw new InvalidOperationException("Unknown outcome.");
        }
    }

    private async Task OneAtATimeAsync(Func<Task> work)
    {
        await oneAtATime.WaitAsync();
        try
        {
            await work();
        }
        finally
        {
            oneAtATime.Release();
        }
    }
}
