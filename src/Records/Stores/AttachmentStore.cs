using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>An attachment without its content.</summary>
public sealed record AttachmentMark(
    Guid Id, Guid VisitId, string Name, string MediaType, long Length, string? Caption, DateTime AtUtc, Guid RowVersion);

/// <summary>Photos and files of visits.</summary>
public sealed class AttachmentStore(RecordsWork work)
{
    /// <summary>Largest file that is taken, bytes: 10 MiB (our choice).</summary>
    public const int MostBytes = 10 * 1024 * 1024;

    /// <summary>Most files of one visit (our choice).</summary>
    public const int MostFiles = 20;

    private const string NotHere = "This file is not there any more.";

    // What a file is, is read from its first bytes; a name or a header can lie.
    private static readonly (string MediaType, byte[] Start)[] Kinds =
    [
        ("image/jpeg", [0xFF, 0xD8, 0xFF]),
        ("image/png", [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]),
        ("application/pdf", "%PDF-"u8.ToArray()),
    ];

    /// <summary>The files of an episode, oldest first, without their content.</summary>
    public Task<IReadOnlyList<AttachmentMark>> ListAsync(Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<AttachmentMark>>(
            who,
            async db => await (
                from a in db.Attachments
                join v in db.Visits on a.VisitId equals v.Id
                where v.EpisodeId == episodeId
                orderby v.Number, a.Id
                select new AttachmentMark(a.Id, a.VisitId, a.Name, a.MediaType, a.Length, a.Caption, a.AtUtc, a.RowVersion))
                .ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>One file with its content; null when this clinic has none with that id.</summary>
    public Task<Attachment?> GetAsync(Acting who, Guid attachmentId, CancellationToken cancellationToken = default) =>
        work.ReadAsync(who, db => db.Attachments.FirstOrDefaultAsync(a => a.Id == attachmentId, cancellationToken), cancellationToken);

    /// <summary>Attaches a file to an open visit. The same content sent twice is one file.</summary>
    /// <param name="who">Who acts.</param>
    /// <param name="visitId">The visit.</param>
    /// <param name="name">File name as given.</param>
    /// <param name="content">JPEG, PNG or PDF, at most <see cref="MostBytes"/>.</param>
    /// <param name="caption">What it shows.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    public Task<SaveOutcome<Attachment>> AddAsync(
        Acting who, Guid visitId, string name, byte[] content, string? caption, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (content.Length is 0 or > MostBytes)
                    return Outcome.Refused<Attachment>("The file is empty or larger than 10 MB: make a smaller one.");
                if (Kinds.FirstOrDefault(k => content.AsSpan().StartsWith(k.Start)).MediaType is not { } mediaType)
                    return Outcome.Refused<Attachment>("This file is no JPEG, PNG or PDF: save it as one of these first.");
                if (await FindOpenAsync(db, visitId, cancellationToken) is { } fault)
                    return Outcome.Refused<Attachment>(fault);
                var sha = Convert.ToHexStringLower(SHA256.HashData(content));
                var there = await db.Attachments.Where(a => a.VisitId == visitId).Select(a => new { a.Id, a.Sha256 })
                    .ToListAsync(cancellationToken);
                if (there.FirstOrDefault(a => a.Sha256 == sha) is { } same)
                    return Outcome.Saved(await db.Attachments.FirstAsync(a => a.Id == same.Id, cancellationToken));
                if (there.Count >= MostFiles)
                    return Outcome.Refused<Attachment>($"A visit holds at most {MostFiles} files: remove one first.");
                var row = new Attachment
                {
                    ClinicId = who.ClinicId,
                    Id = db.NewId(),
                    VisitId = visitId,
                    Name = NameOf(name),
                    MediaType = mediaType,
                    Length = content.Length,
                    Sha256 = sha,
                    Caption = string.IsNullOrWhiteSpace(caption) ? null : caption.Trim(),
                    Content = content,
                    AtUtc = db.UtcNow,
                };
                db.Attachments.Add(row);
                return Outcome.Saved(row);
            },
            cancellationToken);

    /// <summary>Removes a file from an open visit; the audit trail keeps that it was there.</summary>
    public Task<SaveOutcome<Attachment>> RemoveAsync(
        Acting who, Guid attachmentId, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var row = await db.Attachments.FirstOrDefaultAsync(a => a.Id == attachmentId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<Attachment>(NotHere);
                if (await FindOpenAsync(db, row.VisitId, cancellationToken) is { } fault)
                    return Outcome.Refused<Attachment>(fault);
                if (row.RowVersion != expectedVersion)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                db.Attachments.Remove(row);
                return Outcome.Saved(row);
            },
            cancellationToken);

    private static async Task<string?> FindOpenAsync(RecordsContext db, Guid visitId, CancellationToken cancellationToken)
    {
        var visit = await VisitStore.FindAsync(db, visitId, cancellationToken);
        if (visit is null)
            return VisitStore.NotHere;
        return visit.State == VisitState.Signed ? SaveRules.SignedSentence : null;
    }

    private static string NameOf(string name)
    {
        var last = name.Split('/', '\\')[^1].Trim();
        return last.Length == 0 ? "file" : last[..Math.Min(last.Length, 120)];
    }
}
