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
                $"  {CaseText.Words(share.Side),-5} {CaseText.Words(share.Action),-23} {share.Middle * 100,4:0} %  ({share.Low * 100:0}-{share.High * 100:0} %)  asks {share.Demand:0} Nm of {share.Capacity.Middle:0} Nm, {Basis(share.Capacity)}");
        }

        foreach (var line in load.Problems.Concat(model.Assumptions))
            text.AppendLine("  Note: " + line);
        text.Append("  Held poses, no speed; contact taken as vertical and frictionless. An estimate for a clinician, not a limit.");
        return text.ToString();
    }

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
