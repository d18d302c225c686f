using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Records;

/// <summary>An episode of care: one complaint of one patient, from first visit to discharge.</summary>
public sealed class Episode : IAuditedRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid PatientId { get; init; }

    /// <summary>Short, as clinicians say it: "left hip, outer side".</summary>
    public required string Title { get; set; }

    public string? Region { get; set; }

    public Side? AffectedSide { get; set; }

    public DateOnly StartedOn { get; set; }

    /// <summary>What the patient wants to do again, in their words.</summary>
    [NameOnly]
    public string? Goal { get; set; }

    public Irritability? Irritability { get; set; }

    public DateOnly? ClosedOn { get; set; }

    /// <summary>Why it ended, in a few words.</summary>
    [NameOnly]
    public string? ClosedReason { get; set; }

    public Guid RowVersion { get; set; }
}
