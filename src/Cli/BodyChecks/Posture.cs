using MomentArm.Body;

namespace MomentArm.Cli;

/// <summary>Places, leans and angles of a held pose.</summary>
internal static class Posture
{
    /// <summary>A joint center in the frame of another segment, metres.</summary>
    internal static double Place(HeldBody held, SegmentKind segment, SegmentKind within, string axis, Side side)
    {
        var (of, frame) = (Index(held.Model, segment, side), Index(held.Model, within, side));
        var apart = held.State.Origins[of] - held.State.Origins[frame];
        var unit = axis == "x" ? Vec3.UnitX : axis == "y" ? Vec3.UnitY : Vec3.UnitZ;
        return apart.Dot(held.State.Rotations[frame] * unit);
    }

    /// <summary>Forward lean of a segment's upward axis from the vertical, as seen from the side of the pelvis, radians.</summary>
    internal static double Lean(HeldBody held, SegmentKind segment, Side side)
    {
        var up = held.State.Rotations[Index(held.Model, segment, side)] * Vec3.UnitY;
        var pelvis = held.State.Rotations[0] * Vec3.UnitX;
        var forward = new Vec3(pelvis.X, 0, pelvis.Z).Normalized();
        return Math.Atan2(up.Dot(forward), up.Y);
    }

    /// <summary>A joint angle in clinical sign, radians.</summary>
    internal static double ClinicalAngle(HeldBody held, Motion motion, Side side)
    {
        var angle = held.Placed.Pose.Angles[held.Model.IndexOf(motion, SideOf(motion, side))];
        return IsTurnedRound(motion) ? -angle : angle;
    }

    /// <summary>Whether the clinical sign of a motion is the opposite of the model's.</summary>
    internal static bool IsTurnedRound(Motion motion) =>
        motion is Motion.KneeExtension or Motion.HipAdduction or Motion.SubtalarInversion or Motion.ShoulderAdduction
            or Motion.TrunkExtension or Motion.NeckExtension;

    /// <summary>
    /// The free body by hand: every part that is not the working leg, its weight times its distance inward of the working
    /// hip, N m. What the outer hip must hold in single-leg stance.
    /// </summary>
    internal static double FreeBody(HeldBody held, Side side)
    {
        var hip = held.State.Origins[Index(held.Model, SegmentKind.Thigh, side)];
        var other = held.State.Origins[Index(held.Model, SegmentKind.Thigh, side.Other())];
        var inward = new Vec3(other.X - hip.X, 0, other.Z - hip.Z).Normalized();
        var sum = 0.0;
        for (var i = 0; i < held.Model.Segments.Length; i++)
        {
            var segment = held.Model.Segments[i];
            var ofLeg = segment.Side == side
                && segment.Kind is SegmentKind.Thigh or SegmentKind.Shank or SegmentKind.Talus or SegmentKind.Foot or SegmentKind.Toes;
            if (!ofLeg)
                sum += segment.MassKg * BodyModel.Gravity * (held.State.Point(i, segment.MassCenter) - hip).Dot(inward);
        }

        return sum;
    }

    /// <summary>The side a motion is looked up on: none in the midline.</summary>
    internal static Side? SideOf(Motion motion, Side side) =>
        motion is Motion.TrunkExtension or Motion.TrunkBending or Motion.TrunkRotation
            or Motion.NeckExtension or Motion.NeckBending or Motion.NeckRotation
                ? null
                : side;

    private static int Index(BodyModel model, SegmentKind segment, Side side) => model.IndexOf(
        segment, segment is SegmentKind.Pelvis or SegmentKind.Torso or SegmentKind.Head ? null : side);
}
