using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Library;

/// <summary>A joint action along a movement as the page shows it: both sides as one where nothing tells them apart.</summary>
/// <param name="Share">The peak share.</param>
/// <param name="Curve">The share along the movement.</param>
/// <param name="BothSides">Whether the other side is asked the same and stands in this line too.</param>
/// <param name="IsAim">Whether the exercise is meant to load the action.</param>
public sealed record LoadLine(LoadShare Share, LoadCurve Curve, bool BothSides, bool IsAim)
{
    /// <summary>A share under this stands behind the others, unless the exercise is meant to load the action.</summary>
    private const double Small = 0.10;

    /// <summary>Lines that stand in front; more can't be taken in at once.</summary>
    private const int MostInFront = 8;

    /// <summary>Two sides whose figures differ by less than this read alike.</summary>
    private const double Alike = 0.005;

    /// <summary>Such as "Hip abduction, right" or "Knee extension, both sides".</summary>
    public string Name => ExerciseText.Title(Share.Action)
        + (BothSides ? ", both sides" : Share.Action.HasSides() ? ", " + Say.Side(Share.Side) : "");

    /// <summary>The lines of a load, largest first.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="load">What it asks.</param>
    /// <param name="working">The side that works.</param>
    public static ImmutableArray<LoadLine> Of(Exercise exercise, MovementLoad load, Side working)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(load);
        var aims = exercise.Purpose.Loads() ? exercise.Loads : [];
        var lines = new List<LoadLine>();
        foreach (var (share, curve) in load.Shares.Zip(load.Curves))
        {
            var same = lines.FindIndex(l => l.Share.Action == share.Action && AreAlike(l, share, curve));
            if (same >= 0)
                lines[same] = lines[same] with { BothSides = true };
            else
                lines.Add(new LoadLine(share, curve, false, aims.Contains(share.Action) && Works(share)));
        }

        return [.. lines];

        bool Works(LoadShare share) => exercise.Movement.Bilateral || !share.Action.HasSides() || share.Side == working;
    }

    /// <summary>The lines to look at first: the largest, all that the exercise is meant to load, and never none of several.</summary>
    public static ImmutableArray<LoadLine> InFront(ImmutableArray<LoadLine> lines) =>
        [.. lines.Where((line, i) => i == 0 || line.IsAim || (i < MostInFront && line.Share.Middle >= Small))];

    /// <summary>The lines worth a curve: the largest, and among them one that the exercise is meant to load.</summary>
    public static ImmutableArray<LoadLine> Drawn(ImmutableArray<LoadLine> lines, int most)
    {
        var drawn = lines.Take(most).ToImmutableArray();
        return drawn.Any(l => l.IsAim) || lines.FirstOrDefault(l => l.IsAim) is not { } aim ? drawn : drawn.SetItem(drawn.Length - 1, aim);
    }

    private static bool AreAlike(LoadLine line, LoadShare share, LoadCurve curve) =>
        line.Share.Capacity.Basis == share.Capacity.Basis
        && line.Curve.Points.Zip(curve.Points).All(p =>
            Math.Abs(p.First.Middle - p.Second.Middle) < Alike && Math.Abs(p.First.Low - p.Second.Low) < Alike
            && Math.Abs(p.First.High - p.Second.High) < Alike);
}
