using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A stationary bicycle under a sitting body: saddle, bars, crank and drum. Our own drawing; it has no real one's shape.</summary>
internal static class BicycleParts
{
    private const double Tube = 0.017;

    internal static BodyPart Of(PlacedFigure f, HeldSetting setting)
    {
        var sits = f.Placed.Contacts.Where(c => c.Contact.Surface == SurfaceKind.Seat).Select(c => c.Point).ToArray();
        var saddle = sits.Length > 0
            ? (1.0 / sits.Length) * sits.Aggregate(Vec3.Zero, (sum, p) => sum + p)
            : f.At(SegmentKind.Pelvis, null, -0.115, -0.15, 0);
        var axle = new Vec3(setting.Axle.X, Math.Max(setting.Axle.Y, 0.2), saddle.Z);
        var hands = HeldThings.Grip(f, Side.Right).Toward(HeldThings.Grip(f, Side.Left), 0.5);

        // Bars in the hands when they reach forward, else where they would be.
        var reached = hands.X > saddle.X + 0.25 && hands.Y > saddle.Y - 0.1;
        var bars = reached ? new Vec3(hands.X, hands.Y, saddle.Z) : saddle + new Vec3(0.55, 0.2, 0);
        Vec3 Beside(Vec3 p, double z) => p + new Vec3(0, 0, z);
        Ball B(Vec3 p, double r = Tube) => new(p, r);

        var drum = axle + new Vec3(0.34, 0.02, 0);
        var (rear, front) = (new Vec3(saddle.X - 0.16, 0.02, saddle.Z), new Vec3(drum.X + 0.2, 0.02, saddle.Z));
        var low = saddle - new Vec3(0, 0.03, 0);
        var frame = new Layer(
            Tone.PropShade,
            [
                [B(low), B(axle)],
                [B(axle), B(drum)],
                [B(drum), B(bars - new Vec3(0.05, 0.03, 0))],
                [B(low.Toward(axle, 0.6)), B(rear)],
                [B(rear), B(front)],
                [B(drum), B(front)],
                [B(Beside(rear, -0.2)), B(Beside(rear, 0.2))],
                [B(Beside(front, -0.2)), B(Beside(front, 0.2))],
            ]);
        var width = (HeldThings.Grip(f, Side.Right) - HeldThings.Grip(f, Side.Left)).Length;
        var half = reached ? Math.Clamp(width / 2 + 0.03, 0.12, 0.3) : 0.2;
        var wheel = new Layer(Tone.Prop, [[B(Beside(drum, -0.03), 0.17), B(Beside(drum, 0.03), 0.17)]]);
        var hub = new Layer(Tone.PropShade, [[B(drum, 0.05)]], false);
        var crank = new Layer(Tone.Weight, [.. ((Limb[])[Limb.Working, Limb.Other]).SelectMany(limb => Crank(f, axle, limb))], false);
        var seat = new Layer(
            Tone.Weight, [[B(Beside(saddle - new Vec3(0.1, 0.02, 0), -0.07), 0.02), B(Beside(saddle - new Vec3(0.1, 0.02, 0), 0.07), 0.02), B(saddle + new Vec3(0.15, -0.02, 0), 0.016)]]);
        var bar = new Layer(Tone.Weight, [[B(Beside(bars, -half), 0.014), B(Beside(bars, half), 0.014)], [B(bars, 0.014), B(bars - new Vec3(0.05, 0.03, 0), 0.014)]], false);
        return new BodyPart("bicycle", frame, wheel, hub, seat, bar, crank) { Role = ShapeRole.Held };
    }

    /// <summary>Arm and pedal of one side.</summary>
    private static IEnumerable<Ball[]> Crank(PlacedFigure f, Vec3 axle, Limb limb)
    {
        var pedal = f.Surface("forefootSole", limb);
        var beside = new Vec3(axle.X, axle.Y, axle.Z + 0.5 * (pedal.Z - axle.Z));
        yield return [new Ball(beside, 0.013), new Ball(new Vec3(pedal.X, pedal.Y - 0.012, beside.Z), 0.011)];
        yield return [new Ball(pedal - new Vec3(0.05, 0.014, 0), 0.011), new Ball(pedal + new Vec3(0.05, -0.014, 0), 0.011)];
    }
}
