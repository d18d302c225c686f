using System.Collections.Immutable;
using System.Globalization;
using System.Security;
using System.Text;

namespace MomentArm.Drawing;

/// <summary>
/// Writes curves over a movement as SVG: attributes and classes only, no style, no ids, no color. Series differ by line pattern as
/// well as by class (chart-1, chart-2, ...), so the chart can be read in gray. Drawn for a width of about 360 pixels.
/// </summary>
public static class ChartWriter
{
    private const double Width = 360;
    private const double Left = 40;
    private const double Right = 350;
    private const double Top = 26;
    private const double Bottom = 206;
    private const double LegendRow = 19;

    /// <summary>Line patterns in the order of the series.</summary>
    private static readonly ImmutableArray<string> Patterns = ["", "9 4", "2 4", "12 4 2 4", "5 3", "16 5"];

    /// <summary>Writes a chart.</summary>
    /// <param name="chart">The chart.</param>
    /// <returns>The picture with its text alternative.</returns>
    /// <exception cref="ArgumentException">A number is not finite, counts differ, places do not rise, or there are too many series.</exception>
    public static ChartPicture Write(MovementChart chart)
    {
        ArgumentNullException.ThrowIfNull(chart);
        Check(chart);
        var heights = chart.Series.SelectMany(s => s.Values.Concat(s.Low).Concat(s.High)).Concat(chart.Markers.Select(m => m.Value)).ToArray();
        var scale = ValueScale.For(heights.Min(), heights.Max());
        var text = new StringBuilder();
        Axes(text, chart, scale);
        for (var i = 0; i < chart.Series.Length; i++)
            Band(text, chart, scale, i);
        for (var i = 0; i < chart.Series.Length; i++)
            Curve(text, chart, scale, i);
        foreach (var marker in chart.Markers)
            Marker(text, chart, marker, scale);
        var height = Legend(text, chart);
        return new ChartPicture(Width, height, text.ToString(), Describe(chart));
    }

    private static void Check(MovementChart chart)
    {
        static void Refuse(bool wrong, string why)
        {
            if (wrong)
                throw new ArgumentException(why, nameof(chart));
        }

        Refuse(chart.At.Length < 2, "A chart needs two places or more.");
        Refuse(chart.At.Any(x => !(x is >= 0 and <= 1)), "Places are fractions of the movement, from 0 to 1.");
        Refuse(chart.At.Zip(chart.At.Skip(1)).Any(p => p.First >= p.Second), "The places of a chart must rise.");
        Refuse(chart.Series.Length is < 1 or > MovementChart.MostSeries, FormattableString.Invariant($"A chart shows 1 to {MovementChart.MostSeries} series, not {chart.Series.Length}."));
        Refuse(chart.Markers.Any(m => !double.IsFinite(m.Value)), "A marker line is not a finite number.");
        foreach (var series in chart.Series)
        {
            Refuse(series.Values.Length != chart.At.Length, $"{series.Name}: one value for each place.");
            Refuse(series.Low.Length != series.High.Length || (series.Low.Length > 0 && series.Low.Length != chart.At.Length), $"{series.Name}: a band has two edges for each place.");
            Refuse(!series.Values.Concat(series.Low).Concat(series.High).All(double.IsFinite), $"{series.Name}: a value is not a finite number.");
        }
    }

    private static void Axes(StringBuilder text, MovementChart chart, ValueScale scale)
    {
        text.Append("<g class=\"chart-text\" font-size=\"13\">");
        Text(text, 4, 14, "start", chart.ValueLabel);
        foreach (var tick in scale.Ticks)
        {
            var y = Y(scale, tick);
            text.Append(CultureInfo.InvariantCulture, $"<path class=\"{(tick == 0 ? "chart-axis" : "chart-grid")}\" fill=\"none\" d=\"M{Left:0.#} {y:0.#}H{Right:0.#}\"/>");
            Text(text, Left - 5, y + 4.5, "end", Number(tick));
        }

        foreach (var percent in new[] { 0, 25, 50, 75, 100 })
        {
            var x = X(percent / 100.0);
            text.Append(CultureInfo.InvariantCulture, $"<path class=\"chart-axis\" fill=\"none\" d=\"M{x:0.#} {Bottom:0.#}v4\"/>");
            Text(text, x, Bottom + 18, percent == 100 ? "end" : "middle", percent == 0 ? "start" : percent == 100 ? "end" : percent + " %");
        }

        Text(text, (Left + Right) / 2, Bottom + 34, "middle", "of the movement");
        text.Append("</g>");
    }

    private static void Band(StringBuilder text, MovementChart chart, ValueScale scale, int index)
    {
        var series = chart.Series[index];
        if (series.Low.IsEmpty)
            return;
        text.Append(CultureInfo.InvariantCulture, $"<path class=\"chart-band chart-{index + 1}\" stroke=\"none\" fill-opacity=\"0.16\" d=\"");
        Points(text, chart.At, series.High, scale, 'M');
        Points(text, [.. chart.At.Reverse()], [.. series.Low.Reverse()], scale, 'L');
        text.Append("Z\"/>");
    }

    private static void Curve(StringBuilder text, MovementChart chart, ValueScale scale, int index)
    {
        text.Append(CultureInfo.InvariantCulture, $"<path class=\"chart-line chart-{index + 1}\" fill=\"none\" stroke-width=\"2.4\" stroke-linejoin=\"round\"{Dash(index)} d=\"");
        Points(text, chart.At, chart.Series[index].Values, scale, 'M');
        text.Append("\"/>");
    }

    private static void Marker(StringBuilder text, MovementChart chart, ChartMarker marker, ValueScale scale)
    {
        var y = Y(scale, marker.Value);
        var soft = marker.Soft ? " chart-soft" : "";
        text.Append(CultureInfo.InvariantCulture, $"<path class=\"chart-marker{soft}\" fill=\"none\" stroke-width=\"1.6\"{(marker.Soft ? " stroke-dasharray=\"6 4\"" : "")} d=\"M{Left:0.#} {y:0.#}H{Right:0.#}\"/>");
        text.Append(CultureInfo.InvariantCulture, $"<g class=\"chart-marker-text{soft}\" font-size=\"12\">");

        // Above its line, or below it where the title stands; at the end where the curves keep farther away.
        var atStart = Nearest(chart, marker, fraction => fraction <= 0.4) > Nearest(chart, marker, fraction => fraction >= 0.6);
        Text(text, atStart ? Left + 4 : Right, y - 4 < Top ? y + 14 : y - 4, atStart ? "start" : "end", marker.Label);
        text.Append("</g>");
    }

    /// <summary>How near any curve comes to a marker line over a part of the movement.</summary>
    private static double Nearest(MovementChart chart, ChartMarker marker, Func<double, bool> there) => chart.Series
        .SelectMany(s => s.Values.Where((_, i) => there(chart.At[i])))
        .Select(value => Math.Abs(value - marker.Value))
        .DefaultIfEmpty(0)
        .Min();

    /// <summary>A row for each series under the axis. Returns the height of the whole chart.</summary>
    private static double Legend(StringBuilder text, MovementChart chart)
    {
        var y = Bottom + 56;
        text.Append("<g class=\"chart-text\" font-size=\"13\">");
        for (var i = 0; i < chart.Series.Length; i++, y += LegendRow)
        {
            text.Append(CultureInfo.InvariantCulture, $"<path class=\"chart-line chart-{i + 1}\" fill=\"none\" stroke-width=\"2.4\"{Dash(i)} d=\"M{Left:0.#} {y - 4.5:0.#}h34\"/>");
            Text(text, Left + 42, y, "start", chart.Series[i].Name + (chart.Series[i].Low.IsEmpty ? "" : ", shaded: 80 % interval"));
        }

        text.Append("</g>");
        return y - LegendRow + 8;
    }

    private static string Dash(int index) => Patterns[index].Length == 0 ? "" : $" stroke-dasharray=\"{Patterns[index]}\"";

    private static void Points(StringBuilder text, ImmutableArray<double> at, ImmutableArray<double> values, ValueScale scale, char first)
    {
        for (var i = 0; i < at.Length; i++)
            text.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? first : 'L')}{X(at[i]):0.#} {Y(scale, values[i]):0.#}");
    }

    private static void Text(StringBuilder text, double x, double y, string anchor, string words) => text.Append(
        CultureInfo.InvariantCulture, $"<text x=\"{x:0.#}\" y=\"{y:0.#}\" text-anchor=\"{anchor}\">{SecurityElement.Escape(words)}</text>");

    private static double X(double fraction) => Left + fraction * (Right - Left);

    private static double Y(ValueScale scale, double value) => Bottom - (value - scale.Bottom) / (scale.Top - scale.Bottom) * (Bottom - Top);

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Describe(MovementChart chart)
    {
        var text = new StringBuilder(chart.Title).Append('.');
        foreach (var series in chart.Series)
        {
            var peak = Enumerable.Range(0, series.Values.Length).MaxBy(i => series.Values[i]);
            text.Append(
                CultureInfo.InvariantCulture,
                $" {series.Name}: {series.Values[0]:0} {chart.Unit} at the start, {series.Values[^1]:0} {chart.Unit} at the end, highest {series.Values[peak]:0} {chart.Unit} at {100 * chart.At[peak]:0} % of the movement");
            if (!series.Low.IsEmpty)
                text.Append(CultureInfo.InvariantCulture, $" (between {series.Low[peak]:0} and {series.High[peak]:0})");
            text.Append('.');
        }

        foreach (var marker in chart.Markers)
            text.Append(CultureInfo.InvariantCulture, $" Line at {marker.Value:0} {chart.Unit}: {marker.Label}.");
        return text.ToString();
    }
}
