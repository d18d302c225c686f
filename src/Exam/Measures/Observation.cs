using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Something typed for a measure that is not a number: a word ("limited") or a manual grade ("4+/5").</summary>
/// <param name="MeasureId">The measure.</param>
/// <param name="Side">The side; null where there is none.</param>
/// <param name="Text">The words as typed.</param>
/// <param name="Grade">The manual grade in the form "4+/5"; null for words.</param>
public sealed record Observation(string MeasureId, Side? Side, string Text, string? Grade);
