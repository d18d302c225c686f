namespace MomentArm.Exam;

/// <summary>A value that a goal may aim at, and why.</summary>
/// <param name="Value">Value in the stored unit of the measure.</param>
/// <param name="Reason">Where it comes from, in a sentence with its numbers.</param>
/// <param name="Source">Key into content/sources.json; null when it comes from this patient.</param>
public sealed record GoalTarget(double Value, string Reason, string? Source);
