using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>
/// Findings about change over time. Worse, better and unchanged are told alike; only worse carries the weight of a finding.
/// A change is judged since the last visit, and since the first where the last shows none: many small steps can add up.
/// </summary>
internal static class ChangeFindings
{
    /// <summary>Changes of one measure that are beyond error, or beyond the default limit where no error is published.</summary>
    public static IEnumerable<Finding> Of(Interpretation found, Side? affected) =>
        Sets(found).Select(set => set.FirstOrDefault(c => IsReal(found.Measure, c)))
            .OfType<ChangeOverTime>()
            .Select(change => Make(found.Measure, change, affected));

    /// <summary>Everything that stayed within its error, in one finding; null when there is nothing.</summary>
    public static Finding? Unchanged(IEnumerable<Interpretation> interpretations)
    {
        var same = (
            from found in interpretations
            orderby found.Measure.Position, found.Measure.Order
            from set in Sets(found)
            let last = set[0]
            where last.Verdict == ChangeVerdict.WithinError && !set.Any(c => IsReal(found.Measure, c))
            select (found.Measure, Change: last)).ToList();
        return same.Count == 0
            ? null
            : new Finding(
                "no-change",
                $"No change beyond error: {same.Count} {(same.Count == 1 ? "value" : "values")}",
                string.Join("; ", same.Select(s => Told(s.Measure, s.Change))) + ".",
                FindingRules.WithinErrorWeight, false, null, [.. same.Select(s => s.Measure.Id).Distinct()]);
    }

    // For each side and activity the change since the last visit, then that since the first. Patient-specific function is judged by its mean.
    private static IEnumerable<ImmutableArray<ChangeOverTime>> Sets(Interpretation found) =>
        found.Changes
            .Where(c => found.Measure.Kind != MeasureKind.PatientSpecific || c is { Activity: null, Detectable: not null })
            .GroupBy(c => (c.Side, c.Activity))
            .Select(g => g.OrderBy(c => c.SinceFirst).ToImmutableArray());

    private static bool IsReal(Measure measure, ChangeOverTime change) => change.Verdict switch
    {
        ChangeVerdict.Real or ChangeVerdict.RealAndWorthwhile => true,
        ChangeVerdict.NoErrorKnown =>
            Math.Abs(change.After - change.Before) > Limit(measure, change),
        ChangeVerdict.WithinError or ChangeVerdict.NotComparable => false,
    };

    private static double Limit(Measure measure, ChangeOverTime change) => FindingRules.DefaultLimit(measure, change.Before, change.After);

    private static Finding Make(Measure measure, ChangeOverTime change, Side? affected)
    {
        bool? beyond = change.Verdict == ChangeVerdict.NoErrorKnown ? null : true;
        var (kind, way) = change.Better switch
        {
            true => ("better", "better"),
            false => ("worse", "worse"),
            null => ("changed", change.After > change.Before ? "more" : "less"),
        };
        var name = FindingsMaker.Thing(measure, change.Side) + (change.Activity is { Length: > 0 } activity ? $" ({activity})" : "");
        var day = change.SinceDay.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var verdict = ChangeSentences.Verdict(measure, change);
        var detail = $"{char.ToUpperInvariant(verdict[0])}{verdict[1..]}.";
        if (beyond is null)
            detail += $" Our default limit is {FindingsMaker.DefaultText(measure)}.";
        return new Finding(
            $"{FindingsMaker.IdOf(measure, change.Side, null, change.Activity?.Trim().ToLowerInvariant())}:{kind}",
            $"{name}: {way} than on {day}, {Values(measure, change)}", detail, Weight(measure, change, affected, beyond), beyond, null, [measure.Id])
        {
            Better = change.Better,
        };
    }

    private static double Weight(Measure measure, ChangeOverTime change, Side? affected, bool? beyond)
    {
        if (change.Better == true)
            return FindingRules.BetterWeight;
        var largest = Math.Max(Math.Abs(change.Before), Math.Abs(change.After));
        var size = change.Better is null ? Math.Abs(change.After - change.Before) / largest : SideMath.Deficit(measure, change.Before, change.After);
        return FindingRules.Weight(size, FindingsMaker.OnAffected(change.Side, affected), beyond);
    }

    private static string Told(Measure measure, ChangeOverTime change) =>
        $"{FindingsMaker.Thing(measure, change.Side)} {Values(measure, change)} (error {Sentences.Amount(measure, change.ByTorque, change.Detectable!.Value)})";

    private static string Values(Measure measure, ChangeOverTime change) =>
        $"{ChangeSentences.Value(measure, change, change.Before)} to {ChangeSentences.Value(measure, change, change.After)}";
}
