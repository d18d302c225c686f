using System.Collections.Immutable;

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

/// <summary>A sign that is present, with the decision about it if there is one.</summary>
/// <param name="Sign">The sign.</param>
/// <param name="Decision">The decision that lifted it; null while it stands.</param>
public sealed record PresentSign(DangerSign Sign, DangerDecision? Decision);

/// <summary>The outcome of the screen.</summary>
public sealed record DangerGate
{
    /// <summary>Where the screen leaves the visit.</summary>
    public required GateState State { get; init; }

    /// <summary>Whether exercises may be prescribed: never with a standing stop or an unasked question.</summary>
    public required bool PrescribingStopped { get; init; }

    /// <summary>The state in one sentence.</summary>
    public required string Headline { get; init; }

    /// <summary>What to do, most urgent first.</summary>
    public required ImmutableArray<string> WhatToDo { get; init; }

    /// <summary>Questions not asked yet.</summary>
    public required ImmutableArray<DangerSign> Unasked { get; init; }

    /// <summary>Signs present, most urgent first, those lifted by a decision included.</summary>
    public required ImmutableArray<PresentSign> Present { get; init; }

    /// <summary>Ids answered yes that the list of signs does not hold; they stop prescribing too.</summary>
    public required ImmutableArray<string> UnknownYes { get; init; }
}
