using MomentArm.Exam;

namespace MomentArm.Records;

/// <summary>The answer to one danger-sign question in one visit.</summary>
public sealed class DangerAnswerRow : IVisitRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid VisitId { get; init; }

    public required string SignId { get; init; }

    public DangerAnswer Answer { get; set; }

    public DateTime AtUtc { get; set; }

    public Guid RowVersion { get; set; }
}
