using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Library;

/// <summary>Reach in trade words, and as curves.</summary>
public static class ReachText
{
    /// <summary>Curves in one chart: more can't be followed on a phone.</summary>
    private const int MostCurves = 4;

    /// <summary>Such as "Hamstrings, right".</summary>
    public static string Name(GroupReach group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return $"{ExerciseText.Title(group.Group)}, {Say.Side(group.Side)}";
    }

    /// <summary>What a limit rests on.</summary>
    public static string Basis(GroupReach group)
    {
        ArgumentNullException.ThrowIfNull(group);
        var tests = string.Join("; ", group.Tests);
        return group.Basis switch
        {
            LimitBasis.Tested => $"tested: {tests}",
            LimitBasis.TestedPainLimited => $"tested, stopped by pain: {tests}",
            LimitBasis.OtherSide => $"taken from the other side: {tests}",
            LimitBasis.Norm => $"not tested; {tests}",
            LimitBasis.UsualRange => "not tested; end of the usual joint range",
        };
    }

    /// <summary>The groups to draw: those the exercise is meant to lengthen on the working side, then the most lengthened.</summary>
    public static ImmutableArray<ReachLine> Drawn(Exercise exercise, MovementReach reach, Side working)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(reach);
        var groups = exercise.Groups.Select(g => reach.Of(g, working)).Concat(reach.Lengthened).DistinctBy(g => (g.Group, g.Side));
        return [.. ReachLine.Of(groups).Take(MostCurves)];
    }

    /// <summary>The curves; null for a hold, which has none, and when nothing is lengthened.</summary>
    public static MovementChart? Chart(Exercise exercise, MovementReach reach, Side working)
    {
        ArgumentNullException.ThrowIfNull(reach);
        var drawn = Drawn(exercise, reach, working);
        if (reach.Fractions.Length < 2 || drawn.IsEmpty)
            return null;
        return new MovementChart
        {
            Title = "Reach along the movement",
            ValueLabel = "reach, % of the limit",
            Unit = "%",
            At = reach.Fractions,
            Series = [.. drawn.Select((g, i) => Series(g, i == 0))],
            Markers = [new ChartMarker(100, "limit of length")],
        };
    }

    /// <summary>How to go farther, in a sentence; null when every joint is at its end.</summary>
    public static string? Farther(GroupReach group, ImmutableArray<LengtheningStep> steps)
    {
        ArgumentNullException.ThrowIfNull(group);
        if (steps.IsEmpty)
            return null;
        var listed = steps.Select(s => $"{s.Words} ({Say.Number(s.MmPer10Deg)} mm for 10°, {Say.Number(Say.Degrees(s.Room), 0)}° left)");
        return $"What would lengthen the {Say.Side(group.Side)} {ExerciseText.Words(group.Group)} more: {string.Join(", ", listed)}.";
    }

    private static ChartSeries Series(ReachLine line, bool band) => new(
        line.Name,
        [.. line.Group.Curve.Select(r => 100 * r.Middle)],
        band ? [.. line.Group.Curve.Select(r => 100 * r.Low)] : [],
        band ? [.. line.Group.Curve.Select(r => 100 * r.High)] : []);
}
