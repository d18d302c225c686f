using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Loads a movement: statics of held poses along it, held against a person's capacities.</summary>
public static class Loading
{
    /// <summary>Poses along the movement at which it is loaded, ends included.</summary>
    public const int PosesPerMovement = 21;

    /// <summary>A contact this far from its surface makes the numbers doubtful, metres.</summary>
    public const double DoubtfulGapM = 0.01;

    /// <summary>Computes the load of a movement.</summary>
    /// <param name="model">The person's body.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="capacity">The person's capacities.</param>
    /// <param name="addedKg">Mass used for added loads whose mass the dose sets; 0 for none.</param>
    /// <returns>Peak shares, or why they could not be computed.</returns>
    public static MovementLoad Of(
        BodyModel model, SurfacePoints points, Movement movement, Side working, PatientCapacity capacity, double addedKg)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(movement);
        ArgumentNullException.ThrowIfNull(capacity);
        Quantity.Within(addedKg, 0, 240, "kg");
        var state = new BodyState(model);
        var moments = new double[model.Coordinates.Length];
        var peaks = new Dictionary<(JointAction, Side), LoadShare>();
        var problems = new List<string>();
        var steps = movement.Frames.Length == 1 ? 1 : PosesPerMovement;
        for (var step = 0; step < steps; step++)
        {
            var fraction = steps == 1 ? 0 : (double)step / (steps - 1);
            var placed = Settling.Settle(model, points, FrameBetween.At(movement, fraction), working);
            state.Update(placed.Pose);
            if (Settling.Missing(placed, DoubtfulGapM) is { } missing)
                Note(problems, missing + " The numbers are doubtful.");
            if (ForcesOn(model, points, movement, working, addedKg, state, placed, problems) is not { } forces)
                return new MovementLoad([], [.. problems], false);
            JointMoments.Required(state, forces, moments);
            Collect(model, placed.Pose, moments, capacity, fraction, peaks);
        }

        return new MovementLoad(
            [.. peaks.Values.Where(s => s.Middle >= 0.01).OrderByDescending(s => Math.Round(s.Middle, 6)).ThenBy(s => s.Action).ThenBy(s => s.Side)],
            [.. problems],
            true);
    }

    private static PointForce[]? ForcesOn(
        BodyModel model, SurfacePoints points, Movement movement, Side working, double addedKg, BodyState state,
        PlacedBody placed, List<string> problems)
    {
        var forces = new List<PointForce>();
        var mass = model.MassKg;
        var weighted = mass * state.MassCenter();
        foreach (var load in movement.Loads)
        {
            var kilograms = load.MassKg > 0 ? load.MassKg : addedKg;
            var (segment, local) = points.Resolve(load.At)[0].On(model, load.Limb.On(working));
            var at = state.Point(segment, local);
            forces.Add(new PointForce(segment, at, new Vec3(0, -kilograms * BodyModel.Gravity, 0)));
            mass += kilograms;
            weighted += kilograms * at;
        }

        var bearing = placed.Contacts.Where(c => c.Contact.BearsWeight && c.Contact.Surface != SurfaceKind.Wall).ToArray();
        var forward = state.Rotations[0] * Vec3.UnitX;
        var support = VerticalSupport.Solve(
            [.. bearing.Select(c => c.Point)], RestingWeight.On(model, [.. bearing.Select(c => c.Segment)]), (1 / mass) * weighted, mass * BodyModel.Gravity, forward);
        if (!support.Stands)
        {
            Note(problems, support.Reason!);
            return null;
        }

        for (var i = 0; i < bearing.Length; i++)
            forces.Add(new PointForce(bearing[i].Segment, bearing[i].Point, new Vec3(0, support.Forces[i], 0)));
        return [.. forces];
    }

    private static void Collect(
        BodyModel model, BodyPose pose, double[] moments, PatientCapacity capacity, double fraction,
        Dictionary<(JointAction, Side), LoadShare> peaks)
    {
        foreach (var action in Enum.GetValues<JointAction>())
        {
            if (!IsTold(action))
                continue;
            foreach (var side in new[] { Side.Right, Side.Left })
            {
                var (index, sign) = action.On(model, side);
                var demand = sign * moments[index];
                if (demand <= 0 || capacity.At(action, side, action.ClinicalAngle(pose.Angles[index])) is not { } able)
                    continue;
                var share = new LoadShare(
                    action, side, demand / able.High, demand / able.Middle, demand / able.Low, demand, able, fraction);
                if (!peaks.TryGetValue((action, side), out var peak) || share.Middle > peak.Middle)
                    peaks[(action, side)] = share;
            }
        }
    }

    /// <summary>
    /// Whether vertical support without friction tells what the action must do. Trunk, neck, arms, rotation of the hip and turning
    /// of the foot depend on what else rests and how it pushes sideways, so no share is told for them here.
    /// </summary>
    private static bool IsTold(JointAction action) => action is
        JointAction.HipFlexion or JointAction.HipExtension or JointAction.HipAbduction or JointAction.HipAdduction
        or JointAction.KneeFlexion or JointAction.KneeExtension or JointAction.AnkleDorsiflexion or JointAction.AnklePlantarflexion;

    private static void Note(List<string> problems, string problem)
    {
        if (!problems.Contains(problem))
            problems.Add(problem);
    }
}
