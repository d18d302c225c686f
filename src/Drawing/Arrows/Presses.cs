using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A push that goes nowhere.</summary>
/// <param name="At">Where the body presses.</param>
/// <param name="Way">Which way it presses, in the room.</param>
/// <param name="Onto">Whether it is shown as an arrow onto the part, since what is pressed on lies behind it in the picture.</param>
internal readonly record struct Press(Vec3 At, Vec3 Way, bool Onto);

/// <summary>Efforts without motion, as far as pulls, contacts and aims of a movement tell them.</summary>
internal static class Presses
{
    /// <summary>Motions shorter than this count as an effort in place, meters; our choice.</summary>
    internal const double StillM = 0.06;

    /// <summary>A knee that straightens by less than this over a towel presses on it, radians; our choice.</summary>
    private const double SmallKnee = 0.35;

    /// <summary>How far outside the limbs the arrows of a loop end, so that they do not meet, meters.</summary>
    private const double OutsideM = 0.2;

    /// <summary>Turns of joints smaller than this count as rest, radians; our choice.</summary>
    private const double SmallTurn = 0.08;

    /// <summary>The presses, or none for a movement that moves.</summary>
    internal static IReadOnlyList<Press> Of(Movement movement, HeldSetting setting, PlacedFigure end)
    {
        var still = IsStill(setting);
        var rests = still && Rests(movement);
        var working = end.Working;
        var presses = new List<Press>();
        foreach (var pull in movement.Pulls)
        {
            if (pull is HelpPull { Anchor: null } help && (still || OnWall(end, help.At)))
                presses.Add(new Press(end.Place(help.At), -Math.Sign(help.ForceN) * help.Direction.In(setting.Start.State, working), false));
            else if (rests && pull is LoopPull loop)
                presses.AddRange(Apart(end, loop.At));
        }

        if (rests)
        {
            foreach (var (pull, tied) in setting.Pulls)
            {
                if (pull is AnchorPull && tied is { } at)
                    presses.Add(new Press(end.Place(pull.At), (end.Place(pull.At) - at).Normalized(), false));
            }
        }

        if (presses.Count == 0 && OntoTowel(movement, end) is { } towel)
            presses.Add(towel);
        if (presses.Count != 2)
            return presses;
        var (a, b) = (presses[0], presses[1]);
        if ((a.Way - b.Way).Length < 0.1)
            return [a with { At = a.At.Toward(b.At, 0.5) }];
        return a.Way.Dot(b.At - a.At) > 0 && b.Way.Dot(a.At - b.At) > 0 ? [a with { Onto = true }, b with { Onto = true }] : presses;
    }

    /// <summary>Whether nothing moves far between start and end.</summary>
    internal static bool IsStill(HeldSetting setting)
    {
        foreach (var kind in (SegmentKind[])[SegmentKind.Hand, SegmentKind.Foot, SegmentKind.Shank, SegmentKind.Head, SegmentKind.Torso])
        {
            foreach (var side in (Side[])[Side.Right, Side.Left])
            {
                if ((setting.Start.At(kind, side, 0, 0, 0) - setting.End.At(kind, side, 0, 0, 0)).Length > StillM)
                    return false;
            }
        }

        return true;
    }

    /// <summary>Whether no joint turns by more than a few degrees.</summary>
    internal static bool Rests(Movement movement)
    {
        var (a, b) = (movement.Frames[0], movement.Frames[^1]);
        return Pairs(a.Working, b.Working).Concat(Pairs(a.Other, b.Other)).Concat(
        [
            a.Axial.TrunkFlexion - b.Axial.TrunkFlexion, a.Axial.TrunkBendToWorking - b.Axial.TrunkBendToWorking,
            a.Axial.TrunkTurnToWorking - b.Axial.TrunkTurnToWorking, a.Axial.NeckFlexion - b.Axial.NeckFlexion,
            a.Axial.NeckBendToWorking - b.Axial.NeckBendToWorking, a.Axial.NeckTurnToWorking - b.Axial.NeckTurnToWorking,
        ]).All(turn => Math.Abs(turn) < SmallTurn);

        static IEnumerable<double> Pairs(LimbAngles p, LimbAngles q) =>
        [
            p.HipFlexion - q.HipFlexion, p.HipAbduction - q.HipAbduction, p.HipInternalRotation - q.HipInternalRotation,
            p.KneeFlexion - q.KneeFlexion, p.AnkleDorsiflexion - q.AnkleDorsiflexion, p.SubtalarEversion - q.SubtalarEversion,
            p.ShoulderFlexion - q.ShoulderFlexion, p.ShoulderAbduction - q.ShoulderAbduction, p.ElbowFlexion - q.ElbowFlexion,
        ];
    }

    private static bool OnWall(PlacedFigure end, BodyPlace place) => end.Placed.Contacts.Any(c =>
        c.Contact.Surface == SurfaceKind.Wall && c.Contact.Point == place.At && c.Contact.Limb == (place.Limb ?? Limb.Working));

    private static IEnumerable<Press> Apart(PlacedFigure end, BodyPlace place)
    {
        var (own, other) = (end.Place(place with { Limb = Limb.Working }), end.Place(place with { Limb = Limb.Other }));
        var apart = (own - other).Normalized();
        yield return new Press(own + OutsideM * apart, apart, false);
        yield return new Press(other - OutsideM * apart, -apart, false);
    }

    private static Press? OntoTowel(Movement movement, PlacedFigure end)
    {
        var bend = Math.Abs(movement.Frames[0].Working.KneeFlexion - movement.Frames[^1].Working.KneeFlexion);
        var under = end.Placed.Contacts.FirstOrDefault(c =>
            c.Contact is { Surface: SurfaceKind.Pillow, Point: "kneeBack", Limb: Limb.Working });
        return under is not null && bend < SmallKnee && movement.Aims.FirstOrDefault() == JointAction.KneeExtension && !movement.Aims.IsEmpty
            ? new Press(under.Point, -Vec3.UnitY, true)
            : null;
    }
}
