using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>Towel and stick in the hands, and the stick along the back.</summary>
internal static class HandTools
{
    /// <summary>Whether the towel lies under a part of the body rather than in the hands.</summary>
    internal static bool LiesUnder(PlacedFigure f, Prop prop) =>
        prop.At is { } at && f.SegmentOf(at) != SegmentKind.Hand && !Tied(f);

    /// <summary>Whether the pose closes a chain with a strap, which the towel then is.</summary>
    internal static bool Tied(PlacedFigure f) => f.Placed.Ties.Any(t => t.Tie.Kind == TieKind.Strap);

    /// <summary>Hands that hold a towel or a stick.</summary>
    internal static Side[] Hands(PlacedFigure f, Prop prop)
    {
        if (prop.Kind == PropKind.Towel && LiesUnder(f, prop))
            return [];
        var held = prop.At is not { } at || f.SegmentOf(at) == SegmentKind.Hand;
        if (prop.Limb is { } limb && held)
            return [limb.On(f.Working)];
        return prop.Kind == PropKind.Stick && !held && Reach(f).All(far => far > 0.35) ? [] : [f.Working, f.Working.Other()];

        // A stick along the back may be held with both hands or with none.
        IEnumerable<double> Reach(PlacedFigure figure)
        {
            var (a, b) = AlongBack(figure);
            foreach (var side in (Side[])[Side.Right, Side.Left])
            {
                var grip = HeldThings.Grip(figure, side);
                yield return Math.Min((grip - a).Length, (grip - b).Length);
            }
        }
    }

    internal static BodyPart Towel(PlacedFigure f, Prop prop)
    {
        const double half = 0.02;
        if (prop.Limb is { } limb)
        {
            var side = limb.On(f.Working);
            return Part("towel", Tone.PropTop, [f.Ball(SegmentKind.Hand, side, 0.024, -0.07, -0.13, half), f.Ball(SegmentKind.Hand, side, 0.024, -0.07, 0.13, half)]);
        }

        var (a, b) = (HeldThings.Grip(f, f.Working), HeldThings.Grip(f, f.Working.Other()));
        Ball At(Vec3 p) => new(p, half);
        Vec3 Tail(Vec3 grip) => grip - new Vec3(0, 0.1, 0);
        return Part("towel", Tone.PropTop, [At(a), At(b)], [At(a), At(Tail(a))], [At(b), At(Tail(b))]);
    }

    internal static BodyPart Stick(PlacedFigure f, Prop prop)
    {
        const double radius = 0.0115;
        var held = prop.At is not { } at || f.SegmentOf(at) == SegmentKind.Hand;
        Vec3 from, to;
        if (!held && f.SegmentOf(prop.At!) is SegmentKind.Head or SegmentKind.Torso or SegmentKind.Pelvis)
        {
            (from, to) = AlongBack(f);
        }
        else if (held && prop.Limb is { } limb)
        {
            // A stick to lean on.
            var grip = HeldThings.Grip(f, limb.On(f.Working));
            (from, to) = (grip + new Vec3(0, 0.1, 0), new Vec3(grip.X, radius, grip.Z));
        }
        else
        {
            var (a, b) = (HeldThings.Grip(f, f.Working), HeldThings.Grip(f, f.Working.Other()));
            var apart = (b - a).Length;
            var along = apart > 0.05 ? 1 / apart * (b - a) : Across(f);
            (from, to) = (a - 0.16 * along, b + 0.16 * along);
        }

        return Part("stick", Tone.PropShade, [new Ball(from, radius), new Ball(from.Toward(to, 0.33), radius), new Ball(from.Toward(to, 0.66), radius), new Ball(to, radius)]);
    }

    // From above the head to below the seat, touching the back of the head and of the pelvis.
    private static (Vec3 From, Vec3 To) AlongBack(PlacedFigure f)
    {
        var (head, seat) = (f.At(SegmentKind.Head, null, -0.105, 0.12, 0), f.At(SegmentKind.Pelvis, null, -0.205, 0, 0));
        var along = (head - seat).Normalized();
        return (head + 0.16 * along, seat - 0.14 * along);
    }

    private static Vec3 Across(PlacedFigure f) =>
        (f.At(SegmentKind.Hand, f.Working, 0, 0, 1) - f.At(SegmentKind.Hand, f.Working, 0, 0, 0)).Normalized();

    private static BodyPart Part(string name, Tone tone, params Ball[][] hulls) =>
        new(name, new Layer(tone, hulls)) { Role = ShapeRole.Held };
}
