namespace MomentArm.Exam;

/// <summary>How easily symptoms are stirred up and how slowly they settle; it caps the load.</summary>
public enum Irritability
{
    /// <summary>Pain 0-3, none at rest, settles in under 2 hours.</summary>
    Low,

    /// <summary>Pain 4-6, rest pain comes and goes, settles in 2 to 24 hours.</summary>
    Moderate,

    /// <summary>Pain 7-10, constant rest pain, or a flare of over 24 hours.</summary>
    High,
}
