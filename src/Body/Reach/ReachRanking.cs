using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>One movement in a ranking.</summary>
/// <param name="Id">Name of the movement, as given.</param>
/// <param name="Peak">Largest reach of the ranked group or muscle.</param>
/// <param name="AtFraction">Where in the movement, 0 start to 1 end.</param>
/// <param name="ChangeM">Change of length from the neutral pose there, metres.</param>
/// <param name="Verdict">What a reach over 100 % means, in a sentence; null up to 100 % and for single muscles.</param>
public sealed record RankedReach(string Id, Reach Peak, double AtFraction, double ChangeM, string? Verdict);

/// <summary>Ranks movements by how far they lengthen a group or a muscle.</summary>
public static class ReachRanking
{
    /// <summary>By group.</summary>
    /// <param name="movements">Movements with their reach.</param>
    /// <param name="group">The group.</param>
    /// <param name="side">The side.</param>
    /// <returns>Largest peak reach first; equals by name.</returns>
    public static ImmutableArray<RankedReach> Of(IEnumerable<(string Id, MovementReach Reach)> movements, MuscleGroup group, Side side)
    {
        ArgumentNullException.ThrowIfNull(movements);
        return Sorted(movements.Select(m =>
        {
            var found = m.Reach.Of(group, side);
            return new RankedReach(m.Id, found.Peak, m.Reach.Fractions[found.PeakAt], found.PeakChangeM, found.Verdict);
        }));
    }

    /// <summary>By muscle.</summary>
    /// <param name="movements">Movements with their reach.</param>
    /// <param name="muscleId">Short name of a line with a limit.</param>
    /// <param name="side">The side.</param>
    /// <returns>Largest peak reach first; equals by name.</returns>
    /// <exception cref="ArgumentException">There is no such muscle, or it has no limit.</exception>
    public static ImmutableArray<RankedReach> Of(IEnumerable<(string Id, MovementReach Reach)> movements, string muscleId, Side side)
    {
        ArgumentNullException.ThrowIfNull(movements);
        return Sorted(movements.Select(m =>
        {
            var found = m.Reach.Muscles.FirstOrDefault(x => x.Id == muscleId && x.Side == side)
                ?? throw new ArgumentException($"No limit of length is known for a muscle \"{muscleId}\".", nameof(muscleId));
            return new RankedReach(m.Id, found.Peak, found.AtFraction, found.ChangeM, null);
        }));
    }

    private static ImmutableArray<RankedReach> Sorted(IEnumerable<RankedReach> ranked) =>
        [.. ranked.OrderByDescending(r => Math.Round(r.Peak.Middle, 9)).ThenBy(r => r.Id, StringComparer.Ordinal)];
}
