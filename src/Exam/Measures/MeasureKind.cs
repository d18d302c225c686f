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
