using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>
/// The answers of an item that a rule can tell apart: yes and no, each choice, and for a number each cut-off and one value of
/// every gap between cut-offs. Trying these tries everything.
/// </summary>
public static class RuleCells
{
    /// <summary>One value of every kind of answer that the rule can tell apart.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="item">An item of it.</param>
    /// <returns>The values, numbers ascending; at least one.</returns>
    public static ImmutableArray<RuleValue> Of(DecisionRule rule, RuleItem item)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(item);
        return item.Kind switch
        {
            RuleItemKind.YesNo => [RuleValue.No, RuleValue.Yes],
            RuleItemKind.Choice => [.. item.Choices.Select(c => RuleValue.Choice(c.Id))],
            RuleItemKind.Number => Numbers(rule, item),
        };
    }

    /// <summary>How many combinations an evaluation with nothing answered tries.</summary>
    /// <param name="rule">The rule.</param>
    /// <returns>The product of the cells of all items.</returns>
    public static double Combinations(DecisionRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return rule.Items.Aggregate(1.0, (product, item) => product * Of(rule, item).Length);
    }

    private static ImmutableArray<RuleValue> Numbers(DecisionRule rule, RuleItem item)
    {
        var limits = rule.Conditions().OfType<RuleCondition.Number>().Where(n => n.Item == item.Id).Distinct().ToArray();
        var cuts = limits.Select(n => n.Limit).Where(n => n >= item.Low && n <= item.High).Distinct().Order().ToArray();
        double[] ends = [item.Low, .. cuts, item.High];
        var tried = new List<double> { item.Low };
        for (var i = 0; i + 1 < ends.Length; i++)
        {
            tried.Add((ends[i] + ends[i + 1]) / 2);
            tried.Add(ends[i + 1]);
        }

        // Values that no comparison tells apart are one: the first of each stays.
        return [.. tried.Distinct().Order().DistinctBy(value => string.Concat(limits.Select(n => Side(value, n)))).Select(RuleValue.Of)];
    }

    private static char Side(double value, RuleCondition.Number limit) => (limit.Comparison, value.CompareTo(limit.Limit)) switch
    {
        (RuleComparison.AtLeast or RuleComparison.AtMost, 0) => '1',
        (RuleComparison.Above or RuleComparison.Below, 0) => '0',
        (RuleComparison.AtLeast or RuleComparison.Above, > 0) => '1',
        (RuleComparison.AtMost or RuleComparison.Below, < 0) => '1',
        _ => '0',
    };
}
