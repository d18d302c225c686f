namespace MomentArm.Records;

/// <summary>A link to one episode's program for the patient's phone. The token itself is kept nowhere.</summary>
public sealed class PatientLink : IAuditedRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid EpisodeId { get; init; }

    /// <summary>SHA-256 of the token.</summary>
    [NameOnly]
    public required byte[] TokenHash { get; init; }

    public DateTime CreatedAtUtc { get; init; }

    public DateTime ExpiresAtUtc { get; init; }

    public DateTime? RevokedAtUtc { get; set; }

    public DateTime? LastOpenedAtUtc { get; set; }

    public Guid RowVersion { get; set; }

    /// <summary>Whether it opens anything at that instant.</summary>
    public bool OpensAt(DateTime utc) => RevokedAtUtc is null && utc < ExpiresAtUtc;
}
