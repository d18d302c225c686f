using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>A result that moved the probability, or did not and why.</summary>
/// <param name="Reading">The result.</param>
/// <param name="Weight">1 for the first family, 0.5 for later ones, 0 for what does not count.</param>
/// <param name="After">Probability after this step, before the limits; null for what does not count.</param>
/// <param name="Why">Why it counts as it does, in words.</param>
public sealed record ChainStep(TestReading Reading, double Weight, double? After, string Why);

/// <summary>A probability with its interval and the way to it.</summary>
/// <param name="Value">As shown, within the limits.</param>
/// <param name="Low">Lower end as shown.</param>
/// <param name="High">Upper end as shown.</param>
/// <param name="Band">In words.</param>
/// <param name="TotalRatio">Product of the weighted ratios, within its limits.</param>
/// <param name="Steps">Every result about the pattern, those that count first.</param>
/// <param name="Capped">What a limit changed; null when none did.</param>
public sealed record ProbabilityEstimate(
    double Value, double Low, double High, ProbabilityBand Band, double TotalRatio, ImmutableArray<ChainStep> Steps, string? Capped);

/// <summary>
/// From the probability before to the probability after: a cluster in place of its parts, one ratio per family, the first
/// family in full and later ones at half weight, limits at the end. The order of the results does not matter. Equations:
/// docs/models/exam-reasoning.md section 3.
/// </summary>
public static class ProbabilityChain
{
    /// <summary>Computes the probability.</summary>
    /// <param name="before">Probability before, above 0 and below 1.</param>
    /// <param name="range">Its range; null when none is known.</param>
    /// <param name="readings">Results about the pattern, in any order.</param>
    /// <returns>The estimate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability or its range is not between 0 and 1.</exception>
    public static ProbabilityEstimate From(double before, RatioSpan? range, IReadOnlyList<TestReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var start = Math.Log(Odds.Of(before));
        var (counted, left) = Choose(readings);
        var steps = ImmutableArray.CreateBuilder<ChainStep>();
        var (sum, down, up) = (0.0, HalfWidth(before, range?.Low), HalfWidth(before, range?.High));
        foreach (var reading in counted)
        {
            var weight = steps.Count == 0 ? 1 : ChainRules.LaterWeight;
            var used = reading.Ratio!.Used;
            sum += weight * Math.Log(used.Value);
            down += Math.Pow(weight * Math.Log(used.Value / used.Interval!.Low), 2);
            up += Math.Pow(weight * Math.Log(used.Interval.High / used.Value), 2);
            steps.Add(new ChainStep(reading, weight, Odds.Probability(Math.Exp(start + sum)), WhyCounted(reading, weight)));
        }
        foreach (var (reading, why) in left)
            steps.Add(new ChainStep(reading, 0, null, why));
        return Finish(start, sum, (Math.Sqrt(down), Math.Sqrt(up)), steps.ToImmutable());
    }

    private static ProbabilityEstimate Finish(double start, double sum, (double Down, double Up) half, ImmutableArray<ChainStep> steps)
    {
        var total = ChainRules.Capped(Math.Exp(sum));
        double At(double offset) => Odds.Probability(Math.Exp(start + Math.Log(total) + offset));
        var value = ChainRules.Shown(At(0));
        var capped = new List<string>();
        if (Math.Abs(Math.Exp(sum) - total) > 1e-9)
            capped.Add($"all tests together count as {Say.Number(total, 2)} at most, not {Say.Number(Math.Exp(sum), 2)}");
        if (Math.Abs(value - At(0)) > 1e-9)
            capped.Add($"never shown {(At(0) > value ? "above" : "below")} {Say.Percent(value)}");
        return new ProbabilityEstimate(
            value, Math.Min(value, ChainRules.Shown(At(-half.Down))), Math.Max(value, ChainRules.Shown(At(half.Up))),
            ChainRules.Band(value), total, steps, capped.Count == 0 ? null : string.Join("; ", capped));
    }

    /// <summary>One reading per family, strongest first, clusters in place of their parts; and what is left, with the reason.</summary>
    private static (List<TestReading> Counted, List<(TestReading Reading, string Why)> Left) Choose(IReadOnlyList<TestReading> readings)
    {
        var left = readings.Where(r => r.Ratio is null).Select(r => (r, r.WhyNot!)).ToList();
        var able = readings.Where(r => r.Ratio is not null).ToList();
        var clusters = able.Where(r => r.Test.Members.Length > 0).ToArray();
        foreach (var part in able.Where(r => clusters.Any(c => c != r && c.Test.Members.Contains(r.Test.Id))).ToArray())
        {
            left.Add((part, $"part of {clusters.First(c => c.Test.Members.Contains(part.Test.Id)).Test.ShortName}, which replaces it"));
            able.Remove(part);
        }
        var counted = new List<TestReading>();
        foreach (var family in able.GroupBy(r => r.Test.Family, StringComparer.Ordinal))
        {
            var order = Strongest(family).ToArray();
            var telling = order[0].Ratio!.Used.Value;
            if (order[0].Ratio!.Strength > 0)
                counted.Add(order[0]);
            else
                left.Add((order[0], order[0].Ratio!.Note ?? "a ratio of 1 shifts nothing"));
            foreach (var other in order.Skip(1))
                left.Add((other, WhySameFamily(other, order[0], telling)));
        }
        return (
            [.. Strongest(counted)],
            [.. left.OrderBy(l => l.Item1.Test.Id, StringComparer.Ordinal).ThenBy(l => l.Item2, StringComparer.Ordinal)]);
    }

    private static IOrderedEnumerable<TestReading> Strongest(IEnumerable<TestReading> readings) => readings
        .OrderByDescending(r => Math.Round(r.Ratio!.Strength, 9))
        .ThenBy(r => r.Ratio!.Used.Value)
        .ThenBy(r => r.Test.Id, StringComparer.Ordinal)
        .ThenBy(r => r.Ratio!.Figure.Id, StringComparer.Ordinal);

    private static string WhySameFamily(TestReading other, TestReading first, double telling)
    {
        var value = other.Ratio!.Used.Value;
        if (other.Ratio.Strength == 0)
            return other.Ratio.Note ?? "a ratio of 1 shifts nothing";
        var against = (value - 1) * (telling - 1) < 0;
        return against
            ? $"points the other way than {first.Test.ShortName}, which tests the same tissue and is the stronger one: weigh both yourself"
            : $"tests the same tissue as {first.Test.ShortName}: one ratio of a family counts, the stronger one";
    }

    private static string WhyCounted(TestReading reading, double weight) => string.Join(
        "; ",
        new[] { weight < 1 ? "a further family counts at half weight" : null, reading.Ratio!.Note }.OfType<string>());

    private static double HalfWidth(double middle, double? end) =>
        end is { } e ? Math.Pow(Math.Log(Odds.Of(e)) - Math.Log(Odds.Of(middle)), 2) : 0;
}
