using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>The end of a clinic's trail at some moment: written down elsewhere, it shows later whether lines were cut off.</summary>
public sealed record AuditHead(long Sequence, string HashHex);

/// <summary>What checking a trail found.</summary>
/// <param name="Lines">Lines that hold, from the first on.</param>
/// <param name="FirstBadLine">Number of the first line that does not hold; null when all do.</param>
/// <param name="Sentence">The finding in words.</param>
public sealed record AuditCheck(long Lines, long? FirstBadLine, string Sentence)
{
    /// <summary>Whether every line holds.</summary>
    public bool IsWhole => FirstBadLine is null;
}

/// <summary>The audit trail: reading, checking, and noting what changes no row.</summary>
public sealed class AuditStore(RecordsWork work)
{
    /// <summary>The clinic's latest lines, latest first.</summary>
    public Task<IReadOnlyList<AuditEntry>> ListByClinicAsync(
        Acting who, int limit = 200, long? before = null, CancellationToken cancellationToken = default) =>
        ListAsync(who, db => db.AuditEntries, limit, before, cancellationToken);

    /// <summary>A patient's latest lines, latest first.</summary>
    public Task<IReadOnlyList<AuditEntry>> ListByPatientAsync(
        Acting who, Guid patientId, int limit = 200, long? before = null, CancellationToken cancellationToken = default) =>
        ListAsync(who, db => db.AuditEntries.Where(entry => entry.PatientId == patientId), limit, before, cancellationToken);

    /// <summary>Notes something that changes no row: a record opened, a sheet printed, a sign-in, a refusal.</summary>
    public async Task NoteAsync(
        Acting who, string action, string subjectType, string subjectId, Guid? patientId = null,
        CancellationToken cancellationToken = default)
    {
        var outcome = await work.WriteAsync(
            who,
            async db =>
            {
                await AuditWriter.AppendAsync(
                    db, [new AuditLine(patientId, action, subjectType, subjectId)], cancellationToken);
                return Outcome.Saved(true);
            },
            cancellationToken);
        outcome.Require();
    }

    /// <summary>The end of the clinic's trail; null when it is empty.</summary>
    public Task<AuditHead?> HeadAsync(Acting who, CancellationToken cancellationToken = default) =>
        work.ReadAsync(
            who,
            async db =>
            {
                var last = await db.AuditEntries.OrderByDescending(entry => entry.Sequence).FirstOrDefaultAsync(cancellationToken);
                return last is null ? null : new AuditHead(last.Sequence, Convert.ToHexStringLower(last.Hash));
            },
            cancellationToken);

    /// <summary>
    /// Computes every line's hash again. Finds a changed, removed, added or moved line; lines cut off at the end, or a
    /// trail rewritten as a whole, only against a head that was written down before.
    /// </summary>
    public Task<AuditCheck> VerifyAsync(Acting who, AuditHead? known = null, CancellationToken cancellationToken = default) =>
        work.ReadAsync(
            who,
            async db =>
            {
                var hash = AuditChain.Beginning(who.ClinicId);
                long lines = 0;
                await foreach (var entry in db.AuditEntries.OrderBy(e => e.Sequence).AsAsyncEnumerable()
                    .WithCancellation(cancellationToken))
                {
                    var expected = AuditChain.HashOf(entry, hash);
                    if (entry.Sequence != lines + 1 || !CryptographicOperations.FixedTimeEquals(expected, entry.Hash))
                        return Bad(lines, lines + 1, "was changed, removed or moved");
                    hash = entry.Hash;
                    lines++;
                    if (known?.Sequence == lines && known.HashHex != Convert.ToHexStringLower(hash))
                        return Bad(lines - 1, lines, "differs from what was written down earlier");
                }
                if (known is not null && known.Sequence > lines)
                    return Bad(lines, lines + 1, "is missing: the end of the trail was cut off");
                return new AuditCheck(lines, null, FormattableString.Invariant($"All {lines} lines of the audit trail hold."));
            },
            cancellationToken);

    private static AuditCheck Bad(long lines, long line, string what) =>
        new(lines, line, FormattableString.Invariant($"Line {line} of the audit trail {what}."));

    private Task<IReadOnlyList<AuditEntry>> ListAsync(
        Acting who, Func<RecordsContext, IQueryable<AuditEntry>> which, int limit, long? before, CancellationToken cancellationToken) =>
        work.ReadAsync<IReadOnlyList<AuditEntry>>(
            who,
            async db => await which(db).Where(entry => before == null || entry.Sequence < before)
                .OrderByDescending(entry => entry.Sequence).Take(limit).ToListAsync(cancellationToken),
            cancellationToken);
}
