namespace MomentArm.Body;

/// <summary>
/// The largest moment that lines can give about one axis of a joint with no moment about its other two: what a strength test
/// measures, whose force turns the joint about one axis only. The sum of all lines' moments about the axis is more than that, since some
/// of them also turn the joint where nothing holds against them.
/// </summary>
/// <remarks>
/// The largest c.a with p.a = 0 and q.a = 0 over activations a in 0..1, less a small share of effort (<see cref="Smoothing"/>), so that the
/// answer changes smoothly with the pose: Newton steps on the two multipliers of the dual, each to the lowest place of its direction. See docs/models/body.md, section 7.
/// </remarks>
internal static class PureMoment
{
    /// <summary>Full effort of a line costs so much of the moment that a line of its size gives on average: lines that hardly help are hardly used (our choice).</summary>
    private const double Smoothing = 0.1;

    private const double Firmness = 1e-4;
    private const double Tolerance = 1e-6;
    private const int MostSteps = 200;
    private const int MostLooks = 40;
    private const int Patience = 20;

    /// <summary>The largest pure moment.</summary>
    /// <param name="along">Moment of each line about the axis, fully active.</param>
    /// <param name="p">Moments about the second axis, in the same unit.</param>
    /// <param name="q">Moments about the third axis.</param>
    /// <param name="size">Size of each line, above 0: a line of twice the size counts as two.</param>
    /// <returns>The moment, 0 or more, in the same unit.</returns>
    internal static double Largest(ReadOnlySpan<double> along, ReadOnlySpan<double> p, ReadOnlySpan<double> q, ReadOnlySpan<double> size)
    {
        var (helping, sizes, pp, qq) = (0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < along.Length; i++)
        {
            helping += Math.Max(0, along[i]);
            sizes += along[i] > 0 ? size[i] : 0;
            pp += p[i] * p[i] / size[i];
            qq += q[i] * q[i] / size[i];
        }

        if (!(helping > 0))
            return 0;
        var lines = new Lines(along, p, q, size, Smoothing * helping / sizes);
        var side = Math.Sqrt((pp + qq) * sizes);
        var (firmX, firmY) = (Firmness * Math.Max(pp, 1e-6 * (pp + qq)) / lines.Price, Firmness * Math.Max(qq, 1e-6 * (pp + qq)) / lines.Price);
        var (x, y) = (0.0, 0.0);
        var now = lines.At(x, y);
        for (var step = 0; step < MostSteps && Math.Abs(now.Dx) + Math.Abs(now.Dy) > Tolerance * side; step++)
        {
            var (dx, dy) = now.Downhill(firmX, firmY);
            var (nextX, nextY, next) = Lowest(lines, x, y, dx, dy, now);

            // Steps that jump to and fro over a crease are led into it by going half way now and then.
            var half = step >= Patience && step % 4 == 0;
            (x, y, now) = half
                ? ((x + nextX) / 2, (y + nextY) / 2, lines.At((x + nextX) / 2, (y + nextY) / 2))
                : (nextX, nextY, next);
        }

        return Math.Max(0, now.Moment);
    }

    /// <summary>The lowest place along a direction: where the slope along it turns. The dual is convex, so doubling and false position find it.</summary>
    private static (double X, double Y, Dual At) Lowest(in Lines lines, double x, double y, double dx, double dy, in Dual from)
    {
        var flat = 0.1 * Math.Abs(from.Along(dx, dy));
        var (low, lowSlope, high, highSlope) = (0.0, from.Along(dx, dy), double.PositiveInfinity, 0.0);
        var length = 1.0;
        var at = lines.At(x + length * dx, y + length * dy);
        for (var look = 0; look < MostLooks; look++)
        {
            var slope = at.Along(dx, dy);
            if (Math.Abs(slope) <= flat)
                break;
            if (slope < 0)
                (low, lowSlope) = (length, slope);
            else
                (high, highSlope) = (length, slope);
            length = double.IsInfinity(high) ? 3 * length : low + (high - low) * Math.Clamp(lowSlope / (lowSlope - highSlope), 0.1, 0.9);
            at = lines.At(x + length * dx, y + length * dy);
        }

        return (x + length * dx, y + length * dy, at);
    }

    /// <summary>The lines and the price of effort per size.</summary>
    private readonly ref struct Lines(ReadOnlySpan<double> along, ReadOnlySpan<double> p, ReadOnlySpan<double> q, ReadOnlySpan<double> size, double price)
    {
        private readonly ReadOnlySpan<double> along = along;
        private readonly ReadOnlySpan<double> p = p;
        private readonly ReadOnlySpan<double> q = q;
        private readonly ReadOnlySpan<double> size = size;

        internal double Price { get; } = price;

        /// <summary>Slopes and second derivatives of the dual at the multipliers, and the moment of the activations that belong to them.</summary>
        internal Dual At(double x, double y)
        {
            var dual = default(Dual);
            for (var i = 0; i < along.Length; i++)
            {
                var gain = along[i] + x * p[i] + y * q[i];
                if (gain <= 0)
                    continue;
                var width = Price * size[i];
                var activation = Math.Min(1, gain / width);
                dual.Moment += activation * along[i];
                dual.Dx += activation * p[i];
                dual.Dy += activation * q[i];
                if (activation >= 1)
                    continue;
                dual.Dxx += p[i] * p[i] / width;
                dual.Dxy += p[i] * q[i] / width;
                dual.Dyy += q[i] * q[i] / width;
            }

            return dual;
        }
    }

    private record struct Dual(double Moment, double Dx, double Dy, double Dxx, double Dxy, double Dyy)
    {
        /// <summary>Slope along a direction.</summary>
        internal readonly double Along(double dx, double dy) => Dx * dx + Dy * dy;

        /// <summary>Newton's direction. A little of what all lines together would give firms the second derivatives where few lines are between their ends.</summary>
        internal readonly (double Dx, double Dy) Downhill(double firmX, double firmY)
        {
            var (xx, yy) = (Dxx + firmX, Dyy + firmY);
            var determinant = xx * yy - Dxy * Dxy;
            return (-(yy * Dx - Dxy * Dy) / determinant, -(xx * Dy - Dxy * Dx) / determinant);
        }
    }
}
