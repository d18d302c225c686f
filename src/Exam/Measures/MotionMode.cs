namespace MomentArm.Exam;

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
