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
        AddAsync(who, null, patientId, details, cancellationToken);

    /// <summary>Begins an episode under an id the form was given when it was shown: the same form sent twice is one episode.</summary>
    public Task<SaveOutcome<Episode>> AddOnceAsync(
        Acting who, Guid formId, Guid patientId, EpisodeDetails details, CancellationToken cancellationToken = default) =>
        AddAsync(who, formId, patientId, details, cancellationToken);

    private Task<SaveOutcome<Episode>> AddAsync(
        Acting who, Guid? formId, Guid patientId, EpisodeDetails details, CancellationToken cancellationToken) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (details.Fault() is { } fault)
                    return Outcome.Refused<Episode>(fault);
                if (!await db.Patients.AnyAsync(p => p.Id == patientId, cancellationToken))
                    return Outcome.Refused<Episode>(PatientStore.NotHere);
                db.About(patientId);
                if (await db.Episodes.FirstOrDefaultAsync(e => e.Id == formId, cancellationToken) is { } there)
                    return details.IsWrittenIn(there) && there.PatientId == patientId
                        ? Outcome.Saved(there)
                        : Outcome.Refused<Episode>(AddedAlready);
                var row = new Episode { ClinicId = who.ClinicId, Id = formId ?? db.NewId(), PatientId = patientId, Title = details.Title };
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
    /// <param name="who">Who acts.</param>
    /// <param name="episodeId">The episode.</param>
    /// <param name="day">Last day of the episode.</param>
    /// <param name="expectedVersion">Row version of the episode that was read.</param>
    /// <param name="reason">Why it ends, in a few words.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    public Task<SaveOutcome<Episode>> CloseAsync(
        Acting who, Guid episodeId, DateOnly day, Guid expectedVersion, string? reason = null,
        CancellationToken cancellationToken = default) =>
        SetClosedAsync(who, episodeId, (day, reason), expectedVersion, "closed", cancellationToken);

    /// <summary>Opens a closed episode again.</summary>
    public Task<SaveOutcome<Episode>> ReopenAsync(
        Acting who, Guid episodeId, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        SetClosedAsync(who, episodeId, null, expectedVersion, "opened again", cancellationToken);

    internal const string AddedAlready =
        "This form has begun its episode already, with other values. Open that episode to change them; nothing was added twice.";

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
        Acting who, Guid episodeId, (DateOnly Day, string? Reason)? end, Guid expectedVersion, string action,
        CancellationToken cancellationToken) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var row = await FindAsync(db, episodeId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<Episode>(NotHere);
                if (row.RowVersion != expectedVersion && row.ClosedOn != end?.Day)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                if (end?.Day < row.StartedOn)
                    return Outcome.Refused<Episode>("An episode can't be closed before the day it started.");
                db.Doing(action);
                (row.ClosedOn, row.ClosedReason) = (end?.Day, end?.Reason);
                return Outcome.Saved(row);
            },
            cancellationToken);
}
