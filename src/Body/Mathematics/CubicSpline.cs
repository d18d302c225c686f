using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Interpolating cubic through all knots, twice continuously differentiable. At each end the third derivative equals
/// that of the single cubic through the four outermost knots (Forsythe, Malcolm and Moler 1977, Computer Methods for
/// Mathematical Computations, section 4.4). Two knots give a straight line. Outside the knots: straight with the end slope.
/// </summary>
public sealed class CubicSpline
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] slope;
    private readonly double[] curvature;

    /// <summary>Makes the spline.</summary>
    /// <param name="knots">Knots (argument, value) in rising order of argument; at least two, and not three.</param>
    /// <exception cref="ArgumentException">Too few knots, or arguments that do not rise.</exception>
    public CubicSpline(ImmutableArray<(double X, double Y)> knots)
    {
        if (knots.Length is < 2 or 3)
            throw new ArgumentException("A spline needs two knots, or four and more.", nameof(knots));
        x = [.. knots.Select(k => k.X)];
        y = [.. knots.Select(k => k.Y)];
        for (var i = 1; i < x.Length; i++)
        {
            if (!(x[i] > x[i - 1]))
                throw new ArgumentException("The knots of a spline must rise in argument.", nameof(knots));
        }

        curvature = x.Length == 2 ? [0, 0] : SecondDerivatives(x, y);
        slope = Slopes(x, y, curvature);
    }

    /// <summary>Value and slope at an argument.</summary>
    /// <param name="at">Any finite argument; outside the knots the end line is followed.</param>
    /// <returns>Value and first derivative.</returns>
    public (double Value, double Slope) At(double at)
    {
        var last = x.Length - 1;
        if (at <= x[0])
            return (y[0] + slope[0] * (at - x[0]), slope[0]);
        if (at >= x[last])
            return (y[last] + slope[last] * (at - x[last]), slope[last]);
        var i = 0;
        while (at > x[i + 1])
            i++;
        var u = at - x[i];
        var third = (curvature[i + 1] - curvature[i]) / (x[i + 1] - x[i]);
        return (
            y[i] + u * (slope[i] + u * (curvature[i] / 2 + u * third / 6)),
            slope[i] + u * (curvature[i] + u * third / 2));
    }

    /// <summary>Solves the tridiagonal system for the second derivatives at the knots.</summary>
    private static double[] SecondDerivatives(double[] x, double[] y)
    {
        var n = x.Length;
        double Step(int i) => x[i + 1] - x[i];
        double Secant(int i) => (y[i + 1] - y[i]) / Step(i);

        // Continuity of the first derivative at inner knots; a given third derivative in the end intervals.
        var below = new double[n];
        var diagonal = new double[n];
        var above = new double[n];
        var right = new double[n];
        for (var i = 1; i < n - 1; i++)
        {
            below[i] = Step(i - 1);
            diagonal[i] = 2 * (Step(i - 1) + Step(i));
            above[i] = Step(i);
            right[i] = 6 * (Secant(i) - Secant(i - 1));
        }

        diagonal[0] = -1;
        above[0] = 1;
        right[0] = Step(0) * ThirdDerivative(x, y, 0);
        below[n - 1] = -1;
        diagonal[n - 1] = 1;
        right[n - 1] = Step(n - 2) * ThirdDerivative(x, y, n - 4);

        for (var i = 1; i < n; i++)
        {
            var factor = below[i] / diagonal[i - 1];
            diagonal[i] -= factor * above[i - 1];
            right[i] -= factor * right[i - 1];
        }

        right[n - 1] /= diagonal[n - 1];
        for (var i = n - 2; i >= 0; i--)
            right[i] = (right[i] - above[i] * right[i + 1]) / diagonal[i];
        return right;
    }

    /// <summary>Third derivative of the cubic through four knots from <paramref name="first"/>: 6 times the third divided difference.</summary>
    private static double ThirdDerivative(double[] x, double[] y, int first)
    {
        Span<double> difference = [y[first], y[first + 1], y[first + 2], y[first + 3]];
        for (var order = 1; order <= 3; order++)
        {
            for (var i = 0; i <= 3 - order; i++)
                difference[i] = (difference[i + 1] - difference[i]) / (x[first + i + order] - x[first + i]);
        }

        return 6 * difference[0];
    }

    private static double[] Slopes(double[] x, double[] y, double[] curvature)
    {
        var n = x.Length;
        var slope = new double[n];
        for (var i = 0; i < n - 1; i++)
        {
            var h = x[i + 1] - x[i];
            slope[i] = (y[i + 1] - y[i]) / h - h * (2 * curvature[i] + curvature[i + 1]) / 6;
        }

        var last = x[n - 1] - x[n - 2];
        slope[n - 1] = slope[n - 2] + last * (curvature[n - 2] + curvature[n - 1]) / 2;
        return slope;
    }
}
