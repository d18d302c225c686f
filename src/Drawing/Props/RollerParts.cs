using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A roller: on the floor under the body, or between the body and a wall.</summary>
internal static class RollerParts
{
    /// <summary>Whether the roller is pressed against a wall by the point it is named for.</summary>
    internal static bool AtWall(PlacedFigure f, Prop prop) =>
        f.Placed.Contacts.Any(c => c.Contact.Surface == SurfaceKind.Wall && c.Contact.Point == prop.At)
        && !f.Placed.Contacts.Any(c => c.Contact.Surface == SurfaceKind.Roller);

    /// <summary>A roller that lies level between body and wall and moves with the body.</summary>
    internal static BodyPart Held(PlacedFigure f, Prop prop, Vec3 toward)
    {
        var radius = (prop.HeightM > 0 ? prop.HeightM : 0.15) / 2;
        var away = BallParts.Away(f, prop.At!, prop.Limb);
        var across = away.Cross(Vec3.UnitY);
        var at = f.Surface(prop.At!, prop.Limb) + radius * away;
        var half = (across.Dot(toward) > 0 ? 0.2 : -0.2) * across;
        return new BodyPart("roller", [.. Layers(at + half, at - half, across, radius, toward)]) { Role = ShapeRole.Held };
    }

    /// <summary>The roller from its near to its far end; its end face shows when it points toward the viewer.</summary>
    internal static IEnumerable<Layer> Layers(Vec3 near, Vec3 far, Vec3 across, double radius, Vec3 toward)
    {
        Ball End(Vec3 at, double share) => new(at, share * radius);
        yield return new Layer(Tone.Prop, [[End(near, 1), End(far, 1)]]);
        if (Math.Abs(across.Dot(toward)) < 0.5)
            yield break;
        yield return new Layer(Tone.PropTop, [[End(near, 0.9)]], false);
        yield return new Layer(Tone.PropShade, [[End(near, 0.34)]], false);
    }
}
