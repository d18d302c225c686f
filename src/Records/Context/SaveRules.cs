using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace MomentArm.Records;

/// <summary>
/// What holds for every save, whoever wrote the code that saves: rows of one clinic only, signed visits and delivered
/// documents stay as they are, a new row version for what changed, and a line in the audit trail for each change.
/// </summary>
internal sealed class SaveRules : SaveChangesInterceptor
{
    private SaveRules()
    {
    }

    internal static SaveRules Instance { get; } = new();

    public override InterceptionResult<int> SavingChanges(DbContextEventData eventData, InterceptionResult<int> result) =>
        throw new InvalidOperationException("Records are saved with SaveChangesAsync.");

    public override async ValueTask<InterceptionResult<int>> SavingChangesAsync(
        DbContextEventData eventData, InterceptionResult<int> result, CancellationToken cancellationToken = default)
    {
        var db = (RecordsContext)eventData.Context!;
        db.ChangeTracker.DetectChanges();
        var changed = db.ChangeTracker.Entries<IClinicRow>().Where(IsChange).ToList();
        if (changed.Count == 0)
            return result;
        foreach (var entry in changed)
        {
            KeepToOneClinic(db, entry.Entity);
            KeepDelivered(entry);
        }
        await KeepSignedVisitsAsync(db, changed, cancellationToken);
        foreach (var entry in changed.Where(e => e.State != EntityState.Deleted))
        {
            if (entry.Entity is IVersionedRow row)
                row.RowVersion = db.NewId();
        }
        await AuditWriter.AppendAsync(db, changed, cancellationToken);
        return result;
    }

    private static bool IsChange(EntityEntry entry) =>
        entry.State is EntityState.Added or EntityState.Modified or EntityState.Deleted;

    private static void KeepToOneClinic(RecordsContext db, IClinicRow row)
    {
        if (db.Clinic == Guid.Empty)
            throw new RecordsRefusedException("Nothing can be saved before it is known which clinic acts.");
        if (row.ClinicId != db.Clinic)
            throw new RecordsRefusedException("This belongs to another clinic and can't be saved from here.");
    }

    private static void KeepDelivered(EntityEntry<IClinicRow> entry)
    {
        if (entry.State == EntityState.Added)
            return;
        switch (entry.Entity)
        {
            case AuditEntry:
                throw new RecordsRefusedException("The audit trail can't be changed; it only grows.");
            case SessionLogRow or MorningLogRow:
                throw new RecordsRefusedException("What a patient reported can't be changed.");
            case NoteAmendment:
                throw new RecordsRefusedException("What was added to a signed note can't be changed; add another line.");
            case Attachment when entry.State == EntityState.Modified && entry.Property(nameof(Attachment.Content)).IsModified:
                throw new RecordsRefusedException("A file can't be changed; remove it and attach the new one.");
            case TeachBack:
                throw new RecordsRefusedException("What was noted at the hand-over can't be changed.");
            case ProgramVersion when entry.State == EntityState.Deleted
                || entry.Property(nameof(ProgramVersion.Document)).IsModified:
                throw new RecordsRefusedException("A program version can't be changed or removed; save a new version.");
            case ClinicForm when entry.State == EntityState.Deleted
                || entry.Property(nameof(ClinicForm.Document)).IsModified:
                throw new RecordsRefusedException("A version of a form can't be changed or removed; save a new version.");
            case Visit when (VisitState)entry.Property(nameof(Visit.State)).OriginalValue! == VisitState.Signed:
                throw new RecordsRefusedException(SignedSentence);
        }
    }

    internal const string SignedSentence = "This visit is signed and can't be changed. Write what is new in today's visit.";

    private static async Task KeepSignedVisitsAsync(
        RecordsContext db, List<EntityEntry<IClinicRow>> changed, CancellationToken cancellationToken)
    {
        var visits = changed.Select(e => e.Entity).OfType<IVisitRow>().Select(r => r.VisitId).Distinct().ToList();
        if (visits.Count == 0)
            return;
        var signed = await db.Visits.AsNoTracking()
            .AnyAsync(v => visits.Contains(v.Id) && v.State == VisitState.Signed, cancellationToken);
        if (signed)
            throw new RecordsRefusedException(SignedSentence);
    }
}
