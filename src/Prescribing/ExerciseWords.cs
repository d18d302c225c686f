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

    /// <summary>How to breathe; null where it does not matter.</summary>
    public string? Breathing { get; init; }

    /// <summary>What one should feel, and where.</summary>
    public required string Feel { get; init; }

    /// <summary>What to watch for.</summary>
    public required ImmutableArray<string> Watch { get; init; }

    /// <summary>A way to make it easier.</summary>
    public required string Easier { get; init; }

    /// <summary>A way to make it harder.</summary>
    public required string Harder { get; init; }

    /// <summary>Signs to stop this exercise, beside those that always hold.</summary>
    public ImmutableArray<string> Stop { get; init; } = [];

    /// <summary>What to do where there is little room; null where it needs none.</summary>
    public string? ShortSpace { get; init; }

    /// <summary>What one repetition is called: lift, step, stretch, roll.</summary>
    public required string RepetitionWord { get; init; }

    /// <summary>All sentences one after the other, for reading aloud and for grading.</summary>
    public string AllText => string.Join(" ", ((IEnumerable<string?>)
        [Title, .. SetUp, .. Steps, Breathing, Feel, .. Watch, Easier, Harder, .. Stop, ShortSpace])
        .OfType<string>().Select(text => text.TrimEnd('.') + "."));
}

/// <summary>The words for sides in one language.</summary>
/// <param name="Left">Left, lower case; feminine where the language has gender ("pierna izquierda").</param>
/// <param name="Right">Right, likewise.</param>
/// <param name="LeftMasculine">Left with a masculine noun ("pie izquierdo"); null where the language makes no difference.</param>
/// <param name="RightMasculine">Right with a masculine noun.</param>
public sealed record SideWords(string Left, string Right, string? LeftMasculine = null, string? RightMasculine = null)
{
    /// <summary>The marks that texts may hold.</summary>
    public static ImmutableArray<string> Marks { get; } = ["{side}", "{other}", "{Side}", "{Other}", "{side.m}", "{other.m}"];

    /// <summary>Fills the side marks of a text.</summary>
    /// <param name="text">Text with {side}, {Side}, {other}, {Other}; {side.m} and {other.m} go with a masculine noun.</param>
    /// <param name="working">The working side.</param>
    /// <returns>The text for that side.</returns>
    public string Fill(string text, Side working)
    {
        var (side, other) = working == Side.Left ? (Left, Right) : (Right, Left);
        var (left, right) = (LeftMasculine ?? Left, RightMasculine ?? Right);
        var (sideMasculine, otherMasculine) = working == Side.Left ? (left, right) : (right, left);
        return text
            .Replace("{side}", side, StringComparison.Ordinal)
            .Replace("{other}", other, StringComparison.Ordinal)
            .Replace("{Side}", Capital(side), StringComparison.Ordinal)
            .Replace("{Other}", Capital(other), StringComparison.Ordinal)
            .Replace("{side.m}", sideMasculine, StringComparison.Ordinal)
            .Replace("{other.m}", otherMasculine, StringComparison.Ordinal);
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
