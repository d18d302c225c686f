using System.Collections.Immutable;

namespace MomentArm.Drawing;

/// <summary>A ball of the figure seen by the camera.</summary>
/// <param name="X">Picture x.</param>
/// <param name="Y">Picture y, down.</param>
/// <param name="Depth">Toward the viewer, meters.</param>
/// <param name="R">Radius, picture units.</param>
internal readonly record struct Disc(double X, double Y, double Depth, double R);

/// <summary>The rubber band round some circles: arcs joined by common tangents.</summary>
internal static class CircleHull
{
    /// <summary>
    /// Walks round the directions; the circle that reaches farthest in a direction carries the band there. The next one
    /// to take over from i is that j whose reach overtakes soonest: d cos(t - phi) = ri - rj on its rising side.
    /// </summary>
    internal static ImmutableArray<Arc> Of(ReadOnlySpan<Disc> discs)
    {
        // Any direction will do to begin with; an odd one, since level edges are common.
        const double begin = 1.2345;
        var current = Farthest(discs, begin);
        var arcs = ImmutableArray.CreateBuilder<Arc>();
        var angle = begin;
        for (var guard = 0; guard < 4 * discs.Length; guard++)
        {
            var (next, at) = Overtaker(discs, current, angle);
            var until = Math.Min(at, begin + 2 * Math.PI);
            if (until > angle + 1e-9 || discs.Length == 1)
                arcs.Add(new Arc(new PicturePoint(discs[current].X, discs[current].Y), discs[current].R, angle, until));
            if (next < 0 || at >= begin + 2 * Math.PI)
                break;
            (current, angle) = (next, Math.Max(angle, at));
        }

        return JoinEnds(arcs);
    }

    private static ImmutableArray<Arc> JoinEnds(ImmutableArray<Arc>.Builder arcs)
    {
        if (arcs.Count > 1 && arcs[0].Center == arcs[^1].Center && arcs[0].Radius == arcs[^1].Radius)
        {
            arcs[0] = arcs[0] with { From = arcs[^1].From - 2 * Math.PI };
            arcs.RemoveAt(arcs.Count - 1);
        }

        return arcs.ToImmutable();
    }

    private static int Farthest(ReadOnlySpan<Disc> discs, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        var best = 0;
        var most = double.NegativeInfinity;
        for (var i = 0; i < discs.Length; i++)
        {
            var reach = discs[i].X * cos + discs[i].Y * sin + discs[i].R;
            if (reach > most)
                (best, most) = (i, reach);
        }

        return best;
    }

    private static (int Next, double At) Overtaker(ReadOnlySpan<Disc> discs, int current, double angle)
    {
        var next = -1;
        var soonest = double.PositiveInfinity;
        var i = discs[current];
        for (var k = 0; k < discs.Length; k++)
        {
            var j = discs[k];
            var (dx, dy) = (j.X - i.X, j.Y - i.Y);
            var distance = Math.Sqrt(dx * dx + dy * dy);
            if (k == current || distance <= Math.Abs(i.R - j.R) + 1e-9)
                continue;
            var at = Math.Atan2(dy, dx) - Math.Acos((i.R - j.R) / distance);

            // Taking over at once is possible where three circles share a tangent.
            while (at < angle - 1e-7)
                at += 2 * Math.PI;
            while (at >= angle - 1e-7 + 2 * Math.PI)
                at -= 2 * Math.PI;
            if (at < soonest)
                (next, soonest) = (k, at);
        }

        return (next, soonest);
    }
}
