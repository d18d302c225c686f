using MomentArm.Body;

namespace MomentArm.Records;

/// <summary>What the patient could show and say back of one exercise at the hand-over.</summary>
public sealed class TeachBack : IAuditedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid ProgramVersionId { get; init; }

    public required string ExerciseId { get; init; }

    public Side? Side { get; init; }

    public bool Shown { get; init; }

    public bool SaidBack { get; init; }

    /// <summary>What was missed and gone over again.</summary>
    [NameOnly]
    public string? Missed { get; init; }

    public DateTime AtUtc { get; init; }
}
