using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>How a measure is taken: short enough to read while doing it.</summary>
public sealed record MeasureMethod
{
    /// <summary>Steps in order.</summary>
    public required ImmutableArray<string> Steps { get; init; }

    /// <summary>What is held still, and how; null where nothing is.</summary>
    public string? Stabilization { get; init; }

    /// <summary>Where the pad, the goniometer axis or the inclinometer goes; null for questions.</summary>
    public string? Placement { get; init; }

    /// <summary>How effort or movement is built up and held, and how many trials.</summary>
    public string? Technique { get; init; }

    /// <summary>What can be done in its place without a device; null where none is needed or none is known.</summary>
    public string? WithoutDevice { get; init; }
}
