using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Library;

/// <summary>What someone looks for in the library; every part may be left out.</summary>
public sealed record LibraryWish
{
    /// <summary>Words found in name, purpose, targets, position, things needed or ladder.</summary>
    public string? Words { get; init; }

    /// <summary>Part of the body.</summary>
    public BodyRegion? Region { get; init; }

    /// <summary>What it is for.</summary>
    public Purpose? Purpose { get; init; }

    /// <summary>Joint action it is meant to load.</summary>
    public JointAction? Action { get; init; }

    /// <summary>Muscle group it is meant to lengthen or press.</summary>
    public MuscleGroup? Group { get; init; }

    /// <summary>Position it is done in.</summary>
    public BodyPosition? Position { get; init; }

    /// <summary>Things at hand: nothing else may be needed. Null asks for nothing.</summary>
    public ImmutableArray<Equipment>? AtHand { get; init; }

    /// <summary>Least load share, percent.</summary>
    public double? ShareFrom { get; init; }

    /// <summary>Largest load share, percent.</summary>
    public double? ShareTo { get; init; }

    /// <summary>Longest time for one side at the usual dose, minutes.</summary>
    public double? Minutes { get; init; }

    /// <summary>Whether a share is asked for, so that what has none is left out.</summary>
    public bool AsksShare => ShareFrom is not null || ShareTo is not null;

    /// <summary>Minutes of an exercise at its usual dose, one side, set-up and rests included.</summary>
    public static double MinutesOf(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return SessionTime.Seconds(new ProgramItem { ExerciseId = exercise.Id, Dose = exercise.Dose, WorkingSide = Side.Right }, exercise) / 60;
    }

    /// <summary>Whether an exercise is what is looked for.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="line">Its figures for the chosen person.</param>
    public bool Fits(Exercise exercise, LibraryLine line)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(line);
        return ExerciseText.Matches(exercise, Words)
            && (Region is null || exercise.Region == Region)
            && (Purpose is null || exercise.Purpose == Purpose)
            && (Action is not { } action || exercise.Loads.Contains(action))
            && (Group is not { } group || exercise.Groups.Contains(group))
            && (Position is null || exercise.Position == Position)
            && (AtHand is not { } atHand || exercise.Equipment.All(atHand.Contains))
            && (Minutes is not { } minutes || MinutesOf(exercise) <= minutes)
            && (!AsksShare || (line.Load is { } share && 100 * share.Middle >= (ShareFrom ?? 0) && 100 * share.Middle <= (ShareTo ?? double.PositiveInfinity)));
    }
}
