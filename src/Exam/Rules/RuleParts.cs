using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Whom a rule is not for.</summary>
/// <param name="Text">Whom, in words that follow "not for".</param>
/// <param name="When">When it is so.</param>
/// <param name="Source">Key into content/sources.json.</param>
/// <param name="Confirmation">How far it was confirmed.</param>
public sealed record RuleExclusion(string Text, RuleCondition When, string Source, string Confirmation);

/// <summary>One thing that counts.</summary>
/// <param name="Id">Stable id within the rule.</param>
/// <param name="Text">What counts, in words.</param>
/// <param name="Points">Points when it is met; 0 in a rule without points.</param>
/// <param name="When">When it is met.</param>
public sealed record RuleCriterion(string Id, string Text, int Points, RuleCondition When);

/// <summary>A sum of points.</summary>
/// <param name="Id">Stable id within the rule.</param>
/// <param name="Name">Name, such as "signs present".</param>
/// <param name="Criteria">Ids of the criteria that are summed.</param>
public sealed record RuleScore(string Id, string Name, ImmutableArray<string> Criteria);

/// <summary>One way to read a rule: bands tried in order, the first whose condition holds is told.</summary>
/// <param name="Id">Stable id within the rule.</param>
/// <param name="Name">What it tells, such as "advice" or "three levels".</param>
/// <param name="Bands">The bands; the last one has no condition.</param>
public sealed record RuleOutcome(string Id, string Name, ImmutableArray<RuleBand> Bands);

/// <summary>One band of an outcome.</summary>
/// <param name="Id">Stable id within the outcome.</param>
/// <param name="Name">Short, such as "radiograph before loading".</param>
/// <param name="Means">What it means and what to do.</param>
/// <param name="Tone">How it is to be taken.</param>
/// <param name="Urgency">How fast to act; null when nothing needs to be done because of it.</param>
/// <param name="When">When it holds; null in the last band, which holds otherwise.</param>
public sealed record RuleBand(string Id, string Name, string Means, Tone Tone, Urgency? Urgency, RuleCondition? When);

/// <summary>What an accuracy figure is.</summary>
public enum RuleFigureKind
{
    /// <summary>Share of people with the condition whom the rule marks, 0 to 1.</summary>
    Sensitivity,

    /// <summary>Share of people without the condition whom the rule leaves unmarked, 0 to 1.</summary>
    Specificity,

    /// <summary>Likelihood ratio of the band or of a marked person.</summary>
    LikelihoodRatio,

    /// <summary>Likelihood ratio of an unmarked person.</summary>
    NegativeLikelihoodRatio,

    /// <summary>Share of people in the band who had the condition in that study, 0 to 1.</summary>
    Probability,
}

/// <summary>One accuracy figure with its interval.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Value">The figure.</param>
/// <param name="Low">Lower end of the 95 % interval; null when none is known.</param>
/// <param name="High">Upper end of the 95 % interval; null when none is known.</param>
/// <param name="Of">What part it belongs to, such as "3 of 4" or "low"; null for the rule as a whole.</param>
public sealed record RuleFigure(RuleFigureKind Kind, double Value, double? Low, double? High, string? Of);

/// <summary>How well a rule did in one study or review.</summary>
/// <param name="Population">In whom, how many and where.</param>
/// <param name="Figures">The figures; may be empty when only words are printed.</param>
/// <param name="IntervalNote">Why an interval is missing; null when every figure has one.</param>
/// <param name="Source">Key into content/sources.json.</param>
/// <param name="Confirmation">How far it was confirmed.</param>
public sealed record RuleAccuracy(
    string Population, ImmutableArray<RuleFigure> Figures, string? IntervalNote, string Source, string Confirmation);
