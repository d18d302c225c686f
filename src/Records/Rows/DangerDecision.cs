namespace MomentArm.Records;

/// <summary>A clinician's recorded decision on a danger sign that was answered yes.</summary>
public sealed class DangerDecision : IVisitRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid VisitId { get; init; }

    public required string SignId { get; init; }

    public Guid ById { get; set; }

    public required string ByName { get; set; }

    public required string Reason { get; set; }

    public DateTime AtUtc { get; set; }

    public Guid RowVersion { get; set; }
}
