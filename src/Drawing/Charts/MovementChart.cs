using System.Collections.Immutable;

namespace MomentArm.Drawing;

/// <summary>Curves over a movement, from its start (0 %) to its end (100 %): load share, reach, or anything else with a unit.</summary>
public sealed record MovementChart
{
    /// <summary>Most series that can be told apart by line pattern alone.</summary>
    public const int MostSeries = 6;

    /// <summary>What is shown, such as "Reach along the movement".</summary>
    public required string Title { get; init; }

    /// <summary>What the height means, with its unit, such as "reach, %". Written above the axis.</summary>
    public required string ValueLabel { get; init; }

    /// <summary>The unit alone, as it follows a number in words, such as "%".</summary>
    public required string Unit { get; init; }

    /// <summary>Where the values lie: fractions of the movement from 0 to 1, rising; two or more.</summary>
    public required ImmutableArray<double> At { get; init; }

    /// <summary>The curves, the most important first; one to <see cref="MostSeries"/>.</summary>
    public required ImmutableArray<ChartSeries> Series { get; init; }

    /// <summary>Horizontal lines to hold the curves against.</summary>
    public ImmutableArray<ChartMarker> Markers { get; init; } = [];
}

/// <summary>One curve.</summary>
/// <param name="Name">Name for the legend, such as "hamstrings, right".</param>
/// <param name="Values">Values in the unit of the chart, one for each place.</param>
/// <param name="Low">Lower edge of a band around the curve; empty for no band.</param>
/// <param name="High">Upper edge; as many as <paramref name="Low"/>.</param>
public sealed record ChartSeries(string Name, ImmutableArray<double> Values, ImmutableArray<double> Low, ImmutableArray<double> High)
{
    /// <summary>A curve without a band.</summary>
    /// <param name="name">Name for the legend.</param>
    /// <param name="values">Values in the unit of the chart.</param>
    public ChartSeries(string name, ImmutableArray<double> values)
        : this(name, values, [], [])
    {
    }
}

/// <summary>A horizontal line.</summary>
/// <param name="Value">Its height in the unit of the chart.</param>
/// <param name="Label">A few words, such as "measured limit".</param>
/// <param name="Soft">Whether it is the edge of something wanted, broken and lighter, and not a limit.</param>
public sealed record ChartMarker(double Value, string Label, bool Soft = false);

/// <summary>A chart as SVG without the outer element, and the same in words.</summary>
/// <param name="Width">Width in picture units.</param>
/// <param name="Height">Height in picture units.</param>
/// <param name="Inner">SVG elements to go inside an svg element with <see cref="ViewBox"/>; colors come from the page by class.</param>
/// <param name="Description">The text alternative: each curve at its start, highest and end.</param>
public sealed record ChartPicture(double Width, double Height, string Inner, string Description)
{
    /// <summary>Value of the viewBox attribute.</summary>
    public string ViewBox => FormattableString.Invariant($"0 0 {Width:0} {Height:0}");
}
