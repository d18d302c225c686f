using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using CsCheck;

namespace MomentArm.Drawing.Tests.Charts;

public class ChartWriterTests
{
    [Fact]
    public void A_chart_is_plain_well_formed_elements_without_style_or_id()
    {
        var chart = ChartWriter.Write(Two() with { Title = "A < B & \"C\"", ValueLabel = "reach, % <of limit>" });
        var root = Parsed(chart);
        Assert.All(root.Descendants(), e => Assert.DoesNotContain(e.Attributes(), a => a.Name.LocalName is "style" or "id"));
        Assert.All(root.Descendants().Attributes("fill"), a => Assert.Equal("none", a.Value));
        Assert.Empty(root.Descendants().Attributes("stroke").Where(a => a.Value != "none").Select(a => a.Value));
        Assert.Contains(root.Descendants("text"), t => t.Value == "reach, % <of limit>");
        Assert.StartsWith("A < B & \"C\".", chart.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Curves_run_over_the_whole_width_and_higher_values_lie_higher()
    {
        var lines = Lines(ChartWriter.Write(Two()));
        Assert.Equal(2, lines.Count);
        foreach (var line in lines)
        {
            Assert.Equal(40, line[0].X);
            Assert.Equal(350, line[^1].X);
        }

        // 40 to 110 % rises, 60 to 20 % falls; equal steps of value are equal steps of height.
        Assert.True(lines[0][^1].Y < lines[0][0].Y);
        Assert.True(lines[1][^1].Y > lines[1][0].Y);
        Assert.Equal((lines[0][0].Y - lines[0][^1].Y) / 70, (lines[1][^1].Y - lines[1][0].Y) / 40, 0.01);
    }

    [Fact]
    public void The_marker_of_100_lies_where_a_value_of_100_would()
    {
        var level = Two() with { Series = [new ChartSeries("flat", [100, 100, 100])], Markers = [new ChartMarker(100, "limit")] };
        var chart = ChartWriter.Write(level);
        var marker = Parsed(chart).Descendants("path").Single(p => p.Attribute("class")!.Value == "chart-marker").Attribute("d")!.Value;
        var y = Lines(chart)[0][0].Y.ToString("0.#", CultureInfo.InvariantCulture);
        Assert.Equal($"M40 {y}H350", marker);
        Assert.Contains("Line at 100 %: limit.", chart.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void The_edge_of_something_wanted_is_a_broken_line_and_a_limit_is_not()
    {
        var chart = ChartWriter.Write(Two() with { Markers = [new ChartMarker(100, "limit"), new ChartMarker(40, "window from 40 %", Soft: true)] });
        var markers = Parsed(chart).Descendants("path").Where(p => p.Attribute("class")!.Value.StartsWith("chart-marker", StringComparison.Ordinal)).ToArray();
        Assert.Equal(["chart-marker", "chart-marker chart-soft"], markers.Select(m => m.Attribute("class")!.Value));
        Assert.Equal([true, false], markers.Select(m => m.Attribute("stroke-dasharray") is null));
        Assert.Contains("Line at 40 %: window from 40 %.", chart.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Series_differ_by_pattern_too_and_each_has_its_row_in_the_legend()
    {
        var many = Two() with { Series = [.. Enumerable.Range(1, MovementChart.MostSeries).Select(i => new ChartSeries($"series {i}", [i, i, i]))] };
        var chart = ChartWriter.Write(many);
        var paths = Parsed(chart).Descendants("path").Where(p => p.Attribute("class")!.Value.StartsWith("chart-line", StringComparison.Ordinal)).ToArray();
        Assert.Equal(2 * MovementChart.MostSeries, paths.Length);
        Assert.Equal(MovementChart.MostSeries, paths.Select(p => p.Attribute("stroke-dasharray")?.Value).Distinct().Count());
        foreach (var text in Parsed(chart).Descendants("text"))
            Assert.InRange(double.Parse(text.Attribute("y")!.Value, CultureInfo.InvariantCulture), 0, chart.Height);
        Assert.All(many.Series, s => Assert.Contains(Parsed(chart).Descendants("text"), t => t.Value == s.Name));
    }

    [Fact]
    public void The_text_alternative_says_start_end_highest_place_and_band()
    {
        var words = ChartWriter.Write(Two()).Description;
        Assert.Contains("hamstrings, right: 40 % at the start, 110 % at the end, highest 110 % at 100 % of the movement (between 100 and 120).", words, StringComparison.Ordinal);
        Assert.Contains("soleus, right: 60 % at the start, 20 % at the end, highest 60 % at 0 % of the movement.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Any_finite_values_stay_inside_the_picture() => Gen.Double[-1e6, 1e6].Array[3].Sample(values =>
    {
        var chart = ChartWriter.Write(Two() with { Series = [new ChartSeries("any", [.. values])] });
        foreach (var (x, y) in Lines(chart)[0])
        {
            Assert.InRange(x, 0, chart.Width);
            Assert.InRange(y, 0, chart.Height);
        }
    });

    [Theory]
    [InlineData(0, 1.1, 0, 1.25, 0.25)]
    [InlineData(0, 110, 0, 125, 25)]
    [InlineData(-35, 120, -50, 150, 50)]
    [InlineData(0, 0, 0, 1, 0.2)]
    [InlineData(0, 7, 0, 8, 2)]
    public void Ticks_are_round_and_hold_all_values(double least, double most, double bottom, double top, double step)
    {
        var scale = ValueScale.For(least, most);
        Assert.Equal((bottom, top, step), (Math.Round(scale.Bottom, 9), Math.Round(scale.Top, 9), Math.Round(scale.Step, 9)));
        Assert.Equal(top, scale.Ticks[^1], 1e-9);
    }

    [Fact]
    public void What_cannot_be_drawn_is_refused()
    {
        MovementChart[] bad =
        [
            Two() with { At = [0] },
            Two() with { At = [0, 0.5, 0.5] },
            Two() with { At = [0, 0.5, double.NaN] },
            Two() with { Series = [] },
            Two() with { Series = [.. Enumerable.Repeat(Two().Series[1], MovementChart.MostSeries + 1)] },
            Two() with { Series = [new ChartSeries("short", [1, 2])] },
            Two() with { Series = [new ChartSeries("none", [1, double.NaN, 2])] },
            Two() with { Series = [new ChartSeries("band", [1, 2, 3], [1, 2, 3], [])] },
            Two() with { Markers = [new ChartMarker(double.PositiveInfinity, "far")] },
        ];
        Assert.All(bad, chart => Assert.Throws<ArgumentException>(() => ChartWriter.Write(chart)));
    }

    private static MovementChart Two() => new()
    {
        Title = "Reach along the movement",
        ValueLabel = "reach, %",
        Unit = "%",
        At = [0, 0.5, 1],
        Series = [new ChartSeries("hamstrings, right", [40, 80, 110], [35, 72, 100], [45, 88, 120]), new ChartSeries("soleus, right", [60, 40, 20])],
        Markers = [new ChartMarker(100, "measured limit")],
    };

    private static XElement Parsed(ChartPicture chart) => XElement.Parse($"<svg>{chart.Inner}</svg>");

    /// <summary>The points of each curve; those of the legend, whose path has a relative end, are left out.</summary>
    private static List<ImmutableArray<(double X, double Y)>> Lines(ChartPicture chart) =>
    [
        .. Parsed(chart).Descendants("path")
            .Where(p => p.Attribute("class")!.Value.StartsWith("chart-line", StringComparison.Ordinal))
            .Select(p => p.Attribute("d")!.Value)
            .Where(d => !d.Contains('h', StringComparison.Ordinal))
            .Select(d => d[1..].Split('L').Select(Point).ToImmutableArray()),
    ];

    private static (double X, double Y) Point(string text)
    {
        var parts = text.Split(' ');
        return (double.Parse(parts[0], CultureInfo.InvariantCulture), double.Parse(parts[1], CultureInfo.InvariantCulture));
    }
}
