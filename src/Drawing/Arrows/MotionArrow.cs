using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>The arrow along the real path of the part whose motion tells most; a second one where another limb moves as well.</summary>
internal static class MotionArrow
{
    /// <summary>Motions that cross less of the picture than this are drawn without arrow, as a share of the frame's height.</summary>
    private const double Least = 0.024;

    /// <summary>What a covered path loses: an arrow on the body is harder to see.</summary>
    private const double CoverCost = 0.45;

    /// <summary>A hand that keeps its contact with floor or wall, while the head moves about as far, counts by this share: then the body is what moves.</summary>
    private const double StayCost = 0.15;

    /// <summary>How far under the floor a path may run, meters.</summary>
    private const double Deepest = -0.16;

    /// <summary>The second arrow's least share of the first one's score, and its least way in the picture (units).</summary>
    private const double SecondShare = 0.4;

    private const double SecondWay = 22;

    /// <summary>The arrows, or nothing for a motion too small to show.</summary>
    /// <param name="figures">The body at even fractions of the way, start first.</param>
    /// <param name="focus">What the movement is for.</param>
    /// <param name="camera">Where from.</param>
    /// <param name="cover">What the body at the end covers.</param>
    /// <param name="ink">The size.</param>
    internal static ImmutableArray<SceneShape> Of(PlacedFigure[] figures, MovementFocus focus, Camera camera, Cover cover, ArrowInk ink)
    {
        var least = Least * 125 * ink.Size;
        var paths = ArrowPlaces.Of(focus, figures[0], camera)
            .Select(place => (Place: place, Path: Path(figures, place, camera)))
            .Where(c => Way(c.Path) >= least && figures.All(f => place(f, c.Place) > Deepest))
            .Select(c => (c.Place, c.Path, Score: Math.Round(Way(c.Path) * c.Place.Weight * (Stays(figures, c.Place) ? StayCost : 1) * (1 - CoverCost * cover.Of(c.Path)), 4)))
            .OrderByDescending(c => c.Score)
            .ToArray();
        if (paths.Length == 0)
            return [];
        var first = paths[0];
        var shapes = Drawn(first.Path, ink);
        if (focus != MovementFocus.Trunk)
            return [.. shapes];
        var second = paths.FirstOrDefault(c => c.Place.Limb != first.Place.Limb && IsEnd(c.Place) && IsEnd(first.Place)
            && c.Score > SecondShare * first.Score && Way(c.Path) > SecondWay);
        return second.Path is null ? [.. shapes] : [.. shapes, .. Drawn(second.Path, ink)];

        static double place(PlacedFigure f, ArrowPlace at) => at.At(f).Y;
    }

    private static IEnumerable<SceneShape> Drawn(PicturePoint[] course, ArrowInk ink)
    {
        var path = ArrowLine.Even(course);
        // Begins clear of the ghost and ends short of the part, which stays readable.
        var length = ArrowLine.Length(path);
        var shortened = ArrowLine.Shortened(path, Math.Min(4 * ink.Size, length * 0.1), Math.Min(4.5 * ink.Size, length * 0.1));
        return ink.Arrow(ArrowLine.LongEnough(shortened, ink.LeastLength, 5 * ink.Size));
    }

    /// <summary>Whether it is a hand that stays at floor or wall from start to end while the body moves.</summary>
    private static bool Stays(PlacedFigure[] figures, ArrowPlace place)
    {
        var (start, end) = (figures[0], figures[^1]);
        return place.Limb == SegmentKind.Hand && (place.At(start) - place.At(end)).Length < 1.4 * (Crown(start) - Crown(end)).Length && Touches(start) && Touches(end);

        static Vec3 Crown(PlacedFigure f) => f.At(SegmentKind.Head, f.Working, 0, 0.2, 0);

        bool Touches(PlacedFigure f) => f.Placed.Contacts.Any(c =>
            c.Contact.Surface is SurfaceKind.Floor or SurfaceKind.Wall && (c.Contact.Limb == Limb.Working) == place.Working && f.SegmentOf(c.Contact.Point) == SegmentKind.Hand);
    }

    private static bool IsEnd(ArrowPlace place) => place.Limb is SegmentKind.Foot or SegmentKind.Hand;

    private static PicturePoint[] Path(PlacedFigure[] figures, ArrowPlace place, Camera camera) => [.. figures.Select(f => camera.Project(place.At(f)))];

    private static double Way(PicturePoint[] path) => ArrowLine.Distance(path[0], path[^1]);
}
