namespace MomentArm.Exam;

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
