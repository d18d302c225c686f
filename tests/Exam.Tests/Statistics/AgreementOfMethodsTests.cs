namespace MomentArm.Exam.Tests;

public sealed class AgreementOfMethodsTests
{
    [Fact]
    public void The_two_meters_of_Bland_and_Altman_have_their_bias_and_limits()
    {
        // Bland JM, Altman DG 1986 Lancet 1:307-310, with 1.96 for their 2.
        var meters = AgreementOfMethods.Of(MeterReadings.LargeFirst, MeterReadings.SmallFirst);
        Assert.Equal(17, meters.People);
        Assert.Equal(-2.118, meters.Bias.Value, 3);
        Assert.Equal(38.765, meters.Sd, 3);
        Assert.Equal((-22.05, 17.81), (Math.Round(meters.Bias.Low, 2), Math.Round(meters.Bias.High, 2)));
        Assert.Equal((-78.10, 73.86), (Math.Round(meters.LowerLimit.Value, 2), Math.Round(meters.UpperLimit.Value, 2)));
        Assert.Equal((-79.65, 75.41), (Math.Round(meters.Bias.Value - (2 * meters.Sd), 2), Math.Round(meters.Bias.Value + (2 * meters.Sd), 2)));
        // Printed about the limit with 2 SD: 95 % interval -114.2 to -45.1.
        var half = meters.LowerLimit.High - meters.LowerLimit.Value;
        var printed = meters.Bias.Value - (2 * meters.Sd);
        Assert.Equal((-114.2, -45.1), (Math.Round(printed - half, 1), Math.Round(printed + half, 1)));
    }

    [Fact]
    public void Bias_and_interval_are_those_of_R()
    {
        var meters = AgreementOfMethods.Of(MeterReadings.LargeFirst, MeterReadings.SmallFirst);
        var expected = FromR.Agreement;
        double[] actual = [meters.Bias.Value, meters.Bias.Low, meters.Bias.High, meters.Sd];
        for (var i = 0; i < actual.Length; i++)
            FromR.Near(expected[i], actual[i], 1e-10);
    }

    [Fact]
    public void Readings_of_too_few_or_unlike_people_are_refused()
    {
        Assert.Throws<ArgumentException>(() => AgreementOfMethods.Of([1, 2], [1, 2]));
        Assert.Throws<ArgumentException>(() => AgreementOfMethods.Of([1, 2, 3], [1, 2]));
        Assert.Throws<ArgumentException>(() => AgreementOfMethods.Of([1, 2, 3], [1, 2, double.NaN]));
    }
}
