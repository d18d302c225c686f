using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>Holds a pose by the balance of the whole body: the same route as load shares take.</summary>
internal static class BalancedHold
{
    private static readonly (SegmentKind Segment, LoadedJoint Joint)[] Joints =
        [(SegmentKind.Thigh, LoadedJoint.Hip), (SegmentKind.Shank, LoadedJoint.Knee), (SegmentKind.Talus, LoadedJoint.Ankle)];

    internal static HeldBody Hold(PersonBody person, PoseInput input, Side working, double centerShiftM)
    {
        var model = person.Model;
        if (FrameCheck.Faults(input.Frame, person.Points) is [var fault, ..])
            return Nowhere(model, fault.ToString());
        var free = input.Frame.Contacts.IsEmpty;
        var placed = free
            ? Placing.Place(model, person.Points, input.Frame, working)
            : Settling.Settle(model, person.Points, input.Frame, working);
        var state = new BodyState(model);
        state.Update(placed.Pose);
        var none = new HeldBody(model, placed, state, new double[model.Coordinates.Length], [], null, []);

        // The published skeleton has no mass: only its shape and its paths can be asked.
        if (model.MassKg <= 0)
            return none;
        if (!free && (Settling.Missing(placed, Loading.DoubtfulGapM) ?? Settling.Untied(placed, Loading.DoubtfulGapM)) is { } apart)
            return none with { Refusal = apart };
        var movement = new Movement { Frames = [input.Frame], Props = [], Loads = input.Loads, Pulls = input.Pulls, View = ViewKind.Side };
        var setting = PullSetting.From(person.Points, movement, working, state, 0);
        var pulling = Pulls.On(model, person.Points, movement, working, state, setting);
        if (pulling.Refusal is { } cannot)
            return none with { Refusal = cannot };
        var forces = pulling.All.ToList();
        forces.AddRange(free ? FromTheRoom(state, forces) : Shifted(state, centerShiftM));
        var loader = new PoseLoader(person);
        var held = loader.Hold(placed, [.. forces]);
        return held.Refusal is { } refusal
            ? none with { Refusal = refusal }
            : none with
            {
                Moments = [.. held.Joints.Select(j => j.NetMoment)],
                Supports = held.Supports,
                Problems = Problems(placed, held),
                JointForces = Joints.SelectMany(j => held.JointForces.Where(f => f.Joint == j.Segment).Select(f => (Key: (j.Joint, f.Side), f.BodyWeights)))
                    .ToDictionary(f => f.Key, f => f.BodyWeights),
                Efforts = Enum.GetValues<MuscleFunction>().SelectMany(f => Enum.GetValues<Side>().Select(s => (f, s)))
                    .ToDictionary(k => k, k => held.Efforts.FirstOrDefault(e => e.Function == k.f && e.Side == k.s).Effort),
                Lines = person.Muscles.Muscles.Select((m, i) => (Key: (m.Id, m.Side), Value: (loader.Balance.Activation(i), loader.Balance.Strength(i))))
                    .ToDictionary(l => l.Key, l => l.Value),
            };
    }

    /// <summary>A pose that no body takes is nowhere: it was not placed at all.</summary>
    private static HeldBody Nowhere(BodyModel model, string why) => new(
        model, new PlacedBody(new BodyPose(model), [], 0, []), new BodyState(model), new double[model.Coordinates.Length], [], why, []);

    /// <summary>What a table gives the pelvis so that the free body hangs still.</summary>
    private static PointForce[] FromTheRoom(BodyState state, List<PointForce> forces)
    {
        var (force, moment) = JointMoments.Required(state, [.. forces], new double[state.Model.Coordinates.Length]);
        return [new PointForce(0, state.Origins[0], force), .. Couple(state, moment)];
    }

    /// <summary>A couple on the pelvis that the contacts can answer only by bearing farther forward.</summary>
    private static PointForce[] Shifted(BodyState state, double shiftM)
    {
        var axis = state.Rotations[0] * Vec3.UnitX;
        var level = new Vec3(axis.X, 0, axis.Z);
        if (shiftM == 0 || level.Length < 0.1)
            return [];
        var weight = new Vec3(0, state.Model.MassKg * BodyModel.Gravity, 0);
        return Couple(state, -(shiftM * level.Normalized()).Cross(weight));
    }

    /// <summary>Two opposite forces on the pelvis with a given moment: d x (m x d) = m for a unit d at right angles to m.</summary>
    private static PointForce[] Couple(BodyState state, Vec3 moment)
    {
        if (moment.Length < 1e-12)
            return [];
        var aside = moment.Cross(Math.Abs(moment.Y) < 0.9 * moment.Length ? Vec3.UnitY : Vec3.UnitX).Normalized();
        var force = moment.Cross(aside);
        return [new PointForce(0, state.Origins[0] + aside, force), new PointForce(0, state.Origins[0], -force)];
    }

    private static ImmutableArray<string> Problems(PlacedBody placed, HeldPose held)
    {
        var problems = ImmutableArray.CreateBuilder<string>();
        if (Settling.Missing(placed) is { } missing)
            problems.Add(missing);
        foreach (var joint in held.Joints.Where(j => j.IsUnexplained))
            problems.Add(FormattableString.Invariant($"{CaseText.Words(joint.Motion)}{(joint.Side is { } side ? " " + CaseText.Words(side) : "")}: {Math.Abs(joint.Reserve):0} Nm are not explained by muscle."));
        if (held.Extrapolated)
            problems.Add("A working muscle lies beyond the angles for which its path is trusted.");
        return problems.ToImmutable();
    }
}
