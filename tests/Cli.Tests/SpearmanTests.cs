namespace MomentArm.Cli.Tests;

/// <summary>Rank correlation by hand.</summary>
public class SpearmanTests
{
    [Fact]
    public void Ties_share_the_mean_rank()
    {
        // By hand: ranks 1, 2.5, 2.5, 4 and 2, 1, 3.5, 3.5; products 2.25, squares 4.5 and 4.5.
        Assert.Equal(0.5, Spearman.Of([10, 20, 20, 40], [3, 1, 4, 4]), 1e-12);
    }

    [Fact]
    public void Without_ties_it_is_one_less_six_times_the_squared_differences()
    {
        // rho = 1 - 6 sum d^2 / (n (n^2 - 1)): differences 2, 0, 1, 1, -4 square to 22, so 1 - 132 / 120.
        Assert.Equal(-0.1, Spearman.Of([1, 2, 3, 4, 5], [3, 2, 4, 5, 1]), 1e-12);
        Assert.Equal(1, Spearman.Of([1, 2, 3], [10, 20, 90]), 1e-12);
        Assert.Equal(-1, Spearman.Of([1, 2, 3], [9, 5, 0]), 1e-12);
    }
}
