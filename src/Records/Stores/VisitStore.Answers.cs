using Microsoft.EntityFrameworkCore;
using MomentArm.Body;

namespace MomentArm.Records;

/// <summary>One answer to save on a sheet of a visit.</summary>
/// <param name="Sheet">Which sheet, such as "test" or "rule/ottawa-knee".</param>
/// <param name="Item">Which item of the sheet.</param>
/// <param name="Side">The side, where the item has one.</param>
/// <param name="Value">The answer; null or blank takes it back.</param>
/// <param name="ExpectedVersion">Row version of the answer that was read; null when there was none.</param>
public sealed record VisitAnswerInput(string Sheet, string Item, Side? Side, string? Value, Guid? ExpectedVersion = null);

public sealed partial class VisitStore
{
    /// <summary>
    /// Saves answers on the sheets of a visit, all or none. Saving the same again changes nothing; an answer that someone
    /// else gave or changed meanwhile is a conflict.
    /// </summary>
    /// <param name="who">Who acts.</param>
    /// <param name="visitId">The visit.</param>
    /// <param name="answers">The answers; sheet and item not blank.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    /// <returns>All answers of the visit as they now stand.</returns>
    public Task<SaveOutcome<IReadOnlyList<VisitAnswerRow>>> SaveAnswersAsync(
        Acting who, Guid visitId, IReadOnlyList<VisitAnswerInput> answers, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (answers.Any(a => string.IsNullOrWhiteSpace(a.Sheet) || string.IsNullOrWhiteSpace(a.Item)))
                    return Outcome.Refused<IReadOnlyList<VisitAnswerRow>>("An answer needs the sheet and the item it belongs to.");
                if (await FindAsync(db, visitId, cancellationToken) is null)
                    return Outcome.Refused<IReadOnlyList<VisitAnswerRow>>(NotHere);
                var stored = await db.VisitAnswers.Where(a => a.VisitId == visitId)
                    .ToDictionaryAsync(a => a.Cell, cancellationToken);
                foreach (var input in answers)
                {
                    var row = stored.GetValueOrDefault(VisitAnswerRow.CellOf(input.Sheet, input.Item, input.Side));
                    var value = string.IsNullOrWhiteSpace(input.Value) ? null : input.Value.Trim();
                    if (row?.Value == value)
                        continue;
                    if (row?.RowVersion != input.ExpectedVersion)
                    {
                        IReadOnlyList<VisitAnswerRow> theirs = [.. stored.Values];
                        return await RecordsWork.ConflictAsync(db, row?.Id ?? visitId, theirs, cancellationToken);
                    }
                    Put(db, who, visitId, stored, row, input, value);
                }
                return Outcome.Saved<IReadOnlyList<VisitAnswerRow>>([.. stored.Values.OrderBy(a => a.Id)]);
            },
            cancellationToken,
            AnswersDraftKey(visitId, answers),
            answers);

    /// <summary>All answers of an episode, oldest visit first.</summary>
    public Task<IReadOnlyList<DatedAnswer>> AnswersOfEpisodeAsync(
        Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<DatedAnswer>>(
            who,
            async db => await (
                from a in db.VisitAnswers
                join v in db.Visits on a.VisitId equals v.Id
                where v.EpisodeId == episodeId
                orderby v.Number, a.Id
                select new DatedAnswer(v.Id, v.Day, v.Number, a)).ToListAsync(cancellationToken),
            cancellationToken);

    private static string AnswersDraftKey(Guid visitId, IReadOnlyList<VisitAnswerInput> answers) =>
        $"visit/{visitId:D}/answers/{(answers.Count > 0 ? answers[0].Sheet : "none")}";

    private static void Put(
        RecordsContext db, Acting who, Guid visitId, Dictionary<string, VisitAnswerRow> stored, VisitAnswerRow? row,
        VisitAnswerInput input, string? value)
    {
        if (value is null)
        {
            db.VisitAnswers.Remove(row!);
            stored.Remove(row!.Cell);
            return;
        }
        if (row is null)
        {
            row = new VisitAnswerRow
            {
                ClinicId = who.ClinicId,
                Id = db.NewId(),
                VisitId = visitId,
                Cell = VisitAnswerRow.CellOf(input.Sheet, input.Item, input.Side),
                Sheet = input.Sheet,
                Item = input.Item,
                Side = input.Side,
                Value = value,
            };
            stored[row.Cell] = row;
            db.VisitAnswers.Add(row);
        }
        (row.Value, row.AtUtc) = (value, db.UtcNow);
    }
}
