namespace MomentArm.Body;

/// <summary>
/// Interpolating cubic pieces that rise wherever the knots rise: slopes are weighted harmonic means of the neighboring
/// chords (Fritsch and Butland 1984, SIAM J Sci Stat Comput 5:300-304), so that nothing overshoots between readings.
/// </summary>
internal sealed class MonotoneCubic
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] slope;
    private readonly double[] area;

    /// <summary>Makes the curve through knots that rise in argument and never fall in value; at least two.</summary>
    internal MonotoneCubic(double[] arguments, double[] values)
    {
        (x, y) = (arguments, values);
        slope = Slopes(x, y);
        area = new double[x.Length];
        for (var i = 1; i < x.Length; i++)
            area[i] = area[i - 1] + AreaWithin(i - 1, x[i] - x[i - 1]);
    }

    /// <summary>Value at an argument between the first and the last knot.</summary>
    internal double At(double at)
    {
        var i = Piece(at);
        var (h, t) = (x[i + 1] - x[i], at - x[i]);
        var chord = (y[i + 1] - y[i]) / h;
        var c2 = (3 * chord - 2 * slope[i] - slope[i + 1]) / h;
        var c3 = (slope[i] + slope[i + 1] - 2 * chord) / (h * h);
        return y[i] + t * (slope[i] + t * (c2 + t * c3));
    }

    /// <summary>Area under the curve from the first knot to an argument.</summary>
    internal double AreaTo(double at)
    {
        var i = Piece(at);
        return area[i] + AreaWithin(i, at - x[i]);
    }

    private double AreaWithin(int i, double t)
    {
        var h = x[i + 1] - x[i];
        var chord = (y[i + 1] - y[i]) / h;
        var c2 = (3 * chord - 2 * slope[i] - slope[i + 1]) / h;
        var c3 = (slope[i] + slope[i + 1] - 2 * chord) / (h * h);
        return t * (y[i] + t * (slope[i] / 2 + t * (c2 / 3 + t * c3 / 4)));
    }

    private int Piece(double at)
    {
        var found = Array.BinarySearch(x, at);
        return Math.Clamp(found >= 0 ? found : ~found - 1, 0, x.Length - 2);
    }

    private static double[] Slopes(double[] x, double[] y)
    {
        var last = x.Length - 1;
        var h = new double[last];
        var chord = new double[last];
        for (var i = 0; i < last; i++)
        {
            h[i] = x[i + 1] - x[i];
            chord[i] = (y[i + 1] - y[i]) / h[i];
        }

        var slope = new double[x.Length];
        for (var i = 1; i < last; i++)
        {
            slope[i] = chord[i - 1] > 0 && chord[i] > 0
                ? 3 * (h[i - 1] + h[i]) / ((2 * h[i] + h[i - 1]) / chord[i - 1] + (h[i] + 2 * h[i - 1]) / chord[i])
                : 0;
        }

        slope[0] = last == 1 ? chord[0] : EndSlope(h[0], h[1], chord[0], chord[1]);
        slope[last] = last == 1 ? chord[0] : EndSlope(h[last - 1], h[last - 2], chord[last - 1], chord[last - 2]);
        return slope;
    }

    /// <summary>Slope of the parabola through the three end knots, held where the piece still rises.</summary>
    private static double EndSlope(double h, double next, double chord, double nextChord) =>
        Math.Clamp(((2 * h + next) * chord - h * nextChord) / (h + next), 0, 3 * chord);
}
