using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>Arrows of efforts without motion: short, against a bar, where they are seen; two toward each other for a squeeze.</summary>
internal static class PressArrow
{
    private const double Length = 15;

    /// <summary>How far an arrow onto a part may stand off what is pressed, picture units.</summary>
    private const int FarthestOnto = 13;

    /// <summary>A push that points nearly at the viewer has no arrow (share of its length that shows).</summary>
    private const double LeastShown = 0.3;

    /// <summary>The arrows, or nothing for a movement that moves.</summary>
    /// <param name="movement">The movement.</param>
    /// <param name="setting">Start, end and what holds.</param>
    /// <param name="end">The body at the end.</param>
    /// <param name="camera">Where from.</param>
    /// <param name="cover">What it covers.</param>
    /// <param name="ink">The size.</param>
    internal static ImmutableArray<SceneShape> Of(
        Movement movement, HeldSetting setting, PlacedFigure end, Camera camera, Cover cover, ArrowInk ink)
    {
        var presses = Presses.Of(movement, setting, end);
        if (presses.Count > 0)
            return [.. presses.SelectMany(press => Shown(press, camera, cover, ink))];
        if (movement.Focus == MovementFocus.Forearm && movement.Props.FirstOrDefault(prop => prop.Kind == PropKind.SmallBall && BallParts.InHand(end, prop)) is { } ball
            && (setting.Start.Surface("palm", ball.Limb ?? Limb.Working) - end.Surface("palm", ball.Limb ?? Limb.Working)).Length < Presses.StillM)
            return [.. Squeeze(end, (ball.Limb ?? Limb.Working).On(end.Working), BallParts.DiameterOf(ball), camera, ink)];
        var lies = end.Orientation is Orientation.Prone or Orientation.Supine
            && end.Placed.Contacts.Any(c => c.Contact.Point is "chestFront" or "upperBack");
        return lies && !movement.Aims.IsEmpty && Presses.Rests(movement)
            ? [.. Squeeze(AreaShape.Of(end, BodyAreas.Of(movement.Aims[0]), end.Working), camera, ink)]
            : [];
    }

    private static IEnumerable<SceneShape> Shown(Press press, Camera camera, Cover cover, ArrowInk ink)
    {
        var way = camera.Project(press.Way);
        var length = Math.Sqrt(way.X * way.X + way.Y * way.Y);
        if (length < LeastShown * Camera.UnitsPerMeter)
            return [];
        var (ux, uy) = (way.X / length, way.Y / length);
        var at = camera.Project(press.At);
        PicturePoint[] Straight(PicturePoint tip) =>
            [.. Enumerable.Range(0, 5).Select(i => new PicturePoint(tip.X - ux * Length * ink.Size * (4 - i) / 4, tip.Y - uy * Length * ink.Size * (4 - i) / 4))];
        if (press.Onto)
        {
            var back = Enumerable.Range(1, FarthestOnto).First(i => i == FarthestOnto || cover.Of([Moved(at, -ux * i, -uy * i)]) == 0) + 2 * ink.Size;
            return ink.Arrow(Straight(Moved(at, -ux * back, -uy * back)));
        }

        // Beside the part, on the side and as near as leaves it seen.
        var best = Enumerable.Range(0, 60)
            .Select(i => (i % 2 == 0 ? 1 : -1) * (6 * ink.Size + i / 2))
            .Select(off => (Tip: Moved(at, -uy * off, ux * off), Off: Math.Abs(off)))
            .MinBy(c => Math.Round(cover.Of(Straight(c.Tip)) + 0.03 * c.Off / ink.Size, 6));
        return [.. ink.Arrow(Straight(best.Tip)), ink.Bar(best.Tip, ux, uy)];
    }

    private static IEnumerable<SceneShape> Squeeze(AreaShape area, Camera camera, ArrowInk ink)
    {
        var ball = area.Balls[area.Balls.Length / 2];
        var at = camera.Project(ball.Center + (ball.Radius + 0.03 * ink.Size) * area.Outward);
        var along = camera.Project(area.Balls[^1].Center - area.Balls[0].Center);
        var length = Math.Sqrt(along.X * along.X + along.Y * along.Y);
        return Facing(at, along.X / length, along.Y / length, 2, ink);
    }

    /// <summary>Fingers and palm toward each other.</summary>
    private static IEnumerable<SceneShape> Squeeze(PlacedFigure f, Side side, double diameter, Camera camera, ArrowInk ink)
    {
        var (palm, fingers) = (f.At(SegmentKind.Hand, side, -0.03, -0.066, 0), f.At(SegmentKind.Hand, side, 0.05 + diameter, -0.09, 0));
        var (a, b) = (camera.Project(palm), camera.Project(fingers));
        var length = ArrowLine.Distance(a, b);
        var (ux, uy) = length < 3 ? (1, 0) : ((b.X - a.X) / length, (b.Y - a.Y) / length);
        return Facing(new PicturePoint((a.X + b.X) / 2, (a.Y + b.Y) / 2), ux, uy, 6 / ink.Size, ink);
    }

    private static IEnumerable<SceneShape> Facing(PicturePoint at, double ux, double uy, double apart, ArrowInk ink)
    {
        foreach (var sense in (double[])[1, -1])
        {
            PicturePoint Off(double distance) => Moved(at, sense * ux * distance * ink.Size, sense * uy * distance * ink.Size);
            foreach (var shape in ink.Arrow([Off(apart + 14), Off(apart + 7), Off(apart)]))
                yield return shape;
        }
    }

    private static PicturePoint Moved(PicturePoint p, double dx, double dy) => new(p.X + dx, p.Y + dy);
}
