using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// What is settled once for a person, a movement and a dose, before any pose of it is loaded: rest lengths of bands, fixed points and
/// directions in the room. All follow from the body at the start.
/// </summary>
public sealed class PullSetting
{
    private PullSetting(double addedKg, ImmutableArray<PullStart> starts, ImmutableArray<string> warnings, string? refusal) =>
        (AddedKg, Starts, Warnings, Refusal) = (addedKg, starts, warnings, refusal);

    /// <summary>Mass for added loads whose mass the dose sets, kilograms.</summary>
    public double AddedKg { get; }

    /// <summary>What is settled for each pull, in the movement's order; empty when refused.</summary>
    public ImmutableArray<PullStart> Starts { get; }

    /// <summary>What should be told, in sentences.</summary>
    public ImmutableArray<string> Warnings { get; }

    /// <summary>Why the pulls cannot be set, in words; null when they can.</summary>
    public string? Refusal { get; }

    /// <summary>Settles the start pose and sets the pulls from it.</summary>
    /// <param name="model">The person's body.</param>
    /// <param name="points">The named points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="addedKg">Mass for added loads whose mass the dose sets, 0 to 240 kg; 0 for none.</param>
    /// <returns>The setting.</returns>
    public static PullSetting For(BodyModel model, SurfacePoints points, Movement movement, Side working, double addedKg)
    {
        ArgumentNullException.ThrowIfNull(movement);
        var start = new BodyState(model);
        if (!movement.Pulls.IsEmpty)
            start.Update(Settling.Settle(model, points, FrameBetween.At(movement, 0), working).Pose);
        return From(points, movement, working, start, addedKg);
    }

    /// <summary>Sets the pulls from a body already in the start pose.</summary>
    /// <param name="points">The named points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="start">The body in the start pose, in the same room as the poses that follow; not kept.</param>
    /// <param name="addedKg">Mass for added loads whose mass the dose sets, 0 to 240 kg; 0 for none.</param>
    /// <returns>The setting.</returns>
    public static PullSetting From(SurfacePoints points, Movement movement, Side working, BodyState start, double addedKg)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(movement);
        ArgumentNullException.ThrowIfNull(start);
        Quantity.Within(addedKg, 0, 240, "kg");
        var starts = ImmutableArray.CreateBuilder<PullStart>(movement.Pulls.Length);
        foreach (var pull in movement.Pulls)
        {
            try
            {
                var (made, refusal) = Start(points, pull, working, start);
                if (refusal is not null)
                    return new PullSetting(addedKg, [], [], refusal);
                starts.Add(made);
            }
            catch (ArgumentException error)
            {
                return new PullSetting(addedKg, [], [], $"{Capital(pull.Name)}: {error.Message.Split(" (Parameter", 2)[0]}");
            }
        }

        return new PullSetting(addedKg, starts.MoveToImmutable(), Warned(movement), null);
    }

    internal static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static (PullStart Start, string? Refusal) Start(SurfacePoints points, Pull pull, Side working, BodyState start)
    {
        var at = PointOf(points, pull.At, working, start);
        switch (pull)
        {
            case LoopPull loop:
                Quantity.Within(loop.LimbRadiusM, 0, 0.2, "m", "radius");
                var around = Pulls.WayRound((PointOf(points, Pulls.OtherEnd(loop), working, start) - at).Length, loop.LimbRadiusM);
                return (new PullStart(loop.Band.Made(around), null, Vec3.Zero), null);
            case LinkPull link:
                return (new PullStart(link.Band.Made((PointOf(points, link.To, working, start) - at).Length), null, Vec3.Zero), null);
            case AnchorPull anchored:
                return Fixed(anchored.Anchor, at, working, start) is { } tied
                    ? (new PullStart(anchored.Band.Made((tied - at).Length), tied, Vec3.Zero), null)
                    : (PullStart.None, NoWay(pull, anchored.Anchor));
            case HelpPull { Anchor: { } anchor }:
                return Fixed(anchor, at, working, start) is { } over ? (new PullStart(null, over, Vec3.Zero), null) : (PullStart.None, NoWay(pull, anchor));
            case HelpPull help:
                return (new PullStart(null, null, help.Direction.In(start, working)), null);
            default:
                throw new InvalidOperationException($"{pull.GetType().Name} is no kind of pull that can be set.");
        }
    }

    private static Vec3 PointOf(SurfacePoints points, BodyPlace place, Side working, BodyState state)
    {
        var (segment, local) = place.On(state.Model, points, working);
        return state.Point(segment, local);
    }

    private static Vec3? Fixed(RoomAnchor anchor, Vec3 from, Side working, BodyState start)
    {
        Quantity.Within(anchor.DistanceM, 0, 5, "m", "distance");
        Quantity.Within(anchor.HeightM, 0, 3, "m", "height");
        var along = anchor.DistanceM > 0 ? anchor.Direction.AlongFloor(start, working) : Vec3.Zero;
        return along is { } way ? new Vec3(from.X, anchor.HeightM, from.Z) + anchor.DistanceM * way : null;
    }

    private static string NoWay(Pull pull, RoomAnchor anchor) =>
        $"{Capital(pull.Name)}: in the start pose \"{anchor.Direction.Words()}\" does not point along the floor. Give another direction, such as toward the head or toward the other side.";

    /// <summary>Poses are laid so that their first contact stays in place; when it changes, so does the room.</summary>
    private static ImmutableArray<string> Warned(Movement movement)
    {
        var tied = movement.Pulls.FirstOrDefault(p => p is AnchorPull or HelpPull { Anchor: not null });
        var first = movement.Frames[0].Contacts.FirstOrDefault();
        return tied is not null && movement.Frames.Any(f => f.Contacts.FirstOrDefault() is var c && (c?.Point, c?.Limb) != (first?.Point, first?.Limb))
            ? [$"{Capital(tied.Name)}: the contact named first changes during the movement, so the fixed point is not sure to stay in place. Name the contact that stays first in every pose."]
            : [];
    }
}

/// <summary>What is settled at the start for one pull.</summary>
/// <param name="Band">The band with its rest length; null for a force of given size.</param>
/// <param name="Fixed">The fixed point in the room, metres; null for none.</param>
/// <param name="Direction">The direction of a force of given size in the room, a unit vector; zero where it is not used.</param>
public sealed record PullStart(ElasticBand? Band, Vec3? Fixed, Vec3 Direction)
{
    internal static PullStart None { get; } = new(null, null, Vec3.Zero);
}
