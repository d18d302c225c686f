namespace MomentArm.Body;

/// <summary>What can be turned to make an exercise heavier or lighter.</summary>
public enum KnobKind
{
    /// <summary>An added weight, kilograms.</summary>
    Weight,

    /// <summary>Which band: F100 of one strand, newtons. Another band, so F200 and readings no longer hold.</summary>
    BandF100,

    /// <summary>The band's rest length, metres.</summary>
    BandRestLength,

    /// <summary>How far the band is stretched at the start, 0.3 = 30 %.</summary>
    BandPreStretch,

    /// <summary>Size of help, newtons.</summary>
    HelpForce,

    /// <summary>Where on the limb the weight sits: 0 at one point, 1 at the other.</summary>
    Lever,

    /// <summary>Height of the step or the seat, metres.</summary>
    SurfaceHeight,

    /// <summary>How far along the movement it goes: 1 = to its end.</summary>
    Depth,
}

/// <summary>One thing of one movement that can be turned.</summary>
/// <param name="Kind">What.</param>
/// <param name="Index">Which of the movement's weights (weight, lever), bands or helps, counted from 0 among their own kind.</param>
/// <param name="From">For a lever: the point at 0; null for the point of the load itself.</param>
/// <param name="To">For a lever: the point at 1, on the same segment; null for the second point of the load itself.</param>
public sealed record Knob(KnobKind Kind, int Index = 0, string? From = null, string? To = null)
{
    /// <summary>The finest difference worth telling, in the unit of the value: 0.1 kg, 1 N, 1 cm, 1 %.</summary>
    public double Step => Kind switch
    {
        KnobKind.Weight => 0.1,
        KnobKind.BandF100 or KnobKind.HelpForce => 1,
        KnobKind.BandRestLength or KnobKind.SurfaceHeight => 0.01,
        KnobKind.BandPreStretch or KnobKind.Lever or KnobKind.Depth => 0.01,
    };

    /// <summary>The usual range asked, in the unit of the value (common practice, no source).</summary>
    public (double Low, double High) UsualRange => Kind switch
    {
        KnobKind.Weight => (0, 20),
        KnobKind.BandF100 => (1, 200),
        KnobKind.BandRestLength => (0.2, 2),
        KnobKind.BandPreStretch => (0, 1.5),
        KnobKind.HelpForce => (0, 200),
        KnobKind.Lever => (0, 1),
        KnobKind.SurfaceHeight => (0.05, 0.75),
        KnobKind.Depth => (0.05, 1),
    };

    /// <summary>A value as it is told.</summary>
    /// <param name="value">The value.</param>
    /// <returns>Such as "2.3 kg" or "a rest length of 48 cm".</returns>
    public string Told(double value) => Kind switch
    {
        KnobKind.Weight => FormattableString.Invariant($"{value:0.##} kg"),
        KnobKind.BandF100 => FormattableString.Invariant($"a band of {value:0.#} N at twice its rest length"),
        KnobKind.BandRestLength => FormattableString.Invariant($"a rest length of {value * 100:0.#} cm"),
        KnobKind.BandPreStretch => FormattableString.Invariant($"a stretch of {value * 100:0.#} % at the start"),
        KnobKind.HelpForce => FormattableString.Invariant($"{value:0.#} N of help"),
        KnobKind.Lever => FormattableString.Invariant($"the weight {value * 100:0.#} % of the way down the limb"),
        KnobKind.SurfaceHeight => FormattableString.Invariant($"a height of {value * 100:0.#} cm"),
        KnobKind.Depth => FormattableString.Invariant($"{value * 100:0.#} % of the way"),
    };
}
