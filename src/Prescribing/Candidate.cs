using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Prescribing;

/// <summary>What limits the choice for this person.</summary>
/// <param name="WindowLow">Least load share wanted, 1 = 100 %.</param>
/// <param name="WindowHigh">Largest load share allowed.</param>
/// <param name="Owned">What the person owns; null when not asked (then nothing is held against an exercise).</param>
/// <param name="Avoid">Positions the person can't take.</param>
/// <param name="Minutes">Minutes a session; null when not asked.</param>
/// <param name="DaysPerWeek">Days a week; null when not asked.</param>
public sealed record Limits(
    double WindowLow, double WindowHigh, ImmutableHashSet<Equipment>? Owned, ImmutableHashSet<BodyPosition> Avoid, int? Minutes, int? DaysPerWeek);

/// <summary>An exercise offered for a person, with what it would ask of them.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Side">The working side it was computed for.</param>
/// <param name="Load">What it asks.</param>
/// <param name="Main">The share that counts: of the action the exercise is meant to load; null when there is none.</param>
/// <param name="Fit">How that share lies to the window.</param>
/// <param name="Findings">Ids of the findings it acts on, most important first.</param>
/// <param name="Relevance">How much of the findings' weight it acts on, 0 and more.</param>
/// <param name="Reasons">Why it suits or does not, in sentences.</param>
/// <param name="Obstacles">What stands against it: missing equipment, a position to avoid. Shown, never hidden.</param>
public sealed record Candidate(
    Exercise Exercise,
    Side Side,
    MovementLoad Load,
    LoadShare? Main,
    LoadFit Fit,
    ImmutableArray<string> Findings,
    double Relevance,
    ImmutableArray<string> Reasons,
    ImmutableArray<string> Obstacles);
