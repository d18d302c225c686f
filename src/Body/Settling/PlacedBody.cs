using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>A body placed in the room, with its contacts.</summary>
/// <param name="Pose">The pose in the room.</param>
/// <param name="Contacts">The contact points in the room.</param>
/// <param name="LargestGapM">How far the worst contact is from its surface, or the worst tie from closing, metres; 0 when all meet.</param>
/// <param name="Changes">Joint angles that were changed so that contacts meet, largest first; empty when none was.</param>
public sealed record PlacedBody(
    BodyPose Pose, ImmutableArray<PlacedContact> Contacts, double LargestGapM, ImmutableArray<JointChange> Changes)
{
    /// <summary>Straps and closed chains where they ended; in the order of the frame.</summary>
    public ImmutableArray<PlacedTie> Ties { get; init; } = [];

    /// <summary>Joints that settling drove to the end of their range, so that others or a gap had to do the rest.</summary>
    public ImmutableArray<JointEnd> Ends { get; init; } = [];

    /// <summary>Where settling ended, in the terms of the right side, for a start from here; null when the frame met as it was.</summary>
    internal SettledStart? Start { get; init; }

    /// <summary>The body seen in a mirror: left and right trade places.</summary>
    /// <param name="model">The body it is for.</param>
    /// <returns>The mirrored body.</returns>
    public PlacedBody Mirrored(BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return new PlacedBody(
            Pose.Mirrored(model), [.. Contacts.Select(c => c.Mirrored(model))], LargestGapM, [.. Changes.Select(c => c.Mirrored)])
        {
            Ties = [.. Ties.Select(t => t.Mirrored(model))],
            Ends = [.. Ends.Select(e => e.Mirrored)],
            Start = Start,
        };
    }
}

/// <summary>One contact point of a placed body.</summary>
/// <param name="Contact">The contact as the author gave it.</param>
/// <param name="Segment">Index of the segment that touches.</param>
/// <param name="Local">The point in the segment's frame, metres.</param>
/// <param name="Point">The point in the room, metres.</param>
/// <param name="Normal">
/// Unit normal of the surface in the room, from the surface into the body: up for floor, seat, bench, step and roller, leaning for a
/// tilted board, level for a wall.
/// </param>
/// <param name="Gap">How far the point is from its surface along the normal, metres; positive off it, negative in it.</param>
public sealed record PlacedContact(SurfaceContact Contact, int Segment, Vec3 Local, Vec3 Point, Vec3 Normal, double Gap)
{
    /// <summary>The contact seen in a mirror.</summary>
    /// <param name="model">The body it is for.</param>
    /// <returns>The same contact of the other side.</returns>
    public PlacedContact Mirrored(BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return this with
        {
            Segment = Mirror.Segment(model, Segment),
            Local = Local.Mirrored,
            Point = Point.Mirrored,
            Normal = Normal.Mirrored,
        };
    }
}

/// <summary>One tie of a placed body.</summary>
/// <param name="Tie">The tie as the author gave it.</param>
/// <param name="FromSegment">Index of the segment of its first point.</param>
/// <param name="FromLocal">The first point in that segment's frame, metres.</param>
/// <param name="From">The first point in the room, metres.</param>
/// <param name="ToSegment">Index of the segment of its second point.</param>
/// <param name="ToLocal">The second point in that segment's frame, metres.</param>
/// <param name="To">The second point in the room, metres.</param>
public sealed record PlacedTie(Tie Tie, int FromSegment, Vec3 FromLocal, Vec3 From, int ToSegment, Vec3 ToLocal, Vec3 To)
{
    /// <summary>Straight distance between the two points, metres: how far a strap is let out.</summary>
    public double LengthM => (To - From).Length;

    /// <summary>How far the tie is from closing, metres: positive too long, negative too short; 0 for a strap of free length.</summary>
    public double Gap => Tie.Kind == TieKind.Hold ? LengthM : Tie.LengthM is { } length ? LengthM - length : 0;

    /// <summary>The tie seen in a mirror.</summary>
    /// <param name="model">The body it is for.</param>
    /// <returns>The same tie of the other side.</returns>
    public PlacedTie Mirrored(BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return new PlacedTie(
            Tie, Mirror.Segment(model, FromSegment), FromLocal.Mirrored, From.Mirrored,
            Mirror.Segment(model, ToSegment), ToLocal.Mirrored, To.Mirrored);
    }
}

/// <summary>A joint angle that settling changed.</summary>
/// <param name="Motion">Which motion, in the model's sign.</param>
/// <param name="Side">Its side; null in the midline.</param>
/// <param name="From">As the author gave it, radians.</param>
/// <param name="To">As it is now, radians.</param>
public sealed record JointChange(Motion Motion, Side? Side, double From, double To)
{
    /// <summary>How much it changed, radians, without sign.</summary>
    public double Size => Math.Abs(To - From);

    /// <summary>The change seen in a mirror.</summary>
    public JointChange Mirrored => BodyPose.SignedBySide(Motion)
        ? this with { From = -From, To = -To }
        : this with { Side = Side?.Other() };
}

/// <summary>A joint at the end of its usual range, or of what the author gave when that is farther.</summary>
/// <param name="Motion">Which motion, in the model's sign.</param>
/// <param name="Side">Its side; null in the midline.</param>
/// <param name="At">The angle of the end, radians, in the model's sign.</param>
/// <param name="Upper">Whether it is the upper end in the model's sign.</param>
public sealed record JointEnd(Motion Motion, Side? Side, double At, bool Upper)
{
    /// <summary>The end seen in a mirror.</summary>
    public JointEnd Mirrored => BodyPose.SignedBySide(Motion)
        ? this with { At = -At, Upper = !Upper }
        : this with { Side = Side?.Other() };

    /// <summary>In words, such as "right knee extension ends at 0 degrees".</summary>
    /// <returns>The words, without a period.</returns>
    public override string ToString() => FormattableString.Invariant(
        $"{(Side is { } side ? side == Body.Side.Left ? "left " : "right " : "")}{Words.Of(Motion, Upper)} ends at {Math.Round((Upper ? At : -At) * 180 / Math.PI) + 0.0:0} degrees");
}

/// <summary>Where settling ended: how far each joint gave way and how the pelvis leaned, so that a neighboring frame can start there.</summary>
/// <param name="Given">How far each joint gave way from the author's angle, radians.</param>
/// <param name="Lean">Pitch, roll and yaw of the pelvis from where it was placed, radians.</param>
internal sealed record SettledStart(double[] Given, Vec3 Lean);

internal static class Mirror
{
    internal static int Segment(BodyModel model, int index)
    {
        var segment = model.Segments[index];
        return model.IndexOf(segment.Kind, segment.Side?.Other());
    }
}
