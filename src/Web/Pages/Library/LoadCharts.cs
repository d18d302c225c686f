using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Library;

/// <summary>Load shares as curves.</summary>
public static class LoadCharts
{
    /// <summary>Curves in one chart: more can't be followed on a phone.</summary>
    private const int MostCurves = 4;

    /// <summary>The curves of the largest shares; null for a hold, which has none, and when nothing is asked.</summary>
    /// <param name="lines">What is asked, largest first.</param>
    /// <param name="window">The load window of a patient; null for nobody in particular.</param>
    public static MovementChart? Chart(ImmutableArray<LoadLine> lines, LoadWindow? window)
    {
        var drawn = LoadLine.Drawn(lines, MostCurves);
        if (drawn.IsEmpty || drawn[0].Curve.Points.Length < 2)
            return null;
        return new MovementChart
        {
            Title = "Load share along the movement",
            ValueLabel = "load share, % of capacity",
            Unit = "%",
            At = [.. drawn[0].Curve.Points.Select(p => p.Fraction)],
            Series = [.. drawn.Select((line, i) => Series(line, i == 0))],
            Markers = Markers(window),
        };
    }

    /// <summary>The whole capacity, and the edges of a window where they are neither nothing nor the whole.</summary>
    private static ImmutableArray<ChartMarker> Markers(LoadWindow? window)
    {
        if (window is null)
            return [new ChartMarker(100, "capacity")];
        var (from, to) = (Math.Round(100 * window.Low), Math.Round(100 * window.High));
        var markers = ImmutableArray.CreateBuilder<ChartMarker>();
        markers.Add(new ChartMarker(100, to == 100 ? "capacity, and the window’s upper edge" : "capacity"));
        if (to != 100)
            markers.Add(new ChartMarker(to, FormattableString.Invariant($"window to {to} %"), Soft: true));
        if (from > 0)
            markers.Add(new ChartMarker(from, FormattableString.Invariant($"window from {from} %"), Soft: true));
        return markers.ToImmutable();
    }

    private static ChartSeries Series(LoadLine line, bool band)
    {
        var points = line.Curve.Points;
        return new ChartSeries(
            line.Name, [.. points.Select(p => 100 * p.Middle)],
            band ? [.. points.Select(p => 100 * p.Low)] : [], band ? [.. points.Select(p => 100 * p.High)] : []);
    }
}
