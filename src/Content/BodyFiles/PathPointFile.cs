using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>One point of a path.</summary>
/// <param name="Segment">The segment that carries it.</param>
/// <param name="AtM">Where, in the segment's frame, meters: [forward, up, right]; for a moving point at angle 0.</param>
/// <param name="When">The angles at which it is part of the path; always when not given.</param>
/// <param name="Moving">How it travels with an angle; fixed when not given.</param>
public sealed record PathPointFile(SegmentKind Segment, double[] AtM, PointConditionFile? When = null, PointTravelFile? Moving = null)
{
    internal static void CheckAll(IReadOnlyList<PathPointFile> points, string path, SkeletonData? skeleton, FaultList faults)
    {
        if (points.Count(p => p.When is null) < 2)
            MusclesFile.Fault(faults, $"{path}.points", "Two points that are always there are needed.", "Add points.");
        for (var i = 0; i < points.Count; i++)
            points[i].Check($"{path}.points[{i}]", faults);
        if (points.Count == 0 || skeleton is null)
            return;
        var chain = Chain(skeleton, points[^1].Segment);
        var places = points.Select(p => chain.IndexOf(p.Segment)).ToArray();
        if (places.Contains(-1) || places.Zip(places.Skip(1)).Any(p => p.First > p.Second))
        {
            MusclesFile.Fault(faults, $"{path}.points", "The points do not run outward along one limb.", "Order them from the trunk outward.");
            return;
        }

        if (places[0] == places[^1])
            MusclesFile.Fault(faults, $"{path}.points", "The path crosses no joint.", "End it on another segment.");
        var crossed = chain[(places[0] + 1)..(places[^1] + 1)]
            .SelectMany(kind => skeleton.Segments.Single(s => s.Kind == kind).Coordinates).Select(c => c.Motion).ToHashSet();
        for (var i = 0; i < points.Count; i++)
        {
            if (points[i].Moving is { } moving && !crossed.Contains(moving.Motion))
                MusclesFile.Fault(faults, $"{path}.points[{i}].moving.motion", "The path does not cross this joint.", "Name a joint it crosses.");
            if (points[i].When is { } when && !crossed.Contains(when.Motion))
                MusclesFile.Fault(faults, $"{path}.points[{i}].when.motion", "The path does not cross this joint.", "Name a joint it crosses.");
        }
    }

    internal PathPoint ToPoint() => new(
        Segment,
        new Vec3(AtM[0], AtM[1], AtM[2]),
        When is null
            ? null
            : new PointCondition(When.Motion, Angle.FromDegrees(When.FromDeg).Radians, Angle.FromDegrees(When.ToDeg).Radians),
        Moving is null ? null : new PointTravel(Moving.Motion, Spline(Moving.X), Spline(Moving.Y), Spline(Moving.Z)));

    private static List<SegmentKind> Chain(SkeletonData skeleton, SegmentKind outmost)
    {
        var chain = new List<SegmentKind>();
        for (SegmentKind? kind = outmost; kind is { } here; kind = skeleton.Segments.FirstOrDefault(s => s.Kind == here)?.Parent)
            chain.Insert(0, here);
        return chain;
    }

    private static CubicSpline Spline(double[][] knots) => new([.. knots.Select(k => (k[0], k[1]))]);

    private void Check(string path, FaultList faults)
    {
        if (AtM.Length != 3 || AtM.Any(v => !(Math.Abs(v) < 1)))
            MusclesFile.Fault(faults, path + ".atM", "Three numbers are needed.", "Give [x, y, z] in meters.");
        if (When is { } when && !(when.FromDeg < when.ToDeg))
            MusclesFile.Fault(faults, path + ".when", "fromDeg must be less than toDeg.", "Correct them.");
        if (Moving is not { } moving)
            return;
        foreach (var (knots, name) in new[] { (moving.X, "x"), (moving.Y, "y"), (moving.Z, "z") })
        {
            if (knots.Length is < 2 or 3 || knots.Any(k => k.Length != 2 || !double.IsFinite(k[0]) || !double.IsFinite(k[1]))
                || knots.Zip(knots.Skip(1)).Any(k => !(k.First[0] < k.Second[0])))
                MusclesFile.Fault(
                    faults, $"{path}.moving.{name}", "Two knots [angle rad, place m], or four and more, with rising angles are needed.",
                    "Correct the knots.");
        }
    }
}

/// <summary>When a point is part of its path.</summary>
/// <param name="Motion">The angle looked at, in the model's sign.</param>
/// <param name="FromDeg">Least angle, degrees.</param>
/// <param name="ToDeg">Largest angle, degrees.</param>
public sealed record PointConditionFile(Motion Motion, double FromDeg, double ToDeg);

/// <summary>How a point travels in its segment: cubic splines through knots [angle rad, place m].</summary>
/// <param name="Motion">The angle, in the model's sign.</param>
/// <param name="X">Forward place.</param>
/// <param name="Y">Upward place.</param>
/// <param name="Z">Rightward place.</param>
public sealed record PointTravelFile(Motion Motion, double[][] X, double[][] Y, double[][] Z);
