using Microsoft.EntityFrameworkCore;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Records;

/// <summary>What the patient showed and said back of one exercise.</summary>
public sealed record TeachBackInput(string ExerciseId, Side? Side, bool Shown, bool SaidBack, string? Missed = null);

/// <summary>Home programs, as a growing list of versions.</summary>
public sealed class ProgramStore(RecordsWork work)
{
    /// <summary>All versions of an episode, latest first.</summary>
    public Task<IReadOnlyList<ProgramVersion>> HistoryAsync(
        Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<ProgramVersion>>(
            who,
            async db => await db.ProgramVersions.Where(p => p.EpisodeId == episodeId)
                .OrderByDescending(p => p.Number).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>The version the patient has; null before the first hand-over.</summary>
    public Task<ProgramVersion?> CurrentAsync(Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync(
            who,
            db => db.ProgramVersions.Where(p => p.EpisodeId == episodeId && p.State == ProgramState.HandedOver)
                .OrderByDescending(p => p.Number).FirstOrDefaultAsync(cancellationToken),
            cancellationToken);

    /// <summary>The latest version whatever its state; null when there is none.</summary>
    public Task<ProgramVersion?> LatestAsync(Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync(who, db => LatestAsync(db, episodeId, cancellationToken), cancellationToken);

    /// <summary>One version; null when this clinic has none with that id.</summary>
    public Task<ProgramVersion?> GetAsync(Acting who, Guid versionId, CancellationToken cancellationToken = default) =>
        work.ReadAsync(
            who, db => db.ProgramVersions.FirstOrDefaultAsync(p => p.Id == versionId, cancellationToken), cancellationToken);

    /// <summary>What was noted at the hand-over of a version.</summary>
    public Task<IReadOnlyList<TeachBack>> TeachBacksAsync(
        Acting who, Guid versionId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<TeachBack>>(
            who,
            async db => await db.TeachBacks.Where(t => t.ProgramVersionId == versionId)
                .OrderBy(t => t.ExerciseId).ThenBy(t => t.Side).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>
    /// Saves a new version as a draft. The version handed over before stays with the patient until this one is handed over.
    /// Saving the same program again gives back the version there is.
    /// </summary>
    /// <param name="who">Who acts.</param>
    /// <param name="episodeId">The episode.</param>
    /// <param name="program">The program.</param>
    /// <param name="reason">Why it differs from the version before.</param>
    /// <param name="basedOn">Id of the latest version when editing began; null when there was none.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    public Task<SaveOutcome<ProgramVersion>> SaveAsync(
        Acting who, Guid episodeId, HomeProgram program, string? reason, Guid? basedOn, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (program.Items.IsDefaultOrEmpty)
                    return Outcome.Refused<ProgramVersion>("A program needs at least one exercise.");
                if (await EpisodeStore.FindAsync(db, episodeId, cancellationToken) is null)
                    return Outcome.Refused<ProgramVersion>(EpisodeStore.NotHere);
                var latest = await LatestAsync(db, episodeId, cancellationToken);
                var document = ProgramVersion.Write(program);
                if (latest?.Document == document)
                    return Outcome.Saved(latest);
                if (latest?.Id != basedOn)
                    return await RecordsWork.ConflictAsync(db, latest?.Id ?? episodeId, latest, cancellationToken);
                if (latest?.State == ProgramState.Draft)
                    latest.State = ProgramState.Replaced;
                var row = new ProgramVersion
                {
                    ClinicId = who.ClinicId,
                    Id = db.NewId(),
                    EpisodeId = episodeId,
                    Number = (latest?.Number ?? 0) + 1,
                    Document = document,
                    CreatedById = who.Clinician,
                    CreatedByName = who.Name,
                    CreatedAtUtc = db.UtcNow,
                    Reason = reason,
                };
                db.ProgramVersions.Add(row);
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"episode/{episodeId:D}/program",
            program);

    /// <summary>Hands a draft over to the patient, with what they showed and said back. It takes the place of the version they had.</summary>
    public Task<SaveOutcome<ProgramVersion>> HandOverAsync(
        Acting who, Guid versionId, IReadOnlyList<TeachBackInput> teachBacks, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var row = await db.ProgramVersions.FirstOrDefaultAsync(p => p.Id == versionId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<ProgramVersion>("This clinic has no such program.");
                await EpisodeStore.FindAsync(db, row.EpisodeId, cancellationToken);
                if (row.State == ProgramState.HandedOver)
                    return Outcome.Refused<ProgramVersion>("This version has been handed over already.");
                if (row.State == ProgramState.Replaced)
                    return await RecordsWork.ConflictAsync(
                        db, row.Id, await LatestAsync(db, row.EpisodeId, cancellationToken), cancellationToken);
                var before = await db.ProgramVersions
                    .Where(p => p.EpisodeId == row.EpisodeId && p.State == ProgramState.HandedOver).ToListAsync(cancellationToken);
                before.ForEach(p => p.State = ProgramState.Replaced);
                row.State = ProgramState.HandedOver;
                row.HandedOverAtUtc = db.UtcNow;
                db.TeachBacks.AddRange(teachBacks.Select(t => RowOf(db, who, versionId, t)));
                db.Doing("handed over", row);
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"program/{versionId:D}/teach-back",
            teachBacks);

    private static TeachBack RowOf(RecordsContext db, Acting who, Guid versionId, TeachBackInput input) => new()
    {
        ClinicId = who.ClinicId,
        Id = db.NewId(),
        ProgramVersionId = versionId,
        ExerciseId = input.ExerciseId,
        Side = input.Side,
        Shown = input.Shown,
        SaidBack = input.SaidBack,
        Missed = input.Missed,
        AtUtc = db.UtcNow,
    };

    private static Task<ProgramVersion?> LatestAsync(RecordsContext db, Guid episodeId, CancellationToken cancellationToken) =>
        db.ProgramVersions.Where(p => p.EpisodeId == episodeId)
            .OrderByDescending(p => p.Number).FirstOrDefaultAsync(cancellationToken);
}
