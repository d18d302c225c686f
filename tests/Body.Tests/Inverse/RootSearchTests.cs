using CsCheck;

namespace MomentArm.Body.Tests.Inverse;

/// <summary>Finding where a function takes a value, whatever the function does.</summary>
public class RootSearchTests
{
    private static readonly RootOptions Usual = RootOptions.Usual;

    [Theory]
    [InlineData(0.3)]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(7.123456)]
    public void A_straight_rise_is_met_where_it_is_in_few_calls(double x)
    {
        var calls = 0;
        var found = Found(RootSearch.Find(v => 0.1 + 0.05 * Counted(v, ref calls), 0, 20, 0.1 + 0.05 * x));
        Assert.Equal(x, found.X, 0.003);
        Assert.Equal(0.1 + 0.05 * x, found.Achieved, Usual.ToleranceF);
        Assert.InRange(calls, 25, 32);
    }

    [Fact]
    public void Curves_with_known_roots_are_met_in_few_calls()
    {
        // Roots: cos x = x at 0.7390851332 (Dottie number); x^3 = 2 at 1.2599210499; x e^x = 1 at 0.5671432904 (omega constant).
        (Func<double, double> F, double Low, double High, double Target, double Root)[] cases =
        [
            (x => Math.Cos(x) - x, 0, 2, 0, 0.7390851332), (x => x * x * x, -1, 3, 2, 1.2599210499), (x => x * Math.Exp(x), 0, 5, 1, 0.5671432904),
            (x => Math.Tanh(50 * (x - 0.777)), 0, 1, 0.5, 0.777 + Math.Atanh(0.5) / 50),
        ];
        foreach (var (f, low, high, target, root) in cases)
        {
            var calls = 0;
            var found = Found(RootSearch.Find(x => f(Counted(x, ref calls)), low, high, target, Usual with { ToleranceF = 1e-10 }));
            Assert.Equal(root, found.X, 1e-9);
            Assert.InRange(calls, 25, 40);
        }
    }

    [Fact]
    public void Of_several_places_the_smallest_or_the_one_nearest_a_wish_is_told()
    {
        // sin x = 0.5 at pi / 6, 5 pi / 6, 13 pi / 6, 17 pi / 6.
        Assert.Equal(Math.PI / 6, Found(RootSearch.Find(Math.Sin, 0, 10, 0.5)).X, 0.001);
        foreach (var (near, root) in new[] { (0.0, 1), (2.5, 5), (4.6, 5), (4.9, 13), (9.9, 17), (50, 17) })
            Assert.Equal(root * Math.PI / 6, Found(RootSearch.Find(Math.Sin, 0, 10, 0.5, Usual with { Near = near })).X, 0.001);
    }

    [Fact]
    public void A_wish_that_already_holds_is_kept() =>
        Assert.Equal(6.2, Found(RootSearch.Find(_ => 0.4, 0, 10, 0.4, Usual with { Near = 6.2 })).X);

    [Fact]
    public void A_flat_function_is_met_at_once_or_not_at_all()
    {
        Assert.Equal(0, Found(RootSearch.Find(_ => 0.4, 0, 10, 0.4)).X);
        var not = NotReachable(RootSearch.Find(_ => 0.4, 0, 10, 0.5));
        Assert.Equal((0.4, 0.4), (not.Largest, not.Smallest));
        Assert.Null(not.Jump);
    }

    [Fact]
    public void A_stretch_at_the_target_is_told_by_its_first_place_or_its_place_nearest_a_wish()
    {
        static double Shelf(double x) => x < 3.21 ? x / 3.21 : x < 6.54 ? 1 : 1 + x - 6.54;
        Assert.Equal(3.21, Found(RootSearch.Find(Shelf, 0, 10, 1)).X, 0.003);
        Assert.Equal(6.54, Found(RootSearch.Find(Shelf, 0, 10, 1, Usual with { Near = 9 })).X, 0.003);
    }

    [Fact]
    public void A_leap_over_the_target_is_not_taken_for_a_root_and_is_told()
    {
        var not = NotReachable(RootSearch.Find(x => x < 1.234 ? 0.4 : 0.52, 0, 20, 0.45));
        Assert.Equal(1.234, not.Jump!.At, 0.001);
        Assert.Equal((0.4, 0.52), (not.Jump.Before, not.Jump.After));
        Assert.Equal((0.52, 0.4), (not.Largest, not.Smallest));
    }

    [Fact]
    public void Behind_a_leap_the_true_place_is_found()
    {
        // Leaps from 0.1 to 0.8 at 0.77, falls to 0 at 9.
        static double Saw(double x) => x < 0.77 ? 0.1 : 0.8 * (9 - x) / 8.23;
        Assert.Equal(9 - 8.23 * 0.5 / 0.8, Found(RootSearch.Find(Saw, 0, 10, 0.5)).X, 0.003);
    }

    [Fact]
    public void A_steep_slope_is_no_leap() =>
        Assert.Equal(4.321, Found(RootSearch.Find(x => Math.Atan(1e5 * (x - 4.321)), 0, 10, 0.3)).X, 1e-4);

    [Fact]
    public void A_target_just_at_a_turning_point_is_met()
    {
        // The top of a bell between two of the first steps, and a kink.
        Assert.Equal(0.61234, Found(RootSearch.Find(x => 0.43 - (x - 0.61234) * (x - 0.61234), 0, 1, 0.43)).X, 0.011);
        Assert.Equal(0.61234, Found(RootSearch.Find(x => 0.43 - Math.Abs(x - 0.61234), 0, 1, 0.43)).X, 0.0003);
        Assert.Equal(0.61234, Found(RootSearch.Find(x => 0.43 + Math.Abs(x - 0.61234), 0, 1, 0.43)).X, 0.0003);
        Assert.Equal(1, Found(RootSearch.Find(x => x, 0, 1, 1)).X, 0.0002);
    }

    [Fact]
    public void Just_above_a_turning_point_the_best_is_told_with_its_place()
    {
        var not = NotReachable(RootSearch.Find(x => 0.43 - (x - 6.1234) * (x - 6.1234) / 10, 0, 20, 0.65));
        Assert.Equal(0.43, not.Largest, 1e-6);
        Assert.Equal(6.1234, not.LargestAt, 0.01);
        Assert.Equal((0.43 - (20 - 6.1234) * (20 - 6.1234) / 10, 20), (not.Smallest, not.SmallestAt));
    }

    [Fact]
    public void A_rise_that_ends_short_of_the_target_is_told_with_its_end()
    {
        var not = NotReachable(RootSearch.Find(x => 0.02 * x, 0, 20, 0.65));
        Assert.Equal((0.4, 20, 0, 0), (not.Largest, not.LargestAt, not.Smallest, not.SmallestAt));
    }

    [Fact]
    public void What_cannot_be_computed_is_stepped_round_up_to_its_edge()
    {
        // Not computed below 2.345 and above 7.89; the target is met just inside either edge.
        static double Part(double x) => x is < 2.345 or > 7.89 ? double.NaN : x;
        Assert.Equal(2.35, Found(RootSearch.Find(Part, 0, 10, 2.35)).X, 0.001);
        Assert.Equal(7.885, Found(RootSearch.Find(Part, 0, 10, 7.885)).X, 0.001);
        var not = NotReachable(RootSearch.Find(Part, 0, 10, 8));
        Assert.Equal(7.89, not.Largest, 0.002);

        // A hole in the middle, met by the narrowing of a change of sign.
        static double Hole(double x) => x is > 4.9 and < 5.1 ? double.NaN : x - 5;
        Assert.Equal(5.15, Found(RootSearch.Find(Hole, 0, 10, 0.15, Usual with { Steps = 3 })).X, 0.001);
        Assert.IsType<RootNotReachable>(RootSearch.Find(Hole, 0, 10, 0, Usual with { Steps = 3 }));
    }

    [Fact]
    public void What_can_be_computed_nowhere_is_told()
    {
        Assert.Contains("0 to 20", Assert.IsType<RootNotComputed>(RootSearch.Find(_ => double.NaN, 0, 20, 0.5)).Reason, StringComparison.Ordinal);
        Assert.IsType<RootNotComputed>(RootSearch.Find(_ => double.PositiveInfinity, 0, 20, 0.5));
    }

    [Fact]
    public void A_range_of_one_point_is_that_point()
    {
        Assert.Equal(3, Found(RootSearch.Find(x => x, 3, 3, 3)).X);
        Assert.IsType<RootNotReachable>(RootSearch.Find(x => x, 3, 3, 4));
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(double.NaN, 1, 0)]
    [InlineData(0, double.PositiveInfinity, 0)]
    [InlineData(0, 1, double.NaN)]
    public void A_question_that_is_none_is_refused(double low, double high, double target) =>
        Assert.Throws<ArgumentException>(() => RootSearch.Find(x => x, low, high, target));

    [Fact]
    public void Any_monotone_function_is_met_at_any_value_it_takes() => Gen.Select(
        Gen.Double[0.001, 1].Array[4, 12], Gen.Double[-50, 50], Gen.Double[0.1, 100], Gen.Double[0, 1], Gen.Bool).Sample(
        (rises, low, span, part, falls) =>
        {
            // Straight pieces between random heights: continuous, with kinks.
            double[] heights = [0, .. rises.Select((_, i) => rises[..(i + 1)].Sum())];
            double F(double x)
            {
                var along = Math.Clamp((x - low) / span, 0, 1) * rises.Length;
                var i = Math.Min((int)along, rises.Length - 1);
                return (falls ? -1 : 1) * (heights[i] + (along - i) * rises[i]);
            }

            var target = F(low + part * span);
            var found = Found(RootSearch.Find(F, low, low + span, target));
            Assert.Equal(target, F(found.X), Usual.ToleranceF);
            Assert.Equal(F(found.X), found.Achieved, 1e-12);
            Assert.InRange(found.X, low, low + span);
        },
        iter: 2000);

    [Fact]
    public void Any_pieced_function_is_answered_truly_and_within_the_calls_allowed() => Gen.Select(
        Gen.Select(Gen.Int[0, 5], Gen.Double[-1, 1], Gen.Double[-3, 3]).Array[1, 8], Gen.Double[-1, 1], Gen.Int[1, 40], Gen.Bool).Sample(
        (pieces, target, steps, prefer) =>
        {
            // Each piece is a sloped or wavy stretch, or cannot be computed; it leaps between pieces.
            double F(double x)
            {
                var (kind, start, slope) = pieces[Math.Min((int)(x * pieces.Length), pieces.Length - 1)];
                return kind == 0 ? double.NaN : kind == 1 ? start : kind == 2 ? start + slope * Math.Sin(40 * x) : start + slope * x;
            }

            var calls = 0;
            var options = Usual with { Steps = steps, MostCalls = 300, Near = prefer ? 0.5 : null };
            switch (RootSearch.Find(x => F(Counted(x, ref calls)), 0, 1, target, options))
            {
                case RootFound found:
                    Assert.Equal(target, F(found.X), options.ToleranceF);
                    break;
                case RootNotReachable not:
                    Assert.Equal(F(not.LargestAt), not.Largest, 1e-12);
                    Assert.Equal(F(not.SmallestAt), not.Smallest, 1e-12);
                    Assert.True(not.Jump is not null || calls >= options.MostCalls || Math.Sign(not.Largest - target) == Math.Sign(not.Smallest - target) || pieces.Any(p => p.Item1 == 0));
                    break;
                case RootNotComputed:
                    Assert.True(double.IsNaN(F(0)) && double.IsNaN(F(1)));
                    break;
            }

            Assert.InRange(calls, 2, options.MostCalls + 2);
        },
        iter: 20000);

    [Fact]
    public void A_bracket_closes_in_on_a_leap_and_never_leaves_its_ends()
    {
        var seen = new List<double>();
        double Leap(double x)
        {
            seen.Add(x);
            return x < Math.E ? -1 : 1e9;
        }

        var (best, opposite) = BracketedRoot.Find(Leap, (0, -1), (10, 1e9), 1e-9, 1e-9, 500);
        Assert.Equal(Math.E, best.X, 1e-8);
        Assert.True(Math.Abs(opposite.X - best.X) <= 1e-9 && best.F > 0 != opposite.F > 0);
        Assert.All(seen, x => Assert.InRange(x, 0, 10));
        Assert.InRange(seen.Count, 33, 150);
    }

    private static double Counted(double x, ref int calls)
    {
        calls++;
        return x;
    }

    private static RootFound Found(RootAnswer answer) => Assert.IsType<RootFound>(answer);

    private static RootNotReachable NotReachable(RootAnswer answer) => Assert.IsType<RootNotReachable>(answer);
}
