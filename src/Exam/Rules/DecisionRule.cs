using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>A published decision rule as data: what it asks, how it counts, what each outcome means, how well it did and where.</summary>
public sealed record DecisionRule
{
    /// <summary>Most combinations of unknown answers that are tried for one evaluation; content checks hold every rule to it.</summary>
    public const int MostCombinations = 20_000;

    /// <summary>Stable id.</summary>
    public required string Id { get; init; }

    /// <summary>Name as clinicians know it.</summary>
    public required string Name { get; init; }

    /// <summary>What it decides, as a question.</summary>
    public required string Decides { get; init; }

    /// <summary>Regions it is offered for.</summary>
    public required ImmutableArray<BodyRegion> Regions { get; init; }

    /// <summary>Rules of one group answer the same question; the most urgent answer counts. Null when it stands alone.</summary>
    public string? Group { get; init; }

    /// <summary>Whom it was made for, in words.</summary>
    public required string AppliesTo { get; init; }

    /// <summary>Whom it is not for.</summary>
    public required ImmutableArray<RuleExclusion> NotFor { get; init; }

    /// <summary>What is asked, in the order asked.</summary>
    public required ImmutableArray<RuleItem> Items { get; init; }

    /// <summary>What counts, in the order shown.</summary>
    public required ImmutableArray<RuleCriterion> Criteria { get; init; }

    /// <summary>Sums of points; empty for a rule of conditions only.</summary>
    public required ImmutableArray<RuleScore> Scores { get; init; }

    /// <summary>What follows; the first one is the advice, others are further ways to read the score.</summary>
    public required ImmutableArray<RuleOutcome> Outcomes { get; init; }

    /// <summary>How well it did, and in whom.</summary>
    public required ImmutableArray<RuleAccuracy> Accuracy { get; init; }

    /// <summary>What to know before relying on it.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>Key into content/sources.json.</summary>
    public required string Source { get; init; }

    /// <summary>How far the rule was confirmed.</summary>
    public required string Confirmation { get; init; }

    /// <summary>An item by id; null when there is none.</summary>
    /// <param name="id">Id of the item.</param>
    /// <returns>The item or null.</returns>
    public RuleItem? Item(string id) => Items.FirstOrDefault(i => i.Id == id);

    /// <summary>Points of a score once every item is known.</summary>
    /// <param name="score">A score of this rule.</param>
    /// <param name="values">A value for every item.</param>
    /// <returns>Points, which may be negative.</returns>
    public int PointsOf(RuleScore score, IReadOnlyDictionary<string, RuleValue> values)
    {
        ArgumentNullException.ThrowIfNull(score);
        return Criteria.Where(c => score.Criteria.Contains(c.Id)).Sum(c => c.When.Holds(values, this) ? c.Points : 0);
    }

    /// <summary>Every condition of the rule, those inside others included.</summary>
    /// <returns>The conditions.</returns>
    public IEnumerable<RuleCondition> Conditions() =>
        NotFor.Select(n => n.When)
            .Concat(Criteria.Select(c => c.When))
            .Concat(Outcomes.SelectMany(o => o.Bands).Select(b => b.When).OfType<RuleCondition>())
            .SelectMany(c => c.Parts());
}
