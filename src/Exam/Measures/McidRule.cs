using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>How the smallest change that matters is given.</summary>
public enum McidForm
{
    /// <summary>A fixed change in the stored unit.</summary>
    Fixed,

    /// <summary>A fraction of the first value.</summary>
    Fraction,

    /// <summary>A change that depends on the first value.</summary>
    ByBaseline,
}

/// <summary>One band of a baseline-dependent rule.</summary>
/// <param name="From">Lowest baseline of the band, stored unit; a band reaches up to the next one.</param>
/// <param name="Change">Change needed, stored unit.</param>
public sealed record McidBand(double From, double Change);

/// <summary>The smallest change that matters to patients.</summary>
public sealed record McidRule
{
    /// <summary>Form of the rule.</summary>
    public required McidForm Form { get; init; }

    /// <summary>Fixed change in the stored unit, or fraction of the first value; 0 for a baseline-dependent rule.</summary>
    public double Value { get; init; }

    /// <summary>Bands in rising order, for a baseline-dependent rule.</summary>
    public ImmutableArray<McidBand> Bands { get; init; } = [];

    /// <summary>Who it was found in.</summary>
    public required string Population { get; init; }

    /// <summary>Key into content/sources.json.</summary>
    public required string Source { get; init; }

    /// <summary>The change needed from a baseline.</summary>
    /// <param name="baseline">First value in the stored unit.</param>
    /// <returns>The change, or null when the rule says nothing about that baseline.</returns>
    public double? Needed(double baseline) => Form switch
    {
        McidForm.Fixed => Value,
        McidForm.Fraction => Math.Abs(baseline) > 0 ? Value * Math.Abs(baseline) : null,
        McidForm.ByBaseline => Bands.LastOrDefault(b => baseline >= b.From)?.Change,
    };

    /// <summary>Whether a change is at least as large as the rule asks, in either direction.</summary>
    /// <param name="before">First value.</param>
    /// <param name="after">Second value.</param>
    /// <returns>True or false, or null when the rule says nothing about the first value.</returns>
    public bool? IsWorthwhile(double before, double after) =>
        Needed(before) is { } needed ? Math.Abs(after - before) >= needed - 1e-9 : null;
}
