using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Sweeps each path over a grid of the joints it crosses. The grid is our choice; it gives the published ranges of the leg
/// (docs/models/body.md, section 6). The published geometry is followed, also where it is not trusted.
/// </summary>
internal static class PathRanges
{
    internal static ImmutableArray<PathRange> Sweep(MuscleSet set)
    {
        var half = set.Muscles.Length / 2;
        var ranges = new PathRange[set.Muscles.Length];
        var state = new BodyState(set.Model);
        var muscles = new MuscleState(set, PathUse.AsPublished);
        foreach (var alike in Enumerable.Range(0, half).GroupBy(i => Key(set, i)))
        {
            var members = alike.ToArray();
            var coordinates = set.ArmCoordinates.Slice(set.Muscles[members[0]].FirstArm, set.Muscles[members[0]].ArmCount).ToArray();
            foreach (var i in members)
                ranges[i] = new PathRange(double.PositiveInfinity, double.NegativeInfinity);
            var pose = new BodyPose(set.Model);
            Turn(0);

            void Turn(int depth)
            {
                if (depth == coordinates.Length)
                {
                    state.Update(pose);
                    foreach (var i in members)
                    {
                        var length = muscles.LengthAsPublished(i, state, pose);
                        ranges[i] = new PathRange(Math.Min(ranges[i].ShortestM, length), Math.Max(ranges[i].LongestM, length));
                    }

                    return;
                }

                foreach (var degrees in Grid(set.Model.Coordinates[coordinates[depth]].Motion))
                {
                    pose.Angles[coordinates[depth]] = degrees * Math.PI / 180;
                    Turn(depth + 1);
                }
            }
        }

        for (var i = 0; i < half; i++)
            ranges[i + half] = ranges[i];
        return [.. ranges];
    }

    internal static string Key(MuscleSet set, int muscle) =>
        string.Join(' ', set.ArmCoordinates.Slice(set.Muscles[muscle].FirstArm, set.Muscles[muscle].ArmCount).ToArray());

    /// <summary>Degrees in the model's sign.</summary>
    internal static double[] Grid(Motion motion) => motion switch
    {
        Motion.HipFlexion => [-20, 0, 30, 60, 90],
        Motion.HipAdduction => [-40, -20, 0, 15, 25],
        Motion.HipRotation => [-35, 0, 35],
        Motion.KneeExtension => [0, -30, -60, -90, -120],
        Motion.AnkleDorsiflexion => [-40, -20, 0, 20],
        Motion.SubtalarInversion => [-15, 0, 20],
        Motion.ToeExtension => [-20, 0, 40],
        Motion.TrunkExtension => [-60, -30, 0, 25],
        Motion.TrunkBending => [-25, 0, 25],
        Motion.TrunkRotation => [-30, 0, 30],
        _ => [0],
    };
}
