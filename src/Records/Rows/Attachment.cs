namespace MomentArm.Records;

/// <summary>A photo or file of a visit. What it holds never changes.</summary>
public sealed class Attachment : IVisitRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid VisitId { get; init; }

    /// <summary>File name as given.</summary>
    [NameOnly]
    public required string Name { get; init; }

    /// <summary>Media type, one of those that are taken.</summary>
    public required string MediaType { get; init; }

    /// <summary>Length in bytes.</summary>
    public long Length { get; init; }

    /// <summary>SHA-256 of the content, hexadecimal.</summary>
    public required string Sha256 { get; init; }

    /// <summary>What it shows.</summary>
    [NameOnly]
    public string? Caption { get; set; }

    [NameOnly]
    public required byte[] Content { get; init; }

    public DateTime AtUtc { get; init; }

    public Guid RowVersion { get; set; }
}
