using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Prescribing;

/// <summary>Everything published that a case is read against: bodies, strength, measures, norms and the exercise library.</summary>
/// <param name="Skeleton">The published skeleton.</param>
/// <param name="Tables">Mass tables.</param>
/// <param name="Points">Named surface points.</param>
/// <param name="Capacities">Published strength.</param>
/// <param name="Measures">The measures.</param>
/// <param name="Norms">The norms.</param>
/// <param name="Exercises">The library.</param>
/// <param name="Muscles">The published muscle paths.</param>
public sealed record CaseBasis(
    SkeletonData Skeleton,
    IReadOnlyList<SegmentTable> Tables,
    SurfacePoints Points,
    CapacityTables Capacities,
    ImmutableArray<Measure> Measures,
    ImmutableArray<Norm> Norms,
    IReadOnlyList<Exercise> Exercises,
    MuscleTable Muscles)
{
    /// <summary>Equations that predict a value from age, stature and mass.</summary>
    public ImmutableArray<Prediction> Predictions { get; init; } = [];
}
