using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Prescribing;

/// <summary>The position an exercise is done in; programs go from floor to standing with few changes.</summary>
public enum BodyPosition
{
    /// <summary>On the back.</summary>
    Supine,

    /// <summary>On the side.</summary>
    SideLying,

    /// <summary>On the front.</summary>
    Prone,

    /// <summary>On hands and knees, or half kneeling.</summary>
    Kneeling,

    /// <summary>On a chair.</summary>
    Sitting,

    /// <summary>On the feet.</summary>
    Standing,
}

/// <summary>An exercise of the library: its poses, what it acts on, its usual dose and its cautions. Words are kept apart, per language.</summary>
public sealed record Exercise
{
    /// <summary>Stable id, equal to the file name.</summary>
    public required string Id { get; init; }

    /// <summary>Short trade name for clinicians.</summary>
    public required string Name { get; init; }

    /// <summary>What it is for.</summary>
    public required Purpose Purpose { get; init; }

    /// <summary>Position it is done in.</summary>
    public required BodyPosition Position { get; init; }

    /// <summary>The body poses.</summary>
    public required Movement Movement { get; init; }

    /// <summary>The part of the body it is kept under.</summary>
    public required BodyRegion Region { get; init; }

    /// <summary>Joint actions of the working limb that it is meant to load, most important first.</summary>
    public required ImmutableArray<JointAction> Loads { get; init; }

    /// <summary>Muscle groups of the working limb that it is meant to lengthen or press, most important first.</summary>
    public required ImmutableArray<MuscleGroup> Groups { get; init; }

    /// <summary>What it acts on that the body model does not carry, such as the small muscles of the foot; in trade words.</summary>
    public ImmutableArray<string> BeyondModel { get; init; } = [];

    /// <summary>Where author and computation disagree and why that is accepted.</summary>
    public ImmutableArray<AcceptedMiss> Accepted { get; init; } = [];

    /// <summary>What it needs.</summary>
    public required ImmutableArray<Equipment> Equipment { get; init; }

    /// <summary>The usual dose.</summary>
    public required Dose Dose { get; init; }

    /// <summary>Key of the dose's source in content/sources.json.</summary>
    public required string DoseSource { get; init; }

    /// <summary>Family of forms ordered from easy to hard.</summary>
    public required string Ladder { get; init; }

    /// <summary>Place in the ladder, 1 = easiest.</summary>
    public required int Rung { get; init; }

    /// <summary>What makes it harder than the rung below; null on the first rung.</summary>
    public RungChange? Change { get; init; }

    /// <summary>Why the ladder keeps this place although the computed load says otherwise; null where it does not.</summary>
    public string? OrderNote { get; init; }

    /// <summary>Cautions for the clinician.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>Who must not do it; empty where nobody in particular.</summary>
    public ImmutableArray<string> Avoid { get; init; } = [];

    /// <summary>Usual faults, each with the cue that mends it.</summary>
    public required ImmutableArray<Fault> Faults { get; init; }

    /// <summary>Seconds to get into position and fetch things, 0 to 300.</summary>
    public int SetUpSeconds { get; init; } = 20;
}

/// <summary>A usual fault and the cue for it.</summary>
/// <param name="Seen">What is seen.</param>
/// <param name="Cue">What to say.</param>
public sealed record Fault(string Seen, string Cue);

/// <summary>A disagreement between what an exercise is meant for and what is computed, with the reason it stands.</summary>
/// <param name="About">The joint action or muscle group, as in the file: "hipAbduction".</param>
/// <param name="Reason">Why it is accepted.</param>
public sealed record AcceptedMiss(string About, string Reason);
