using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// A person's body: the published skeleton scaled segment by segment, with masses. Constant and shareable; what is
/// computed for one pose lives in <see cref="BodyState"/>. Arrays are sorted parent before child.
/// </summary>
public sealed class BodyModel
{
    /// <summary>Standard acceleration of fall, m/s2, as the published loads use it.</summary>
    public const double Gravity = 9.81;

    private readonly int[] segmentIndex;
    private readonly int[] coordinateIndex;

    internal BodyModel(
        ImmutableArray<Segment> segments, ImmutableArray<JointCoordinate> coordinates, double massKg, double statureM,
        ImmutableArray<string> assumptions)
    {
        Segments = segments;
        Coordinates = coordinates;
        MassKg = massKg;
        StatureM = statureM;
        Assumptions = assumptions;
        segmentIndex = Table(Enum.GetValues<SegmentKind>().Length);
        for (var i = 0; i < segments.Length; i++)
            segmentIndex[Slot((int)segments[i].Kind, segments[i].Side)] = i;
        coordinateIndex = Table(Enum.GetValues<Motion>().Length);
        for (var k = 0; k < coordinates.Length; k++)
            coordinateIndex[Slot((int)coordinates[k].Motion, coordinates[k].Side)] = k;
    }

    /// <summary>Segments, each parent before its children; the pelvis first.</summary>
    public ImmutableArray<Segment> Segments { get; }

    /// <summary>Joint coordinates in segment order.</summary>
    public ImmutableArray<JointCoordinate> Coordinates { get; }

    /// <summary>Body mass in kilograms.</summary>
    public double MassKg { get; }

    /// <summary>Stature in metres.</summary>
    public double StatureM { get; }

    /// <summary>What was assumed for want of facts, in sentences for the screen; empty when all was known.</summary>
    public ImmutableArray<string> Assumptions { get; }

    /// <summary>Index of a segment.</summary>
    /// <param name="kind">Which segment.</param>
    /// <param name="side">Its side; null for midline segments.</param>
    /// <returns>Index into <see cref="Segments"/>.</returns>
    /// <exception cref="ArgumentException">There is no such segment, for example a thigh without side.</exception>
    public int IndexOf(SegmentKind kind, Side? side) => Found(segmentIndex[Slot((int)kind, side)], kind, side);

    /// <summary>Index of a joint coordinate.</summary>
    /// <param name="motion">Which motion.</param>
    /// <param name="side">Its side; null for midline motions.</param>
    /// <returns>Index into <see cref="Coordinates"/> and into the angles of a pose.</returns>
    /// <exception cref="ArgumentException">There is no such coordinate.</exception>
    public int IndexOf(Motion motion, Side? side) => Found(coordinateIndex[Slot((int)motion, side)], motion, side);

    private static int[] Table(int kinds)
    {
        var table = new int[kinds * 3];
        Array.Fill(table, -1);
        return table;
    }

    private static int Slot(int kind, Side? side) => kind * 3 + (side is null ? 0 : side == Side.Left ? 1 : 2);

    private static int Found<T>(int index, T what, Side? side) =>
        index >= 0 ? index : throw new ArgumentException($"The body has no {what} on side {side?.ToString() ?? "none"}.", nameof(what));
}

/// <summary>One segment of a scaled body.</summary>
/// <param name="Kind">Which segment.</param>
/// <param name="Side">Its side; null in the midline.</param>
/// <param name="Parent">Index of the parent; -1 for the pelvis.</param>
/// <param name="Offset">Joint centre in the parent's frame before any slide, metres.</param>
/// <param name="FirstCoordinate">Index of its first joint coordinate.</param>
/// <param name="CoordinateCount">How many coordinates its joint has.</param>
/// <param name="MassKg">Mass in kilograms; 0 for segments whose mass is counted in a neighbor.</param>
/// <param name="MassCenter">Mass centre in its own frame, metres.</param>
/// <param name="Scale">Factor from the published model's lengths to this person's, in this segment's frame.</param>
/// <param name="SlideX">Forward slide of the joint centre over the first coordinate in the published model; null for none.</param>
/// <param name="SlideY">Upward slide likewise.</param>
/// <param name="SlideScale">Factor on the slides: the parent's scale.</param>
public sealed record Segment(
    SegmentKind Kind,
    Side? Side,
    int Parent,
    Vec3 Offset,
    int FirstCoordinate,
    int CoordinateCount,
    double MassKg,
    Vec3 MassCenter,
    double Scale,
    CubicSpline? SlideX,
    CubicSpline? SlideY,
    double SlideScale);

/// <summary>One joint coordinate of a scaled body.</summary>
/// <param name="Motion">Which motion.</param>
/// <param name="Side">Its side; null in the midline.</param>
/// <param name="Segment">Index of the segment it turns.</param>
/// <param name="Axis">Unit axis in the frame already turned by the earlier coordinates of the joint.</param>
/// <param name="NormalLeast">Least value of the usual range, radians.</param>
/// <param name="NormalMost">Largest value of the usual range, radians.</param>
public sealed record JointCoordinate(
    Motion Motion, Side? Side, int Segment, Vec3 Axis, double NormalLeast, double NormalMost);
