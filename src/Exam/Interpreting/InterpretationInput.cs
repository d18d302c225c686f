using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Everything an interpretation is made from.</summary>
public sealed record InterpretationInput
{
    /// <summary>The measure.</summary>
    public required Measure Measure { get; init; }

    /// <summary>This visit's readings; those of other measures are left out.</summary>
    public required ImmutableArray<Measurement> Now { get; init; }

    /// <summary>Earlier visits in any order.</summary>
    public ImmutableArray<EarlierVisit> Earlier { get; init; } = [];

    /// <summary>What is known of the person's build.</summary>
    public Physique Person { get; init; } = new();

    /// <summary>The affected side, if one is named.</summary>
    public Side? AffectedSide { get; init; }

    /// <summary>Norm rows; those of other measures are left out.</summary>
    public ImmutableArray<Norm> Norms { get; init; } = [];

    /// <summary>Equations that predict a value from age, stature and mass; those of other measures are left out.</summary>
    public ImmutableArray<Prediction> Predictions { get; init; } = [];

    /// <summary>Whether norms that nobody read in their source are shown beside the value.</summary>
    public bool ShowUnverified { get; init; } = true;

    /// <summary>
    /// Torque of gravity that the left muscles also held during the test, N m; positive adds to what the pad felt.
    /// Null when it was not computed.
    /// </summary>
    public double? GravityTorqueLeftNm { get; init; }

    /// <summary>The same for the right.</summary>
    public double? GravityTorqueRightNm { get; init; }
}
