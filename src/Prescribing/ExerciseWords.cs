using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Prescribing;

/// <summary>
/// What a patient reads or hears of an exercise, in one language. Texts hold the marks {side}, {Side} and {other},
/// {Other}, which become "left" and "right" for the person's own side.
/// </summary>
public sealed record ExerciseWords
{
    /// <summary>Name of the exercise for the patient.</summary>
    public required string Title { get; init; }

    /// <summary>Steps into the start position.</summary>
    public required ImmutableArray<string> SetUp { get; init; }

    /// <summary>Steps of the movement.</summary>
    public required ImmutableArray<string> Steps { get; init; }

    /// <summary>What one should feel, and where.</summary>
    public required string Feel { get; init; }

    /// <summary>What to watch for.</summary>
    public required ImmutableArray<string> Watch { get; init; }

    /// <summary>A way to make it easier.</summary>
    public required string Easier { get; init; }

    /// <summary>A way to make it harder.</summary>
    public required string Harder { get; init; }

    /// <summary>What one repetition is called: lift, step, stretch, roll.</summary>
    public required string RepetitionWord { get; init; }
}

/// <summary>The words for sides in one language.</summary>
/// <param name="Left">Left, lower case.</param>
/// <param name="Right">Right, lower case.</param>
public sealed record SideWords(string Left, string Right)
{
    /// <summary>Fills the side marks of a text.</summary>
    /// <param name="text">Text with {side}, {Side}, {other}, {Other}.</param>
    /// <param name="working">The working side.</param>
    /// <returns>The text for that side.</returns>
    public string Fill(string text, Side working)
    {
        var side = working == Side.Left ? Left : Right;
        var other = working == Side.Left ? Right : Left;
        return text
            .Replace("{side}", side, StringComparison.Ordinal)
            .Replace("{other}", other, StringComparison.Ordinal)
            .Replace("{Side}", Capital(side), StringComparison.Ordinal)
            .Replace("{Other}", Capital(other), StringComparison.Ordinal);
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
