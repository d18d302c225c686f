using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>What a clinician has typed and not yet saved. Each sees only their own.</summary>
public sealed class DraftStore(RecordsWork work)
{
    private const int LongestText = 1_000_000;

    /// <summary>Keeps a draft under a key, in place of the one there was.</summary>
    public async Task SaveAsync(Acting who, string key, string text, CancellationToken cancellationToken = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(key);
        if (text.Length > LongestText)
            throw new RecordsRefusedException("This draft is longer than one million characters and was not kept.");
        var outcome = await work.WriteAsync(
            who,
            async db =>
            {
                var row = await Mine(db, who).FirstOrDefaultAsync(d => d.Key == key, cancellationToken);
                if (row is null)
                {
                    row = new DraftRow { ClinicId = who.ClinicId, ClinicianId = who.Clinician, Key = key, Text = text };
                    db.Drafts.Add(row);
                }
                row.Text = text;
                row.UpdatedAtUtc = db.UtcNow;
                return Outcome.Saved(row);
            },
            cancellationToken);
        outcome.Require();
    }

    /// <summary>A draft; null when there is none.</summary>
    public Task<DraftRow?> GetAsync(Acting who, string key, CancellationToken cancellationToken = default) =>
        work.ReadAsync(who, db => Mine(db, who).FirstOrDefaultAsync(d => d.Key == key, cancellationToken), cancellationToken);

    /// <summary>All drafts whose key begins so, latest first.</summary>
    public Task<IReadOnlyList<DraftRow>> ListAsync(Acting who, string prefix = "", CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<DraftRow>>(
            who,
            async db => await Mine(db, who).Where(d => d.Key.StartsWith(prefix))
                .OrderByDescending(d => d.UpdatedAtUtc).ThenBy(d => d.Key).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>Drops a draft, once it has been saved or is not wanted any more.</summary>
    public async Task RemoveAsync(Acting who, string key, CancellationToken cancellationToken = default)
    {
        var outcome = await work.WriteAsync(
            who,
            async db =>
            {
                var row = await Mine(db, who).FirstOrDefaultAsync(d => d.Key == key, cancellationToken);
                if (row is not null)
                    db.Drafts.Remove(row);
                return Outcome.Saved(true);
            },
            cancellationToken);
        outcome.Require();
    }

    private static IQueryable<DraftRow> Mine(RecordsContext db, Acting who)
    {
        var me = who.Clinician;
        return db.Drafts.Where(d => d.ClinicianId == me);
    }
}
