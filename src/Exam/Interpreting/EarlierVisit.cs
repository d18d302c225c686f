using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>The readings of one measure at one earlier visit.</summary>
/// <param name="Order">Order of the visit in the episode of care, 1 first.</param>
/// <param name="Day">Day of the visit.</param>
/// <param name="Measurements">Readings of that visit.</param>
public sealed record EarlierVisit(int Order, DateOnly Day, ImmutableArray<Measurement> Measurements);
