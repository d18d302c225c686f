using System.Collections.Immutable;
using CsCheck;

namespace MomentArm.Body.Tests.Mathematics;

/// <summary>The spline of the knee's slide. Its published values are checked in <see cref="Model.PublishedPositionsTests"/>.</summary>
public class CubicSplineTests
{
    private static readonly Gen<ImmutableArray<(double X, double Y)>> Knots =
        Gen.Select(Gen.Double[0.05, 1].Array[4, 12], Gen.Double[-1, 1].Array[12], (steps, values) =>
        {
            var x = -1.0;
            return steps.Select((step, i) => (x += step, values[i])).ToImmutableArray();
        });

    [Fact]
    public void It_passes_through_its_knots() => Knots.Sample(knots =>
    {
        var spline = new CubicSpline(knots);
        foreach (var (x, y) in knots)
            Assert.Equal(y, spline.At(x).Value, 1e-9);
    });

    [Fact]
    public void Value_slope_and_curvature_are_continuous_at_inner_knots() => Knots.Sample(knots =>
    {
        var spline = new CubicSpline(knots);
        const double h = 1e-5;
        foreach (var (x, _) in knots.Skip(1).Take(knots.Length - 2))
        {
            var (left, right) = (spline.At(x - h), spline.At(x + h));
            var scale = 1 + Math.Abs(spline.At(x).Slope) + Curvature(x - 2 * h) + Curvature(x + 2 * h);
            Assert.Equal(left.Value, right.Value, 3 * h * scale);
            Assert.Equal(left.Slope, right.Slope, 3 * h * scale);

            // A jump of curvature would show at full size here; the slope of the curvature shows only times h.
            double Bend(double at) => (spline.At(at + h).Slope - spline.At(at - h).Slope) / (2 * h);
            Assert.Equal(Bend(x - 2 * h), Bend(x + 2 * h), 0.05 * scale);
        }

        double Curvature(double at) => Math.Abs((spline.At(at + h).Slope - spline.At(at - h).Slope) / (2 * h));
    });

    [Fact]
    public void Its_slope_is_the_derivative_of_its_value() => Gen.Select(Knots, Gen.Double[-1.5, 6]).Sample((knots, at) =>
    {
        // A step across an end knot meets a bend; keep away from it.
        if (Math.Abs(at - knots[0].X) < 1e-4 || Math.Abs(at - knots[^1].X) < 1e-4)
            return;
        var spline = new CubicSpline(knots);
        const double h = 1e-5;
        var slope = spline.At(at).Slope;
        Assert.Equal((spline.At(at + h).Value - spline.At(at - h).Value) / (2 * h), slope, 1e-5 * (1 + Math.Abs(slope)));
    });

    [Fact]
    public void A_cubic_is_reproduced_exactly() =>
        Gen.Select(Gen.Double[-1, 1].Array[4], Gen.Double[0.1, 1].Array[4, 9], Gen.Double[0, 1]).Sample((c, steps, t) =>
        {
            double Cubic(double x) => c[0] + x * (c[1] + x * (c[2] + x * c[3]));
            double Slope(double x) => c[1] + x * (2 * c[2] + 3 * x * c[3]);
            var x = -1.0;
            var knots = steps.Select(step => (x += step, Cubic(x))).ToImmutableArray();
            var at = knots[0].Item1 + t * (knots[^1].Item1 - knots[0].Item1);
            var (value, slope) = new CubicSpline(knots).At(at);
            Assert.Equal(Cubic(at), value, 1e-8);
            Assert.Equal(Slope(at), slope, 1e-7);
        });

    [Theory]
    [InlineData(-3, -5)]
    [InlineData(0.5, 2)]
    [InlineData(10, 21)]
    public void Two_knots_are_a_straight_line_inside_and_out(double at, double value)
    {
        var line = new CubicSpline([(0, 1), (1, 3)]);
        Assert.Equal(value, line.At(at).Value, Tolerances.Position);
        Assert.Equal(2, line.At(at).Slope, Tolerances.Position);
    }

    [Fact]
    public void Outside_its_knots_it_goes_on_straight() => Knots.Sample(knots =>
    {
        var spline = new CubicSpline(knots);
        var (end, slope) = spline.At(knots[^1].X);
        Assert.Equal(end + 3 * slope, spline.At(knots[^1].X + 3).Value, 1e-9);
        Assert.Equal(slope, spline.At(knots[^1].X + 3).Slope);
    });

    [Fact]
    public void Too_few_knots_or_knots_that_do_not_rise_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new CubicSpline([(0, 0)]));
        Assert.Throws<ArgumentException>(() => new CubicSpline([(0, 0), (1, 1), (2, 2)]));
        Assert.Throws<ArgumentException>(() => new CubicSpline([(0, 0), (1, 1), (1, 2), (3, 3)]));
        Assert.Throws<ArgumentException>(() => new CubicSpline([(0, 0), (double.NaN, 1)]));
    }
}
