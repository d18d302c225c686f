using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>Reach as text.</summary>
internal static class ReachText
{
    private const string Limits =
        "  100 % is the length in the test's end position, 0 % the length in standing. Straight muscle lines, no passive force; an estimate for a clinician.";

    internal static string Of(
        Exercise exercise, Side side, MovementReach reach, GroupReach? main, ImmutableArray<LengtheningStep> farther, BodyModel model)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{exercise.Name}, {CaseText.Words(side).ToLowerInvariant()} side working");
        foreach (var group in reach.Lengthened)
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"  {CaseText.Words(group.Side),-5} {CaseText.Words(group.Group),-15} {group.Peak.Middle * 100,4:0} %  ({group.Peak.Low * 100:0} to {group.Peak.High * 100:0} %)  {group.PeakChangeM * 1000,4:+0;-0;0} mm at {reach.Fractions[group.PeakAt] * 100:0} % of the movement, most: {group.Leading}; {Basis(group)}");
            if (group.Verdict is { } verdict)
                text.AppendLine("        " + verdict);
        }

        var rest = reach.Groups.Where(g => !g.Lengthens).Select(g => $"{CaseText.Words(g.Side).ToLowerInvariant()} {CaseText.Words(g.Group).ToLowerInvariant()}").ToArray();
        if (rest.Length > 0)
            text.AppendLine("  Not lengthened beyond standing: " + string.Join(", ", rest));
        if (main is not null && farther.Length > 0)
            text.AppendLine($"  More for the {CaseText.Words(main.Side).ToLowerInvariant()} {CaseText.Words(main.Group).ToLowerInvariant()}: " + string.Join(", ", farther.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Words} ({s.MmPer10Deg:0.0} mm per 10 degrees, {s.Room * 180 / Math.PI:0} degrees left)"))));
        Notes(text, reach.Problems.Concat(model.Assumptions));
        return text.Append(Limits).ToString();
    }

    internal static string Ranked(string name, Side side, ImmutableArray<RankedReach> ranked, BodyModel model)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{name}, {CaseText.Words(side).ToLowerInvariant()} side working, by largest reach");
        foreach (var one in ranked)
        {
            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"  {one.Peak.Middle * 100,4:0} %  ({one.Peak.Low * 100:0} to {one.Peak.High * 100:0} %)  {one.ChangeM * 1000,4:+0;-0;0} mm  {one.Id}{(one.Verdict is null ? "" : ": " + one.Verdict)}");
        }

        Notes(text, model.Assumptions);
        return text.Append(Limits).ToString();
    }

    private static void Notes(StringBuilder text, IEnumerable<string> notes)
    {
        foreach (var note in notes)
            text.AppendLine("  Note: " + note);
    }

    private static string Basis(GroupReach group) => (group.Basis switch
    {
        LimitBasis.Tested => "tested: " + string.Join(", ", group.Tests),
        LimitBasis.TestedPainLimited => "tested, stopped by pain: " + string.Join(", ", group.Tests),
        LimitBasis.OtherSide => "taken from the other side: " + string.Join(", ", group.Tests),
        LimitBasis.Norm => "not tested; " + string.Join(", ", group.Tests),
        LimitBasis.UsualRange => "not tested; end of the usual joint range",
    }) + (group.Extrapolated ? "; beyond the trusted range of the line" : "");
}
