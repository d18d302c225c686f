using System.Collections.Immutable;

namespace MomentArm.Exam;

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

    /// <summary>Whether no region is named, so that the questions of every region are open.</summary>
    public bool RegionUnknown { get; init; }

    /// <summary>Ids answered yes that the list of signs does not hold; they stop prescribing too.</summary>
    public required ImmutableArray<string> UnknownYes { get; init; }
}
