using System.Text.Json;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>How every store reads and writes: one short-lived context and, for a change, one transaction that takes the write lock first.</summary>
public sealed class RecordsWork(IDbContextFactory<RecordsContext> factory, TimeProvider clock)
{
    internal TimeProvider Clock => clock;

    internal DateTime UtcNow => clock.GetUtcNow().UtcDateTime;

    internal RecordsWork At(TimeProvider other) => new(factory, other);

    internal async Task<RecordsContext> OpenAsync(CancellationToken cancellationToken) =>
        await factory.CreateDbContextAsync(cancellationToken);

    /// <summary>Reads what the acting clinic may see.</summary>
    internal async Task<T> ReadAsync<T>(Acting who, Func<RecordsContext, Task<T>> read, CancellationToken cancellationToken)
    {
        await using var db = await OpenAsync(cancellationToken);
        db.ActAs(who, clock);
        db.ChangeTracker.QueryTrackingBehavior = QueryTrackingBehavior.NoTracking;
        return await read(db);
    }

    /// <summary>Changes, saves and commits, with the audit trail in the same transaction; or changes nothing.</summary>
    /// <param name="who">Who acts.</param>
    /// <param name="change">Makes the change on the context; the save follows when it answers Saved.</param>
    /// <param name="draftKey">Where to keep what was typed when it can't be saved; dropped when it is.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    internal async Task<SaveOutcome<T>> WriteAsync<T>(
        Acting who, Func<RecordsContext, Task<SaveOutcome<T>>> change, CancellationToken cancellationToken,
        string? draftKey = null, object? typed = null)
    {
        SaveOutcome<T> outcome;
        await using (var db = await OpenAsync(cancellationToken))
        {
            db.ActAs(who, clock);
            await using var transaction = await db.Database.BeginTransactionAsync(cancellationToken);
            outcome = await TryAsync(db, change, cancellationToken);
            if (outcome is SaveOutcome<T>.Saved)
            {
                await DropDraftAsync(db, who, draftKey, cancellationToken);
                await transaction.CommitAsync(cancellationToken);
            }
        }
        if (outcome is SaveOutcome<T>.Saved || draftKey is null || typed is null || who.ClinicianId is null)
            return outcome;
        await new DraftStore(this).SaveAsync(who, draftKey, JsonSerializer.Serialize(typed, RecordsJson.Drafts), cancellationToken);
        return outcome switch
        {
            SaveOutcome<T>.Conflict conflict => conflict with { DraftKey = draftKey },
            SaveOutcome<T>.Refused refused => refused with { DraftKey = draftKey },
            _ => outcome,
        };
    }

    /// <summary>The conflict with what now stands, and who made it so.</summary>
    internal static async Task<SaveOutcome<T>> ConflictAsync<T>(
        RecordsContext db, Guid subjectId, T? theirs, CancellationToken cancellationToken)
    {
        var subject = subjectId.ToString("D");
        var last = await db.AuditEntries.AsNoTracking().Where(entry => entry.SubjectId == subject)
            .OrderByDescending(entry => entry.Sequence).FirstOrDefaultAsync(cancellationToken);
        return new SaveOutcome<T>.Conflict(theirs, last?.WhoName ?? "Someone", last?.AtUtc);
    }

    // What has been saved needs no draft any more; both happen together or not at all.
    private static async Task DropDraftAsync(RecordsContext db, Acting who, string? draftKey, CancellationToken cancellationToken)
    {
        if (draftKey is not null && who.ClinicianId is { } me)
            await db.Drafts.Where(d => d.ClinicianId == me && d.Key == draftKey).ExecuteDeleteAsync(cancellationToken);
    }

    private static async Task<SaveOutcome<T>> TryAsync<T>(
        RecordsContext db, Func<RecordsContext, Task<SaveOutcome<T>>> change, CancellationToken cancellationToken)
    {
        try
        {
            var outcome = await change(db);
            if (outcome is SaveOutcome<T>.Saved)
                await db.SaveChangesAsync(cancellationToken);
            return outcome;
        }
        catch (RecordsRefusedException refusal)
        {
            return new SaveOutcome<T>.Refused(refusal.Message);
        }
    }
}
