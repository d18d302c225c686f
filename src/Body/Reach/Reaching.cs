using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>The reach of every group along a movement.</summary>
public static class Reaching
{
    private static readonly ImmutableArray<MuscleGroup> Groups = [.. Enum.GetValues<MuscleGroup>()];
    private static readonly ImmutableArray<Side> BothSides = [Side.Right, Side.Left];

    /// <summary>Settles a movement and computes its reach.</summary>
    /// <param name="points">Named surface points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="limits">The person's limits of length.</param>
    /// <returns>The reach of both sides.</returns>
    public static MovementReach Of(SurfacePoints points, Movement movement, Side working, LengthLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return Of(SettledMovement.Of(limits.Set.Model, points, movement, working), limits);
    }

    /// <summary>Computes the reach of poses that are settled already.</summary>
    /// <param name="settled">The settled movement, of the body the limits are of.</param>
    /// <param name="limits">The person's limits of length.</param>
    /// <returns>The reach of both sides.</returns>
    /// <exception cref="ArgumentException">There is no pose, or the poses belong to another body.</exception>
    public static MovementReach Of(SettledMovement settled, LengthLimits limits)
    {
        ArgumentNullException.ThrowIfNull(settled);
        ArgumentNullException.ThrowIfNull(limits);
        if (settled.Frames.Length == 0 || settled.Frames.Length != settled.Fractions.Length)
            throw new ArgumentException("A movement needs at least one pose, and a fraction for each.", nameof(settled));
        if (settled.Model != limits.Set.Model)
            throw new ArgumentException("The poses and the limits must be of the same body.", nameof(settled));
        var curves = new Curves(limits, settled.Frames.Length);
        var state = new BodyState(limits.Set.Model);
        var muscles = new MuscleState(limits.Set);
        for (var frame = 0; frame < settled.Frames.Length; frame++)
        {
            state.Update(settled.Frames[frame].Pose);
            muscles.Update(state, settled.Frames[frame].Pose);
            curves.Take(frame, muscles);
        }

        return new MovementReach(
            settled.Fractions, curves.Groups(), curves.Muscles(settled.Fractions),
            [.. settled.Frames.Select(f => Settling.Missing(f, Loading.DoubtfulGapM)).OfType<string>().Distinct().Select(m => m + " The numbers are doubtful.")]);
    }

    /// <summary>What is gathered pose by pose; taking a pose allocates nothing.</summary>
    internal sealed class Curves(LengthLimits limits, int frames)
    {
        private readonly int slots = Reaching.Groups.Length * BothSides.Length;
        private readonly Reach[] groups = new Reach[Reaching.Groups.Length * BothSides.Length * frames];
        private readonly double[] changes = new double[Reaching.Groups.Length * BothSides.Length * frames];
        private readonly Reach[] lines = new Reach[limits.Set.Muscles.Length * frames];
        private readonly double[] lengths = new double[limits.Set.Muscles.Length * frames];
        private readonly bool[] beyond = new bool[limits.Set.Muscles.Length * frames];

        /// <summary>Reads one pose.</summary>
        internal void Take(int frame, MuscleState muscles)
        {
            var at = frame * slots;
            foreach (var group in Reaching.Groups)
            {
                foreach (var side in BothSides)
                {
                    groups[at] = limits.Reach(group, side, muscles);
                    changes[at] = limits.ChangeM(group, side, muscles);
                    at++;
                }
            }

            var count = limits.Set.Muscles.Length;
            muscles.Lengths.CopyTo(lengths.AsSpan(frame * count));
            muscles.Extrapolated.CopyTo(beyond.AsSpan(frame * count));
            for (var m = 0; m < count; m++)
            {
                if (limits.Of(m) is { } limit)
                    lines[frame * count + m] = limit.Of(muscles.Lengths[m]);
            }
        }

        internal ImmutableArray<GroupReach> Groups()
        {
            var made = new List<GroupReach>();
            for (var slot = 0; slot < slots; slot++)
                made.Add(Group(slot, Reaching.Groups[slot / BothSides.Length], BothSides[slot % BothSides.Length]));
            return [.. made.OrderByDescending(g => g.Lengthens).ThenByDescending(g => Math.Round(g.Peak.Middle, 9)).ThenBy(g => g.Group).ThenBy(g => g.Side)];
        }

        internal ImmutableArray<MuscleReach> Muscles(ImmutableArray<double> fractions)
        {
            var (set, count) = (limits.Set, limits.Set.Muscles.Length);
            var made = new List<MuscleReach>();
            for (var m = 0; m < count; m++)
            {
                if (limits.Of(m) is not { } limit)
                    continue;
                var peak = Peak(frame => lines[frame * count + m].Middle);
                made.Add(new MuscleReach(
                    set.Muscles[m].Id, set.Muscles[m].Name, set.Muscles[m].LengthGroup!.Value, set.Muscles[m].Side,
                    lines[peak * count + m], fractions[peak], lengths[peak * count + m] - set.Muscles[m].NeutralLengthM, limit.Basis));
            }

            return [.. made.OrderByDescending(m => Math.Round(m.Peak.Middle, 9)).ThenBy(m => m.Id, StringComparer.Ordinal).ThenBy(m => m.Side)];
        }

        private GroupReach Group(int slot, MuscleGroup group, Side side)
        {
            var count = limits.Set.Muscles.Length;
            var peak = Peak(frame => groups[frame * slots + slot].Middle);
            var members = limits.MembersOf(group, side).ToArray();
            var leading = members.MaxBy(m => Math.Round(lines[peak * count + m].Middle, 9));
            return new GroupReach(
                group, side, [.. Enumerable.Range(0, frames).Select(f => groups[f * slots + slot])],
                [.. Enumerable.Range(0, frames).Select(f => changes[f * slots + slot])], peak, limits.Set.Muscles[leading].Name,
                lines[peak * count + leading], limits.BasisOf(group, side), limits.TestsOf(group, side),
                members.Any(m => beyond[peak * count + m] || limits.Of(m)!.Value.Extrapolated));
        }

        /// <summary>The first pose with the largest value; equal to a billionth counts as equal.</summary>
        private int Peak(Func<int, double> value) =>
            Enumerable.Range(0, frames).MaxBy(frame => Math.Round(value(frame), 9));
    }
}
