using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>The arrow along the real path of the part that moves most.</summary>
internal static class MotionArrow
{
    /// <summary>Motions shorter than this are drawn without ghost and arrow, meters.</summary>
    internal const double LeastM = 0.04;

    private const double Width = 1.9;
    private const double HeadLength = 7;
    private const double LeastLength = 13;
    private const double HeadHalf = 4;

    /// <summary>The arrow, or nothing for a motion too small to show.</summary>
    /// <param name="figures">The body at even fractions of the way, start first.</param>
    /// <param name="accent">Whether leg or arm is treated.</param>
    /// <param name="camera">Where from.</param>
    internal static IEnumerable<SceneShape> Of(PlacedFigure[] figures, AccentOn accent, Camera camera)
    {
        var best = Candidates(accent, figures[0], camera)
            .Select(c => (Path: figures.Select(c.At).Select(camera.Project).ToArray(), c.Preference))
            .OrderByDescending(c => Distance(c.Path[0], c.Path[^1]) * c.Preference)
            .First()
            .Path;
        if (Distance(best[0], best[^1]) < LeastM * Camera.UnitsPerMeter)
            yield break;
        var path = LongEnough(Shortened(best));

        var tip = path[^1];
        var from = BackAlong(path, HeadLength);
        var length = Distance(from, tip);
        var (ux, uy) = ((tip.X - from.X) / length, (tip.Y - from.Y) / length);
        var neck = new PicturePoint(tip.X - ux * HeadLength, tip.Y - uy * HeadLength);
        var shaft = Cut(path, HeadLength * 0.7);
        yield return new SceneShape
        {
            Name = "arrow", Tone = Tone.Arrow, Role = ShapeRole.Arrow, Line = [.. shaft], LineWidth = Width,
        };
        Disc Corner(double x, double y) => new(x, y, 0, 0.5);
        yield return new SceneShape
        {
            Name = "arrowHead",
            Tone = Tone.Arrow,
            Role = ShapeRole.Arrow,
            Loops =
            [
                CircleHull.Of(
                [
                    Corner(tip.X, tip.Y),
                    Corner(neck.X - uy * HeadHalf, neck.Y + ux * HeadHalf),
                    Corner(neck.X + uy * HeadHalf, neck.Y - ux * HeadHalf),
                ]),
            ],
            Gap = false,
        };
    }

    private static IEnumerable<(Func<PlacedFigure, Vec3> At, double Preference)> Candidates(AccentOn accent, PlacedFigure start, Camera camera)
    {
        if (accent == AccentOn.Arm)
            yield return (f => f.At(SegmentKind.Hand, f.Working, 0, -0.06, 0), 2);
        yield return (f => f.At(SegmentKind.Foot, f.Working, 0.06, 0.03, 0), 1.25);
        yield return (f => f.At(SegmentKind.Shank, f.Working, 0.05, 0, 0), 0.8);

        // Behind the pelvis when seen from the side, beside it when seen from front or back.
        var forward = start.At(SegmentKind.Pelvis, start.Working, 1, 0, 0) - start.At(SegmentKind.Pelvis, start.Working, 0, 0, 0);
        if (Math.Abs(forward.Dot(camera.Toward)) > 0.75 * forward.Length)
            yield return (f => f.At(SegmentKind.Pelvis, f.Working, -0.07, -0.03, 0.26), 1);
        else
            yield return (f => f.At(SegmentKind.Pelvis, f.Working, -0.255, -0.03, 0), 1);
        yield return (f => f.At(SegmentKind.Foot, f.Working.Other(), 0.06, 0.03, 0), 0.6);
        yield return (f => f.At(SegmentKind.Hand, f.Working, 0, -0.06, 0), 0.15);
    }

    // Begins clear of the ghost and ends short of the part, which stays readable.
    private static List<PicturePoint> Shortened(PicturePoint[] path)
    {
        var length = Length(path);
        var (skip, stop) = (Math.Min(4, length * 0.12), Math.Min(4.5, length * 0.12));
        var reversed = Cut([.. path.Reverse()], skip);
        reversed.Reverse();
        return Cut(reversed, stop);
    }

    // A short motion gets a tail, so that it still reads as an arrow.
    private static List<PicturePoint> LongEnough(List<PicturePoint> path)
    {
        var missing = LeastLength - Length(path);
        if (missing <= 0)
            return path;
        var chord = Distance(path[0], path[^1]);
        var (ux, uy) = ((path[^1].X - path[0].X) / chord, (path[^1].Y - path[0].Y) / chord);
        return [new PicturePoint(path[0].X - missing * ux, path[0].Y - missing * uy), .. path];
    }

    /// <summary>The path without its last stretch.</summary>
    private static List<PicturePoint> Cut(IReadOnlyList<PicturePoint> path, double stretch)
    {
        var keep = Length(path) - stretch;
        var cut = new List<PicturePoint> { path[0] };
        var along = 0.0;
        for (var i = 1; i < path.Count; i++)
        {
            var step = Distance(path[i - 1], path[i]);
            if (step < 1e-9)
                continue;
            if (along + step >= keep)
            {
                var t = Math.Max(0, (keep - along) / step);
                cut.Add(new(path[i - 1].X + t * (path[i].X - path[i - 1].X), path[i - 1].Y + t * (path[i].Y - path[i - 1].Y)));
                return cut;
            }

            along += step;
            cut.Add(path[i]);
        }

        return cut;
    }

    private static PicturePoint BackAlong(IReadOnlyList<PicturePoint> path, double stretch) => Cut(path, stretch)[^1];

    private static double Length(IReadOnlyList<PicturePoint> path)
    {
        var length = 0.0;
        for (var i = 1; i < path.Count; i++)
            length += Distance(path[i - 1], path[i]);
        return length;
    }

    private static double Distance(PicturePoint a, PicturePoint b) =>
        Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));
}
