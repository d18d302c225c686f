using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>What one measure says at one visit, side by side.</summary>
public sealed record Interpretation
{
    /// <summary>The measure.</summary>
    public required Measure Measure { get; init; }

    /// <summary>The readings, left first.</summary>
    public required ImmutableArray<SideReading> Readings { get; init; }

    /// <summary>Mean of the named activities, patient-specific function only.</summary>
    public double? MeanOfActivities { get; init; }

    /// <summary>Left against right; null unless both were measured.</summary>
    public SideComparison? Sides { get; init; }

    /// <summary>Values against norms; the most fitting row of each side first.</summary>
    public required ImmutableArray<NormComparison> Norms { get; init; }

    /// <summary>Changes since the first and the last earlier visit.</summary>
    public required ImmutableArray<ChangeOverTime> Changes { get; init; }

    /// <summary>The sentences to show, in order.</summary>
    public required ImmutableArray<Statement> Statements { get; init; }

    /// <summary>The reading of a side.</summary>
    /// <param name="side">The side; null for measures without side.</param>
    /// <returns>The reading, or null when that side was not measured.</returns>
    public SideReading? Of(Side? side) => Readings.LastOrDefault(r => r.Measurement.Side == side);
}
