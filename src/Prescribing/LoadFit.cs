namespace MomentArm.Prescribing;

/// <summary>How an exercise's load share lies to the window that this person's irritability allows.</summary>
public enum LoadFit
{
    /// <summary>The whole interval lies below the window.</summary>
    TooLight,

    /// <summary>The best estimate lies in the window.</summary>
    Inside,

    /// <summary>The best estimate is below the window but the interval reaches it.</summary>
    MaybeLight,

    /// <summary>The best estimate is above the window but the interval reaches it.</summary>
    MaybeHeavy,

    /// <summary>The whole interval lies above the window.</summary>
    TooHeavy,

    /// <summary>No share could be computed, or load is not what the exercise is about.</summary>
    NotJudged,
}
