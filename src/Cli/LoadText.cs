using System.Globalization;
using System.Text;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>Load shares as text.</summary>
internal static class LoadText
{
    internal static string Of(Exercise exercise, Side side, MovementLoad load, BodyModel model)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{exercise.Name}, {side.ToString().ToLowerInvariant()} side working");
        if (!load.Computed)
            text.AppendLine("Load not computed.");
        foreach (var share in load.Shares.Where(s => s.Middle >= 0.05))
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"  {SideOf(share.Action, share.Side),-5} {CaseText.Words(share.Action),-23} {share.Middle * 100,4:0} %  ({share.Low * 100:0}-{share.High * 100:0} %)  asks {share.Demand:0} Nm of {share.Capacity.Middle:0} Nm at {share.AtFraction * 100:0} % of the way, {Basis(share.Capacity)}{(share.Low > 1 ? "; beyond capacity" : "")}");
        }

        Curves(text, load);
        if (exercise.Dose.SetSeconds > 0)
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"  Time under tension as dosed: {exercise.Dose.Sets} x {exercise.Dose.SetSeconds:0} s = {exercise.Dose.Sets * exercise.Dose.SetSeconds:0} s a side");
        }

        Rests(text, load);
        Estimates(text, load);

        foreach (var line in load.Problems.Concat(load.Notes).Concat(model.Assumptions))
            text.AppendLine("  Note: " + line);
        text.Append("  Held poses, no speed. Least effort shares the load out; people who hurt or wobble tense more.\n  Hip forces with the hip deeply bent come out about twice too high. An estimate for a clinician, not a limit.");
        return text.ToString();
    }

    /// <summary>Shares along the way, at eleven of the poses.</summary>
    private static void Curves(StringBuilder text, MovementLoad load)
    {
        if (load.Curves.IsEmpty || load.Curves[0].Points.Length == 1)
            return;
        text.AppendLine("  Along the movement, % of capacity (start to end; mean over time; work one way):");
        foreach (var curve in load.Curves.Where(c => c.Points.Max(p => p.Middle) >= 0.05))
        {
            var along = string.Join(' ', curve.Points.Where((_, i) => i % 2 == 0).Select(p => (p.Middle * 100).ToString("0", CultureInfo.InvariantCulture).PadLeft(3)));
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"    {SideOf(curve.Action, curve.Side),-5} {CaseText.Words(curve.Action),-23} {along}   {curve.MeanShare * 100:0} %, {curve.WorkJ:0.0} J");
        }
    }

    private static void Rests(StringBuilder text, MovementLoad load)
    {
        if (load.Supports.IsEmpty)
            return;
        text.AppendLine("  Rests on:");
        foreach (var rest in load.Supports.Where(r => r.MostKg >= 0.5))
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"    {rest.Point}{(rest.Limb is { } limb ? $", {limb.ToString().ToLowerInvariant()} limb" : "")}, {rest.Surface.ToString().ToLowerInvariant()}: {rest.LeastKg:0} to {rest.MostKg:0} kg");
        }
    }

    private static void Estimates(StringBuilder text, MovementLoad load)
    {
        if (!load.Efforts.IsEmpty)
        {
            text.AppendLine("  Muscle groups, peak effort (estimate): " + string.Join(", ", load.Efforts.Select(e =>
                string.Create(CultureInfo.InvariantCulture, $"{CaseText.Words(e.Side)} {CaseText.Words(e.Function)} {e.Peak.Value * 100:0} %"))));
        }

        var forces = load.JointForces.Where(f => f.Peak.Value >= 0.3).ToArray();
        if (forces.Length > 0)
        {
            text.AppendLine("  Joint contact, peak (estimate, body weights): " + string.Join(", ", forces.Select(f =>
                string.Create(CultureInfo.InvariantCulture, $"{CaseText.Words(f.Side)} {Joint(f.Joint)} {f.Peak.Value:0.0}"))));
        }
    }

    private static string Joint(SegmentKind segment) => segment switch
    {
        SegmentKind.Thigh => "hip",
        SegmentKind.Shank => "knee",
        _ => "ankle",
    };

    /// <summary>The side, left out where it means nothing.</summary>
    private static string SideOf(JointAction action, Side side) => action.HasSides() ? CaseText.Words(side) : "";

    private static string Basis(Capacity capacity) => Words(capacity.Basis) + (capacity.WeakSource ? ", a weak source" : "")
        + (capacity.BeyondCurve ? ", end of the strength curve" : "");

    private static string Words(CapacityBasis basis) => basis switch
    {
        CapacityBasis.Tested => "tested",
        CapacityBasis.TestedPainLimited => "tested, limited by pain: at least this",
        CapacityBasis.ScaledFromTested => "estimated from other tests of this person",
        CapacityBasis.PublishedOnly => "published for sex and age",
        CapacityBasis.FromEndurance => "from repetitions or seconds, no force reader",
        CapacityBasis.EndurancePainLimited => "from repetitions or seconds that pain ended: at least this",
        CapacityBasis.Combined => "from force, repetitions and seconds together",
    };
}
