using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>A rigid body in a plane, in balance about the origin under forces of which one is unknown.</summary>
internal static class LeverBalance
{
    /// <summary>The size of the unknown force, or of the force at the pivot, newtons.</summary>
    internal static Calculated Of(LeverFile lever)
    {
        var moment = lever.Known.Sum(f => f.SizeN * Arm(f));
        var size = -moment / Arm(lever.Unknown);
        if (!lever.AtPivot)
            return size;
        var rest = lever.Known.Append(lever.Unknown with { SizeN = size }).Aggregate(Vec3.Zero, (sum, f) => sum + f.SizeN * Direction(f));
        return rest.Length;
    }

    private static double Arm(LeverForceFile force) => new Vec3(force.AtM[0], force.AtM[1], 0).Cross(Direction(force)).Z;

    private static Vec3 Direction(LeverForceFile force)
    {
        var (sin, cos) = Math.SinCos(Angle.FromDegrees(force.DirectionDeg).Radians);
        return new Vec3(cos, sin, 0);
    }
}
