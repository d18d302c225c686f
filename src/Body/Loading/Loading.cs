using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Loads a movement: statics of held poses along it, held against a person's capacities.</summary>
public static class Loading
{
    /// <summary>Poses along the movement at which it is loaded, ends included.</summary>
    public const int PosesPerMovement = 21;

    /// <summary>A contact this far from its surface makes the numbers doubtful, metres.</summary>
    public const double DoubtfulGapM = 0.01;

    /// <summary>A sideways pull from outside above this is told, because the ground's hold against it is not computed, newtons.</summary>
    private const double SidewaysTold = 1;

    /// <summary>Computes the load of a movement, with its added loads and pulls.</summary>
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
        var setting = PullSetting.For(model, points, movement, working, addedKg);
        var steps = movement.Frames.Length == 1 ? 1 : PosesPerMovement;
        for (var step = 0; step < steps; step++)
        {
            var fraction = steps == 1 ? 0 : (double)step / (steps - 1);
            var placed = Settling.Settle(model, points, FrameBetween.At(movement, fraction), working);
            state.Update(placed.Pose);
            if (Settling.Missing(placed, DoubtfulGapM) is { } missing)
                Note(problems, missing + " The numbers are doubtful.");
            var pulls = Pulls.On(model, points, movement, working, state, setting);
            if (ForcesOn(model, pulls, state, placed, problems) is not { } forces)
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
        BodyModel model, PullForces pulls, BodyState state, PlacedBody placed, List<string> problems)
    {
        foreach (var warning in pulls.Warnings)
            Note(problems, warning);
        if (pulls.Refusal is { } refusal)
        {
            Note(problems, refusal);
            return null;
        }

        // What comes from outside adds to what the ground bears; what lies between two places of the body does not.
        var forces = new List<PointForce>(pulls.All);
        var weight = model.MassKg * BodyModel.Gravity;
        var weighted = weight * state.MassCenter();
        foreach (var force in pulls.FromOutside)
        {
            weight -= force.Force.Y;
            weighted -= force.Force.Y * force.Point;
            if (new Vec3(force.Force.X, 0, force.Force.Z).Length > SidewaysTold)
                Note(problems, "A pull has a sideways part. The ground is taken as frictionless, so what must hold against it is not in the numbers.");
        }

        if (!(weight > 0))
        {
            Note(problems, "The pulls lift the whole body off. Take a smaller force.");
            return null;
        }

        var bearing = placed.Contacts.Where(c => c.Contact.BearsWeight && c.Contact.Surface != SurfaceKind.Wall).ToArray();
        var forward = state.Rotations[0] * Vec3.UnitX;
        var support = VerticalSupport.Solve(
            [.. bearing.Select(c => c.Point)], RestingWeight.On(model, [.. bearing.Select(c => c.Segment)]), (1 / weight) * weighted, weight, forward);
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

    private static void Note(List<string> problems, string problem)
    {
        if (!problems.Contains(problem))
            problems.Add(problem);
    }
}
