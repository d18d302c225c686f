using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Drawing;

namespace MomentArm.Web.Pages.Designer;

/// <summary>A grip on the figure: it sits at the far end of what the joint moves, so that pulling it turns the joint.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Part">Whose.</param>
/// <param name="Moved">The part of the body it pulls.</param>
/// <param name="End">The part whose joint center marks the far end; null for the mass center of the moved part.</param>
public sealed record PoseHandle(string Joint, PosePart Part, SegmentKind Moved, SegmentKind? End)
{
    private const double Degree = Math.PI / 180;

    /// <summary>A lever shorter than this hardly turns its joint, metres: what looks straight at the viewer stays still (our choice).</summary>
    private const double ShortLeverM = 0.06;

    /// <summary>The most a joint turns at one step of a drag, degrees (our choice).</summary>
    private const double MostDegrees = 20;

    /// <summary>All grips.</summary>
    public static ImmutableArray<PoseHandle> All { get; } =
    [
        .. new[] { PosePart.Working, PosePart.Other }.SelectMany(part => new PoseHandle[]
        {
            new("hip", part, SegmentKind.Thigh, SegmentKind.Shank),
            new("knee", part, SegmentKind.Shank, SegmentKind.Talus),
            new("ankle", part, SegmentKind.Foot, SegmentKind.Toes),
            new("shoulder", part, SegmentKind.UpperArm, SegmentKind.Ulna),
            new("elbow", part, SegmentKind.Radius, SegmentKind.Hand),
        }),
        new("trunk", PosePart.Axial, SegmentKind.Torso, SegmentKind.Head),
        new("neck", PosePart.Axial, SegmentKind.Head, null),
    ];

    /// <summary>Short name: working-knee.</summary>
    public string Key => $"{Part}-{Joint}".ToLowerInvariant();

    /// <summary>The joint's angles, the main one first.</summary>
    public ImmutableArray<JointAngle> Angles { get; } = [.. JointAngle.All.Where(a => a.Part == Part && a.Joint == Joint)];

    /// <summary>The angle that arrow keys turn.</summary>
    public JointAngle Main => Angles[0];

    /// <summary>What a screen reader says: "Working side, hip flexion".</summary>
    public string Label => $"{JointAngle.Title(Part).Replace(" and neck", "", StringComparison.Ordinal)}, {Joint} {Main.Name}";

    /// <summary>Where the grip lies in the room.</summary>
    /// <param name="state">The settled body, right side working.</param>
    public Vec3 Place(BodyState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return End is { } end
            ? state.Origins[state.Model.IndexOf(end, SideOf(end))]
            : state.Point(Segment(state.Model), state.Model.Segments[Segment(state.Model)].MassCenter);
    }

    /// <summary>
    /// The pose after a pull in the picture: the least change of the joint's angles that brings the grip there (damped least squares
    /// on the joint's own columns of the Jacobian, the rest of the body held).
    /// </summary>
    /// <param name="pose">The pose as written.</param>
    /// <param name="seen">Its picture.</param>
    /// <param name="model">The body of the picture.</param>
    /// <param name="dx">Picture units to the right.</param>
    /// <param name="dy">Picture units down.</param>
    public PoseFile Pull(PoseFile pose, PosedPicture seen, BodyModel model, double dx, double dy)
    {
        ArgumentNullException.ThrowIfNull(seen);
        ArgumentNullException.ThrowIfNull(model);
        var state = new BodyState(model);
        state.Update(seen.Placed.Pose);
        var point = Place(state);
        var columns = Angles.Select(angle =>
        {
            var velocity = state.PointVelocity(model.IndexOf(angle.Motion, angle.ModelSide), Segment(model), point);
            return (X: seen.Camera.Right.Dot(velocity), Y: -seen.Camera.Up.Dot(velocity));
        }).ToArray();
        var (wantX, wantY) = (dx / Camera.UnitsPerMeter, dy / Camera.UnitsPerMeter);
        var damping = ShortLeverM * ShortLeverM;
        var (a, b, d) = (columns.Sum(c => c.X * c.X) + damping, columns.Sum(c => c.X * c.Y), columns.Sum(c => c.Y * c.Y) + damping);
        var determinant = a * d - b * b;
        var (u, v) = ((d * wantX - b * wantY) / determinant, (a * wantY - b * wantX) / determinant);
        for (var i = 0; i < columns.Length; i++)
        {
            var turned = Angles[i].Sign * (columns[i].X * u + columns[i].Y * v) / Degree;
            pose = Angles[i].Set(pose, Math.Round(Angles[i].Get(pose) + Math.Clamp(turned, -MostDegrees, MostDegrees), 1));
        }

        return pose;
    }

    private int Segment(BodyModel model) => model.IndexOf(Moved, SideOf(Moved));

    private Side? SideOf(SegmentKind kind) => kind is SegmentKind.Torso or SegmentKind.Head ? null : Main.ModelSide;
}
