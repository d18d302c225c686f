using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Prescribing;

/// <summary>A place where an author's intent and the computation disagree.</summary>
/// <param name="About">The joint action or muscle group, as in the file: "hipAbduction".</param>
/// <param name="What">What is meant and what is found, a sentence.</param>
public sealed record Disagreement(string About, string What);

/// <summary>
/// Holds what an exercise is meant for against what is computed. Rules (our choice): the first action it is meant to load is among the three
/// most asked of the working side or asked at least six tenths of the most asked; every other one is asked 3 % or more. The first group a
/// stretch is meant to lengthen is likewise among those with the most reach; every other one is lengthened.
/// </summary>
public static class IntentCheck
{
    private const int Foremost = 3;
    private const double NearlyMost = 0.6;
    private const double Asked = 0.03;

    /// <summary>What an exercise really loads, working side and trunk and neck either way, most asked first; under 3 % left out.</summary>
    /// <param name="figures">The figures of the exercise.</param>
    /// <returns>Shares.</returns>
    public static ImmutableArray<LoadShare> Loaded(ExerciseFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return [.. figures.Load.Shares.Where(s => (s.Side == figures.Working || s.Action.IsMidline()) && s.Middle >= Asked).DistinctBy(s => s.Action)];
    }

    /// <summary>What an exercise really lengthens on the working side, most reach first.</summary>
    /// <param name="figures">The figures of the exercise.</param>
    /// <returns>Groups.</returns>
    public static ImmutableArray<GroupReach> Lengthened(ExerciseFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return [.. figures.Reach.Lengthened.Where(g => g.Side == figures.Working)];
    }

    /// <summary>Every disagreement, accepted or not.</summary>
    /// <param name="figures">The figures of the exercise for a reference person.</param>
    /// <returns>Disagreements; empty when intent and computation agree, or when there is nothing to compare.</returns>
    public static ImmutableArray<Disagreement> Of(ExerciseFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        var exercise = figures.Exercise;
        var found = ImmutableArray.CreateBuilder<Disagreement>();
        if (exercise.Purpose.Loads() && exercise.Loads.Length > 0)
        {
            if (!figures.Load.Computed)
                return [new(Name(exercise.Loads[0]), "The load cannot be computed. " + string.Join(" ", figures.Load.Problems))];
            Compare(exercise.Loads, [.. Loaded(figures).Select(s => (s.Action, s.Middle))], "load", "asks", found);
        }

        if (exercise.Purpose == Purpose.Stretch && exercise.Groups.Length > 0)
            Compare(exercise.Groups, [.. Lengthened(figures).Select(g => (g.Group, g.Peak.Middle))], "lengthen", "reaches", found);
        return found.ToImmutable();
    }

    /// <summary>A joint action or muscle group as it is written in files.</summary>
    /// <param name="value">The value.</param>
    /// <returns>Such as "hipAbduction".</returns>
    public static string Name<T>(T value)
        where T : struct, Enum
    {
        var name = value.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    private static void Compare<T>(
        ImmutableArray<T> meant, ImmutableArray<(T What, double Size)> computed, string verb, string does, ImmutableArray<Disagreement>.Builder found)
        where T : struct, Enum
    {
        var most = string.Join(", ", computed.Take(Foremost).Select(c => FormattableString.Invariant($"{Name(c.What)} {100 * c.Size:0} %")));
        for (var i = 0; i < meant.Length; i++)
        {
            var at = computed.IndexOf(computed.FirstOrDefault(c => c.What.Equals(meant[i])));
            var foremost = at >= 0 && (at < Foremost || computed[at].Size >= NearlyMost * computed[0].Size);
            if (at < 0 || (i == 0 && !foremost))
            {
                var size = at < 0 ? "hardly anything" : FormattableString.Invariant($"{100 * computed[at].Size:0} %");
                found.Add(new(Name(meant[i]), $"Meant to {verb} {Name(meant[i])}, it {does} {size} there; most: {(most.Length == 0 ? "nothing" : most)}."));
            }
        }
    }
}
