using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A ball of flesh in the room; hulls of balls make the parts of the figure.</summary>
/// <param name="Center">Room point, meters.</param>
/// <param name="Radius">Meters.</param>
internal readonly record struct Ball(Vec3 Center, double Radius);

/// <summary>One tone of a part: hulls of balls filled together.</summary>
/// <param name="Tone">Its tone.</param>
/// <param name="Hulls">Each the balls of one hull.</param>
/// <param name="Gap">Whether a gap surrounds it.</param>
internal sealed record Layer(Tone Tone, Ball[][] Hulls, bool Gap = true)
{
    /// <summary>Whether the balls of each hull are the course of a limb rather than corners of a lump.</summary>
    internal bool Tube { get; init; }

    /// <summary>A limb along balls.</summary>
    internal static Layer Along(Tone tone, params Ball[] balls) => new(tone, [balls]) { Tube = true };

    /// <summary>The outlines as the camera sees them.</summary>
    internal IEnumerable<ImmutableArray<Arc>> Loops(Camera camera) => Hulls.SelectMany(hull =>
    {
        Disc[] discs = [.. hull.Select(camera.See)];
        return Tube ? TubeOutline.Of(discs) : [CircleHull.Of(discs)];
    });
}

/// <summary>A part of the figure, painted as a whole.</summary>
/// <param name="Name">Its name, such as rightThigh.</param>
/// <param name="Layers">Its layers, the lowest first.</param>
internal sealed record BodyPart(string Name, params Layer[] Layers)
{
    /// <summary>Role in the scene.</summary>
    internal ShapeRole Role { get; init; } = ShapeRole.Body;

    /// <summary>Balls that stand for the part when the painting order is found; empty to take its outlined layers.</summary>
    internal Ball[] Reach { get; init; } = [];
}

/// <summary>Flesh without gap that hides the seam between two parts once both are painted.</summary>
/// <param name="Under">The part that must be painted first for the patch to be wanted.</param>
/// <param name="Over">The part painted over it.</param>
/// <param name="EitherOrder">Wanted in whichever order the two are painted.</param>
/// <param name="Layer">The flesh.</param>
internal sealed record Patch(string Under, string Over, bool EitherOrder, Layer Layer);
