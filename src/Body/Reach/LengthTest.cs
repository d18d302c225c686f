namespace MomentArm.Body;

/// <summary>What a limit of length rests on, the strongest first.</summary>
public enum LimitBasis
{
    /// <summary>A muscle length test of this person on this side.</summary>
    Tested,

    /// <summary>The same, stopped by pain: the muscle may go farther.</summary>
    TestedPainLimited,

    /// <summary>A test of this person's other side, taken over because it was marked for both sides.</summary>
    OtherSide,

    /// <summary>The mean of a published sample in the same test; this person was not tested.</summary>
    Norm,

    /// <summary>The longest path over the usual joint ranges; this person was not tested and no norm fits.</summary>
    UsualRange,
}

/// <summary>A muscle length test in engine form: a pose, the joint that is read, and the reading.</summary>
public sealed record LengthTest
{
    /// <summary>Name for the screen, such as "Straight-leg raise".</summary>
    public required string Name { get; init; }

    /// <summary>The group it measures.</summary>
    public required MuscleGroup Group { get; init; }

    /// <summary>The side tested.</summary>
    public required Side Side { get; init; }

    /// <summary>The test pose with the tested limb working; the angle of <see cref="Measured"/> in it is replaced by the reading.</summary>
    public required PosedFrame Pose { get; init; }

    /// <summary>The joint action whose angle is the reading: positive readings go in its direction.</summary>
    public required JointAction Measured { get; init; }

    /// <summary>The reading, radians.</summary>
    public required double Reading { get; init; }

    /// <summary>Least reading that can be true, radians.</summary>
    public required double Least { get; init; }

    /// <summary>Largest reading that can be true, radians.</summary>
    public required double Most { get; init; }

    /// <summary>
    /// Standard error of the reading for a test of this person, or standard deviation between people for a norm; radians, 0 or more.
    /// </summary>
    public required double Error { get; init; }

    /// <summary>Tested, tested with pain, or norm.</summary>
    public LimitBasis Basis { get; init; } = LimitBasis.Tested;

    /// <summary>Whether the reading may stand for the other side too where that side has no test of its own. Never by itself.</summary>
    public bool ForBothSides { get; init; }
}
