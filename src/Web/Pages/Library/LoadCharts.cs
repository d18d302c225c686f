using System.Collections.Immutable;
using System.Text;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Library;

/// <summary>Load shares as curves, and what carries the body, in trade words.</summary>
public static class LoadCharts
{
    /// <summary>Curves in one chart: more can't be followed on a phone.</summary>
    private const int MostCurves = 4;

    /// <summary>The curves of the largest shares; null for a hold, which has none, and when nothing is asked.</summary>
    public static MovementChart? Chart(MovementLoad load, LoadWindow? window)
    {
        ArgumentNullException.ThrowIfNull(load);
        var drawn = load.Curves.Take(MostCurves).ToArray();
        if (drawn.Length == 0 || drawn[0].Points.Length < 2)
            return null;
        ImmutableArray<ChartMarker> markers = [new ChartMarker(100, "capacity")];
        if (window is not null)
            markers = [.. markers, new ChartMarker(Math.Round(100 * window.Low), "window from"), new ChartMarker(Math.Round(100 * window.High), "window to")];
        return new MovementChart
        {
            Title = "Load share along the movement",
            ValueLabel = "load share, % of capacity",
            Unit = "%",
            At = [.. drawn[0].Points.Select(p => p.Fraction)],
            Series = [.. drawn.Select((c, i) => Series(c, i == 0))],
            Markers = [.. markers.DistinctBy(m => m.Value)],
        };
    }

    /// <summary>Such as "Hip abduction, right".</summary>
    public static string Name(LoadCurve curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return ExerciseText.Title(curve.Action) + (curve.Action.HasSides() ? ", " + Say.Side(curve.Side) : "");
    }

    /// <summary>A contact in words: "left foot on the floor".</summary>
    public static string Name(SupportRange support, Side working)
    {
        ArgumentNullException.ThrowIfNull(support);
        var point = new StringBuilder();
        foreach (var letter in support.Point)
            point.Append(char.IsUpper(letter) ? " " : "").Append(char.ToLowerInvariant(letter));
        var side = support.Limb is { } limb ? Say.Side(limb.On(working)) + " " : "";
        return ExerciseText.Capital($"{side}{point} on the {ExerciseText.Words(support.Surface)}");
    }

    /// <summary>Kilograms, least to most, or one figure where they round alike.</summary>
    public static string Kilograms(SupportRange support)
    {
        ArgumentNullException.ThrowIfNull(support);
        var (least, most) = (Say.Number(support.LeastKg, 0), Say.Number(support.MostKg, 0));
        return least == most ? most + " kg" : $"{least}–{most} kg";
    }

    /// <summary>The joint of a contact force.</summary>
    public static string Joint(SegmentKind segment) => segment switch
    {
        SegmentKind.Thigh => "hip",
        SegmentKind.Shank => "knee",
        _ => "ankle",
    };

    private static ChartSeries Series(LoadCurve curve, bool band) => new(
        Name(curve), [.. curve.Points.Select(p => 100 * p.Middle)],
        band ? [.. curve.Points.Select(p => 100 * p.Low)] : [], band ? [.. curve.Points.Select(p => 100 * p.High)] : []);
}
