using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>How an item of a decision rule is answered.</summary>
public enum RuleItemKind
{
    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A number in the item's unit.</summary>
    Number,

    /// <summary>One of the item's choices.</summary>
    Choice,
}

/// <summary>A fact of the patient's record that answers an item without asking.</summary>
public enum RuleFact
{
    /// <summary>Age, whole or part years.</summary>
    AgeYears,

    /// <summary>Whether the person is female: yes or no.</summary>
    Female,
}

/// <summary>One choice of an item.</summary>
/// <param name="Id">Stable id, lower case.</param>
/// <param name="Text">The choice in words.</param>
public sealed record RuleChoice(string Id, string Text);

/// <summary>One thing a decision rule asks. An item that is not answered is unknown; unknown is never taken for no.</summary>
public sealed record RuleItem
{
    /// <summary>Stable id within the rule.</summary>
    public required string Id { get; init; }

    /// <summary>What is asked or looked at, in words.</summary>
    public required string Text { get; init; }

    /// <summary>How it is answered.</summary>
    public required RuleItemKind Kind { get; init; }

    /// <summary>
    /// Unit of a number, such as "years" or "cm"; empty for the other kinds. Numbers of rules stay in the unit of the printed
    /// rule, since its cut-offs are printed in it (our choice).
    /// </summary>
    public string Unit { get; init; } = "";

    /// <summary>Least number that can be, in <see cref="Unit"/>.</summary>
    public double Low { get; init; }

    /// <summary>Largest number that can be, in <see cref="Unit"/>.</summary>
    public double High { get; init; }

    /// <summary>The choices; empty for the other kinds.</summary>
    public ImmutableArray<RuleChoice> Choices { get; init; } = [];

    /// <summary>The fact of the record that answers it; null when it must be asked.</summary>
    public RuleFact? Known { get; init; }

    /// <summary>Key into content/sources.json.</summary>
    public required string Source { get; init; }

    /// <summary>How far the wording was confirmed.</summary>
    public required string Confirmation { get; init; }
}
