using Microsoft.EntityFrameworkCore;
using MomentArm.FollowUp;

namespace MomentArm.Records;

/// <summary>How a report from the patient's device was taken.</summary>
public enum LogOutcome
{
    /// <summary>It is in the record.</summary>
    Saved,

    /// <summary>The same report was in the record already; sending it again changed nothing.</summary>
    AlreadySaved,

    /// <summary>Another report has this id. Nothing was changed.</summary>
    Conflicting,

    /// <summary>It can't be right (a number out of range, an unknown program). Nothing was changed.</summary>
    Refused,
}

/// <summary>What patients report from home: it only grows, and the same report sent twice is one report.</summary>
public sealed class LogStore(RecordsWork work)
{
    private const int LongestNote = 4000;
    private const int MostExercises = 50;

    /// <summary>Takes in a home session.</summary>
    public async Task<LogOutcome> AddSessionAsync(
        Acting who, Guid episodeId, Guid? programVersionId, SessionLog log, CancellationToken cancellationToken = default)
    {
        if (!IsUsable(log))
            return LogOutcome.Refused;
        var document = SessionLogRow.Write(log);
        return await AddAsync(
            who,
            episodeId,
            async db =>
            {
                var stored = await db.SessionLogs.AsNoTracking().FirstOrDefaultAsync(l => l.Id == log.Id, cancellationToken);
                if (stored is not null)
                    return Same(stored.EpisodeId == episodeId && stored.Document == document);
                if (programVersionId is { } version && !await db.ProgramVersions.AnyAsync(
                        p => p.Id == version && p.EpisodeId == episodeId, cancellationToken))
                    return LogOutcome.Refused;
                db.SessionLogs.Add(new SessionLogRow
                {
                    ClinicId = who.ClinicId,
                    Id = log.Id,
                    EpisodeId = episodeId,
                    ProgramVersionId = programVersionId,
                    Day = log.Day,
                    Document = document,
                    ReceivedAtUtc = db.UtcNow,
                });
                return LogOutcome.Saved;
            },
            cancellationToken);
    }

    /// <summary>Takes in a next-morning answer.</summary>
    public async Task<LogOutcome> AddMorningAsync(
        Acting who, Guid episodeId, MorningLog log, CancellationToken cancellationToken = default)
    {
        if (log.Id == Guid.Empty || log.Pain is < 0 or > 10 || !Enum.IsDefined(log.Compared))
            return LogOutcome.Refused;
        var document = MorningLogRow.Write(log);
        return await AddAsync(
            who,
            episodeId,
            async db =>
            {
                var stored = await db.MorningLogs.AsNoTracking().FirstOrDefaultAsync(l => l.Id == log.Id, cancellationToken);
                if (stored is not null)
                    return Same(stored.EpisodeId == episodeId && stored.Document == document);
                db.MorningLogs.Add(new MorningLogRow
                {
                    ClinicId = who.ClinicId,
                    Id = log.Id,
                    EpisodeId = episodeId,
                    Day = log.Day,
                    Document = document,
                    ReceivedAtUtc = db.UtcNow,
                });
                return LogOutcome.Saved;
            },
            cancellationToken);
    }

    /// <summary>An episode's sessions, oldest day first.</summary>
    public Task<IReadOnlyList<SessionLogRow>> SessionsAsync(
        Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<SessionLogRow>>(
            who,
            async db => await db.SessionLogs.Where(l => l.EpisodeId == episodeId)
                .OrderBy(l => l.Day).ThenBy(l => l.ReceivedAtUtc).ThenBy(l => l.Id).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>An episode's next-morning answers, oldest day first.</summary>
    public Task<IReadOnlyList<MorningLogRow>> MorningsAsync(
        Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<MorningLogRow>>(
            who,
            async db => await db.MorningLogs.Where(l => l.EpisodeId == episodeId)
                .OrderBy(l => l.Day).ThenBy(l => l.ReceivedAtUtc).ThenBy(l => l.Id).ToListAsync(cancellationToken),
            cancellationToken);

    private async Task<LogOutcome> AddAsync(
        Acting who, Guid episodeId, Func<RecordsContext, Task<LogOutcome>> add, CancellationToken cancellationToken)
    {
        var outcome = await work.WriteAsync(
            who,
            async db =>
            {
                db.Doing("reported");
                return Outcome.Saved(
                    await EpisodeStore.FindAsync(db, episodeId, cancellationToken) is null ? LogOutcome.Refused : await add(db));
            },
            cancellationToken);
        return outcome.Require();
    }

    private static LogOutcome Same(bool same) => same ? LogOutcome.AlreadySaved : LogOutcome.Conflicting;

    private static bool IsUsable(SessionLog log) =>
        log.Id != Guid.Empty
        && IsRating(log.Effort) && IsRating(log.PainDuring) && IsRating(log.PainAfter)
        && (log.Note?.Length ?? 0) <= LongestNote
        && !log.Exercises.IsDefault && log.Exercises.Length <= MostExercises
        && log.Exercises.All(e => e.SetsDone is >= 0 and <= 100 && e.RepetitionsDone is >= 0 and <= 10_000
            && Enum.IsDefined(e.Difficulty) && e.ExerciseId.Length is > 0 and <= 200);

    private static bool IsRating(int? value) => value is null or (>= 0 and <= 10);
}
