namespace MomentArm.Exam;

/// <summary>What kind of thing a measure measures.</summary>
public enum MeasureKind
{
    /// <summary>Pain from 0 (none) to 10 (worst imaginable), as the patient says it.</summary>
    PainRating,

    /// <summary>How far a joint goes.</summary>
    RangeOfMotion,

    /// <summary>How far a muscle group lets the limb go.</summary>
    MuscleLength,

    /// <summary>Greatest force against a pad at a known distance from the joint.</summary>
    Strength,

    /// <summary>An activity the patient names, from 0 (cannot do it) to 10 (as before the problem).</summary>
    PatientSpecific,
}

/// <summary>The position the patient is in; the exam goes through them in this order, so nobody lies down twice.</summary>
public enum ExamPosition
{
    /// <summary>Talking, before anything is touched.</summary>
    Interview,

    /// <summary>On the feet.</summary>
    Standing,

    /// <summary>On the edge of the table.</summary>
    Sitting,

    /// <summary>On the back.</summary>
    Supine,

    /// <summary>On the side.</summary>
    SideLying,

    /// <summary>On the front.</summary>
    Prone,
}

/// <summary>The unit in which values are stored. Screens and files show degrees for radians.</summary>
public enum MeasureUnit
{
    /// <summary>Points of a scale from 0 to 10.</summary>
    Points,

    /// <summary>Radians; shown in degrees.</summary>
    Radians,

    /// <summary>Newtons.</summary>
    Newtons,
}

/// <summary>Which way is better.</summary>
public enum Direction
{
    /// <summary>More is better.</summary>
    HigherBetter,

    /// <summary>Less is better.</summary>
    LowerBetter,

    /// <summary>Neither end is better in itself.</summary>
    Neither,
}

/// <summary>Who moves the joint in a test of range or length. Values of the two are never compared.</summary>
public enum MotionMode
{
    /// <summary>Not a movement.</summary>
    NotApplicable,

    /// <summary>The patient moves.</summary>
    Active,

    /// <summary>The examiner moves.</summary>
    Passive,
}

/// <summary>How several trials become one value.</summary>
public enum TrialRule
{
    /// <summary>The mean of the trials.</summary>
    Mean,

    /// <summary>The best trial: the highest, or the lowest where lower is better.</summary>
    Best,
}

/// <summary>A closed range of values in the stored unit.</summary>
/// <param name="Low">Lowest value.</param>
/// <param name="High">Highest value.</param>
public sealed record ValueRange(double Low, double High)
{
    /// <summary>Whether a value lies in the range, ends included. NaN never does.</summary>
    /// <param name="value">The value in the stored unit.</param>
    /// <returns>True inside.</returns>
    public bool Holds(double value) => value >= Low && value <= High;
}

/// <summary>How a measure is taken: short enough to read while doing it.</summary>
public sealed record MeasureMethod
{
    /// <summary>Steps in order.</summary>
    public required System.Collections.Immutable.ImmutableArray<string> Steps { get; init; }

    /// <summary>What is held still, and how; null where nothing is.</summary>
    public string? Stabilization { get; init; }

    /// <summary>Where the pad, the goniometer axis or the inclinometer goes; null for questions.</summary>
    public string? Placement { get; init; }

    /// <summary>How effort or movement is built up and held, and how many trials.</summary>
    public string? Technique { get; init; }
}
