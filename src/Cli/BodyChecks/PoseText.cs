using System.Globalization;
using System.Text;
using MomentArm.Body;

namespace MomentArm.Cli;

/// <summary>A pose report as text.</summary>
internal static class PoseText
{
    internal static string Of(PoseReport report)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        Line($"{report.Pose}, {CaseText.Words(report.WorkingSide)} side working, {report.StatureM:0.00} m, {report.MassKg:0.0} kg");
        Line($"Moments the muscles must give (clinical angle of the joint beside it)");
        foreach (var m in report.Moments)
            Line($"  {(m.Side is { } side ? CaseText.Words(side) : ""),-5} {CaseText.Words(m.Action),-24} {m.MomentNm,7:0.0} Nm  {m.MomentNmPerKg,6:0.00} Nm/kg  at {m.ClinicalAngleDeg,4:0} degrees");
        text.Append(Resting(report));
        Line($"Joint forces (estimate): {string.Join(", ", report.JointForces.Select(f => FormattableString.Invariant($"{CaseText.Words(f.Side)} {CaseText.Words(f.Joint)} {f.PercentOfBodyWeight:0} %")))} of body weight");
        Line($"Muscle effort (estimate)");
        foreach (var e in report.Efforts)
            Line($"  {CaseText.Words(e.Side),-5} {CaseText.Words(e.Function),-24} {e.EffortPercent,5:0} %");
        Line($"Muscle lengths, working side (% of the range between shortest and longest path)");
        foreach (var m in report.Muscles.Where(m => m.Side == report.WorkingSide))
            Line($"  {m.Name,-42} {m.LengthMm,6:0.0} mm  {m.ChangeFromNeutralMm,6:+0.0;-0.0;0.0} mm  {m.PercentOfRange,4:0} %{(m.BeyondTrustedAngles ? "  beyond the trusted angles" : "")}");
        foreach (var note in report.Problems.Concat(report.Assumptions))
            Line($"Note: {note}");
        return text.Append("A held pose, least effort of all ways to hold it. An estimate for a clinician, not a limit.").ToString();
    }

    /// <summary>Where the body rests and what gave way: all that can be said of a pose that falls, too.</summary>
    internal static string Resting(PoseReport report)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        Line($"Contacts, with their places from the first contact point");
        foreach (var c in report.Contacts)
            Line($"  {c.Point,-16} {(c.Limb is { } limb ? CaseText.Words(limb) : ""),-8} {c.ForceN,7:0} N  {c.PercentOfBodyWeight,5:0.0} % of body weight  {c.ForwardMm,5:0} mm ahead  {c.RightMm,5:0} mm to the right");
        Line($"  mass center {report.MassCenterForwardMm:0} mm ahead, {report.MassCenterRightMm:0} mm to the right, {report.MassCenterHeightMm:0} mm high; largest gap {report.LargestGapMm:0.0} mm");
        Line($"Settling");
        foreach (var change in report.Settled)
            Line($"  gave way: {(change.Side is { } side ? CaseText.Words(side) + " " : "")}{CaseText.Words(change.Motion)} from {change.FromDeg:0.0} to {change.ToDeg:0.0} degrees (clinical sign)");
        if (report.Settled.Count == 0)
            Line($"  no joint changed by half a degree");
        return text.ToString();
    }
}
