using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Prescribing;

/// <summary>One exercise of a program: which, for which side, at which dose, and what was known when it was chosen.</summary>
public sealed record ProgramItem
{
    /// <summary>The exercise, by its id in content/exercises.</summary>
    public required string ExerciseId { get; init; }

    /// <summary>The side that works; null when both sides work together.</summary>
    public Side? WorkingSide { get; init; }

    /// <summary>Whether the other side does the same dose after it.</summary>
    public bool BothSides { get; init; }

    /// <summary>The dose.</summary>
    public required Dose Dose { get; init; }

    /// <summary>The clinician's own words to the patient, if any.</summary>
    public string? Note { get; init; }

    /// <summary>The finding it is for, by id; null when chosen without one.</summary>
    public string? FindingId { get; init; }

    /// <summary>The load share shown when it was chosen; null when none could be computed.</summary>
    public StoredLoadShare? LoadShare { get; init; }
}

/// <summary>A load share as it was shown at the time, kept so that a stored program can be explained later.</summary>
/// <param name="Action">The joint action with the largest share.</param>
/// <param name="Low">Lower end, 1 = 100 %.</param>
/// <param name="Middle">Best estimate.</param>
/// <param name="High">Upper end.</param>
public sealed record StoredLoadShare(JointAction Action, double Low, double Middle, double High);

/// <summary>A home exercise program: the exercises in the order they are done.</summary>
public sealed record HomeProgram
{
    /// <summary>The exercises in order.</summary>
    public required ImmutableArray<ProgramItem> Items { get; init; }

    /// <summary>Days a week on which the whole program is done, 1 to 7.</summary>
    public required int DaysPerWeek { get; init; }

    /// <summary>Highest acceptable pain while exercising, 0 to 10.</summary>
    public int PainCeiling { get; init; } = 3;

    /// <summary>The clinician's own words to the patient, if any.</summary>
    public string? Note { get; init; }

    /// <summary>Education cards that go with it, by id, in order.</summary>
    public ImmutableArray<string> Cards { get; init; } = [];

    /// <summary>What was agreed about time, things and positions.</summary>
    public AgreedLimits Agreed { get; init; } = new();

    /// <summary>Version of the computing engine that made the numbers.</summary>
    public required string EngineVersion { get; init; }

    /// <summary>Version of the content the exercises came from.</summary>
    public required string ContentVersion { get; init; }
}
