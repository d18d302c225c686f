using Microsoft.EntityFrameworkCore;
using MomentArm.Exam;

namespace MomentArm.Records;

/// <summary>One answer to save.</summary>
/// <param name="SignId">The danger sign.</param>
/// <param name="Answer">The answer.</param>
/// <param name="ExpectedVersion">Row version of the answer that was read; null when there was none.</param>
public sealed record DangerAnswerInput(string SignId, DangerAnswer Answer, Guid? ExpectedVersion = null);

public sealed partial class VisitStore
{
    /// <summary>
    /// Saves what was typed into one cell (measure, side, activity). Saving the same again changes nothing; a cell that
    /// someone else filled or changed meanwhile is a conflict.
    /// </summary>
    /// <param name="who">Who acts.</param>
    /// <param name="visitId">The visit.</param>
    /// <param name="measurement">What was measured.</param>
    /// <param name="expectedVersion">Row version of the cell that was read; null when it was empty.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    public Task<SaveOutcome<MeasurementRow>> SaveMeasurementAsync(
        Acting who, Guid visitId, Measurement measurement, Guid? expectedVersion, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (Fault(measurement) is { } fault)
                    return Outcome.Refused<MeasurementRow>(fault);
                if (await FindAsync(db, visitId, cancellationToken) is null)
                    return Outcome.Refused<MeasurementRow>(NotHere);
                var cell = MeasurementRow.CellOf(measurement);
                var row = await db.Measurements.FirstOrDefaultAsync(
                    m => m.VisitId == visitId && m.Cell == cell, cancellationToken);
                if (row is not null && row.Says(measurement))
                    return Outcome.Saved(row);
                if (row?.RowVersion != expectedVersion)
                    return await CellConflictAsync(db, row, cancellationToken);
                if (row is null)
                    db.Measurements.Add(row = MeasurementRow.From(measurement, who.ClinicId, visitId, db.NewId(), db.UtcNow));
                else
                    row.Take(measurement, db.UtcNow);
                return Outcome.Saved(row);
            },
            cancellationToken,
            MeasurementDraftKey(visitId, measurement),
            measurement);

    /// <summary>Where a measurement that could not be saved is kept.</summary>
    public static string MeasurementDraftKey(Guid visitId, Measurement measurement) =>
        $"visit/{visitId:D}/measurement/{MeasurementRow.CellOf(measurement)}";

    /// <summary>Empties a cell.</summary>
    public Task<SaveOutcome<MeasurementRow>> RemoveMeasurementAsync(
        Acting who, Guid visitId, Guid measurementId, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                await FindAsync(db, visitId, cancellationToken);
                var row = await db.Measurements.FirstOrDefaultAsync(
                    m => m.VisitId == visitId && m.Id == measurementId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<MeasurementRow>("This measurement is not there any more.");
                if (row.RowVersion != expectedVersion)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                db.Measurements.Remove(row);
                return Outcome.Saved(row);
            },
            cancellationToken);

    /// <summary>All measurements of an episode, oldest visit first, for trends.</summary>
    public Task<IReadOnlyList<DatedMeasurement>> MeasurementsOfEpisodeAsync(
        Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<DatedMeasurement>>(
            who,
            async db => await (
                from m in db.Measurements
                join v in db.Visits on m.VisitId equals v.Id
                where v.EpisodeId == episodeId
                orderby v.Number, m.Id
                select new DatedMeasurement(v.Id, v.Day, v.Number, m)).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>Saves answers to danger signs, all or none.</summary>
    public Task<SaveOutcome<IReadOnlyList<DangerAnswerRow>>> AnswerDangerSignsAsync(
        Acting who, Guid visitId, IReadOnlyList<DangerAnswerInput> answers, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (await FindAsync(db, visitId, cancellationToken) is null)
                    return Outcome.Refused<IReadOnlyList<DangerAnswerRow>>(NotHere);
                var stored = await db.DangerAnswers.Where(a => a.VisitId == visitId)
                    .ToDictionaryAsync(a => a.SignId, cancellationToken);
                foreach (var input in answers)
                {
                    if (stored.TryGetValue(input.SignId, out var row) && row.Answer == input.Answer)
                        continue;
                    if (row?.RowVersion != input.ExpectedVersion)
                    {
                        IReadOnlyList<DangerAnswerRow> theirs = [.. stored.Values];
                        return await RecordsWork.ConflictAsync(db, row?.Id ?? visitId, theirs, cancellationToken);
                    }
                    if (row is null)
                    {
                        stored[input.SignId] = row = new DangerAnswerRow
                        {
                            ClinicId = who.ClinicId,
                            Id = db.NewId(),
                            VisitId = visitId,
                            SignId = input.SignId,
                        };
                        db.DangerAnswers.Add(row);
                    }
                    row.Answer = input.Answer;
                    row.AtUtc = db.UtcNow;
                }
                return Outcome.Saved<IReadOnlyList<DangerAnswerRow>>([.. stored.Values]);
            },
            cancellationToken,
            $"visit/{visitId:D}/danger",
            answers);

    /// <summary>Records why exercise may go on, or what was done, although a danger sign was answered yes.</summary>
    public Task<SaveOutcome<DangerDecision>> DecideDangerAsync(
        Acting who, Guid visitId, string signId, string reason, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (string.IsNullOrWhiteSpace(reason))
                    return Outcome.Refused<DangerDecision>("Write the reason; a decision on a danger sign needs one.");
                if (await FindAsync(db, visitId, cancellationToken) is null)
                    return Outcome.Refused<DangerDecision>(NotHere);
                var row = await db.DangerDecisions.FirstOrDefaultAsync(
                    d => d.VisitId == visitId && d.SignId == signId, cancellationToken);
                if (row is null)
                {
                    row = new DangerDecision
                    {
                        ClinicId = who.ClinicId,
                        Id = db.NewId(),
                        VisitId = visitId,
                        SignId = signId,
                        ByName = who.Name,
                        Reason = "",
                    };
                    db.DangerDecisions.Add(row);
                }
                (row.ById, row.ByName, row.Reason, row.AtUtc) = (who.Clinician, who.Name, reason.Trim(), db.UtcNow);
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"visit/{visitId:D}/danger/{signId}",
            reason);

    /// <summary>Records that a finding is agreed with or dismissed.</summary>
    public Task<SaveOutcome<FindingDecision>> DecideFindingAsync(
        Acting who, Guid visitId, string findingId, bool accepted, string? reason = null, CancellationToken cancellationToken = default) =>
        SaveFindingAsync(who, visitId, new FindingJudgment(findingId, accepted) { Reason = reason }, cancellationToken);

    /// <summary>
    /// Records what the clinician made of a finding: agreed, dismissed, put in other words or at another place, or one of
    /// the clinician's own. The latest word stands.
    /// </summary>
    /// <param name="who">Who acts.</param>
    /// <param name="visitId">The visit.</param>
    /// <param name="input">What is recorded.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    public Task<SaveOutcome<FindingDecision>> SaveFindingAsync(
        Acting who, Guid visitId, FindingJudgment input, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (input.IsOwn && string.IsNullOrWhiteSpace(input.Headline))
                    return Outcome.Refused<FindingDecision>("Write the finding in a sentence.");
                if (await FindAsync(db, visitId, cancellationToken) is null)
                    return Outcome.Refused<FindingDecision>(NotHere);
                var row = await db.FindingDecisions.FirstOrDefaultAsync(
                    d => d.VisitId == visitId && d.FindingId == input.FindingId, cancellationToken);
                if (row is null)
                {
                    row = new FindingDecision { ClinicId = who.ClinicId, Id = db.NewId(), VisitId = visitId, FindingId = input.FindingId };
                    db.FindingDecisions.Add(row);
                }
                (row.Accepted, row.Reason) = (input.Accepted, input.Reason);
                (row.Headline, row.Rank, row.Impairment) = (input.Headline?.Trim(), input.Rank, FindingDecision.TextOf(input.Impairment));
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"visit/{visitId:D}/finding/{input.FindingId}",
            input);

    private static async Task<SaveOutcome<MeasurementRow>> CellConflictAsync(
        RecordsContext db, MeasurementRow? theirs, CancellationToken cancellationToken)
    {
        if (theirs is not null)
            return await RecordsWork.ConflictAsync(db, theirs.Id, theirs, cancellationToken);
        // The cell was emptied: the row is gone, and with it who did it; the trail of the patient shows it.
        return new SaveOutcome<MeasurementRow>.Conflict(null, "Someone", null);
    }

    private static string? Fault(Measurement measurement)
    {
        if (measurement.Trials.IsDefaultOrEmpty)
            return "Type at least one value.";
        if (measurement.Trials.Any(value => !double.IsFinite(value)) || measurement.LeverArmM is { } arm && !double.IsFinite(arm))
            return "This value is not a number.";
        if (measurement.PainDuring is < 0 or > 10)
            return "Pain during the test must be from 0 to 10.";
        return null;
    }
}
