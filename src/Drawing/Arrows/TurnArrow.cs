using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A curved arrow round the axis of a part that turns in place: over the head, or round the hand.</summary>
internal static class TurnArrow
{
    private const int Steps = 24;

    /// <summary>A ring seen on edge is opened by this, so that it reads as a turn (width over length).</summary>
    private const double LeastOpen = 0.34;

    /// <summary>Half of the way round that is drawn, radians.</summary>
    private const double HalfWay = 1.35;

    /// <summary>The arrow, or nothing when what the movement is for does not mainly turn.</summary>
    /// <param name="movement">The movement.</param>
    /// <param name="focus">What it is for.</param>
    /// <param name="start">The body at the start.</param>
    /// <param name="end">The body at the end, round which the arrow is drawn.</param>
    /// <param name="camera">Where from.</param>
    /// <param name="ink">The size.</param>
    internal static ImmutableArray<SceneShape> Of(
        Movement movement, MovementFocus focus, PlacedFigure start, PlacedFigure end, Camera camera, ArrowInk ink)
    {
        var (a, b) = (movement.Frames[0], movement.Frames[^1]);
        if (focus == MovementFocus.Neck)
        {
            var turn = Math.Abs(a.Axial.NeckTurnToWorking - b.Axial.NeckTurnToWorking);
            var rest = Math.Max(Math.Abs(a.Axial.NeckFlexion - b.Axial.NeckFlexion), Math.Abs(a.Axial.NeckBendToWorking - b.Axial.NeckBendToWorking));
            return turn > 0.15 && turn > rest ? Round(new Ring(SegmentKind.Head, 0.005, 0.272, 0.125), start, end, camera, ink) : [];
        }

        if (focus != MovementFocus.Forearm)
            return [];
        var roll = Math.Abs(a.Working.ForearmPronation - b.Working.ForearmPronation);
        return roll > 0.3 && roll > Math.Abs(a.Working.WristFlexion - b.Working.WristFlexion)
            ? Round(new Ring(SegmentKind.Hand, 0.02, -0.12, 0.115), start, end, camera, ink)
            : [];
    }

    private static ImmutableArray<SceneShape> Round(Ring ring, PlacedFigure start, PlacedFigure end, Camera camera, ArrowInk ink)
    {
        var middle = end.At(ring.Kind, end.Working, ring.X, ring.Y, 0);
        var nearest = Enumerable.Range(0, Steps).MaxBy(i => Math.Round(camera.Toward.Dot(At(end, ring, i) - middle), 6));
        var center = camera.Project(middle);

        // The way that the near side of the ring goes, as the viewer sees it.
        var moved = At(end, ring, nearest) - middle - (At(start, ring, nearest) - start.At(ring.Kind, start.Working, ring.X, ring.Y, 0));
        var way = camera.Project(moved);
        var length = Math.Sqrt(way.X * way.X + way.Y * way.Y);
        if (length < 0.5)
            return [];
        var (ux, uy) = (way.X / length, way.Y / length);
        var near = camera.Project(At(end, ring, nearest) - middle);
        var open = near.X * -uy + near.Y * ux;
        var side = Math.Abs(open) < 0.08 * ring.Radius * Camera.UnitsPerMeter ? Math.Sign(ux) : Math.Sign(open);
        var (long1, short1) = (ring.Radius * Camera.UnitsPerMeter, Math.Max(Math.Abs(open), LeastOpen * ring.Radius * Camera.UnitsPerMeter) * (side == 0 ? 1 : side));
        return
        [
            .. ink.Arrow(
            [
                .. Enumerable.Range(0, 13).Select(i =>
                {
                    var (sin, cos) = Math.SinCos(HalfWay * (i - 6) / 6);
                    return new PicturePoint(center.X + long1 * sin * ux - short1 * cos * uy, center.Y + long1 * sin * uy + short1 * cos * ux);
                }),
            ]),
        ];
    }

    private static Vec3 At(PlacedFigure f, Ring ring, int step)
    {
        var (sin, cos) = Math.SinCos(2 * Math.PI * step / Steps);
        return f.At(ring.Kind, f.Working, ring.X + ring.Radius * cos, ring.Y, ring.Radius * sin);
    }

    /// <summary>A ring round the long axis of a part, at that place of it.</summary>
    private readonly record struct Ring(SegmentKind Kind, double X, double Y, double Radius);
}
