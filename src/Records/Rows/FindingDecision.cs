namespace MomentArm.Records;

/// <summary>What the clinician made of one finding in one visit.</summary>
public sealed class FindingDecision : IVisitRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid VisitId { get; init; }

    public required string FindingId { get; init; }

    /// <summary>True when agreed with, false when dismissed.</summary>
    public bool Accepted { get; set; }

    public string? Reason { get; set; }

    public Guid RowVersion { get; set; }
}
