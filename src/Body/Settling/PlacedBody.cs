using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>A body placed in the room, with its contacts.</summary>
/// <param name="Pose">The pose in the room.</param>
/// <param name="Contacts">The contact points in the room.</param>
/// <param name="LargestGapM">How far the worst contact is from its surface, metres; 0 when all meet.</param>
/// <param name="Changes">Joint angles that were changed so that contacts meet, largest first; empty when none was.</param>
public sealed record PlacedBody(
    BodyPose Pose, ImmutableArray<PlacedContact> Contacts, double LargestGapM, ImmutableArray<JointChange> Changes)
{
    /// <summary>The body seen in a mirror: left and right trade places.</summary>
    /// <param name="model">The body it is for.</param>
    /// <returns>The mirrored body.</returns>
    public PlacedBody Mirrored(BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return new PlacedBody(
            Pose.Mirrored(model), [.. Contacts.Select(c => c.Mirrored(model))], LargestGapM, [.. Changes.Select(c => c.Mirrored)]);
    }
}

/// <summary>One contact point of a placed body.</summary>
/// <param name="Contact">The contact as the author gave it.</param>
/// <param name="Segment">Index of the segment that touches.</param>
/// <param name="Local">The point in the segment's frame, metres.</param>
/// <param name="Point">The point in the room, metres.</param>
public sealed record PlacedContact(SurfaceContact Contact, int Segment, Vec3 Local, Vec3 Point)
{
    /// <summary>How far the point is above its surface, metres; negative below, 0 for walls.</summary>
    public double Gap => Contact.Surface == SurfaceKind.Wall ? 0 : Point.Y - Contact.HeightM;

    /// <summary>The contact seen in a mirror.</summary>
    /// <param name="model">The body it is for.</param>
    /// <returns>The same contact of the other side.</returns>
    public PlacedContact Mirrored(BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var segment = model.Segments[Segment];
        return this with { Segment = model.IndexOf(segment.Kind, segment.Side?.Other()), Local = Local.Mirrored, Point = Point.Mirrored };
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
