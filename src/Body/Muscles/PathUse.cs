namespace MomentArm.Body;

/// <summary>What is done where the published lines are no longer trusted.</summary>
public enum PathUse
{
    /// <summary>
    /// Lines run round the obstacles of the table; beyond the trusted ranges the arms stay those of the last trusted angle, and lengths follow
    /// these arms.
    /// </summary>
    Trusted,

    /// <summary>The published geometry is followed everywhere, through bone if need be; for checks against published figures and for ranges of path length.</summary>
    AsPublished,
}
