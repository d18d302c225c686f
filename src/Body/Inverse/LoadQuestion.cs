using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>An inverse question: to which value must a knob be turned so that an action is asked for a wished share?</summary>
public sealed record LoadQuestion
{
    /// <summary>What is turned.</summary>
    public required Knob Knob { get; init; }

    /// <summary>The action whose share is wished.</summary>
    public required JointAction Action { get; init; }

    /// <summary>The side of that action.</summary>
    public required Side Side { get; init; }

    /// <summary>The wished share, 0.02 to 3; 0.65 = 65 %.</summary>
    public required double WishedShare { get; init; }

    /// <summary>Lower end of what may be turned to, in the unit of the knob; its usual range when left out.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end likewise.</summary>
    public double? High { get; init; }

    /// <summary>The value to stay near, such as today's; null for the smallest value.</summary>
    public double? Near { get; init; }
}

/// <summary>The answer to an inverse question.</summary>
/// <param name="Root">What the search found, exactly.</param>
/// <param name="Value">The value to turn to, rounded to what is worth telling; null when there is none.</param>
/// <param name="Share">The share at that rounded value; null when there is none.</param>
/// <param name="Words">The answer in words for the screen.</param>
/// <param name="Notes">What makes it doubtful, in sentences.</param>
public sealed record LoadAnswer(RootAnswer Root, double? Value, LoadShare? Share, string Words, ImmutableArray<string> Notes);
