namespace MomentArm.Exam;

/// <summary>What the authors and reviewers say a test is good for.</summary>
public enum TestUse
{
    /// <summary>A positive result speaks for the condition; a negative one is not used.</summary>
    RuleIn,

    /// <summary>A negative result speaks against it; a positive one is not used.</summary>
    RuleOut,

    /// <summary>Both results are used.</summary>
    Both,

    /// <summary>Neither is used.</summary>
    None,
}

/// <summary>Whether a figure may move a probability.</summary>
public enum FigureStanding
{
    /// <summary>Read in the paper, its abstract or a summary.</summary>
    Usable,

    /// <summary>From memory in part: only after a clinician has confirmed it in the paper.</summary>
    CheckFirst,

    /// <summary>Never: no accuracy study, a conflict between sources, or a criterion only.</summary>
    NotUsable,
}

/// <summary>Where a likelihood ratio comes from.</summary>
public enum RatioOrigin
{
    /// <summary>No ratio is known.</summary>
    None,

    /// <summary>Printed by the authors.</summary>
    Reported,

    /// <summary>Computed from sensitivity and specificity.</summary>
    Computed,

    /// <summary>One is printed, the other computed.</summary>
    PartComputed,
}

/// <summary>How accurate a clinical test was in one study or review.</summary>
public sealed record AccuracyFigure
{
    /// <summary>Id, unique over all tests.</summary>
    public required string Id { get; init; }

    /// <summary>The working hypothesis it is about.</summary>
    public required string Pattern { get; init; }

    /// <summary>The condition as the study named it.</summary>
    public required string Condition { get; init; }

    /// <summary>Sensitivity, 0 to 1; null when not known.</summary>
    public double? Sensitivity { get; init; }

    /// <summary>Its 95 % interval.</summary>
    public RatioSpan? SensitivityInterval { get; init; }

    /// <summary>Specificity, 0 to 1; null when not known.</summary>
    public double? Specificity { get; init; }

    /// <summary>Its 95 % interval.</summary>
    public RatioSpan? SpecificityInterval { get; init; }

    /// <summary>Ratio of a positive result; null when not known.</summary>
    public Ratio? Positive { get; init; }

    /// <summary>Ratio of a negative result; null when not known.</summary>
    public Ratio? Negative { get; init; }

    /// <summary>Where the ratios come from.</summary>
    public required RatioOrigin Origin { get; init; }

    /// <summary>People in the study; null when not known.</summary>
    public int? N { get; init; }

    /// <summary>Share of them with the condition, 0 to 1; null when not known.</summary>
    public double? Prevalence { get; init; }

    /// <summary>What the test was held against.</summary>
    public string? Reference { get; init; }

    /// <summary>Who and where.</summary>
    public string? Setting { get; init; }

    /// <summary>What the test is good for.</summary>
    public required TestUse Use { get; init; }

    /// <summary>Whether the figure may move a probability.</summary>
    public required FigureStanding Standing { get; init; }

    /// <summary>Key into content/sources.json.</summary>
    public required string Source { get; init; }

    /// <summary>How far the figure was confirmed, in words.</summary>
    public required string Confirmation { get; init; }

    /// <summary>What to know when using it.</summary>
    public string? Note { get; init; }

    /// <summary>For a counted test: signs from which the ratio of a positive result holds.</summary>
    public int? PositiveFrom { get; init; }

    /// <summary>For a counted test: signs up to which the ratio of a negative result holds.</summary>
    public int? NegativeAtMost { get; init; }

    /// <summary>Days after the injury from which the figure holds; null for any day.</summary>
    public int? DaysFrom { get; init; }

    /// <summary>Days after the injury up to which it holds; null for any day.</summary>
    public int? DaysTo { get; init; }
}
