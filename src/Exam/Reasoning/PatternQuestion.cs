using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>A yes-or-no question that patterns rest on; some are answered by a finding, the age or the sex.</summary>
public sealed record PatternQuestion
{
    /// <summary>Id, unique among questions and tests.</summary>
    public required string Id { get; init; }

    /// <summary>The question as asked.</summary>
    public required string Question { get; init; }

    /// <summary>The same as a statement, for lists: "worse downhill".</summary>
    public required string Says { get; init; }

    /// <summary>Findings that answer yes: a measure id and a kind of lack, "hip-abduction-strength:weak".</summary>
    public ImmutableArray<string> Findings { get; init; } = [];

    /// <summary>Youngest age that answers yes, years.</summary>
    public double? AgeFrom { get; init; }

    /// <summary>Oldest age that answers yes, years.</summary>
    public double? AgeTo { get; init; }

    /// <summary>The sex that answers yes.</summary>
    public Sex? Sex { get; init; }
}

/// <summary>Everything the reasoning rests on. Immutable and shareable.</summary>
/// <param name="Patterns">Working hypotheses.</param>
/// <param name="Questions">Questions they rest on.</param>
/// <param name="Tests">Clinical tests.</param>
/// <param name="YellowFlags">Questions about what may slow recovery.</param>
public sealed record ReasoningBasis(
    ImmutableArray<Pattern> Patterns,
    ImmutableArray<PatternQuestion> Questions,
    ImmutableArray<ClinicalTest> Tests,
    ImmutableArray<YellowFlag> YellowFlags)
{
    /// <summary>Nothing at all.</summary>
    public static ReasoningBasis Empty { get; } = new([], [], [], []);

    /// <summary>A test by id; null when there is none.</summary>
    public ClinicalTest? Test(string id) => Tests.FirstOrDefault(t => t.Id == id);

    /// <summary>A question by id; null when there is none.</summary>
    public PatternQuestion? Question(string id) => Questions.FirstOrDefault(q => q.Id == id);

    /// <summary>A pattern by id; null when there is none.</summary>
    public Pattern? Pattern(string id) => Patterns.FirstOrDefault(p => p.Id == id);
}
