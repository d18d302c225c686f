using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>What the things in use hang on, settled once for a movement: fixed points of bands, the axle of a crank.</summary>
/// <param name="Props">The movement's props.</param>
/// <param name="Pulls">Its bands and ropes with the fixed point in the room, where they have one.</param>
/// <param name="HeldDown">Places of the body that someone, or a strap, holds down.</param>
/// <param name="Start">The body at the start.</param>
/// <param name="End">The body at the end.</param>
internal sealed record HeldSetting(
    ImmutableArray<Prop> Props, ImmutableArray<(Pull Pull, Vec3? Fixed)> Pulls, ImmutableArray<BodyPlace> HeldDown, PlacedFigure Start, PlacedFigure End)
{
    /// <summary>The middle between the feet over the whole movement: the axle of a bicycle's crank.</summary>
    internal Vec3 Axle { get; } = 0.25 * (
        Start.Surface("forefootSole", Limb.Working) + Start.Surface("forefootSole", Limb.Other)
        + End.Surface("forefootSole", Limb.Working) + End.Surface("forefootSole", Limb.Other));

    internal static HeldSetting Of(SurfacePoints points, Movement movement, Side working, PlacedFigure start, PlacedFigure end)
    {
        var pulls = ImmutableArray<(Pull, Vec3?)>.Empty;
        if (!movement.Pulls.IsEmpty && movement.Props.Any(p => p.Kind is PropKind.Band or PropKind.LoopBand))
        {
            var setting = PullSetting.From(points, movement, working, start.State, 0);
            pulls = [.. movement.Pulls.Zip(setting.Starts, (pull, made) => (pull, made.Fixed))];
        }

        return new HeldSetting(movement.Props, pulls, [.. movement.Pulls.OfType<HelpPull>().Where(HoldsDown).Select(help => help.At)], start, end);

        static bool HoldsDown(HelpPull help) => help is { Direction: BodyDirection.Down, Anchor: null, By: null, ForceN: > 0, At.At: "heelBack" };
    }
}
