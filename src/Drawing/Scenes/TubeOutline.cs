using System.Collections.Immutable;

namespace MomentArm.Drawing;

/// <summary>
/// The outline of a limb along circles: one loop of common tangents, rounded where they meet. A limb seen end on,
/// or bent sharply, falls back to the hulls of each two neighbors.
/// </summary>
internal static class TubeOutline
{
    private const double SharpestBend = 0.9;

    internal static ImmutableArray<ImmutableArray<Arc>> Of(ReadOnlySpan<Disc> discs)
    {
        var n = discs.Length;
        Span<double> along = stackalloc double[n - 1];
        Span<double> spread = stackalloc double[n - 1];
        for (var i = 0; i < n - 1; i++)
        {
            var (dx, dy) = (discs[i + 1].X - discs[i].X, discs[i + 1].Y - discs[i].Y);
            var distance = Math.Sqrt(dx * dx + dy * dy);
            if (distance < 1.2 * Math.Abs(discs[i].R - discs[i + 1].R) + 0.3)
                return Pairs(discs);
            along[i] = Math.Atan2(dy, dx);
            spread[i] = Math.Acos((discs[i].R - discs[i + 1].R) / distance);
            if (i > 0 && Math.Abs(Wrapped(along[i] - along[i - 1])) > SharpestBend)
                return Pairs(discs);
        }

        var loop = ImmutableArray.CreateBuilder<Arc>(2 * n);
        loop.Add(Cap(discs[0], along[0] + spread[0], 2 * Math.PI - 2 * spread[0]));
        for (var i = 1; i < n - 1; i++)
            loop.Add(Side(discs[i], along[i - 1] - spread[i - 1], along[i] - spread[i]));
        loop.Add(Cap(discs[n - 1], along[n - 2] - spread[n - 2], 2 * spread[n - 2]));
        for (var i = n - 2; i > 0; i--)
            loop.Add(Side(discs[i], along[i] + spread[i], along[i - 1] + spread[i - 1]));
        return [loop.ToImmutable()];
    }

    private static ImmutableArray<ImmutableArray<Arc>> Pairs(ReadOnlySpan<Disc> discs)
    {
        var loops = ImmutableArray.CreateBuilder<ImmutableArray<Arc>>();
        for (var i = 1; i < discs.Length; i++)
            loops.Add(CircleHull.Of(discs.Slice(i - 1, 2)));
        return loops.ToImmutable();
    }

    private static Arc Cap(in Disc disc, double from, double turn) =>
        new(new PicturePoint(disc.X, disc.Y), disc.R, from, from + turn);

    // The crossing of the tangents before and after the circle; the outline is rounded off toward it, in or out.
    private static Arc Side(in Disc disc, double from, double to)
    {
        var half = Wrapped(to - from) / 2;
        var (sin, cos) = Math.SinCos(from + half);
        var reach = disc.R / Math.Cos(half);
        return new Arc(new PicturePoint(disc.X + reach * cos, disc.Y + reach * sin), 0, from, from) { Soft = true };
    }

    private static double Wrapped(double angle) => angle - 2 * Math.PI * Math.Round(angle / (2 * Math.PI));
}
