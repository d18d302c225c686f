using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>The lack that a task or a load history shows by its own definition.</summary>
/// <param name="Kind">Poor control, or low tolerance of load.</param>
/// <param name="Action">The joint action it is seen in; null where there is none.</param>
/// <param name="From">Value, stored unit, from which (toward worse) the source calls it a lack; null when only sides are compared.</param>
/// <param name="Words">What the source calls a value beyond <see cref="From"/>, in our words.</param>
public sealed record ShownLack(ImpairmentKind Kind, JointAction? Action, double? From, string Words);
