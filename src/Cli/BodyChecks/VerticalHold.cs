using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>Holds a pose with upward forces only and joint moments by statics: the same route as load shares take.</summary>
internal static class VerticalHold
{
    /// <summary>Settles, supports and calculates moments. A pose without contacts is free: the room carries the pelvis.</summary>
    internal static HeldPose Hold(BodyModel model, SurfacePoints points, PoseInput input, Side working, double centerShiftM)
    {
        var free = input.Frame.Contacts.IsEmpty;
        var placed = free
            ? Placing.Place(model, points, input.Frame, working)
            : Settling.Settle(model, points, input.Frame, working);
        var state = new BodyState(model);
        state.Update(placed.Pose);
        var forces = new List<PointForce>();
        var (mass, weighted) = (model.MassKg, model.MassKg * state.MassCenter());
        foreach (var load in input.Loads)
        {
            var (segment, local) = points.Resolve(load.At)[0].On(model, load.Limb.On(working));
            var at = state.Point(segment, local);
            forces.Add(new PointForce(segment, at, new Vec3(0, -load.MassKg * BodyModel.Gravity, 0)));
            mass += load.MassKg;
            weighted += load.MassKg * at;
        }

        var moments = new double[model.Coordinates.Length];
        var forward = state.Rotations[0] * Vec3.UnitX;
        var supports = Array.Empty<HeldContact>();
        string? refusal = null;
        if (!free)
        {
            var bearing = placed.Contacts.Where(c => c.Contact.BearsWeight && c.Contact.Surface != SurfaceKind.Wall).ToArray();
            var support = VerticalSupport.Solve(
                [.. bearing.Select(c => c.Point)], RestingWeight.On(model, [.. bearing.Select(c => c.Segment)]),
                (1 / mass) * weighted, mass * BodyModel.Gravity, forward);
            refusal = Settling.Missing(placed, Loading.DoubtfulGapM) ?? support.Reason;
            if (support.Stands)
                supports = [.. bearing.Zip(support.Forces, (contact, up) => new HeldContact(contact, new Vec3(0, up, 0)))];
        }

        var ahead = new Vec3(forward.X, 0, forward.Z);
        var shift = ahead.Length > 0.1 ? centerShiftM / ahead.Length * ahead : Vec3.Zero;
        forces.AddRange(supports.Select(s => new PointForce(s.Contact.Segment, s.Contact.Point + shift, s.Force)));
        JointMoments.Required(state, [.. forces], moments);
        return new HeldPose(model, placed, state, moments, [.. supports], refusal, Problems(placed));
    }

    private static System.Collections.Immutable.ImmutableArray<string> Problems(PlacedBody placed) =>
        Settling.Missing(placed) is { } missing ? [missing] : [];
}
