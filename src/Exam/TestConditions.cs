namespace MomentArm.Exam;

/// <summary>How a measurement was taken where that differs from what the measure says, as far as it was noted.</summary>
public sealed record TestConditions
{
    /// <summary>Nothing noted.</summary>
    public static TestConditions None { get; } = new();

    /// <summary>The device, in the examiner's words.</summary>
    public string? Device { get; init; }

    /// <summary>Who measured; null for the clinician of the visit.</summary>
    public string? Examiner { get; init; }

    /// <summary>Position of the patient, when another than the measure's own.</summary>
    public ExamPosition? Position { get; init; }

    /// <summary>Whether the true value is the trials, at least them, or at most them.</summary>
    public ValueBound Bound { get; init; }

    /// <summary>The unit as typed, when it is not one this measure knows: the value is kept and not judged.</summary>
    public string? UnknownUnit { get; init; }

    /// <summary>Why force stayed low although the muscle may not be weak; null when nothing was noted.</summary>
    public LowForceReason? LowForce { get; init; }

    /// <summary>A number that was printed or told, beside the one computed here, with its unit as written.</summary>
    public string? Printed { get; init; }
}

/// <summary>What a value says about the true one.</summary>
public enum ValueBound
{
    /// <summary>It is the value.</summary>
    Exact,

    /// <summary>The true value is this or more, as when a pain stopped the test or a scale ended.</summary>
    AtLeast,

    /// <summary>The true value is this or less.</summary>
    AtMost,
}

/// <summary>Why a force may be low without a weak muscle.</summary>
public enum LowForceReason
{
    /// <summary>Pain stopped it.</summary>
    Pain,

    /// <summary>The patient did not dare.</summary>
    Fear,

    /// <summary>A sign of a nerve: numbness, a lost reflex.</summary>
    Nerve,

    /// <summary>The muscle itself gave out.</summary>
    Weakness,
}
