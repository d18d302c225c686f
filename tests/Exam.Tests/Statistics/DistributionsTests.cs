namespace MomentArm.Exam.Tests;

/// <summary>Held against R (stats), numbers made by tools/statistics/make.R.</summary>
public sealed class DistributionsTests
{
    [Fact]
    public void Quantiles_are_those_of_R()
    {
        foreach (var row in FromR.Rows("normal"))
            FromR.Near(row[1], Distributions.NormalQuantile(row[0]), 1e-10);
        foreach (var row in FromR.Rows("student"))
            FromR.Near(row[2], Distributions.StudentQuantile(row[0], row[1]), 1e-9);
        foreach (var row in FromR.Rows("fisher"))
            FromR.Near(row[3], Distributions.FisherQuantile(row[0], row[1], row[2]), 1e-9);
        foreach (var row in FromR.Rows("chiSquare"))
            FromR.Near(row[2], Distributions.ChiSquareQuantile(row[0], row[1]), 1e-9);
    }

    [Fact]
    public void Shares_below_the_quantiles_of_R_are_the_shares_asked_for()
    {
        foreach (var row in FromR.Rows("student"))
            Assert.Equal(row[0], Distributions.StudentBelow(row[2], row[1]), 10);
        foreach (var row in FromR.Rows("fisher"))
            Assert.Equal(row[0], Distributions.FisherBelow(row[3], row[1], row[2]), 10);
        foreach (var row in FromR.Rows("chiSquare"))
            Assert.Equal(row[0], Distributions.ChiSquareBelow(row[2], row[1]), 10);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void A_share_that_is_none_is_refused(double share)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Distributions.NormalQuantile(share));
        Assert.Throws<ArgumentOutOfRangeException>(() => Distributions.StudentQuantile(share, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Distributions.StudentQuantile(0.5, -1));
    }
}
