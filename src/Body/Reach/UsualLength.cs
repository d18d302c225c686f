using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Shortest and longest path of a muscle over the usual joint ranges by the trusted rule, and how uncertain the longest is.</summary>
/// <param name="ShortestM">Shortest path, metres.</param>
/// <param name="LongestM">Longest path, metres.</param>
/// <param name="SlopeM">Root of the summed squares of the arms in the longest pose: change of length by joint angle, metres per radian.</param>
internal readonly record struct UsualLength(double ShortestM, double LongestM, double SlopeM)
{
    /// <summary>
    /// Sweeps every line of a length group over the grid of <see cref="PathRanges"/>, with the knee bent to 140 degrees and, for lines
    /// that do not cross the knee, the hip to 120: the usual ends of these joints (our choice). Right side; the left mirrors it.
    /// </summary>
    internal static ImmutableArray<UsualLength> Sweep(MuscleSet set)
    {
        var half = set.Muscles.Length / 2;
        var found = new UsualLength[set.Muscles.Length];
        var state = new BodyState(set.Model);
        var muscles = new MuscleState(set);
        var pose = new BodyPose(set.Model);
        var lines = Enumerable.Range(0, half).Where(i => set.Muscles[i].LengthGroup is not null && !set.Muscles[i].IsBand);
        foreach (var alike in lines.GroupBy(i => PathRanges.Key(set, i)))
        {
            var members = alike.ToArray();
            var coordinates = muscles.ArmCoordinatesOf(members[0]).ToArray();
            foreach (var i in members)
                found[i] = new UsualLength(double.PositiveInfinity, double.NegativeInfinity, 0);
            Turn(members, coordinates, coordinates.Any(c => set.Model.Coordinates[c].Motion == Motion.KneeExtension), 0);
            Array.Clear(pose.Angles);
        }

        for (var i = 0; i < half; i++)
            found[i + half] = found[i];
        return [.. found];

        void Turn(int[] members, int[] coordinates, bool overKnee, int depth)
        {
            if (depth < coordinates.Length)
            {
                foreach (var degrees in Grid(set.Model.Coordinates[coordinates[depth]].Motion, overKnee))
                {
                    pose.Angles[coordinates[depth]] = degrees * Math.PI / 180;
                    Turn(members, coordinates, overKnee, depth + 1);
                }

                return;
            }

            state.Update(pose);
            muscles.Update(state, pose);
            foreach (var i in members)
                found[i] = found[i].With(muscles.Lengths[i], muscles.ArmsOf(i));
        }
    }

    private static double[] Grid(Motion motion, bool overKnee) => motion switch
    {
        Motion.KneeExtension => [.. PathRanges.Grid(motion), -140],
        Motion.HipFlexion when !overKnee => [.. PathRanges.Grid(motion), 120],
        _ => PathRanges.Grid(motion),
    };

    private UsualLength With(double length, ReadOnlySpan<double> arms)
    {
        var slope = SlopeM;
        if (length > LongestM)
        {
            var squares = 0.0;
            foreach (var arm in arms)
                squares += arm * arm;
            slope = Math.Sqrt(squares);
        }

        return new UsualLength(Math.Min(ShortestM, length), Math.Max(LongestM, length), slope);
    }
}
