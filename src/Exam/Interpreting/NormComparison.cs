using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>A value against one norm row.</summary>
/// <param name="Side">Side of the value; null where there is none.</param>
/// <param name="Norm">The row.</param>
/// <param name="Value">The value in the unit of the row.</param>
/// <param name="ZScore">Standard score, from an SD only; null without one.</param>
/// <param name="Percentile">Percentile under the normal curve; null without an SD.</param>
/// <param name="Low">
/// Whether the row may grade and the value lies on the worse side of what 95 in 100 people reach; null when the row may not grade.
/// </param>
public sealed record NormComparison(Side? Side, Norm Norm, double Value, double? ZScore, double? Percentile, bool? Low);
