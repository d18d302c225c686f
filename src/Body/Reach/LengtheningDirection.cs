using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>One joint motion that lengthens a group.</summary>
/// <param name="Motion">The coordinate.</param>
/// <param name="Side">Its side; null in the midline.</param>
/// <param name="Sign">+1 when the coordinate must grow, in the model's sign, -1 when it must shrink.</param>
/// <param name="Words">The motion in trade words, such as "more hip adduction".</param>
/// <param name="MetresPerRadian">Gain in length, above 0; force-weighted mean of the lines of a group.</param>
/// <param name="Room">How far the joint can still go that way within the person's range, radians, above 0.</param>
public sealed record LengtheningStep(Motion Motion, Side? Side, int Sign, string Words, double MetresPerRadian, double Room)
{
    /// <summary>Gain in millimetres for 10 degrees, for the screen.</summary>
    public double MmPer10Deg => MetresPerRadian * 1000 * 10 * Math.PI / 180;
}

/// <summary>The directions of joint motion that lengthen a muscle or a group most: the gradient dL/dq = -arm in a pose.</summary>
public static class LengtheningDirection
{
    /// <summary>Gains smaller than this are left out, metres per radian (0.3 mm for 10 degrees: our choice).</summary>
    public const double Least = 0.0003 * 18 / Math.PI;

    private const double LeastRoom = 0.5 * Math.PI / 180;

    /// <summary>For a group.</summary>
    /// <param name="limits">The person's limits; only its weights are used.</param>
    /// <param name="state">The muscles in the pose.</param>
    /// <param name="pose">The pose.</param>
    /// <param name="ranges">The person's joint ranges.</param>
    /// <param name="group">The group.</param>
    /// <param name="side">The side.</param>
    /// <returns>Motions with room left, largest gain first; empty when every motion is at its end.</returns>
    public static ImmutableArray<LengtheningStep> Of(
        LengthLimits limits, MuscleState state, BodyPose pose, JointRanges ranges, MuscleGroup group, Side side)
    {
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(ranges);
        var gains = new double[ranges.Model.Coordinates.Length];
        foreach (var line in limits.MembersOf(group, side))
            Gather(state, line, limits.WeightOf(line), gains);
        return Steps(gains, pose, ranges);
    }

    /// <summary>For one muscle.</summary>
    /// <param name="state">The muscles in the pose.</param>
    /// <param name="pose">The pose.</param>
    /// <param name="ranges">The person's joint ranges.</param>
    /// <param name="muscle">Index of the muscle.</param>
    /// <returns>Motions with room left, largest gain first.</returns>
    public static ImmutableArray<LengtheningStep> Of(MuscleState state, BodyPose pose, JointRanges ranges, int muscle)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(ranges);
        var gains = new double[ranges.Model.Coordinates.Length];
        Gather(state, muscle, 1, gains);
        return Steps(gains, pose, ranges);
    }

    private static void Gather(MuscleState state, int muscle, double weight, double[] gains)
    {
        var coordinates = state.ArmCoordinatesOf(muscle);
        var arms = state.ArmsOf(muscle);
        for (var a = 0; a < arms.Length; a++)
            gains[coordinates[a]] -= weight * arms[a];
    }

    private static ImmutableArray<LengtheningStep> Steps(double[] gains, BodyPose pose, JointRanges ranges)
    {
        ArgumentNullException.ThrowIfNull(pose);
        if (pose.Angles.Length != gains.Length)
            throw new ArgumentException("Pose and ranges must belong to the same body.", nameof(pose));
        var steps = new List<LengtheningStep>();
        for (var k = 0; k < gains.Length; k++)
        {
            var sign = gains[k] < 0 ? -1 : 1;
            var room = ranges.Room(k, pose.Angles[k], sign);
            var coordinate = ranges.Model.Coordinates[k];
            if (Math.Abs(gains[k]) >= Least && room >= LeastRoom)
                steps.Add(new LengtheningStep(coordinate.Motion, coordinate.Side, sign, "more " + Words(coordinate.Motion, sign > 0), Math.Abs(gains[k]), room));
        }

        return [.. steps.OrderByDescending(s => Math.Round(s.MetresPerRadian, 9)).ThenBy(s => s.Motion)];
    }

    private static string Words(Motion motion, bool grows) => motion switch
    {
        Motion.HipFlexion => grows ? "hip flexion" : "hip extension",
        Motion.HipAdduction => grows ? "hip adduction" : "hip abduction",
        Motion.HipRotation => grows ? "hip internal rotation" : "hip external rotation",
        Motion.KneeExtension => grows ? "knee straightening" : "knee bend",
        Motion.AnkleDorsiflexion => grows ? "ankle dorsiflexion" : "ankle plantarflexion",
        Motion.SubtalarInversion => grows ? "inversion of the foot" : "eversion of the foot",
        Motion.ToeExtension => grows ? "toe extension" : "toe flexion",
        Motion.TrunkExtension => grows ? "trunk extension" : "trunk flexion",
        Motion.TrunkBending => grows ? "trunk bend to the right" : "trunk bend to the left",
        Motion.TrunkRotation => grows ? "trunk turn to the left" : "trunk turn to the right",
        Motion.NeckExtension => grows ? "neck extension" : "neck flexion",
        Motion.NeckBending => grows ? "neck bend to the right" : "neck bend to the left",
        Motion.NeckRotation => grows ? "neck turn to the left" : "neck turn to the right",
        Motion.ShoulderFlexion => grows ? "shoulder flexion" : "shoulder extension",
        Motion.ShoulderAdduction => grows ? "shoulder adduction" : "shoulder abduction",
        Motion.ShoulderRotation => grows ? "shoulder internal rotation" : "shoulder external rotation",
        Motion.ElbowFlexion => grows ? "elbow bend" : "elbow straightening",
        Motion.ForearmPronation => grows ? "forearm pronation" : "forearm supination",
        Motion.WristFlexion => grows ? "wrist flexion" : "wrist extension",
        Motion.WristDeviation => grows ? "ulnar deviation" : "radial deviation",
    };
}
