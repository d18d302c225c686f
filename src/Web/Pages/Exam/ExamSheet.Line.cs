using System.Collections.Immutable;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>What came of one shorthand line.</summary>
/// <param name="Taken">What is in the exam now, one sentence each.</param>
/// <param name="Faults">What was not understood; the line stays so that it can be mended.</param>
/// <param name="Questions">What is unusual; nothing is taken over until the line is entered once more.</param>
/// <param name="Notes">What was done with the typing and is not obvious, and what could not be saved.</param>
public sealed record LineReport(
    ImmutableArray<string> Taken, ImmutableArray<EntryFault> Faults, ImmutableArray<EntryQuestion> Questions, ImmutableArray<string> Notes)
{
    /// <summary>Before anything was typed.</summary>
    public static LineReport Nothing { get; } = new([], [], [], []);

    /// <summary>Whether the line is done with.</summary>
    public bool IsDone => Faults.IsEmpty && Questions.IsEmpty;
}

/// <summary>The line "Type as you measure".</summary>
public sealed partial class ExamSheet
{
    /// <summary>Takes over everything a line says that can be read.</summary>
    /// <param name="text">The line.</param>
    /// <param name="asTyped">Whether the unusual is confirmed.</param>
    public async Task<LineReport> TakeOverAsync(string text, bool asTyped = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        Line = text;
        var read = TypedEntry.Parse(text.Trim(), Measures, Context);
        var questions = read.Questions.AddRange(Measures.Where(m => read.Measurements.Any(r => r.MeasureId == m.Id))
            .SelectMany(m => Doubts(m, read.Measurements)).DistinctBy(q => q.Sentence));
        var report = new LineReport([], read.Faults, [], read.Notes);
        if (!questions.IsEmpty && !asTyped)
            report = report with { Questions = questions, Notes = [] };
        else
            await OneAtATimeAsync(async () => report = await TakeOverAsync(read, report));
        if (report.IsDone)
            Line = "";
        await KeepLineAsync();
        return report;
    }

    private async Task<LineReport> TakeOverAsync(EntryResult read, LineReport report)
    {
        foreach (var measurement in read.Measurements)
        {
            if (CellFor(CellKey.Of(measurement)) is { } cell)
                report = await NoteAsync(cell, cell.Saved, await SaveAsync(cell, cell, measurement), CellText.Short(cell.Measure, measurement, Units), report);
        }

        foreach (var observation in read.Observations)
        {
            if (CellFor(CellKey.Of(observation)) is { } cell)
                report = await NoteAsync(cell, cell.Saved, await SaveAsync(cell, observation, read.AsTyped), observation.Grade ?? observation.Text, report);
        }

        ReadAgain();
        return report;
    }

    private async Task<LineReport> NoteAsync(SheetCell cell, string before, bool saved, string said, LineReport report)
    {
        var name = cell.Key.Side is null ? cell.Measure.Name : $"{cell.Measure.Name}, {Say.Side(cell.Key.Side)}";
        if (!saved)
        {
            cell.Typed = said;
            await DraftAsync(cell.Key, said);
            return report with { Notes = report.Notes.Add($"{name}: {said} is not saved. {cell.Sentence}") };
        }

        cell.Settle(cell.Measured, cell.Observed);
        await DropAsync(cell.Key);
        var instead = before.Length > 0 && before != cell.Saved ? $", in place of {before}" : "";
        return report with { Taken = report.Taken.Add($"{name}: {said}{instead}") };
    }
}
