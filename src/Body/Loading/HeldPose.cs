using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>A held pose: what carries the body, what each joint is asked, and an estimate of how muscles share it.</summary>
/// <param name="Refusal">Why the pose cannot be held, in words; null when it can. Then the numbers mean nothing and the lists are empty.</param>
/// <param name="Supports">What each weight-bearing contact carries, in the order of the frame.</param>
/// <param name="Ties">Tension of each strap or hold, newtons, in the order of the frame.</param>
/// <param name="Joints">Every joint coordinate, in the body's order.</param>
/// <param name="Efforts">Effort of each muscle group that works at all; an estimate, second to the joints' figures.</param>
/// <param name="JointForces">Contact force of hips, knees and ankles.</param>
/// <param name="Lacking">Share of the weight by which the mass center lies outside the support, metres; poses are typed to the degree.</param>
/// <param name="Extrapolated">Whether a working muscle lies beyond the angles for which its path is trusted.</param>
public sealed record HeldPose(
    string? Refusal,
    ImmutableArray<SupportLoad> Supports,
    ImmutableArray<double> Ties,
    ImmutableArray<JointLoad> Joints,
    ImmutableArray<GroupEffort> Efforts,
    ImmutableArray<JointForce> JointForces,
    double Lacking,
    bool Extrapolated)
{
    /// <summary>A pose that cannot be held.</summary>
    /// <param name="why">Why, in words.</param>
    /// <returns>The pose without numbers.</returns>
    public static HeldPose Refused(string why) => new(why, [], [], [], [], [], 0, false);

    /// <summary>The demand on a joint action.</summary>
    /// <param name="model">The body.</param>
    /// <param name="action">The action.</param>
    /// <param name="side">The side.</param>
    /// <returns>Torque in the direction of the action, N m; negative when the opposite action is asked.</returns>
    public double Demand(BodyModel model, JointAction action, Side side)
    {
        var (index, sign) = action.On(model, side);
        return sign * Joints[index].Demand;
    }
}

/// <summary>What a contact carries.</summary>
/// <param name="Contact">The contact as the author named it; all points of its group together.</param>
/// <param name="Force">Force on the body in the room, newtons.</param>
/// <param name="NormalN">Its part at right angles to the surface, newtons.</param>
public sealed record SupportLoad(SurfaceContact Contact, Vec3 Force, double NormalN)
{
    /// <summary>How many kilograms rest on it.</summary>
    public double Kilograms => NormalN / BodyModel.Gravity;
}

/// <summary>One joint coordinate of a held pose; moments in N m, in the model's sign.</summary>
/// <param name="Motion">Which motion.</param>
/// <param name="Side">Its side; null in the midline.</param>
/// <param name="Angle">Its angle, radians, in the model's sign.</param>
/// <param name="NetMoment">Moment that holds it against gravity, loads, contacts and ties.</param>
/// <param name="Demand">What muscles are asked of it: nothing where it only presses against the end of its range.</param>
/// <param name="EndStop">What the end of its range carries.</param>
/// <param name="Reserve">What neither muscles nor actuators explain.</param>
public readonly record struct JointLoad(
    Motion Motion, Side? Side, double Angle, double NetMoment, double Demand, double EndStop, double Reserve)
{
    /// <summary>Whether the reserve is worth telling: over 2 N m and over 5 % of the net moment.</summary>
    public bool IsUnexplained => Math.Abs(Reserve) > 2 && Math.Abs(Reserve) > 0.05 * Math.Abs(NetMoment);
}

/// <summary>Effort of a muscle group: the strength-weighted mean activation of its lines.</summary>
/// <param name="Function">The group.</param>
/// <param name="Side">Its side.</param>
/// <param name="Effort">0 to 1.</param>
/// <param name="ForceN">Sum of the forces of its lines, newtons.</param>
public readonly record struct GroupEffort(MuscleFunction Function, Side Side, double Effort, double ForceN);

/// <summary>The contact force of a joint.</summary>
/// <param name="Joint">The segment that the joint turns: thigh for the hip, shank for the knee, talus for the ankle.</param>
/// <param name="Side">Its side.</param>
/// <param name="Force">Force of the inner on the outer bone, in the room, newtons.</param>
/// <param name="BodyWeights">Its size over the body's weight.</param>
public readonly record struct JointForce(SegmentKind Joint, Side Side, Vec3 Force, double BodyWeights);
