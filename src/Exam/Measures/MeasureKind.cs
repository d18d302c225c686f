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

    /// <summary>How long a position is held, or how often a movement is repeated, until effort ends it.</summary>
    Endurance,

    /// <summary>What a whole-body task yields: a distance, a time, a speed, a count.</summary>
    Performance,

    /// <summary>Score of a questionnaire.</summary>
    Questionnaire,

    /// <summary>How the patient judges the change since the start, worse below zero and better above.</summary>
    GlobalChange,

    /// <summary>How thick a limb is, for swelling or loss of muscle.</summary>
    Girth,

    /// <summary>How much the patient does: distance run in a week, hours on the feet.</summary>
    LoadHistory,
}
