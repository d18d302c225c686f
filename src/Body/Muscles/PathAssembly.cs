namespace MomentArm.Body;

/// <summary>Lays the paths of both sides onto a body and into flat arrays.</summary>
internal sealed class PathAssembly
{
    private readonly BodyModel model;

    internal PathAssembly(MuscleTable table, BodyModel model)
    {
        this.model = model;
        foreach (var side in new[] { Side.Right, Side.Left })
        {
            foreach (var path in table.Paths)
                Add(path.Id, path.Points.AsSpan(), side, table.ObstacleOf(path.Id));
            foreach (var part in table.BandParts)
                Add(part.Id, part.Points.AsSpan(), side, table.ObstacleOf(part.Id));
            foreach (var range in table.Trusted)
                Trusted.Add(new TrustedCoordinate(Coordinate(range.Motion, side), range.Least, range.Most));
        }
    }

    internal List<ScaledPoint> Points { get; } = [];

    internal List<ScaledTravel> Travels { get; } = [];

    internal List<Crossing> Crossings { get; } = [];

    internal List<PathSpan> Spans { get; } = [];

    internal List<ScaledObstacle> Obstacles { get; } = [];

    internal List<int> ArmCoordinates { get; } = [];

    internal List<int> FirstArm { get; } = [];

    internal List<TrustedCoordinate> Trusted { get; } = [];

    internal int ArmCount(int path) =>
        (path + 1 < FirstArm.Count ? FirstArm[path + 1] : ArmCoordinates.Count) - FirstArm[path];

    private void Add(string id, ReadOnlySpan<PathPoint> points, Side side, PathObstacle? obstacle)
    {
        if (points.Length < 2)
            throw new ArgumentException($"The path {id} needs two points.", nameof(points));
        var firstPoint = Points.Count;
        var firstCrossing = Crossings.Count;
        FirstArm.Add(ArmCoordinates.Count);
        AddCrossings(id, Segment(points[0].Segment, side), Segment(points[^1].Segment, side));
        var before = -1;
        foreach (var point in points)
        {
            var segment = Segment(point.Segment, side);
            if (segment < before || !Between(Segment(points[^1].Segment, side), segment))
                throw new ArgumentException($"The path {id} does not run outward along one limb.", nameof(points));
            before = segment;
            Points.Add(Scaled(id, point, segment, side));
        }

        Spans.Add(new PathSpan(firstPoint, points.Length, firstCrossing, Crossings.Count - firstCrossing, Obstacle(id, obstacle, side)));
    }

    private int Obstacle(string id, PathObstacle? obstacle, Side side)
    {
        if (obstacle is null)
            return -1;
        var segment = Segment(obstacle.Segment, side);
        if (Points[^1].Segment == segment || Points.All(p => p.Segment != segment))
            throw new ArgumentException($"The path {id} does not run from the obstacle's segment outward.", nameof(obstacle));
        var scale = model.Segments[segment].Scale;
        Obstacles.Add(new ScaledObstacle(segment, scale * obstacle.X, scale * obstacle.Y, scale * obstacle.RadiusM));
        return Obstacles.Count - 1;
    }

    /// <summary>The joints from the inmost segment of a path to its outmost, inner ones first.</summary>
    private void AddCrossings(string id, int inner, int outer)
    {
        var joints = new Stack<int>();
        for (var s = outer; s > inner; s = model.Segments[s].Parent)
            joints.Push(s);
        if (joints.Count == 0)
            throw new ArgumentException($"The path {id} crosses no joint.", nameof(id));
        foreach (var s in joints.Where(s => model.Segments[s].CoordinateCount > 0))
        {
            var segment = model.Segments[s];
            Crossings.Add(new Crossing(s, segment.FirstCoordinate, segment.CoordinateCount, ArmCoordinates.Count));
            for (var k = 0; k < segment.CoordinateCount; k++)
                ArmCoordinates.Add(segment.FirstCoordinate + k);
        }
    }

    private ScaledPoint Scaled(string id, PathPoint point, int segment, Side side)
    {
        var scale = model.Segments[segment].Scale;
        var at = scale * point.At;
        var moving = -1;
        if (point.Travel is { } travel)
        {
            moving = Travels.Count;
            var coordinate = Coordinate(travel.Motion, side);
            var arm = ArmCoordinates.IndexOf(coordinate, FirstArm[^1]);
            if (arm < 0)
                throw new ArgumentException($"A point of {id} moves with a joint that the path does not cross.", nameof(point));
            Travels.Add(new ScaledTravel(
                coordinate, arm, travel.X, travel.Y, travel.Z, scale, side == Side.Left ? -scale : scale));
        }

        return new ScaledPoint(
            segment, side == Side.Left ? at.Mirrored : at, point.When is { } when ? Coordinate(when.Motion, side) : -1,
            point.When?.From ?? 0, point.When?.To ?? 0, moving);
    }

    private bool Between(int outer, int segment)
    {
        var s = outer;
        while (s > segment)
            s = model.Segments[s].Parent;
        return s == segment;
    }

    /// <summary>A segment of the side, or of the midline where it has no sides.</summary>
    private int Segment(SegmentKind kind, Side side) =>
        model.IndexOf(kind, kind is SegmentKind.Pelvis or SegmentKind.Torso or SegmentKind.Head ? null : side);

    private int Coordinate(Motion motion, Side side) => model.IndexOf(
        motion,
        motion is Motion.TrunkExtension or Motion.TrunkBending or Motion.TrunkRotation
            or Motion.NeckExtension or Motion.NeckBending or Motion.NeckRotation ? null : side);
}
