using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>What the start page needs to know of one open episode.</summary>
/// <param name="Patient">The patient.</param>
/// <param name="Episode">The open episode.</param>
/// <param name="LastVisit">The latest visit, if any.</param>
/// <param name="CurrentProgram">The version the patient has, if any.</param>
/// <param name="HasDraftProgram">Whether a newer version waits to be handed over.</param>
/// <param name="RecentSessions">The latest reported sessions, latest day first, ten at most.</param>
/// <param name="RecentMornings">The latest next-morning answers, latest day first, ten at most.</param>
public sealed record TodayRow(
    Patient Patient,
    Episode Episode,
    Visit? LastVisit,
    ProgramVersion? CurrentProgram,
    bool HasDraftProgram,
    IReadOnlyList<SessionLogRow> RecentSessions,
    IReadOnlyList<MorningLogRow> RecentMornings)
{
    /// <summary>Day of the latest visit.</summary>
    public DateOnly? LastVisitDay => LastVisit?.Day;

    /// <summary>Day of the latest reported session.</summary>
    public DateOnly? LastLogDay => RecentSessions.Count == 0 ? null : RecentSessions[0].Day;

    /// <summary>Worst pain while exercising of the recent sessions, latest first.</summary>
    public IReadOnlyList<int?> RecentPains => [.. RecentSessions.Select(row => row.ToLog().PainDuring)];
}

/// <summary>Everything the start page shows, in a handful of queries whatever the number of patients.</summary>
public sealed class TodayQuery(RecordsWork work)
{
    private const int Recent = 10;

    /// <summary>All open episodes of the clinic, patients in order of name.</summary>
    public Task<IReadOnlyList<TodayRow>> ListAsync(Acting who, CancellationToken cancellationToken = default) =>
        work.ReadAsync(who, db => ListAsync(db, cancellationToken), cancellationToken);

    private static async Task<IReadOnlyList<TodayRow>> ListAsync(RecordsContext db, CancellationToken cancellationToken)
    {
        var open = await (
            from e in db.Episodes
            where e.ClosedOn == null
            join p in db.Patients on e.PatientId equals p.Id
            orderby p.SearchText, p.Id, e.Id
            select new { Patient = p, Episode = e }).ToListAsync(cancellationToken);
        var ids = db.Episodes.Where(e => e.ClosedOn == null).Select(e => e.Id);
        var visits = (await db.Visits.Where(v => ids.Contains(v.EpisodeId)).GroupBy(v => v.EpisodeId)
            .Select(g => g.OrderByDescending(v => v.Day).ThenByDescending(v => v.Number).First()).ToListAsync(cancellationToken))
            .ToDictionary(v => v.EpisodeId);
        var programs = (await db.ProgramVersions
            .Where(p => ids.Contains(p.EpisodeId) && p.State != ProgramState.Replaced).ToListAsync(cancellationToken))
            .ToLookup(p => p.EpisodeId);
        var sessions = (await ids.SelectMany(id => db.SessionLogs.Where(l => l.EpisodeId == id)
            .OrderByDescending(l => l.Day).ThenByDescending(l => l.Id).Take(Recent)).ToListAsync(cancellationToken))
            .ToLookup(l => l.EpisodeId);
        var mornings = (await ids.SelectMany(id => db.MorningLogs.Where(l => l.EpisodeId == id)
            .OrderByDescending(l => l.Day).ThenByDescending(l => l.Id).Take(Recent)).ToListAsync(cancellationToken))
            .ToLookup(l => l.EpisodeId);
        return [.. open.Select(o => new TodayRow(
            o.Patient,
            o.Episode,
            visits.GetValueOrDefault(o.Episode.Id),
            programs[o.Episode.Id].Where(p => p.State == ProgramState.HandedOver).MaxBy(p => p.Number),
            programs[o.Episode.Id].Any(p => p.State == ProgramState.Draft),
            [.. sessions[o.Episode.Id].OrderByDescending(l => l.Day).ThenByDescending(l => l.Id)],
            [.. mornings[o.Episode.Id].OrderByDescending(l => l.Day).ThenByDescending(l => l.Id)]))];
    }
}
