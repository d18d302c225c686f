using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Gathers held poses along a movement into its load.</summary>
internal sealed class LoadGathering(PersonBody person)
{
    private static readonly JointAction[] Actions = Enum.GetValues<JointAction>();
    private static readonly Side[] Sides = [Side.Right, Side.Left];

    private readonly List<(double Fraction, HeldPose Pose)> poses = [];
    private readonly List<string> problems = [];

    internal void Note(string problem)
    {
        if (!problems.Contains(problem))
            problems.Add(problem);
    }

    internal MovementLoad Refused(string why)
    {
        Note(why);
        return new MovementLoad([], [.. problems], false);
    }

    internal void Add(double fraction, HeldPose pose) => poses.Add((fraction, pose));

    internal MovementLoad Whole()
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        if (poses.Any(p => p.Pose.Extrapolated))
            notes.Add("Some muscles work beyond the angles for which their paths are trusted (hip flexion over 90, knee flexion over 100 degrees): their effort and the joint forces are extrapolated.");
        foreach (var joint in poses.SelectMany(p => p.Pose.Joints).Where(j => j.IsUnexplained).GroupBy(j => (j.Motion, j.Side)))
        {
            var worst = joint.MaxBy(j => Math.Abs(j.Reserve));
            var side = worst.Side is { } on ? on == Side.Left ? "left " : "right " : "";
            notes.Add(FormattableString.Invariant(
                $"{Math.Abs(worst.Reserve):0} N m of {side}{Words.Of(worst.Motion, worst.Reserve > 0)} are not explained by the muscles of the model."));
        }

        var shares = new List<(LoadShare Peak, LoadCurve Curve)>();
        foreach (var action in Actions)
        {
            foreach (var side in Sides.Where(s => s == Side.Right || action.HasSides()))
            {
                if (Along(action, side) is { } found)
                    shares.Add(found);
            }
        }

        shares = [.. shares.OrderByDescending(s => Math.Round(s.Peak.Middle, 6)).ThenBy(s => s.Peak.Action).ThenBy(s => s.Peak.Side)];
        return new MovementLoad([.. shares.Select(s => s.Peak)], [.. problems], true)
        {
            Notes = notes.ToImmutable(),
            Curves = [.. shares.Select(s => s.Curve)],
            Supports = Supports(),
            Efforts = Efforts(),
            JointForces = JointForces(),
        };
    }

    /// <summary>Peak and curve of one action; null when it stays under 1 %, or nothing is known of its capacity.</summary>
    private (LoadShare Peak, LoadCurve Curve)? Along(JointAction action, Side side)
    {
        var (index, sign) = action.On(person.Model, side);
        LoadShare? peak = null;
        var points = ImmutableArray.CreateBuilder<LoadPoint>(poses.Count);
        var work = 0.0;
        var (demandBefore, angleBefore) = (0.0, 0.0);
        foreach (var (fraction, pose) in poses)
        {
            var joint = pose.Joints[index];
            var demand = Math.Max(0, sign * joint.Demand);
            if (person.Capacity.At(action, side, action.ClinicalAngle(joint.Angle)) is not { } able)
                return null;
            var share = new LoadShare(action, side, demand / able.High, demand / able.Middle, demand / able.Low, demand, able, fraction);
            if (share.Middle > (peak?.Middle ?? 0))
                peak = share;
            if (points.Count > 0)
                work += Math.Abs((joint.Angle - angleBefore) * (demand + demandBefore) / 2);
            points.Add(new LoadPoint(fraction, demand, share.Low, share.Middle, share.High));
            (demandBefore, angleBefore) = (demand, joint.Angle);
        }

        return peak is { Middle: >= 0.01 } ? (peak, new LoadCurve(action, side, points.MoveToImmutable(), work)) : null;
    }

    private ImmutableArray<SupportRange> Supports() =>
    [
        .. poses.SelectMany(p => p.Pose.Supports).GroupBy(s => (s.Contact.Point, s.Contact.Limb, s.Contact.Surface)).Select(g => new SupportRange(
            g.Key.Point, g.Key.Limb, g.Key.Surface, g.Min(s => s.Kilograms), g.Max(s => s.Kilograms))),
    ];

    private ImmutableArray<EffortPeak> Efforts() =>
    [
        .. poses.SelectMany(p => p.Pose.Efforts, (p, e) => (p.Fraction, Effort: e)).GroupBy(e => (e.Effort.Function, e.Effort.Side))
            .Select(g => g.MaxBy(e => e.Effort.Effort)).Where(e => e.Effort.Effort >= 0.05).OrderByDescending(e => Math.Round(e.Effort.Effort, 6))
            .ThenBy(e => e.Effort.Function).ThenBy(e => e.Effort.Side)
            .Select(e => new EffortPeak(e.Effort.Function, e.Effort.Side, new Peak(e.Effort.Effort, e.Fraction))),
    ];

    private ImmutableArray<JointForcePeak> JointForces() =>
    [
        .. poses.SelectMany(p => p.Pose.JointForces, (p, f) => (p.Fraction, Force: f)).GroupBy(f => (f.Force.Joint, f.Force.Side))
            .Select(g => g.MaxBy(f => f.Force.BodyWeights))
            .Select(f => new JointForcePeak(f.Force.Joint, f.Force.Side, new Peak(f.Force.BodyWeights, f.Fraction))),
    ];
}
