using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>Episodes of care.</summary>
public sealed class EpisodeStore(RecordsWork work)
{
    /// <summary>A patient's episodes, latest first.</summary>
    public Task<IReadOnlyList<Episode>> ListAsync(Acting who, Guid patientId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<Episode>>(
            who,
            async db => await db.Episodes.Where(e => e.PatientId == patientId)
                .OrderByDescending(e => e.StartedOn).ThenByDescending(e => e.Id).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>One episode; null when this clinic has none with that id.</summary>
    public Task<Episode?> GetAsync(Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync(who, db => db.Episodes.FirstOrDefaultAsync(e => e.Id == episodeId, cancellationToken), cancellationToken);

    /// <summary>Begins an episode of a patient.</summary>
    public Task<SaveOutcome<Episode>> AddAsync(
        Acting who, Guid patientId, EpisodeDetails details, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (details.Fault() is { } fault)
                    return Outcome.Refused<Episode>(fault);
                if (!await db.Patients.AnyAsync(p => p.Id == patientId, cancellationToken))
                    return Outcome.Refused<Episode>(PatientStore.NotHere);
                db.About(patientId);
                var row = new Episode { ClinicId = who.ClinicId, Id = db.NewId(), PatientId = patientId, Title = details.Title };
                details.WriteTo(row);
                db.Episodes.Add(row);
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"patient/{patientId:D}/episode",
            details);

    /// <summary>Changes an episode, if nobody did since the version that was read.</summary>
    public Task<SaveOutcome<Episode>> EditAsync(
        Acting who, Guid episodeId, EpisodeDetails details, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (details.Fault() is { } fault)
                    return Outcome.Refused<Episode>(fault);
                var row = await FindAsync(db, episodeId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<Episode>(NotHere);
                if (row.RowVersion != expectedVersion && EpisodeDetails.Of(row) != details)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                details.WriteTo(row);
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"episode/{episodeId:D}",
            details);

    /// <summary>Closes an episode on a day: discharge.</summary>
    public Task<SaveOutcome<Episode>> CloseAsync(
        Acting who, Guid episodeId, DateOnly day, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        SetClosedAsync(who, episodeId, day, expectedVersion, "closed", cancellationToken);

    /// <summary>Opens a closed episode again.</summary>
    public Task<SaveOutcome<Episode>> ReopenAsync(
        Acting who, Guid episodeId, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        SetClosedAsync(who, episodeId, null, expectedVersion, "opened again", cancellationToken);

    internal const string NotHere = "This clinic has no such episode.";

    /// <summary>The episode, with the audit trail told whom it concerns.</summary>
    internal static async Task<Episode?> FindAsync(RecordsContext db, Guid episodeId, CancellationToken cancellationToken)
    {
        var row = await db.Episodes.FirstOrDefaultAsync(e => e.Id == episodeId, cancellationToken);
        if (row is not null)
            db.About(row.PatientId);
        return row;
    }

    private Task<SaveOutcome<Episode>> SetClosedAsync(
        Acting who, Guid episodeId, DateOnly? day, Guid expectedVersion, string action, CancellationToken cancellationToken) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var row = await FindAsync(db, episodeId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<Episode>(NotHere);
                if (row.RowVersion != expectedVersion && row.ClosedOn != day)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                if (day < row.StartedOn)
                    return Outcome.Refused<Episode>("An episode can't be closed before the day it started.");
                db.Doing(action);
                row.ClosedOn = day;
                return Outcome.Saved(row);
            },
            cancellationToken);
}
