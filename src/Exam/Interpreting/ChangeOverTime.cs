using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>What a change over time amounts to.</summary>
public enum ChangeVerdict
{
    /// <summary>Not larger than error.</summary>
    WithinError,

    /// <summary>Larger than error.</summary>
    Real,

    /// <summary>Larger than error and than the smallest change that matters to patients.</summary>
    RealAndWorthwhile,

    /// <summary>No error is published for this measure.</summary>
    NoErrorKnown,

    /// <summary>The readings were not taken alike; both are shown and neither is judged.</summary>
    NotComparable,
}

/// <summary>A change between an earlier visit and now.</summary>
public sealed record ChangeOverTime
{
    /// <summary>Side; null where there is none.</summary>
    public Side? Side { get; init; }

    /// <summary>Activity; null for the mean of activities and for other measures.</summary>
    public string? Activity { get; init; }

    /// <summary>The earlier visit.</summary>
    public required int SinceVisit { get; init; }

    /// <summary>Its day.</summary>
    public required DateOnly SinceDay { get; init; }

    /// <summary>Whether that is the first visit with this reading; false for the latest before now.</summary>
    public required bool SinceFirst { get; init; }

    /// <summary>Value then: stored unit, or N m when <see cref="ByTorque"/>.</summary>
    public required double Before { get; init; }

    /// <summary>Value now, same unit.</summary>
    public required double After { get; init; }

    /// <summary>Whether torque was compared and not force.</summary>
    public required bool ByTorque { get; init; }

    /// <summary>Smallest change beyond error, same unit; null when unknown.</summary>
    public double? Detectable { get; init; }

    /// <summary>Smallest change that matters to patients from that baseline, same unit; null when unknown.</summary>
    public double? Mcid { get; init; }

    /// <summary>Better (true), worse (false), or null when equal or neither direction is better.</summary>
    public bool? Better { get; init; }

    /// <summary>Verdict.</summary>
    public required ChangeVerdict Verdict { get; init; }
}
