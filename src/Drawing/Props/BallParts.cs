using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>Balls, big as a head or small as a fist: under a part of the body, held between two, in a hand, or against a wall.</summary>
internal static class BallParts
{
    private const double BigM = 0.22;
    private const double SmallM = 0.065;

    internal static string NameOf(Prop prop) => prop.Kind == PropKind.Ball ? "ball" : "smallBall";

    internal static double DiameterOf(Prop prop) =>
        prop.HeightM > 0 ? prop.HeightM : prop.Kind == PropKind.Ball ? BigM : SmallM;

    /// <summary>The contact on the ball's top, when the ball lies under the body.</summary>
    internal static PlacedContact? Under(PlacedFigure f, Prop prop)
    {
        var on = f.Placed.Contacts.Where(c => c.Contact.Surface == SurfaceKind.Roller).ToArray();
        return on.FirstOrDefault(c => c.Contact.Point == prop.At && (prop.Limb is null || c.Contact.Limb == prop.Limb)) ?? on.FirstOrDefault();
    }

    /// <summary>The ball of a body at a fraction of the way: where it lies, or where it is held.</summary>
    internal static BodyPart Of(PlacedFigure f, Prop prop, HeldSetting setting, Vec3 toward)
    {
        if (Under(f, prop) is not { } on)
            return Part(Held(f, prop, toward), prop);

        // Between two places it rolls evenly.
        var from = Lying(Under(setting.Start, prop) ?? on);
        var to = Lying(Under(setting.End, prop) ?? on);
        return Part(new Ball(from.Center.Toward(to.Center, f.Fraction), from.Radius), prop);
    }

    private static Ball Lying(PlacedContact on)
    {
        var radius = on.Contact.HeightM / 2;
        return new Ball(new Vec3(on.Point.X, radius, on.Point.Z), radius);
    }

    /// <summary>Whether a small ball is in one hand.</summary>
    internal static bool InHand(PlacedFigure f, Prop prop) =>
        prop.Kind == PropKind.SmallBall && (prop.At is null || f.SegmentOf(prop.At) == SegmentKind.Hand) && Under(f, prop) is null;

    /// <summary>Where a ball is that the body holds.</summary>
    private static Ball Held(PlacedFigure f, Prop prop, Vec3 toward)
    {
        var radius = DiameterOf(prop) / 2;
        var at = prop.At ?? "palm";
        var hand = f.SegmentOf(at) == SegmentKind.Hand;
        if (f.HasTwin(at) && (prop.Limb is null || !hand))
        {
            // Between the two when they face each other, such as the insides of the knees.
            var (a, b) = (f.Surface(at, Limb.Working), f.Surface(at, Limb.Other));
            var apart = (a - b).Length;
            if (apart < 2 * radius + 0.1 && f.Outward(at, Limb.Working).Dot(b - a) > 0.3 * apart)
                return new Ball(a.Toward(b, 0.5), Math.Clamp(apart / 2, 0.75 * radius, 1.1 * radius));
        }

        if (InHand(f, prop))
            return InPalm(f, (prop.Limb ?? Limb.Working).On(f.Working), radius, toward);
        return new Ball(f.Surface(at, prop.Limb) + radius * Away(f, at, prop.Limb), radius);
    }

    /// <summary>In the cup of the palm; at the fingertips where the back of the hand would hide it.</summary>
    private static Ball InPalm(PlacedFigure f, Side side, double radius, Vec3 toward)
    {
        var palm = f.At(SegmentKind.Hand, side, 1, 0, 0) - f.At(SegmentKind.Hand, side, 0, 0, 0);
        return palm.Normalized().Dot(toward) < -0.3
            ? f.Ball(SegmentKind.Hand, side, 0.014 + radius, -0.115, 0.012, radius)
            : f.Ball(SegmentKind.Hand, side, 0.014 + radius, -0.066, 0, radius);
    }

    /// <summary>Away from the body at a named point: toward the wall it touches, else where its skin faces.</summary>
    internal static Vec3 Away(PlacedFigure f, string at, Limb? limb)
    {
        var wall = f.Placed.Contacts.FirstOrDefault(c => c.Contact.Surface == SurfaceKind.Wall && c.Contact.Point == at);
        if (wall is not null)
            return -wall.Normal;
        if (limb is not null || !f.HasTwin(at))
            return f.Outward(at, limb);
        var both = f.Outward(at, Limb.Working) + f.Outward(at, Limb.Other);
        return both.Length > 0.1 ? both.Normalized() : f.Outward(at, Limb.Working);
    }

    private static BodyPart Part(Ball ball, Prop prop) =>
        new(NameOf(prop), Layers(ball, prop.Kind)) { Role = ShapeRole.Held };

    // A lighter cap says that a big one is round; a small one is dark, to be seen in a hand.
    private static Layer[] Layers(Ball ball, PropKind kind) => kind == PropKind.SmallBall
        ? [new(Tone.Weight, [[ball]])]
        :
        [
            new(Tone.Prop, [[ball]]),
            new(Tone.PropTop, [[new Ball(ball.Center + 0.26 * ball.Radius * Vec3.UnitY, 0.6 * ball.Radius)]], false),
        ];
}
