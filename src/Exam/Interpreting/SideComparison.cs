using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>How a difference stands against error.</summary>
public enum ErrorVerdict
{
    /// <summary>Larger than error.</summary>
    BeyondError,

    /// <summary>Not larger than error.</summary>
    WithinError,

    /// <summary>No error is published for this measure.</summary>
    NoErrorKnown,

    /// <summary>The two readings were not taken alike; both are shown and neither is judged.</summary>
    NotComparable,
}

/// <summary>Left against right.</summary>
public sealed record SideComparison
{
    /// <summary>The side that is worse; null when equal or neither direction is better.</summary>
    public Side? WorseSide { get; init; }

    /// <summary>
    /// Limb symmetry index, percent: affected over other (other over affected where lower is better); without an affected
    /// side the worse over the better. Null for angles, whose zero is a convention, and when not comparable.
    /// </summary>
    public double? Index { get; init; }

    /// <summary>Size of the difference, 0 or more: in the stored unit, or in N m when <see cref="ByTorque"/>.</summary>
    public required double Difference { get; init; }

    /// <summary>Whether torque was compared and not force.</summary>
    public required bool ByTorque { get; init; }

    /// <summary>Smallest difference beyond error, same unit; null when unknown.</summary>
    public double? Detectable { get; init; }

    /// <summary>Verdict.</summary>
    public required ErrorVerdict Verdict { get; init; }

    /// <summary>
    /// The lack of the worse side as a fraction of the way from the worst possible value to the better side's value, 0 to 1.
    /// For strength it equals 1 - worse/better.
    /// </summary>
    public required double Deficit { get; init; }
}
