namespace MomentArm.Body;

/// <summary>A point of a scaled path, laid out for the inner loop.</summary>
/// <param name="Segment">Index of the segment that carries it.</param>
/// <param name="Local">Where, in the segment's frame, metres.</param>
/// <param name="Condition">Index of the coordinate that switches it; -1 for a point that is always there.</param>
/// <param name="From">Least value of that coordinate, radians.</param>
/// <param name="To">Largest value of that coordinate, radians.</param>
/// <param name="Moving">Index of its travel; -1 for a fixed point.</param>
internal readonly record struct ScaledPoint(int Segment, Vec3 Local, int Condition, double From, double To, int Moving);

/// <summary>How a point travels, scaled and mirrored where need be.</summary>
/// <param name="Coordinate">Index of the coordinate.</param>
/// <param name="Arm">Index of the arm of that coordinate, of the path the point belongs to.</param>
/// <param name="X">Published spline, forward.</param>
/// <param name="Y">Published spline, upward.</param>
/// <param name="Z">Published spline, rightward.</param>
/// <param name="Scale">Factor to the person.</param>
/// <param name="ScaleZ">The same with the sign of the side.</param>
internal readonly record struct ScaledTravel(
    int Coordinate, int Arm, CubicSpline X, CubicSpline Y, CubicSpline Z, double Scale, double ScaleZ)
{
    /// <summary>Place in the segment's frame and its derivative by the coordinate.</summary>
    internal (Vec3 At, Vec3 Derivative) Evaluate(double angle)
    {
        var (x, dx) = X.At(angle);
        var (y, dy) = Y.At(angle);
        var (z, dz) = Z.At(angle);
        return (new Vec3(Scale * x, Scale * y, ScaleZ * z), new Vec3(Scale * dx, Scale * dy, ScaleZ * dz));
    }
}

/// <summary>A joint that a path may cross.</summary>
/// <param name="Segment">Index of the segment the joint turns.</param>
/// <param name="FirstCoordinate">Index of its first coordinate.</param>
/// <param name="Count">How many coordinates it has.</param>
/// <param name="FirstArm">Index of the arm of the first coordinate.</param>
internal readonly record struct Crossing(int Segment, int FirstCoordinate, int Count, int FirstArm);

/// <summary>Where a path's points and joints lie in the shared arrays.</summary>
/// <param name="FirstPoint">Index of its first point.</param>
/// <param name="PointCount">How many points.</param>
/// <param name="FirstCrossing">Index of its first joint.</param>
/// <param name="CrossingCount">How many joints.</param>
/// <param name="Obstacle">Index of the obstacle it runs round; -1 for none.</param>
internal readonly record struct PathSpan(int FirstPoint, int PointCount, int FirstCrossing, int CrossingCount, int Obstacle);

/// <summary>A trusted range of one coordinate of the body.</summary>
/// <param name="Coordinate">Index of the coordinate.</param>
/// <param name="Least">Least trusted value, radians.</param>
/// <param name="Most">Largest trusted value, radians.</param>
internal readonly record struct TrustedCoordinate(int Coordinate, double Least, double Most);
