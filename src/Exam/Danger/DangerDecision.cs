namespace MomentArm.Exam;

/// <summary>A clinician's recorded decision about a sign that was answered yes. It lifts the stop; the sign stays on record.</summary>
public sealed record DangerDecision
{
    /// <summary>Makes a decision.</summary>
    /// <param name="signId">The sign it is about.</param>
    /// <param name="who">Who decided, not blank.</param>
    /// <param name="reason">Why, not blank.</param>
    /// <param name="day">The day it was recorded.</param>
    /// <exception cref="ArgumentException">Sign, name or reason is blank.</exception>
    public DangerDecision(string signId, string who, string reason, DateOnly day)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(signId);
        ArgumentException.ThrowIfNullOrWhiteSpace(who);
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        (SignId, Who, Reason, Day) = (signId, who.Trim(), reason.Trim(), day);
    }

    /// <summary>The sign it is about.</summary>
    public string SignId { get; }

    /// <summary>Who decided.</summary>
    public string Who { get; }

    /// <summary>Why.</summary>
    public string Reason { get; }

    /// <summary>The day it was recorded.</summary>
    public DateOnly Day { get; }
}
