using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Resolves a movement's added loads and pulls into forces on a posed body.</summary>
public static class Pulls
{
    /// <summary>The person's own hand farther than this from the place it should hold is told, metres.</summary>
    private const double HandReachM = 0.10;

    // Two ends nearer than this have no direction between them.
    private const double NoDirectionM = 1e-9;

    /// <summary>All added loads and pulls of a movement on a posed body.</summary>
    /// <param name="model">The person's body.</param>
    /// <param name="points">The named points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="state">The posed body; not changed.</param>
    /// <param name="setting">What was settled at the start of this movement for this person.</param>
    /// <returns>The forces, each with its point; with what should be told, or why there are none.</returns>
    /// <exception cref="ArgumentException">The setting was made for another movement.</exception>
    public static PullForces On(
        BodyModel model, SurfacePoints points, Movement movement, Side working, BodyState state, PullSetting setting)
    {
        ArgumentNullException.ThrowIfNull(movement);
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(setting);
        if (setting.Refusal is { } refused)
            return new PullForces([], [], refused);
        if (setting.Starts.Length != movement.Pulls.Length)
            throw new ArgumentException("The setting was made for another movement.", nameof(setting));
        var body = new Posed(model, points, working, state);
        var parts = ImmutableArray.CreateBuilder<ActingPull>(movement.Loads.Length + movement.Pulls.Length);
        var warnings = setting.Warnings.ToBuilder();
        foreach (var load in movement.Loads)
            parts.Add(Weight(body, load, setting.AddedKg));
        for (var i = 0; i < movement.Pulls.Length; i++)
        {
            var part = Act(body, movement.Pulls[i], setting.Starts[i], warnings);
            if (part.Band is { Refused: true } tension)
                return new PullForces([], [], TooLong(part.Name, tension, setting.Starts[i].Band!));
            if (part.Band is { Stretch: BandStretch.Long })
                warnings.Add($"{PullSetting.Capital(part.Name)} is stretched to more than {ElasticBand.WarnElongation * 100:0} %: take a longer or a stronger one.");
            parts.Add(part);
        }

        return new PullForces(parts.MoveToImmutable(), warnings.ToImmutable(), null);
    }

    /// <summary>The way round two limbs of a loop.</summary>
    /// <param name="distanceM">Distance of the limbs' middles, metres.</param>
    /// <param name="limbRadiusM">Radius of each limb, metres.</param>
    /// <returns>Two straight runs and two half turns, metres.</returns>
    public static double WayRound(double distanceM, double limbRadiusM) => 2 * distanceM + 2 * Math.PI * limbRadiusM;

    internal static BodyPlace OtherEnd(LoopPull loop) => loop.At with { Limb = Limb.Other };

    private static ActingPull Weight(Posed body, AddedLoad load, double addedKg)
    {
        var kilograms = load.MassKg > 0 ? load.MassKg : addedKg;
        var newtons = kilograms * BodyModel.Gravity;
        return new ActingPull($"weight at {load.At}", newtons, null, true, [body.Force(load.Place, new Vec3(0, -newtons, 0))]);
    }

    private static ActingPull Act(Posed body, Pull pull, PullStart start, ImmutableArray<string>.Builder warnings) => pull switch
    {
        LoopPull loop => Loop(body, loop, start.Band!),
        LinkPull link => Link(body, link, start.Band!),
        AnchorPull anchored => Anchored(body, anchored, start),
        HelpPull help => Help(body, help, start, warnings),
        _ => throw new InvalidOperationException($"{pull.GetType().Name} is no kind of pull that can act."),
    };

    private static ActingPull Loop(Posed body, LoopPull loop, ElasticBand band)
    {
        var (one, two) = (body.Point(loop.At), body.Point(OtherEnd(loop)));
        var tension = band.At(WayRound((two - one).Length, loop.LimbRadiusM));
        var size = 2 * tension.ForceN;
        return new ActingPull(loop.Name, size, tension, false, body.Between(loop.At, OtherEnd(loop), size));
    }

    private static ActingPull Link(Posed body, LinkPull link, ElasticBand band)
    {
        var tension = band.At((body.Point(link.To) - body.Point(link.At)).Length);
        return new ActingPull(link.Name, tension.ForceN, tension, false, body.Between(link.At, link.To, tension.ForceN));
    }

    private static ActingPull Anchored(Posed body, AnchorPull pull, PullStart start)
    {
        var toward = start.Fixed!.Value - body.Point(pull.At);
        var tension = start.Band!.At(toward.Length);
        return new ActingPull(pull.Name, tension.ForceN, tension, true, [body.Force(pull.At, Along(toward, tension.ForceN))]);
    }

    private static ActingPull Help(Posed body, HelpPull help, PullStart start, ImmutableArray<string>.Builder warnings)
    {
        Quantity.Within(help.ForceN, -2000, 2000, "N", "force");
        var at = body.Force(help.At, Along(start.Fixed is { } over ? over - body.Point(help.At) : start.Direction, help.ForceN));
        if (help.By is not { } by)
            return new ActingPull(help.Name, help.ForceN, null, true, [at]);
        if ((body.Point(by) - at.Point).Length > HandReachM)
            warnings.Add($"{PullSetting.Capital(help.Name)}: {by.At} is more than {HandReachM * 100:0} cm from the place it should hold; what it asks of the arm is doubtful.");

        // The opposite acts at the same point, so that nothing turns the body as a whole.
        var (holder, _) = by.On(body.Model, body.Points, body.Working);
        return new ActingPull(help.Name, help.ForceN, null, false, [at, new PointForce(holder, at.Point, -at.Force)]);
    }

    private static Vec3 Along(Vec3 way, double size) => way.Length > NoDirectionM ? (size / way.Length) * way : Vec3.Zero;

    private static string TooLong(string name, BandTension tension, ElasticBand band) =>
        band.LargestElongation < ElasticBand.MostElongation
            ? FormattableString.Invariant(
                $"{PullSetting.Capital(name)} would be stretched to {tension.Elongation * 100:0} %, but it was measured only up to {band.LargestElongation * 100:0} %. Measure it further or take a longer one.")
            : FormattableString.Invariant(
                $"{PullSetting.Capital(name)} would be stretched to {tension.Elongation * 100:0} %, beyond {ElasticBand.MostElongation * 100:0} %, where it may tear. Take a longer one.");

    /// <summary>A posed body whose places can be asked for.</summary>
    private sealed record Posed(BodyModel Model, SurfacePoints Points, Side Working, BodyState State)
    {
        internal Vec3 Point(BodyPlace place)
        {
            var (segment, local) = place.On(Model, Points, Working);
            return State.Point(segment, local);
        }

        internal PointForce Force(BodyPlace place, Vec3 force)
        {
            var (segment, local) = place.On(Model, Points, Working);
            return new PointForce(segment, State.Point(segment, local), force);
        }

        /// <summary>Two equal and opposite forces that draw two places together.</summary>
        internal ImmutableArray<PointForce> Between(BodyPlace one, BodyPlace two, double size)
        {
            var pull = Along(Point(two) - Point(one), size);
            return [Force(one, pull), Force(two, -pull)];
        }
    }
}
