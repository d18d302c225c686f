using System.Globalization;
using System.Collections.Immutable;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Questionnaires answered item by item.</summary>
public sealed partial class ExamSheet
{
    private readonly Dictionary<string, ImmutableArray<VisitAnswerRow>> itemRows = [];

    /// <summary>The answers of a questionnaire that are kept with the visit, as they are typed; empty when there are none.</summary>
    public string AnswersOf(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        var rows = RowsOf(measure);
        if (measure.Questionnaire is not { } form || rows.IsEmpty)
            return "";
        return ExamItemsText.Write(
            Enumerable.Range(1, form.ItemCount).Select(i => rows.FirstOrDefault(r => r.Item == Item(i)) is { } row && int.TryParse(row.Value, out var answer) ? answer : (int?)null),
            form);
    }

    /// <summary>Keeps the answers and puts their score into the cell; the cell says what went wrong.</summary>
    public async Task ScoreAsync(CellKey key, IReadOnlyList<int?> answers)
    {
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(answers);
        var cell = Cell(key);
        if (cell.Measure.Questionnaire is not { } form || form.Score(answers).Value is not { } score)
            return;
        string? fault = null;
        await OneAtATimeAsync(async () => fault = await KeepAnswersAsync(cell.Measure, answers));
        if (fault is not null)
            cell.Refuse(fault);
        else
            await LeaveAsync(key, Say.Number(score, 1), asTyped: true);
    }

    private async Task<string?> KeepAnswersAsync(Measure measure, IReadOnlyList<int?> answers)
    {
        var (sheet, rows) = (SheetOf(measure), RowsOf(measure));
        var inputs = answers.Select((answer, i) => new VisitAnswerInput(
            sheet, Item(i + 1), null, answer?.ToString(CultureInfo.InvariantCulture), rows.FirstOrDefault(r => r.Item == Item(i + 1))?.RowVersion)).ToArray();
        switch (await desk.Stores.Visits.SaveAnswersAsync(who, Record.Visit.Id, inputs))
        {
            case SaveOutcome<IReadOnlyList<VisitAnswerRow>>.Saved saved:
                itemRows[measure.Id] = [.. saved.Value.Where(r => r.Sheet == sheet)];
                return null;
            case SaveOutcome<IReadOnlyList<VisitAnswerRow>>.Conflict conflict:
                itemRows[measure.Id] = [.. (conflict.Theirs ?? []).Where(r => r.Sheet == sheet)];
                return $"{conflict.Who} answered this questionnaire meanwhile. Open the items to see theirs, then type yours again.";
            case SaveOutcome<IReadOnlyList<VisitAnswerRow>>.Refused refused:
                return refused.Sentence;
            default:
                throw new InvalidOperationException("Unknown outcome.");
        }
    }

    private ImmutableArray<VisitAnswerRow> RowsOf(Measure measure) =>
        itemRows.TryGetValue(measure.Id, out var rows) ? rows : [.. Record.Answers.Where(r => r.Sheet == SheetOf(measure))];

    private static string SheetOf(Measure measure) => "questionnaire/" + measure.Id;

    private static string Item(int number) => number.ToString(CultureInfo.InvariantCulture);
}
