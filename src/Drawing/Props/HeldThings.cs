using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>Straps, bands, weights, balls, towels and sticks: what moves with the body and is sorted with its parts.</summary>
internal static class HeldThings
{
    /// <summary>Hands that hold something.</summary>
    internal static HashSet<Side> GrippingHands(PlacedFigure f, HeldSetting setting)
    {
        var hands = new HashSet<Side>();
        foreach (var prop in setting.Props)
        {
            hands.UnionWith(prop.Kind switch
            {
                PropKind.Strap => StrapHands(f, prop),
                PropKind.Towel when HandTools.Tied(f) => StrapHands(f, prop),
                PropKind.Towel or PropKind.Stick => HandTools.Hands(f, prop),
                PropKind.HandWeight => prop.Limb is { } limb ? [limb.On(f.Working)] : [Side.Left, Side.Right],
                PropKind.Band => LongBandParts.Hands(f, setting),
                PropKind.Bicycle => [Side.Left, Side.Right],
                _ => [],
            });
        }

        return hands;
    }

    /// <summary>How a hand is closed.</summary>
    internal static Grasp GraspOf(PlacedFigure f, HeldSetting setting, IReadOnlySet<Side> gripping, Side side) =>
        gripping.Contains(side) ? Grasp.Fist
        : setting.Props.Any(prop => prop.Kind == PropKind.SmallBall && BallParts.InHand(f, prop) && (prop.Limb ?? Limb.Working).On(f.Working) == side) ? Grasp.Ball
        : Grasp.Open;

    /// <summary>The parts of everything held.</summary>
    /// <param name="f">The body.</param>
    /// <param name="setting">What they hang on.</param>
    /// <param name="toward">Toward the viewer.</param>
    internal static IEnumerable<BodyPart> Of(PlacedFigure f, HeldSetting setting, Vec3 toward) => setting.HeldDown.Select(place => HoldDown(f, place)).Concat(setting.Props.SelectMany(prop => prop.Kind switch
    {
        PropKind.Strap => Strap(f, prop, "strap"),
        PropKind.LoopBand => LoopBand(f, LongBandParts.Loops(setting).FirstOrDefault() is { } ring ? prop with { At = ring.At.At } : prop, "band"),
        PropKind.CuffWeight => [Cuff(f, (prop.Limb ?? Limb.Working).On(f.Working), prop.At ?? "ankle", Tone.Weight, 0.02, 0.032)],
        PropKind.HandWeight => HandWeight(f, prop),
        PropKind.Ball or PropKind.SmallBall => [BallParts.Of(f, prop, setting, toward)],
        PropKind.Band when LongBandParts.Loops(setting).FirstOrDefault() is { } loop => LoopBand(f, prop with { At = loop.At.At }, "longBand"),
        PropKind.Band => LongBandParts.Of(f, prop, setting, toward),
        PropKind.Towel when HandTools.Tied(f) => Strap(f, prop with { At = null }, "towel"),
        PropKind.Towel when !HandTools.LiesUnder(f, prop) => [HandTools.Towel(f, prop)],
        PropKind.Roller when RollerParts.AtWall(f, prop) => [RollerParts.Held(f, prop, toward)],
        PropKind.Stick => [HandTools.Stick(f, prop)],
        PropKind.Bicycle => [BicycleParts.Of(f, setting)],
        _ => (IEnumerable<BodyPart>)[],
    }));

    /// <summary>A strap over the ankle, made fast to the ground on both sides.</summary>
    private static BodyPart HoldDown(PlacedFigure f, BodyPlace place)
    {
        const double half = 0.016;
        var side = (place.Limb ?? Limb.Working).On(f.Working);
        Ball over = f.Ball(SegmentKind.Shank, side, -0.036, -0.345, 0, half);
        Ball Foot(double z) => new(new Vec3(over.Center.X, half, f.At(SegmentKind.Shank, side, 0, -0.345, z).Z), half);
        Ball[] Down(double z) => [f.Ball(SegmentKind.Shank, side, -0.02, -0.345, 0.6 * z, half), Foot(z)];
        return new BodyPart((side == Side.Right ? "right" : "left") + "Cuff", new Layer(Tone.Band, [[over, Down(0.06)[0], Down(-0.06)[0]], Down(0.06), Down(-0.06)]))
        {
            Role = ShapeRole.Held,
        };
    }

    internal static Vec3 Grip(PlacedFigure f, Side side) => f.At(SegmentKind.Hand, side, 0.024, -0.07, 0);

    // The hands that the pose ties to the strap hold it; else the hand nearest the loop, and the other when it is close by.
    private static Side[] StrapHands(PlacedFigure f, Prop prop)
    {
        Side[] tied =
        [
            .. f.Placed.Ties.Where(t => t.Tie.Kind == TieKind.Strap && t.Tie.FromLimb is not null && f.SegmentOf(t.Tie.From) == SegmentKind.Hand)
                .Select(t => t.Tie.FromLimb!.Value.On(f.Working)).Distinct(),
        ];
        if (tied.Length > 0)
            return tied;
        var own = (prop.Limb ?? Limb.Working).On(f.Working);
        var apart = (Grip(f, Side.Left) - Grip(f, Side.Right)).Length;
        if (apart < 0.28)
            return [own, own.Other()];
        var foot = f.Surface(prop.At ?? "ballInner", prop.Limb ?? Limb.Working);
        var ownIsNearer = (Grip(f, own) - foot).Length < (Grip(f, own.Other()) - foot).Length + 0.1;
        return [ownIsNearer ? own : own.Other()];
    }

    private static IEnumerable<BodyPart> Strap(PlacedFigure f, Prop prop, string name)
    {
        const double half = 0.0085;
        var tone = name == "towel" ? Tone.PropTop : Tone.Band;
        var side = (prop.Limb ?? Limb.Working).On(f.Working);
        var hands = StrapHands(f, prop);
        var round = new Ball(f.At(SegmentKind.Foot, side, 0.135, -0.022, -0.03), half);
        var outer = new Ball(f.At(SegmentKind.Foot, side, 0.125, -0.022, 0.045), half);
        var first = new Ball(Grip(f, hands[0]), half);
        var second = new Ball(Grip(f, hands[^1]), half);
        var hang = new Ball(first.Center - new Vec3(0, 0.11, 0), half * 0.9);
        yield return new BodyPart(name, new Layer(tone, [[first, outer], [outer, round], [round, second]])) { Role = ShapeRole.Held };
        yield return new BodyPart(name + "End", new Layer(tone, [[first, hang]])) { Role = ShapeRole.Held };
    }

    private static IEnumerable<BodyPart> LoopBand(PlacedFigure f, Prop prop, string name)
    {
        var at = prop.At ?? "kneeOuter";
        if (f.SegmentOf(at) is SegmentKind.Foot or SegmentKind.Toes)
            return LongBandParts.RoundBothFeet(f, name);
        return RoundLegs(f, at, name);
    }

    private static IEnumerable<BodyPart> RoundLegs(PlacedFigure f, string at, string name)
    {
        yield return Cuff(f, f.Working, at, Tone.Band, 0.021);
        yield return Cuff(f, f.Working.Other(), at, Tone.Band, 0.021);
        var (kind, y, radius) = Round(f, at);
        Ball[] between = [f.Ball(kind, Side.Right, 0, y, 0, 0.0195), f.Ball(kind, Side.Left, 0, y, 0, 0.0195)];
        Ball[] front = [f.Ball(kind, Side.Right, radius * 0.8, y, 0, 0.0195), f.Ball(kind, Side.Left, radius * 0.8, y, 0, 0.0195)];
        yield return new BodyPart(name, new Layer(Tone.Band, [[.. between, .. front]])) { Role = ShapeRole.Held };
    }

    internal static BodyPart Cuff(PlacedFigure f, Side side, string at, Tone tone, double half, double spread = 0)
    {
        var (kind, y, radius) = Round(f, at);
        var reach = radius + 0.006 - half;
        Ball[] Ring(double height) =>
        [
            f.Ball(kind, side, reach, height, 0, half),
            f.Ball(kind, side, -reach, height, 0, half),
            f.Ball(kind, side, 0, height, reach, half),
            f.Ball(kind, side, 0, height, -reach, half),
        ];
        Ball[] ring = spread > 0 ? [.. Ring(y + spread), .. Ring(y - spread)] : Ring(y);
        return new BodyPart((side == Side.Right ? "right" : "left") + "Cuff", new Layer(tone, [ring])) { Role = ShapeRole.Held };
    }

    /// <summary>Where on the leg something is worn: above the knee, above the ankle, or round the foot.</summary>
    private static (SegmentKind Kind, double Y, double Radius) Round(PlacedFigure f, string at) => f.SegmentOf(at) switch
    {
        SegmentKind.Thigh => (SegmentKind.Thigh, -0.315, 0.059),
        SegmentKind.Shank when at.StartsWith("knee", StringComparison.Ordinal) => (SegmentKind.Thigh, -0.315, 0.059),
        SegmentKind.Foot or SegmentKind.Toes => (SegmentKind.Foot, 0.02, 0.05),
        _ => (SegmentKind.Shank, -0.335, 0.0365),
    };

    private static IEnumerable<BodyPart> HandWeight(PlacedFigure f, Prop prop)
    {
        Side[] sides = prop.Limb is { } limb ? [limb.On(f.Working)] : [f.Working, f.Working.Other()];
        foreach (var side in sides)
        {
            Ball H(double z, double r) => f.Ball(SegmentKind.Hand, side, 0.022, -0.07, z, r);
            var s = side == Side.Right ? "right" : "left";
            yield return new BodyPart(s + "HandWeight", new Layer(Tone.Weight, [[H(-0.07, 0.014), H(0.07, 0.014)]])) { Role = ShapeRole.Held };

            // Seen end on, the near end hides the hand.
            foreach (var end in (double[])[-1, 1])
                yield return new BodyPart(s + "WeightEnd", new Layer(Tone.Weight, [[H(end * 0.076, 0.034), H(end * 0.06, 0.034)]])) { Role = ShapeRole.Held };
        }
    }
}
