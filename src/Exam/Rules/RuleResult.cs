using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>How far a rule can be told.</summary>
public enum RuleState
{
    /// <summary>Whatever the unknown items are, the advice is the same.</summary>
    Told,

    /// <summary>Unknown items can still change the advice.</summary>
    NotYet,

    /// <summary>The rule is not for this person.</summary>
    NotForThisPerson,
}

/// <summary>One criterion as evaluated.</summary>
/// <param name="Criterion">The criterion.</param>
/// <param name="Met">Whether it is met; null while unknown items can change it.</param>
public sealed record CriterionResult(RuleCriterion Criterion, bool? Met);

/// <summary>A score with both bounds; they are equal once it is known.</summary>
/// <param name="Score">The score.</param>
/// <param name="Low">Least points that are still possible.</param>
/// <param name="High">Most points that are still possible.</param>
public sealed record ScoreResult(RuleScore Score, int Low, int High);

/// <summary>An outcome as evaluated.</summary>
/// <param name="Outcome">The outcome.</param>
/// <param name="Told">The band; null while more than one is possible or the rule is not for this person.</param>
/// <param name="Possible">The bands that are still possible if the rule is for this person, in the order of the outcome.</param>
public sealed record OutcomeResult(RuleOutcome Outcome, RuleBand? Told, ImmutableArray<RuleBand> Possible);

/// <summary>A rule evaluated for one person.</summary>
public sealed record RuleResult
{
    /// <summary>The rule.</summary>
    public required DecisionRule Rule { get; init; }

    /// <summary>How far it can be told.</summary>
    public required RuleState State { get; init; }

    /// <summary>Exclusions that hold.</summary>
    public required ImmutableArray<RuleExclusion> Excluded { get; init; }

    /// <summary>Exclusions that are not known yet.</summary>
    public required ImmutableArray<RuleExclusion> ExclusionsOpen { get; init; }

    /// <summary>The criteria, in the order shown.</summary>
    public required ImmutableArray<CriterionResult> Criteria { get; init; }

    /// <summary>The scores with both bounds.</summary>
    public required ImmutableArray<ScoreResult> Scores { get; init; }

    /// <summary>The outcomes; the first is the advice.</summary>
    public required ImmutableArray<OutcomeResult> Outcomes { get; init; }

    /// <summary>Unknown items that can still change the advice, in the order asked; empty when it is told.</summary>
    public required ImmutableArray<RuleItem> Needs { get; init; }

    /// <summary>The band of the advice; null when it is not told.</summary>
    public RuleBand? Advice => Outcomes[0].Told;
}
