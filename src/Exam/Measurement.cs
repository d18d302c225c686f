using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>
/// One thing measured once on one side: the raw trials as taken, in the measure's own stored unit
/// (radians, newtons, metres, points, repetitions, seconds), with all that is needed to interpret it later.
/// </summary>
public sealed record Measurement
{
    /// <summary>Which measure, by its id in content/measures.</summary>
    public required string MeasureId { get; init; }

    /// <summary>The side measured; null for measures without side.</summary>
    public Side? Side { get; init; }

    /// <summary>The trials in the order taken, in the stored unit of the measure; at least one.</summary>
    public required ImmutableArray<double> Trials { get; init; }

    /// <summary>Distance from the joint centre to the pad, metres; strength by force only.</summary>
    public double? LeverArmM { get; init; }

    /// <summary>Pain during the test, 0 to 10; null when not asked.</summary>
    public int? PainDuring { get; init; }

    /// <summary>The patient's own words for a named activity or task; patient-specific function and pain per task only.</summary>
    public string? Activity { get; init; }

    /// <summary>Which of several readings of one visit it is, such as "after"; null when there is one only.</summary>
    public string? Moment { get; init; }

    /// <summary>How it was taken, where noted.</summary>
    public TestConditions Conditions { get; init; } = TestConditions.None;

    /// <summary>What was typed, kept as it was.</summary>
    public string? AsTyped { get; init; }

    /// <summary>Free note.</summary>
    public string? Note { get; init; }
}
