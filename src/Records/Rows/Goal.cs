using MomentArm.Body;

namespace MomentArm.Records;

/// <summary>What a patient wants to reach in an episode: measurable and dated.</summary>
public sealed class Goal : IAuditedRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid EpisodeId { get; init; }

    /// <summary>The goal in the patient's words.</summary>
    [NameOnly]
    public required string Text { get; set; }

    /// <summary>The measure that shows it; null when nothing is counted.</summary>
    public string? MeasureId { get; set; }

    public Side? Side { get; set; }

    /// <summary>The named activity or task, for measures that have one.</summary>
    [NameOnly]
    public string? Activity { get; set; }

    /// <summary>Value when the goal was set, in the stored unit of the measure.</summary>
    public double? Baseline { get; set; }

    /// <summary>Value to reach, in the stored unit of the measure.</summary>
    public double? Target { get; set; }

    /// <summary>Where the target comes from, in words.</summary>
    public string? TargetReason { get; set; }

    public DateOnly SetOn { get; set; }

    /// <summary>The day by which it should be reached.</summary>
    public DateOnly? DueOn { get; set; }

    public GoalState State { get; set; }

    /// <summary>Why it was given up, or what was reached.</summary>
    [NameOnly]
    public string? Outcome { get; set; }

    public Guid RowVersion { get; set; }
}

/// <summary>Where a goal is.</summary>
public enum GoalState
{
    Open,
    Reached,
    GivenUp,
}
