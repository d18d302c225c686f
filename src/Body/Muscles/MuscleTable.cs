using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>The muscle paths as published, unscaled, right side; the left side is mirrored from it.</summary>
/// <param name="Paths">The published lines.</param>
/// <param name="BandParts">Parts of the iliotibial band: lines of our own that take over a share of muscles' force.</param>
/// <param name="Trusted">Coordinate ranges in which the straight lines are trusted.</param>
/// <param name="Obstacles">Bone that lines lie on and do not cut through; followed with <see cref="PathUse.Trusted"/>, not as published.</param>
public sealed record MuscleTable(
    ImmutableArray<MusclePath> Paths, ImmutableArray<BandPart> BandParts, ImmutableArray<TrustedRange> Trusted, ImmutableArray<PathObstacle> Obstacles)
{
    /// <summary>The obstacle of a line; null for none.</summary>
    internal PathObstacle? ObstacleOf(string id) => Obstacles.FirstOrDefault(o => o.Lines.Contains(id));
}

/// <summary>
/// A cylinder across the body that lines run behind and under: from their last point on its segment to their first point beyond.
/// </summary>
/// <param name="Segment">The segment that carries it.</param>
/// <param name="X">Forward place of its axis in the segment's frame, metres.</param>
/// <param name="Y">Upward place of its axis.</param>
/// <param name="RadiusM">Its radius, metres.</param>
/// <param name="Lines">Ids of the lines it deflects.</param>
public sealed record PathObstacle(SegmentKind Segment, double X, double Y, double RadiusM, ImmutableArray<string> Lines);

/// <summary>One published line of action.</summary>
/// <param name="Id">Short name in kebab case, such as gluteus-medius-front.</param>
/// <param name="Name">Name for the screen.</param>
/// <param name="Function">What the muscle mainly does.</param>
/// <param name="LengthGroup">The group a length test measures; null when no such test is known here.</param>
/// <param name="MaximalForceN">Largest isometric force, newtons.</param>
/// <param name="OptimalFiberM">Fiber length at which that force is reached, metres.</param>
/// <param name="TendonSlackM">Tendon length at which it begins to pull, metres.</param>
/// <param name="PennationRad">Angle of the fibers to the tendon at optimal length, radians.</param>
/// <param name="Caution">Where the line is known to mislead; null when nothing was found.</param>
/// <param name="Points">Points from the trunk outward, two or more.</param>
public sealed record MusclePath(
    string Id,
    string Name,
    MuscleFunction Function,
    MuscleGroup? LengthGroup,
    double MaximalForceN,
    double OptimalFiberM,
    double TendonSlackM,
    double PennationRad,
    string? Caution,
    ImmutableArray<PathPoint> Points);

/// <summary>
/// A line of the iliotibial band. It takes a share of the force of some published muscles and carries it to the shin; their own
/// lines keep the rest. Fiber figures are the force-weighted means of these muscles; the tendon is as much longer as the path is.
/// </summary>
/// <param name="Id">Short name in kebab case.</param>
/// <param name="Name">Name for the screen.</param>
/// <param name="Function">What it mainly does.</param>
/// <param name="LengthGroup">The group a length test measures; null for none.</param>
/// <param name="From">Ids of the muscles that pull on it.</param>
/// <param name="Share">Fraction of their force passed to the band, 0 to 1.</param>
/// <param name="Caution">Where the line is known to mislead; null when nothing was found.</param>
/// <param name="Points">Points from the trunk outward.</param>
public sealed record BandPart(
    string Id,
    string Name,
    MuscleFunction Function,
    MuscleGroup? LengthGroup,
    ImmutableArray<string> From,
    double Share,
    string? Caution,
    ImmutableArray<PathPoint> Points);

/// <summary>A point of a path.</summary>
/// <param name="Segment">The segment that carries it.</param>
/// <param name="At">Where, in the segment's frame, metres; for a moving point at angle 0.</param>
/// <param name="When">The coordinate range in which the point is part of the path; null for always.</param>
/// <param name="Travel">How the point moves in its segment; null for a fixed one.</param>
public sealed record PathPoint(SegmentKind Segment, Vec3 At, PointCondition? When = null, PointTravel? Travel = null);

/// <summary>When a point is part of its path: bounds included.</summary>
/// <param name="Motion">The coordinate looked at, on the muscle's side.</param>
/// <param name="From">Least value, radians, in the model's sign.</param>
/// <param name="To">Largest value, radians.</param>
public sealed record PointCondition(Motion Motion, double From, double To);

/// <summary>How a point travels in its segment as a coordinate changes (the pull of the kneecap seen from the shin).</summary>
/// <param name="Motion">The coordinate, on the muscle's side.</param>
/// <param name="X">Forward place over the angle, metres.</param>
/// <param name="Y">Upward place.</param>
/// <param name="Z">Rightward place.</param>
public sealed record PointTravel(Motion Motion, CubicSpline X, CubicSpline Y, CubicSpline Z);

/// <summary>Angles between which the paths are trusted.</summary>
/// <param name="Motion">The coordinate, both sides.</param>
/// <param name="Least">Least trusted value, radians, in the model's sign.</param>
/// <param name="Most">Largest trusted value, radians.</param>
public sealed record TrustedRange(Motion Motion, double Least, double Most);
