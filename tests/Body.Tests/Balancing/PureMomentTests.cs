using CsCheck;
using Xunit;

namespace MomentArm.Body.Tests.Balancing;

/// <summary>The largest moment about one axis with none about two others, by hand and against every vertex.</summary>
public sealed class PureMomentTests
{
    /// <summary>By hand: where the second line meets only half of the first one's side moment, the first gives half: 0.5 + 1.</summary>
    [Fact]
    public void Two_lines_by_hand()
    {
        Assert.Equal(2, PureMoment.Largest([1, 1], [1, -1], [0, 0], [1, 1]), 1e-6);
        Assert.Equal(1.5, PureMoment.Largest([1, 1], [1, -0.5], [0, 0], [1, 1]), 1e-6);
        Assert.Equal(0, PureMoment.Largest([1, 1], [1, 0.5], [0, 0], [1, 1]), 1e-6);
        Assert.Equal(0, PureMoment.Largest([-1, -1], [1, -1], [0, 0], [1, 1]), 1e-6);
    }

    /// <summary>The exact answer lies at a vertex: all lines but two at 0 or 1. The price of effort takes no more than it can cost.</summary>
    [Fact]
    public void Random_lines_come_within_the_price_of_effort_of_the_best_vertex()
    {
        var seen = 0;
        Gen.Int[-1000, 1000].Select(i => i / 1000.0).Array[18].Sample(
            numbers =>
            {
                var (c, p, q) = (numbers[..6], numbers[6..12], numbers[12..]);
                // Lines whose side moments are parallel leave vertices that the enumeration by pairs cannot name.
                if (Enumerable.Range(0, 6).Any(i => Enumerable.Range(0, i).Any(j => Math.Abs(p[i] * q[j] - p[j] * q[i]) < 1e-3)))
                    return;
                seen++;
                var best = BestVertex(c, p, q);
                var pure = PureMoment.Largest(c, p, q, [1, 1, 1, 1, 1, 1]);
                var helping = c.Where(v => v > 0).ToArray();
                var price = helping.Length == 0 ? 0 : 0.1 * helping.Average() * c.Length / 2;
                Assert.InRange(pure, best - price - 1e-3, best + 1e-3);
            },
            iter: 4000, threads: 1);
        Assert.True(seen > 2000);
    }

    [Fact]
    public void A_line_cut_in_two_gives_what_it_gave_whole()
    {
        var whole = PureMoment.Largest([1, 0.8, 0.5], [0.6, -0.5, 0.2], [0.1, 0.3, -0.4], [2, 1, 1]);
        var cut = PureMoment.Largest([0.5, 0.5, 0.8, 0.5], [0.3, 0.3, -0.5, 0.2], [0.05, 0.05, 0.3, -0.4], [1, 1, 1, 1]);
        Assert.Equal(whole, cut, 1e-6);
    }

    private static double BestVertex(double[] c, double[] p, double[] q)
    {
        var best = 0.0;
        for (var i = 0; i < c.Length; i++)
        {
            for (var j = i + 1; j < c.Length; j++)
            {
                var determinant = p[i] * q[j] - p[j] * q[i];
                for (var ends = 0; ends < 1 << c.Length; ends++)
                {
                    var (sumC, sumP, sumQ) = (0.0, 0.0, 0.0);
                    for (var k = 0; k < c.Length; k++)
                    {
                        if (k == i || k == j || (ends >> k & 1) == 0)
                            continue;
                        (sumC, sumP, sumQ) = (sumC + c[k], sumP + p[k], sumQ + q[k]);
                    }

                    var (a, b) = ((-sumP * q[j] + sumQ * p[j]) / determinant, (-sumQ * p[i] + sumP * q[i]) / determinant);
                    if (a is >= -1e-12 and <= 1 + 1e-12 && b is >= -1e-12 and <= 1 + 1e-12)
                        best = Math.Max(best, sumC + a * c[i] + b * c[j]);
                }
            }
        }

        return best;
    }
}
