using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Something typed that cannot be used as it is.</summary>
/// <param name="What">What is wrong, with the value found.</param>
/// <param name="Where">The piece of the typing it is about.</param>
/// <param name="Mend">How to mend it.</param>
/// <param name="Suggestion">The whole entry as probably meant, ready to be put in its place; null when there is no good guess.</param>
public sealed record EntryFault(string What, string Where, string Mend, string? Suggestion = null)
{
    /// <summary>The fault in plain sentences: where, what, how to mend.</summary>
    public string Sentence => $"\"{Where}\": {What} {Mend}";
}

/// <summary>Something typed that was taken but is unusual or can be read in two ways. Never blocks.</summary>
/// <param name="Where">The piece of the typing it is about.</param>
/// <param name="Sentence">The question in plain words.</param>
/// <param name="Suggestion">The whole entry as it may have been meant; null when there is no good guess.</param>
public sealed record EntryQuestion(string Where, string Sentence, string? Suggestion = null);

/// <summary>A piece of the typing and the cell it went to.</summary>
/// <param name="From">Where it begins in the text.</param>
/// <param name="Length">Its length in characters.</param>
/// <param name="MeasureId">The measure.</param>
/// <param name="Side">The side; null where there is none.</param>
/// <param name="Activity">The activity; null where there is none.</param>
/// <param name="IsWords">Whether it was kept as words and not as a number.</param>
public sealed record EntryPiece(int From, int Length, string MeasureId, Body.Side? Side, string? Activity, bool IsWords);

/// <summary>What came of one typed text. A text with a fault still gives what could be read of its other parts.</summary>
public sealed record EntryResult
{
    /// <summary>The text as typed, whatever came of it.</summary>
    public required string AsTyped { get; init; }

    /// <summary>Measurements read, in stored units.</summary>
    public ImmutableArray<Measurement> Measurements { get; init; } = [];

    /// <summary>Words and manual grades, kept without turning them into numbers.</summary>
    public ImmutableArray<Observation> Observations { get; init; } = [];

    /// <summary>What could not be used.</summary>
    public ImmutableArray<EntryFault> Faults { get; init; } = [];

    /// <summary>What was taken but should be looked at.</summary>
    public ImmutableArray<EntryQuestion> Questions { get; init; } = [];

    /// <summary>What was done with the typing and is not obvious, in plain sentences.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Which piece of the typing went where.</summary>
    public ImmutableArray<EntryPiece> Pieces { get; init; } = [];

    /// <summary>Whether nothing was typed.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(AsTyped);
}
