using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>A paragraph read: what was found in it, waiting to be confirmed, and what stays text.</summary>
public sealed record NarrativeReading
{
    /// <summary>The paragraph as typed or dictated.</summary>
    public required string Text { get; init; }

    /// <summary>What was read, in the order of the text.</summary>
    public required ImmutableArray<NarrativePart> Parts { get; init; }

    /// <summary>The pieces of the text that were not understood, joined; they belong in the note. Empty when all was read.</summary>
    public required string Rest { get; init; }

    /// <summary>Where the text of the parts stands, in order and without overlap, for highlighting.</summary>
    public required ImmutableArray<EntryPiece> Pieces { get; init; }
}

/// <summary>One reading of a paragraph.</summary>
/// <param name="Measure">The measure it goes to.</param>
/// <param name="Measurement">The measurement; null for words.</param>
/// <param name="Observation">The words or grade; null for a number.</param>
/// <param name="From">Where its piece of the text begins.</param>
/// <param name="Length">Length of the piece in characters.</param>
/// <param name="Questions">What should be looked at before it is taken.</param>
public sealed record NarrativePart(
    Measure Measure, Measurement? Measurement, Observation? Observation, int From, int Length, ImmutableArray<EntryQuestion> Questions);
