using MomentArm.Body;
using static MomentArm.Body.SegmentKind;

namespace MomentArm.Drawing;

/// <summary>A place whose path may become the arrow.</summary>
/// <param name="Limb">Which part of the body it is on: a second arrow is only for another one.</param>
/// <param name="At">Where it is.</param>
/// <param name="Weight">How much its motion tells about the movement; our choice.</param>
internal sealed record ArrowPlace(SegmentKind Limb, Func<PlacedFigure, Vec3> At, double Weight)
{
    /// <summary>Whether it is on the working side.</summary>
    internal bool Working { get; init; } = true;
}

/// <summary>Places by what the movement is for: limbs at their ends, head and trunk a little outside their flesh.</summary>
internal static class ArrowPlaces
{
    internal static IEnumerable<ArrowPlace> Of(MovementFocus focus, PlacedFigure start, Camera camera) => focus switch
    {
        MovementFocus.Leg when start.Barefoot => Leg(1.25, 0.8, 0.75).Append(Arch),
        MovementFocus.Leg => Leg(1.25, 0.8, 0.75).Concat(Pelvic(1, 0.45, start, camera)).Concat(Trunk(0.3, 0.35)).Append(Hand(0.15)),
        MovementFocus.Trunk => Leg(1, 0.75, 0.9).Concat(Pelvic(1.2, 1.15, start, camera)).Concat(Trunk(0.95, 1.15)).Append(Hand(0.7)).Append(OtherHand(0.65)),
        MovementFocus.Neck => Trunk(0.3, 1).Concat(Face(1.6)),
        MovementFocus.Shoulder or MovementFocus.Arm => Leg(0.4, 0.3, 0.3).Concat(Pelvic(0.4, 0.3, start, camera)).Concat(Trunk(0.6, 0.5)).Append(Hand(2)).Append(OtherHand(0.5)),
        MovementFocus.Forearm => [Fingers(2), Hand(1.2), OtherHand(1)],
        MovementFocus.None => [],
    };

    private static IEnumerable<ArrowPlace> Leg(double foot, double knee, double otherFoot)
    {
        yield return new(Foot, f => f.At(Foot, f.Working, 0.06, 0.03, 0), foot);
        yield return new(Foot, f => f.At(Toes, f.Working, 0.1, 0, -0.02), foot * 0.9);
        yield return new(Foot, f => f.At(Foot, f.Working, -0.055, 0.03, 0), foot * 0.92);
        yield return new(Shank, f => f.At(Shank, f.Working, 0.05, 0, 0), knee);
        yield return new(Foot, f => f.At(Foot, f.Working.Other(), 0.06, 0.03, 0), otherFoot) { Working = false };
    }

    private static ArrowPlace Arch { get; } = new(Foot, f => f.At(Foot, f.Working, 0.085, 0.015 + BareFoot.Arch(f, f.Working), -0.055), 1.6);

    /// <summary>Behind or before the pelvis when seen from the side, beside it when seen from front or back.</summary>
    private static IEnumerable<ArrowPlace> Pelvic(double back, double front, PlacedFigure start, Camera camera)
    {
        var forward = start.At(Pelvis, start.Working, 1, 0, 0) - start.At(Pelvis, start.Working, 0, 0, 0);
        if (Math.Abs(forward.Dot(camera.Toward)) > 0.75 * forward.Length)
        {
            yield return new(Pelvis, f => f.At(Pelvis, f.Working, -0.07, -0.03, 0.26), back);
            yield return new(Pelvis, f => f.At(Pelvis, f.Working.Other(), -0.07, -0.03, 0.26), back * 0.9);
            yield break;
        }

        yield return new(Pelvis, f => f.At(Pelvis, f.Working, -0.255, -0.03, 0), back);
        yield return new(Pelvis, f => f.At(Pelvis, f.Working, 0.11, 0.03, 0), front);
    }

    private static IEnumerable<ArrowPlace> Trunk(double chest, double head)
    {
        yield return new(Torso, f => f.At(Torso, f.Working, -0.17, 0.22, 0), chest);
        yield return new(Torso, f => f.At(Torso, f.Working, 0.19, 0.26, 0), chest * 0.9);
        yield return new(Head, f => f.At(Head, f.Working, 0, 0.29, 0), head);
    }

    private static IEnumerable<ArrowPlace> Face(double weight)
    {
        yield return new(Head, f => f.At(Head, f.Working, 0.18, 0.12, 0), weight);
    }

    private static ArrowPlace Hand(double weight) => new(SegmentKind.Hand, f => f.At(SegmentKind.Hand, f.Working, 0, -0.06, 0), weight);

    private static ArrowPlace Fingers(double weight) => new(SegmentKind.Hand, f => f.At(SegmentKind.Hand, f.Working, 0.01, -0.13, 0), weight);

    private static ArrowPlace OtherHand(double weight) => new(SegmentKind.Hand, f => f.At(SegmentKind.Hand, f.Working.Other(), 0, -0.06, 0), weight) { Working = false };
}
