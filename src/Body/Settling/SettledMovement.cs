using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>A movement settled pose by pose, so that load, reach and picture can share one settling.</summary>
/// <param name="Model">The body.</param>
/// <param name="Working">The side that works.</param>
/// <param name="Fractions">Where in the movement each pose lies, 0 start to 1 end; one pose for a hold.</param>
/// <param name="Frames">The settled poses, beside <paramref name="Fractions"/>.</param>
public sealed record SettledMovement(BodyModel Model, Side Working, ImmutableArray<double> Fractions, ImmutableArray<PlacedBody> Frames)
{
    /// <summary>Settles <see cref="Loading.PosesPerMovement"/> poses along a movement, ends included.</summary>
    /// <param name="model">The person's body.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The settled poses.</returns>
    public static SettledMovement Of(BodyModel model, SurfacePoints points, Movement movement, Side working)
    {
        ArgumentNullException.ThrowIfNull(movement);
        var steps = movement.Frames.Length == 1 ? 1 : Loading.PosesPerMovement;
        ImmutableArray<double> fractions = [.. Enumerable.Range(0, steps).Select(i => steps == 1 ? 0 : (double)i / (steps - 1))];

        // Each pose starts from its neighbor's: the same poses, sooner.
        var settler = new Settler(model, points);
        var frames = ImmutableArray.CreateBuilder<PlacedBody>(steps);
        foreach (var fraction in fractions)
            frames.Add(settler.Settle(FrameBetween.At(movement, fraction), working, frames.Count > 0 ? frames[^1] : null));
        return new SettledMovement(model, working, fractions, frames.MoveToImmutable());
    }
}
