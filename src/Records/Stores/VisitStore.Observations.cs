using Microsoft.EntityFrameworkCore;
using MomentArm.Exam;

namespace MomentArm.Records;

public sealed partial class VisitStore
{
    /// <summary>
    /// Saves words or a manual grade typed into one cell (measure, side). Saving the same again changes nothing; a cell that
    /// someone else filled or changed meanwhile is a conflict.
    /// </summary>
    /// <param name="who">Who acts.</param>
    /// <param name="visitId">The visit.</param>
    /// <param name="observation">What was seen.</param>
    /// <param name="asTyped">The whole entry as typed.</param>
    /// <param name="expectedVersion">Row version of the observation that was read; null when there was none.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    public Task<SaveOutcome<ObservationRow>> SaveObservationAsync(
        Acting who, Guid visitId, Observation observation, string asTyped, Guid? expectedVersion,
        CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (string.IsNullOrWhiteSpace(observation.Text) && observation.Grade is null)
                    return Outcome.Refused<ObservationRow>("Type what was seen, in words or as a grade.");
                if (await FindAsync(db, visitId, cancellationToken) is null)
                    return Outcome.Refused<ObservationRow>(NotHere);
                var cell = ObservationRow.CellOf(observation);
                var row = await db.Observations.FirstOrDefaultAsync(
                    o => o.VisitId == visitId && o.Cell == cell, cancellationToken);
                if (row is not null && row.Says(observation, asTyped))
                    return Outcome.Saved(row);
                if (row?.RowVersion != expectedVersion)
                {
                    return row is null
                        ? new SaveOutcome<ObservationRow>.Conflict(null, "Someone", null)
                        : await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                }

                if (row is null)
                    db.Observations.Add(row = ObservationRow.From(observation, asTyped, who.ClinicId, visitId, db.NewId(), db.UtcNow));
                else
                    row.Take(observation, asTyped, db.UtcNow);
                return Outcome.Saved(row);
            },
            cancellationToken,
            ObservationDraftKey(visitId, observation),
            observation);

    /// <summary>Where an observation that could not be saved is kept.</summary>
    public static string ObservationDraftKey(Guid visitId, Observation observation) =>
        $"visit/{visitId:D}/observation/{ObservationRow.CellOf(observation)}";

    /// <summary>Takes an observation back.</summary>
    public Task<SaveOutcome<ObservationRow>> RemoveObservationAsync(
        Acting who, Guid visitId, Guid observationId, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                await FindAsync(db, visitId, cancellationToken);
                var row = await db.Observations.FirstOrDefaultAsync(
                    o => o.VisitId == visitId && o.Id == observationId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<ObservationRow>("This observation is not there any more.");
                if (row.RowVersion != expectedVersion)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                db.Observations.Remove(row);
                return Outcome.Saved(row);
            },
            cancellationToken);

    /// <summary>All observations of an episode, oldest visit first.</summary>
    public Task<IReadOnlyList<DatedObservation>> ObservationsOfEpisodeAsync(
        Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<DatedObservation>>(
            who,
            async db => await (
                from o in db.Observations
                join v in db.Visits on o.VisitId equals v.Id
                where v.EpisodeId == episodeId
                orderby v.Number, o.Id
                select new DatedObservation(v.Id, v.Day, v.Number, o)).ToListAsync(cancellationToken),
            cancellationToken);
}
