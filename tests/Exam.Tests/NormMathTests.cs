using CsCheck;

namespace MomentArm.Exam.Tests;

public class NormMathTests
{
    [Fact]
    public void Knee_flexion_of_118_degrees_at_30()
    {
        // Roach and Miles 1991, Phys Ther 71:656-665 (from memory): mean 134, SD 9.
        var z = NormMath.ZScore(118, 134, 9);
        Assert.Equal(-1.778, z, 0.001);
        Assert.Equal(3.8, NormMath.Percentile(z), 0.05);
    }

    [Fact]
    public void Runner_with_outer_knee_pain_against_healthy_men() =>
        // Fredericson 2000 (from memory): 9.73 SD 1.30; 6.17 gives -2.74.
        Assert.Equal(-2.74, NormMath.ZScore(6.17, 9.73, 1.30), 0.005);

    [Fact]
    public void A_spread_follows_from_the_interval_of_a_mean_only_with_its_number_of_people()
    {
        // Soucie 2011 interval 140.9 to 142.9; n = 150 is made up for the check.
        Assert.Equal(6.25, NormMath.SdFromConfidenceInterval(140.9, 142.9, 150), 0.01);
        Assert.Throws<ArgumentOutOfRangeException>(() => NormMath.SdFromConfidenceInterval(140.9, 142.9, 1));
    }

    [Fact]
    public void Where_only_a_mean_of_strength_is_known_a_quarter_of_it_gives_an_approximate_score()
    {
        // Benfica 2018: coefficients of variation of 20 to 30 %; Sarabon 2021: knee extension of men 2.92 to 3.45, middle 3.185 N m/kg.
        var middle = (2.92 + 3.45) / 2;
        Assert.Equal(0.80, 0.25 * middle, 0.005);
        Assert.Equal(-1.24, NormMath.ZScore(2.2, middle, 0.25 * middle), 0.005);
    }

    [Theory]
    // Standard normal table.
    [InlineData(-3, 0.135)]
    [InlineData(-1.96, 2.500)]
    [InlineData(-1, 15.866)]
    [InlineData(0, 50)]
    [InlineData(1.645, 95.002)]
    [InlineData(2.576, 99.500)]
    public void Percentiles_of_the_normal_table(double z, double percent) =>
        Assert.Equal(percent, NormMath.Percentile(z), 0.001);

    [Fact]
    public void Percentiles_rise_and_mirror() =>
        Gen.Double[-8, 8].Sample(z =>
        {
            Assert.Equal(100, NormMath.Percentile(z) + NormMath.Percentile(-z), 1e-9);
            Assert.True(NormMath.Percentile(z + 0.01) >= NormMath.Percentile(z) - 1e-12);
        });
}
