using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>How well the answers fit a pattern.</summary>
public enum PatternFit
{
    /// <summary>At least half of what defines it is present, and more speaks for it than against it.</summary>
    Fits,

    /// <summary>More speaks for it than against it.</summary>
    Partly,

    /// <summary>Nothing about it was asked.</summary>
    NotAsked,

    /// <summary>As much or more speaks against it.</summary>
    Against,
}

/// <summary>One question or test in the account of a pattern.</summary>
/// <param name="Id">Id of the question or test.</param>
/// <param name="Says">In words.</param>
/// <param name="Defining">Whether it defines the pattern.</param>
public sealed record PatternLine(string Id, string Says, bool Defining);

/// <summary>The starting value that was used.</summary>
/// <param name="Value">Probability.</param>
/// <param name="Range">Its range; null when none is known.</param>
/// <param name="Words">Whose it is and whom it was counted among.</param>
/// <param name="Source">Key into content/sources.json; null for the clinician's own.</param>
public sealed record ChosenPrior(double Value, RatioSpan? Range, string Words, string? Source);

/// <summary>A working hypothesis about this person. It supports, and never replaces, the clinician's judgment.</summary>
public sealed record Hypothesis
{
    /// <summary>The pattern.</summary>
    public required Pattern Pattern { get; init; }

    /// <summary>How well the answers fit.</summary>
    public required PatternFit Fit { get; init; }

    /// <summary>What speaks for it.</summary>
    public required ImmutableArray<PatternLine> Supporting { get; init; }

    /// <summary>What speaks against it.</summary>
    public required ImmutableArray<PatternLine> Opposing { get; init; }

    /// <summary>What was not asked or not tested yet.</summary>
    public required ImmutableArray<PatternLine> Missing { get; init; }

    /// <summary>The starting value; null when none fits.</summary>
    public required ChosenPrior? Prior { get; init; }

    /// <summary>The probability; null when it cannot be computed.</summary>
    public required ProbabilityEstimate? Probability { get; init; }

    /// <summary>What is not known, in words: no accuracy data, no starting value; empty when all is.</summary>
    public required ImmutableArray<string> NotKnown { get; init; }

    /// <summary>The way to the probability in sentences, first to last.</summary>
    public required ImmutableArray<string> InWords { get; init; }
}
