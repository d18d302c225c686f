using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>How a number is compared.</summary>
public enum RuleComparison
{
    /// <summary>The number itself or more.</summary>
    AtLeast,

    /// <summary>More than the number.</summary>
    Above,

    /// <summary>The number itself or less.</summary>
    AtMost,

    /// <summary>Less than the number.</summary>
    Below,
}

/// <summary>A condition on the items of a rule. It holds or not once every item is known.</summary>
public abstract record RuleCondition
{
    private RuleCondition()
    {
    }

    /// <summary>Whether it holds.</summary>
    /// <param name="values">A value for every item of the rule.</param>
    /// <param name="rule">The rule, for its criteria and scores.</param>
    /// <returns>Whether it holds.</returns>
    public abstract bool Holds(IReadOnlyDictionary<string, RuleValue> values, DecisionRule rule);

    /// <summary>This condition and every one inside it.</summary>
    /// <returns>The conditions, the outer one first.</returns>
    public IEnumerable<RuleCondition> Parts() => Inside().SelectMany(part => part.Parts()).Prepend(this);

    private ImmutableArray<RuleCondition> Inside() => this switch
    {
        All all => all.Conditions,
        Any any => any.Conditions,
        Not not => [not.Condition],
        _ => [],
    };

    private static bool Compare(double number, RuleComparison comparison, double limit) => comparison switch
    {
        RuleComparison.AtLeast => number >= limit,
        RuleComparison.Above => number > limit,
        RuleComparison.AtMost => number <= limit,
        RuleComparison.Below => number < limit,
    };

    /// <summary>An item has this answer.</summary>
    /// <param name="Item">Id of the item.</param>
    /// <param name="Word">"yes", "no" or the id of a choice.</param>
    public sealed record Is(string Item, string Word) : RuleCondition
    {
        /// <inheritdoc/>
        public override bool Holds(IReadOnlyDictionary<string, RuleValue> values, DecisionRule rule) => values[Item].Word == Word;
    }

    /// <summary>The number of an item lies on one side of a limit.</summary>
    /// <param name="Item">Id of the item.</param>
    /// <param name="Comparison">Which side.</param>
    /// <param name="Limit">The limit, in the unit of the item.</param>
    public sealed record Number(string Item, RuleComparison Comparison, double Limit) : RuleCondition
    {
        /// <inheritdoc/>
        public override bool Holds(IReadOnlyDictionary<string, RuleValue> values, DecisionRule rule) =>
            Compare(values[Item].Number!.Value, Comparison, Limit);
    }

    /// <summary>A criterion of the rule is met.</summary>
    /// <param name="Id">Id of the criterion.</param>
    public sealed record Criterion(string Id) : RuleCondition
    {
        /// <inheritdoc/>
        public override bool Holds(IReadOnlyDictionary<string, RuleValue> values, DecisionRule rule) =>
            rule.Criteria.First(c => c.Id == Id).When.Holds(values, rule);
    }

    /// <summary>A score of the rule lies on one side of a limit.</summary>
    /// <param name="Id">Id of the score.</param>
    /// <param name="Comparison">Which side.</param>
    /// <param name="Limit">The limit, points.</param>
    public sealed record Score(string Id, RuleComparison Comparison, double Limit) : RuleCondition
    {
        /// <inheritdoc/>
        public override bool Holds(IReadOnlyDictionary<string, RuleValue> values, DecisionRule rule) =>
            Compare(rule.PointsOf(rule.Scores.First(s => s.Id == Id), values), Comparison, Limit);
    }

    /// <summary>Every condition holds.</summary>
    /// <param name="Conditions">The conditions.</param>
    public sealed record All(ImmutableArray<RuleCondition> Conditions) : RuleCondition
    {
        /// <inheritdoc/>
        public override bool Holds(IReadOnlyDictionary<string, RuleValue> values, DecisionRule rule) =>
            Conditions.All(c => c.Holds(values, rule));
    }

    /// <summary>At least one condition holds.</summary>
    /// <param name="Conditions">The conditions.</param>
    public sealed record Any(ImmutableArray<RuleCondition> Conditions) : RuleCondition
    {
        /// <inheritdoc/>
        public override bool Holds(IReadOnlyDictionary<string, RuleValue> values, DecisionRule rule) =>
            Conditions.Any(c => c.Holds(values, rule));
    }

    /// <summary>The condition does not hold.</summary>
    /// <param name="Condition">The condition.</param>
    public sealed record Not(RuleCondition Condition) : RuleCondition
    {
        /// <inheritdoc/>
        public override bool Holds(IReadOnlyDictionary<string, RuleValue> values, DecisionRule rule) => !Condition.Holds(values, rule);
    }
}
