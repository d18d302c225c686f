using System.Text.Json.Serialization;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>A published decision rule in one JSON file.</summary>
public sealed record RuleFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public required string Schema { get; init; }

    /// <summary>Stable id, lower case with hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Name as clinicians know it.</summary>
    public required string Name { get; init; }

    /// <summary>What it decides, as a question.</summary>
    public required string Decides { get; init; }

    /// <summary>Regions it is offered for.</summary>
    public required IReadOnlyList<BodyRegion> Regions { get; init; }

    /// <summary>Rules of one group answer the same question; the most urgent answer counts.</summary>
    public string? Group { get; init; }

    /// <summary>Key into sources.json; also the source of every part that names none.</summary>
    public required string Source { get; init; }

    /// <summary>How far it was confirmed; also that of every part that says nothing.</summary>
    public required string Confirmation { get; init; }

    /// <summary>Whom it was made for, in words.</summary>
    public required string AppliesTo { get; init; }

    /// <summary>Whom it is not for.</summary>
    public IReadOnlyList<RuleExclusionFile> NotFor { get; init; } = [];

    /// <summary>What is asked, in the order asked.</summary>
    public required IReadOnlyList<RuleItemFile> Items { get; init; }

    /// <summary>What counts, in the order shown.</summary>
    public required IReadOnlyList<RuleCriterionFile> Criteria { get; init; }

    /// <summary>Sums of points.</summary>
    public IReadOnlyList<RuleScoreFile> Scores { get; init; } = [];

    /// <summary>What follows; the first one is the advice.</summary>
    public required IReadOnlyList<RuleOutcomeFile> Outcomes { get; init; }

    /// <summary>How well it did, and in whom.</summary>
    public required IReadOnlyList<RuleAccuracyFile> Accuracy { get; init; }

    /// <summary>What to know before relying on it.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}

/// <summary>Whom a rule is not for.</summary>
/// <param name="Text">Whom, in words that follow "not for".</param>
/// <param name="When">When it is so.</param>
/// <param name="Source">Key into sources.json.</param>
/// <param name="Confirmation">How far it was confirmed.</param>
public sealed record RuleExclusionFile(string Text, RuleConditionFile When, string? Source = null, string? Confirmation = null);

/// <summary>One thing that is asked.</summary>
/// <param name="Id">Stable id within the rule.</param>
/// <param name="Text">What is asked or looked at.</param>
/// <param name="Kind">How it is answered.</param>
/// <param name="Unit">Unit of a number.</param>
/// <param name="Low">Least number that can be.</param>
/// <param name="High">Largest number that can be.</param>
/// <param name="Choices">The choices.</param>
/// <param name="Known">The fact of the record that answers it.</param>
/// <param name="Source">Key into sources.json.</param>
/// <param name="Confirmation">How far the wording was confirmed.</param>
public sealed record RuleItemFile(
    string Id, string Text, RuleItemKind Kind = RuleItemKind.YesNo, string? Unit = null, double? Low = null, double? High = null,
    IReadOnlyList<RuleChoice>? Choices = null, RuleFact? Known = null, string? Source = null, string? Confirmation = null);

/// <summary>One thing that counts.</summary>
/// <param name="Id">Stable id; without a condition, the item of that id answered yes.</param>
/// <param name="Text">What counts; without it, the text of the item of that id.</param>
/// <param name="Points">Points when it is met.</param>
/// <param name="When">When it is met.</param>
public sealed record RuleCriterionFile(string Id, string? Text = null, int Points = 0, RuleConditionFile? When = null);

/// <summary>A sum of points.</summary>
/// <param name="Id">Stable id within the rule.</param>
/// <param name="Name">Name.</param>
/// <param name="Of">Ids of the criteria that are summed; all when left out.</param>
public sealed record RuleScoreFile(string Id, string Name, IReadOnlyList<string>? Of = null);

/// <summary>One way to read a rule.</summary>
/// <param name="Id">Stable id within the rule.</param>
/// <param name="Name">What it tells.</param>
/// <param name="Bands">Tried in order; the last one has no condition.</param>
public sealed record RuleOutcomeFile(string Id, string Name, IReadOnlyList<RuleBandFile> Bands);

/// <summary>One band of an outcome.</summary>
/// <param name="Id">Stable id within the outcome.</param>
/// <param name="Name">Short name.</param>
/// <param name="Means">What it means and what to do.</param>
/// <param name="Tone">How it is to be taken.</param>
/// <param name="Urgency">How fast to act, if at all.</param>
/// <param name="When">When it holds; left out in the last band.</param>
public sealed record RuleBandFile(
    string Id, string Name, string Means, Tone Tone = Tone.Neutral, Urgency? Urgency = null, RuleConditionFile? When = null);

/// <summary>How well a rule did in one study or review.</summary>
/// <param name="Population">In whom, how many and where.</param>
/// <param name="Source">Key into sources.json.</param>
/// <param name="Confirmation">How far it was confirmed.</param>
/// <param name="Figures">The figures with their intervals.</param>
/// <param name="IntervalNote">Why an interval is missing.</param>
public sealed record RuleAccuracyFile(
    string Population, string Source, string Confirmation, IReadOnlyList<RuleFigureFile>? Figures = null, string? IntervalNote = null);

/// <summary>One accuracy figure.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Value">The figure; shares from 0 to 1.</param>
/// <param name="Low">Lower end of the 95 % interval.</param>
/// <param name="High">Upper end of the 95 % interval.</param>
/// <param name="Of">What part it belongs to.</param>
public sealed record RuleFigureFile(RuleFigureKind Kind, double Value, double? Low = null, double? High = null, string? Of = null);

/// <summary>
/// A condition, in one of these forms: item with is; item or score with exactly one of atLeast, above, atMost, below;
/// criterion; all; any; not.
/// </summary>
public sealed record RuleConditionFile
{
    /// <summary>Id of an item.</summary>
    public string? Item { get; init; }

    /// <summary>The answer the item must have: yes, no or the id of a choice.</summary>
    public string? Is { get; init; }

    /// <summary>Id of a score.</summary>
    public string? Score { get; init; }

    /// <summary>Id of a criterion that must be met.</summary>
    public string? Criterion { get; init; }

    /// <summary>This number or more.</summary>
    public double? AtLeast { get; init; }

    /// <summary>More than this number.</summary>
    public double? Above { get; init; }

    /// <summary>This number or less.</summary>
    public double? AtMost { get; init; }

    /// <summary>Less than this number.</summary>
    public double? Below { get; init; }

    /// <summary>Every one must hold.</summary>
    public IReadOnlyList<RuleConditionFile>? All { get; init; }

    /// <summary>At least one must hold.</summary>
    public IReadOnlyList<RuleConditionFile>? Any { get; init; }

    /// <summary>It must not hold.</summary>
    public RuleConditionFile? Not { get; init; }
}
