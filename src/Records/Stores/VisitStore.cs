using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>Visits: opening, reading, the note and the signature. What is measured and decided in them is in the other part.</summary>
public sealed partial class VisitStore(RecordsWork work)
{
    /// <summary>The open visit of that day; a new one when there is none.</summary>
    public Task<SaveOutcome<Visit>> OpenAsync(
        Acting who, Guid episodeId, DateOnly day, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var episode = await EpisodeStore.FindAsync(db, episodeId, cancellationToken);
                if (episode is null)
                    return Outcome.Refused<Visit>(EpisodeStore.NotHere);
                var open = await db.Visits.FirstOrDefaultAsync(
                    v => v.EpisodeId == episodeId && v.Day == day && v.State == VisitState.Open, cancellationToken);
                if (open is not null)
                    return Outcome.Saved(open);
                if (episode.ClosedOn is not null)
                    return Outcome.Refused<Visit>("This episode is closed. Open it again before a new visit.");
                var last = await db.Visits.Where(v => v.EpisodeId == episodeId)
                    .MaxAsync(v => (int?)v.Number, cancellationToken) ?? 0;
                var row = new Visit
                {
                    ClinicId = who.ClinicId,
                    Id = db.NewId(),
                    EpisodeId = episodeId,
                    Day = day,
                    Number = last + 1,
                };
                db.Visits.Add(row);
                return Outcome.Saved(row);
            },
            cancellationToken);

    /// <summary>A visit with all its parts; null when this clinic has none with that id.</summary>
    public Task<VisitRecord?> GetAsync(Acting who, Guid visitId, CancellationToken cancellationToken = default) =>
        work.ReadAsync(
            who,
            async db =>
            {
                var head = await (
                    from v in db.Visits
                    where v.Id == visitId
                    join e in db.Episodes on v.EpisodeId equals e.Id
                    join p in db.Patients on e.PatientId equals p.Id
                    select new { Visit = v, Episode = e, Patient = p }).FirstOrDefaultAsync(cancellationToken);
                if (head is null)
                    return null;
                return new VisitRecord(
                    head.Visit,
                    head.Episode,
                    head.Patient,
                    await PartsAsync(db.Measurements, visitId, cancellationToken),
                    await PartsAsync(db.Observations, visitId, cancellationToken),
                    await PartsAsync(db.DangerAnswers, visitId, cancellationToken),
                    await PartsAsync(db.DangerDecisions, visitId, cancellationToken),
                    await PartsAsync(db.FindingDecisions, visitId, cancellationToken),
                    await PartsAsync(db.VisitAnswers, visitId, cancellationToken),
                    await db.NoteAmendments.Where(a => a.VisitId == visitId).OrderBy(a => a.AtUtc).ThenBy(a => a.Id)
                        .ToListAsync(cancellationToken));
            },
            cancellationToken);

    /// <summary>An episode's visits, first visit first.</summary>
    public Task<IReadOnlyList<Visit>> ListAsync(Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<Visit>>(
            who,
            async db => await db.Visits.Where(v => v.EpisodeId == episodeId).OrderBy(v => v.Number).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>Saves the free text, if nobody changed the visit since the version that was read.</summary>
    public Task<SaveOutcome<Visit>> SaveNoteAsync(
        Acting who, Guid visitId, VisitNote note, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var row = await FindAsync(db, visitId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<Visit>(NotHere);
                if (VisitNote.Of(row) == note)
                    return Outcome.Saved(row);
                if (row.State == VisitState.Signed)
                    return Outcome.Refused<Visit>(SaveRules.SignedSentence);
                if (row.RowVersion != expectedVersion)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                (row.Subjective, row.Objective, row.Assessment, row.Plan) = note;
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"visit/{visitId:D}/note",
            note);

    /// <summary>Signs a visit as it was read. From then on it can't be changed.</summary>
    public Task<SaveOutcome<Visit>> SignAsync(
        Acting who, Guid visitId, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var row = await FindAsync(db, visitId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<Visit>(NotHere);
                if (row.State == VisitState.Signed)
                    return Outcome.Refused<Visit>("This visit is signed already.");
                if (row.RowVersion != expectedVersion)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                db.Doing("signed");
                row.State = VisitState.Signed;
                row.SignedById = who.Clinician;
                row.SignedAtUtc = db.UtcNow;
                return Outcome.Saved(row);
            },
            cancellationToken);

    /// <summary>Adds a line to a signed note. The note itself stays as it was signed.</summary>
    /// <param name="who">Who acts; must be a person, because the line is signed with the name.</param>
    /// <param name="visitId">A signed visit.</param>
    /// <param name="text">What is added, not blank.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    public Task<SaveOutcome<NoteAmendment>> AmendNoteAsync(
        Acting who, Guid visitId, string text, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (string.IsNullOrWhiteSpace(text))
                    return Outcome.Refused<NoteAmendment>("Write what is added to the note.");
                var visit = await FindAsync(db, visitId, cancellationToken);
                if (visit is null)
                    return Outcome.Refused<NoteAmendment>(NotHere);
                if (visit.State != VisitState.Signed)
                    return Outcome.Refused<NoteAmendment>("This note is not signed yet: change the note itself.");
                var row = new NoteAmendment
                {
                    ClinicId = who.ClinicId,
                    Id = db.NewId(),
                    VisitId = visitId,
                    Text = text.Trim(),
                    ById = who.Clinician,
                    ByName = who.Name,
                    AtUtc = db.UtcNow,
                };
                db.NoteAmendments.Add(row);
                db.Doing("amended", row);
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"visit/{visitId:D}/amendment",
            text);

    internal const string NotHere = "This clinic has no such visit.";

    internal static async Task<Visit?> FindAsync(RecordsContext db, Guid visitId, CancellationToken cancellationToken)
    {
        var row = await db.Visits.FirstOrDefaultAsync(v => v.Id == visitId, cancellationToken);
        if (row is not null)
            await EpisodeStore.FindAsync(db, row.EpisodeId, cancellationToken);
        return row;
    }

    private static async Task<IReadOnlyList<TRow>> PartsAsync<TRow>(
        IQueryable<TRow> rows, Guid visitId, CancellationToken cancellationToken)
        where TRow : class, IVisitRow =>
        await rows.Where(r => r.VisitId == visitId).OrderBy(r => r.Id).ToListAsync(cancellationToken);
}
