namespace MomentArm.Drawing;

/// <summary>Courses of arrows: cut, lengthened and measured.</summary>
internal static class ArrowLine
{
    /// <summary>A course longer than its chord by this factor winds.</summary>
    private const double Winding = 1.4;

    internal static double Distance(PicturePoint a, PicturePoint b) =>
        Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));

    internal static double Length(IReadOnlyList<PicturePoint> path)
    {
        var length = 0.0;
        for (var i = 1; i < path.Count; i++)
            length += Distance(path[i - 1], path[i]);
        return length;
    }

    /// <summary>The course as one even bow through its middle, unless it really winds.</summary>
    internal static IReadOnlyList<PicturePoint> Even(IReadOnlyList<PicturePoint> path)
    {
        var (a, b) = (path[0], path[^1]);
        if (Length(path) > Winding * Distance(a, b))
            return path;
        var m = Cut(path, Length(path) / 2)[^1];
        var (cx, cy) = (2 * m.X - (a.X + b.X) / 2, 2 * m.Y - (a.Y + b.Y) / 2);
        return
        [
            .. Enumerable.Range(0, 9).Select(i =>
            {
                var t = i / 8.0;
                var (p, q, r) = ((1 - t) * (1 - t), 2 * t * (1 - t), t * t);
                return new PicturePoint(p * a.X + q * cx + r * b.X, p * a.Y + q * cy + r * b.Y);
            }),
        ];
    }

    /// <summary>The course without its first and last stretch.</summary>
    internal static List<PicturePoint> Shortened(IReadOnlyList<PicturePoint> path, double start, double end)
    {
        var reversed = Cut([.. path.Reverse()], start);
        reversed.Reverse();
        return Cut(reversed, end);
    }

    /// <summary>The course without its last stretch.</summary>
    internal static List<PicturePoint> Cut(IReadOnlyList<PicturePoint> path, double stretch)
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

    /// <summary>A short course with a tail before it, so that it still reads as an arrow: on the circle that it turns on, else straight.</summary>
    /// <param name="path">The course.</param>
    /// <param name="least">The length it gets at least.</param>
    /// <param name="tightest">The least radius of a circle that the tail may follow.</param>
    internal static List<PicturePoint> LongEnough(IReadOnlyList<PicturePoint> path, double least, double tightest)
    {
        var missing = least - Length(path);
        if (missing <= 0)
            return [.. path];
        var (from, to) = (path[0], path[^1]);
        if (Circle(from, path[path.Count / 2], to) is not { } circle || circle.Radius < tightest || circle.Radius > 8 * least)
        {
            var chord = Distance(from, to);
            var (ux, uy) = ((to.X - from.X) / chord, (to.Y - from.Y) / chord);
            return [new PicturePoint(from.X - missing * ux, from.Y - missing * uy), .. path];
        }

        var (center, radius) = circle;
        var (a, b) = (Math.Atan2(from.Y - center.Y, from.X - center.X), Math.Atan2(to.Y - center.Y, to.X - center.X));
        var sense = Math.Sign(Math.IEEERemainder(b - a, 2 * Math.PI));
        PicturePoint On(double angle) => new(center.X + radius * Math.Cos(angle), center.Y + radius * Math.Sin(angle));
        return [.. Enumerable.Range(0, 9).Select(i => On(b - sense * least / radius * (8 - i) / 8))];
    }

    /// <summary>The circle through three points; null when they lie nearly on a line.</summary>
    private static (PicturePoint Center, double Radius)? Circle(PicturePoint a, PicturePoint b, PicturePoint c)
    {
        var (bx, by, cx, cy) = (b.X - a.X, b.Y - a.Y, c.X - a.X, c.Y - a.Y);
        var cross = 2 * (bx * cy - by * cx);
        if (Math.Abs(cross) < 1e-3)
            return null;
        var (bb, cc) = (bx * bx + by * by, cx * cx + cy * cy);
        var (x, y) = ((cy * bb - by * cc) / cross, (bx * cc - cx * bb) / cross);
        return (new PicturePoint(a.X + x, a.Y + y), Math.Sqrt(x * x + y * y));
    }
}
