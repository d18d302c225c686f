namespace MomentArm.Exam;

/// <summary>Where the danger-sign screen leaves the visit.</summary>
public enum GateState
{
    /// <summary>Every question asked, no sign present.</summary>
    Clear,

    /// <summary>Exercise may go on with limits and watching.</summary>
    ProceedWithCare,

    /// <summary>At least one question has not been asked. Not asked is not no.</summary>
    Unfinished,

    /// <summary>No new loading until a clinician records who cleared it.</summary>
    ReferBeforeExercise,

    /// <summary>Medical contact the same day; exercise waits.</summary>
    SameDay,

    /// <summary>Stop and call the emergency service.</summary>
    Emergency,
}
