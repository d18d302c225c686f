using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>Links for the patient's phone.</summary>
public sealed class LinkStore(RecordsWork work)
{
    private const int TokenBytes = 32;
    private const int TokenLength = 43;

    /// <summary>Makes a link that opens the episode's program until it expires. The token is given back this once.</summary>
    public async Task<SaveOutcome<CreatedLink>> CreateAsync(
        Acting who, Guid episodeId, TimeSpan lifetime, CancellationToken cancellationToken = default)
    {
        if (lifetime <= TimeSpan.Zero || lifetime > TimeSpan.FromDays(366))
            return Outcome.Refused<CreatedLink>("A link can live from one moment to one year.");
        var token = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(TokenBytes));
        return await work.WriteAsync(
            who,
            async db =>
            {
                if (await EpisodeStore.FindAsync(db, episodeId, cancellationToken) is null)
                    return Outcome.Refused<CreatedLink>(EpisodeStore.NotHere);
                var row = new PatientLink
                {
                    ClinicId = who.ClinicId,
                    Id = db.NewId(),
                    EpisodeId = episodeId,
                    TokenHash = HashOf(token),
                    CreatedAtUtc = db.UtcNow,
                    ExpiresAtUtc = db.UtcNow + lifetime,
                };
                db.PatientLinks.Add(row);
                return Outcome.Saved(new CreatedLink(row.Id, token, row.ExpiresAtUtc));
            },
            cancellationToken);
    }

    /// <summary>An episode's links, latest first.</summary>
    public Task<IReadOnlyList<PatientLink>> ListAsync(Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<PatientLink>>(
            who,
            async db => await db.PatientLinks.Where(l => l.EpisodeId == episodeId)
                .OrderByDescending(l => l.CreatedAtUtc).ThenByDescending(l => l.Id).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>What a token opens; null for an unknown, altered, expired or revoked one, with nothing to tell them apart.</summary>
    public async Task<LinkAccess?> FindAsync(string? token, CancellationToken cancellationToken = default)
    {
        var (state, link) = await LookUpAsync(token, cancellationToken);
        return state == LinkState.Usable ? AccessOf(link!) : null;
    }

    /// <summary>As <see cref="FindAsync"/>, and notes that the page was opened, or why it was not.</summary>
    public async Task<LinkAccess?> OpenAsync(string? token, CancellationToken cancellationToken = default)
    {
        var (state, link) = await LookUpAsync(token, cancellationToken);
        if (link is null)
            return null;
        var access = AccessOf(link);
        await work.WriteAsync(
            access.Acting,
            async db =>
            {
                await EpisodeStore.FindAsync(db, link.EpisodeId, cancellationToken);
                if (state == LinkState.Usable)
                {
                    var row = await db.PatientLinks.FirstAsync(l => l.Id == link.Id, cancellationToken);
                    row.LastOpenedAtUtc = db.UtcNow;
                    db.Doing("opened");
                }
                else
                {
                    var line = new AuditLine(
                        db.PatientId, state == LinkState.Expired ? "refused: expired" : "refused: revoked", "patient link",
                        link.Id.ToString("D"));
                    await AuditWriter.AppendAsync(db, [line], cancellationToken);
                }
                return Outcome.Saved(link);
            },
            cancellationToken);
        return state == LinkState.Usable ? access : null;
    }

    /// <summary>Makes a link open nothing from now on.</summary>
    public Task<SaveOutcome<PatientLink>> RevokeAsync(Acting who, Guid linkId, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var row = await db.PatientLinks.FirstOrDefaultAsync(l => l.Id == linkId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<PatientLink>("This clinic has no such link.");
                await EpisodeStore.FindAsync(db, row.EpisodeId, cancellationToken);
                if (row.RevokedAtUtc is null)
                {
                    db.Doing("revoked");
                    row.RevokedAtUtc = db.UtcNow;
                }
                return Outcome.Saved(row);
            },
            cancellationToken);

    /// <summary>
    /// Looks a token up by its hash, so that the time taken tells nothing about how much of a guess was right. The only
    /// place that looks across clinics: the token itself says which clinic it is for.
    /// </summary>
    internal async Task<(LinkState State, PatientLink? Link)> LookUpAsync(string? token, CancellationToken cancellationToken)
    {
        if (token is not { Length: TokenLength })
            return (LinkState.Unknown, null);
        var hash = HashOf(token);
        await using var db = await work.OpenAsync(cancellationToken);
        var link = await db.PatientLinks.AsNoTracking().IgnoreQueryFilters([RecordsContext.ClinicFilter])
            .FirstOrDefaultAsync(l => l.TokenHash == hash, cancellationToken);
        if (link is null || !CryptographicOperations.FixedTimeEquals(link.TokenHash, hash))
            return (LinkState.Unknown, null);
        if (link.RevokedAtUtc is not null)
            return (LinkState.Revoked, link);
        return (link.OpensAt(work.UtcNow) ? LinkState.Usable : LinkState.Expired, link);
    }

    internal static byte[] HashOf(string token) => SHA256.HashData(Encoding.UTF8.GetBytes(token));

    private static LinkAccess AccessOf(PatientLink link) => new(link.ClinicId, link.EpisodeId, link.Id);
}
