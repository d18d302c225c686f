using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A placed body as the parts' makers see it: points by segment in the lengths of the published model.</summary>
internal sealed class PlacedFigure
{
    private readonly BodyState state;
    private readonly SurfacePoints points;

    internal PlacedFigure(BodyModel model, SurfacePoints points, PosedFrame frame, Side working)
        : this(model, points, frame, working, Settling.Settle(model, points, frame, working))
    {
    }

    /// <summary>A body that is settled already.</summary>
    internal PlacedFigure(BodyModel model, SurfacePoints points, PosedFrame frame, Side working, PlacedBody placed)
    {
        Model = model;
        Working = working;
        Frame = frame;
        this.points = points;
        Placed = placed;
        state = new BodyState(model);
        state.Update(Placed.Pose);

        // Heavier bodies are drawn a little fuller than their height alone would make them.
        var bodyMass = model.MassKg / (model.StatureM * model.StatureM);
        Girth = Math.Clamp(Math.Sqrt(bodyMass / 22.5), 0.94, 1.18);
    }

    /// <summary>Moves the body along the floor.</summary>
    /// <param name="by">Meters; its height is ignored.</param>
    /// <returns>This figure.</returns>
    internal PlacedFigure Slide(Vec3 by)
    {
        var pose = Placed.Pose.Copy();
        var level = new Vec3(by.X, 0, by.Z);
        pose.PelvisPosition += level;
        Placed = Placed with
        {
            Pose = pose,
            Contacts = [.. Placed.Contacts.Select(contact => contact with { Point = contact.Point + level })],
        };
        state.Update(pose);
        return this;
    }

    internal BodyModel Model { get; }

    internal Side Working { get; }

    internal Orientation Orientation => Frame.Orientation;

    /// <summary>Whether the feet are drawn without shoes.</summary>
    internal bool Barefoot { get; init; }

    /// <summary>The angles that the pose asks for.</summary>
    internal LimbAngles AnglesOf(Side side) => side == Working ? Frame.Working : Frame.Other;

    /// <summary>How far along the movement the body is, 0 to 1.</summary>
    internal double Fraction { get; init; }

    internal PlacedBody Placed { get; private set; }

    /// <summary>The body as posed; for reading.</summary>
    internal BodyState State => state;

    /// <summary>How far the pose bends the trunk forward, radians.</summary>
    internal double TrunkFlexion => Frame.Axial.TrunkFlexion;

    private double Girth { get; }

    private PosedFrame Frame { get; }

    /// <summary>A point of a segment, given as on the right side of the published model.</summary>
    internal Vec3 At(SegmentKind kind, Side? side, double x, double y, double z)
    {
        var midline = kind is SegmentKind.Pelvis or SegmentKind.Torso or SegmentKind.Head;
        var index = Model.IndexOf(kind, midline ? null : side);
        var local = Model.Segments[index].Scale * new Vec3(x, y, side == Side.Left ? -z : z);
        return state.Point(index, local);
    }

    /// <summary>A ball of a segment, likewise.</summary>
    internal Ball Ball(SegmentKind kind, Side? side, double x, double y, double z, double radius)
    {
        var midline = kind is SegmentKind.Pelvis or SegmentKind.Torso or SegmentKind.Head;
        var scale = Model.Segments[Model.IndexOf(kind, midline ? null : side)].Scale;
        var girth = kind is SegmentKind.Head or SegmentKind.Foot or SegmentKind.Toes or SegmentKind.Hand ? 1 : Girth;
        return new Ball(At(kind, side, x, y, z), radius * scale * girth);
    }

    /// <summary>Two balls at both sides of the midline, that of the treated side first.</summary>
    internal Ball[] Pair(SegmentKind kind, double x, double y, double z, double radius) =>
        [Ball(kind, Working, x, y, z, radius), Ball(kind, Working.Other(), x, y, z, radius)];

    /// <summary>A named surface point (or the middle of a group) in the room; without a limb, the middle of both sides.</summary>
    internal Vec3 Surface(string name, Limb? limb)
    {
        var members = points.Resolve(name);
        if (limb is null && members[0].BothSides)
            return Surface(name, Limb.Working).Toward(Surface(name, Limb.Other), 0.5);
        var sum = Vec3.Zero;
        foreach (var point in members)
        {
            var (segment, local) = point.On(Model, limb?.On(Working));
            sum += state.Point(segment, local);
        }

        return (1.0 / members.Length) * sum;
    }

    /// <summary>Which way the skin faces at a named point, in the room, of length 1: away from the middle of its segment.</summary>
    internal Vec3 Outward(string name, Limb? limb)
    {
        var (segment, local) = points.Resolve(name)[0].On(Model, limb?.On(Working));
        var from = Model.Segments[segment].Kind switch
        {
            SegmentKind.Pelvis => local - new Vec3(-0.08, local.Y < -0.12 ? 0.05 : local.Y, 0),
            SegmentKind.Foot or SegmentKind.Toes => local - new Vec3(Math.Max(local.X, 0.04), 0.03, 0),
            SegmentKind.Hand => new Vec3(local.X, 0, 0),
            _ => new Vec3(local.X, 0, local.Z),
        };
        return from.Length < 1e-6 ? Vec3.UnitY : (state.Rotations[segment] * from).Normalized();
    }

    /// <summary>A place of the body in the room.</summary>
    internal Vec3 Place(BodyPlace place)
    {
        var (segment, local) = place.On(Model, points, Working);
        return state.Point(segment, local);
    }

    /// <summary>Whether a contact is at a named point, by itself or as one of its group.</summary>
    internal bool IsAt(PlacedContact contact, string point) => points.Resolve(contact.Contact.Point).Any(member => member.Name == point);

    /// <summary>Whether a named point has a twin on the other side.</summary>
    internal bool HasTwin(string name) => points.Resolve(name)[0].BothSides;

    /// <summary>The segment that carries a named point.</summary>
    internal SegmentKind SegmentOf(string name) => points.Resolve(name)[0].Segment;
}
