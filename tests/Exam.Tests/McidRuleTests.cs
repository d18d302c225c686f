namespace MomentArm.Exam.Tests;

public class McidRuleTests
{
    [Theory]
    // doi:10.1055/a-1304-3677 (2021): 1 from 1-4, 2 from 5-7, 3 to 4 from 8-10.
    [InlineData(8, 6, false)]
    [InlineData(5, 3, true)]
    [InlineData(3, 2, true)]
    [InlineData(9, 6, true)]
    public void Pain_by_baseline(double before, double after, bool important) =>
        Assert.Equal(important, Shipped.Measure("pain-now").Mcid!.IsWorthwhile(before, after));

    [Theory]
    // Ostelo 2008, Spine 33:90-94: 2 points or 30 % of baseline.
    [InlineData(8, 6, false, true)]
    [InlineData(6, 4, true, true)]
    public void Pain_by_thirty_percent_or_two_points(double before, double after, bool byFraction, bool byPoints)
    {
        Assert.Equal(byFraction, Rule(McidForm.Fraction, 0.30).IsWorthwhile(before, after));
        Assert.Equal(byPoints, Rule(McidForm.Fixed, 2).IsWorthwhile(before, after));
    }

    [Fact]
    public void A_baseline_without_band_says_nothing() =>
        Assert.Null(Shipped.Measure("pain-now").Mcid!.IsWorthwhile(0, 3));

    private static McidRule Rule(McidForm form, double value) => new() { Form = form, Value = value, Population = "", Source = "" };
}
