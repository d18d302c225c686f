namespace MomentArm.Exam;

/// <summary>How several trials become one value.</summary>
public enum TrialRule
{
    /// <summary>The mean of the trials.</summary>
    Mean,

    /// <summary>The best trial: the highest, or the lowest where lower is better.</summary>
    Best,
}
