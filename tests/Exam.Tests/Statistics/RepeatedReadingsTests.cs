using System.Collections.Immutable;

namespace MomentArm.Exam.Tests;

public sealed class RepeatedReadingsTests
{
    // Shrout PE, Fleiss JL 1979 Psychol Bull 86:420-428, table 2: six people, four judges.
    private static readonly ImmutableArray<ImmutableArray<double>> Judges =
        [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]];

    [Fact]
    public void The_table_of_Shrout_and_Fleiss_gives_their_mean_squares_and_coefficients()
    {
        var readings = RepeatedReadings.Of(Judges);
        Assert.Equal(5.2917, readings.Mean, 4);
        Assert.Equal([11.242, 6.264, 32.486, 1.019], ((double[])
            [readings.BetweenPeople, readings.WithinPeople, readings.BetweenTimes, readings.Residual]).Select(v => Math.Round(v, 3)));
        Assert.Equal(0.1657, readings.Icc(IccForm.OneWay)!.Value, 4);
        Assert.Equal(0.2898, readings.Icc(IccForm.Agreement)!.Value, 4);
        Assert.Equal(0.7148, readings.Icc(IccForm.Consistency)!.Value, 4);
        Assert.Equal(0.4428, readings.Icc(IccForm.OneWay, mean: true)!.Value, 4);
        Assert.Equal(0.6201, readings.Icc(IccForm.Agreement, mean: true)!.Value, 4);
        Assert.Equal(0.9093, readings.Icc(IccForm.Consistency, mean: true)!.Value, 4);
        Assert.Equal(2.503, readings.SemAgreement, 3);
        Assert.Equal(1.010, readings.SemConsistency, 3);
    }

    [Fact]
    public void Mean_squares_coefficients_and_intervals_are_those_of_R()
    {
        foreach (var table in FromR.Tables)
        {
            var readings = RepeatedReadings.Of(
                [.. table.GetProperty("table").EnumerateArray().Select(row => FromR.Numbers(row).ToImmutableArray())]);
            Same(table.GetProperty("meanSquares"), readings.BetweenPeople, readings.WithinPeople, readings.BetweenTimes, readings.Residual);
            Same(table.GetProperty("oneWay"), Parts(readings.Icc(IccForm.OneWay)));
            Same(table.GetProperty("agreement"), Parts(readings.Icc(IccForm.Agreement)));
            Same(table.GetProperty("consistency"), Parts(readings.Icc(IccForm.Consistency)));
            Same(
                table.GetProperty("means"),
                [
                    .. Parts(readings.Icc(IccForm.OneWay, true)), .. Parts(readings.Icc(IccForm.Agreement, true)),
                    .. Parts(readings.Icc(IccForm.Consistency, true)),
                ]);
        }
    }

    [Fact]
    public void Bland_and_Altmans_meters_repeat_within_their_printed_limits()
    {
        // Bland JM, Altman DG 1986 Lancet 1:307-310: within-subject SD 15.31 (large meter) and 19.91 (small meter).
        Assert.Equal(15.31, RepeatedReadings.Of(Pairs(MeterReadings.LargeFirst, MeterReadings.LargeSecond)).WithinSd, 2);
        var small = RepeatedReadings.Of(Pairs(MeterReadings.SmallFirst, MeterReadings.SmallSecond));
        Assert.Equal(19.91, small.WithinSd, 2);
        Assert.InRange(small.WithinSd, small.WithinSdInterval.Low, small.WithinSdInterval.High);
    }

    [Fact]
    public void A_change_of_unit_changes_no_coefficient_and_scales_the_error()
    {
        var inches = RepeatedReadings.Of([.. Judges.Select(row => row.Select(v => v * 2.54).ToImmutableArray())]);
        Assert.Equal(RepeatedReadings.Of(Judges).Icc(IccForm.Agreement)!.Low, inches.Icc(IccForm.Agreement)!.Low, 10);
        Assert.Equal(RepeatedReadings.Of(Judges).SemAgreement * 2.54, inches.SemAgreement, 10);
    }

    [Fact]
    public void People_who_repeat_exactly_give_one_and_people_who_do_not_differ_give_none()
    {
        var exact = RepeatedReadings.Of([[1, 1], [2, 2], [4, 4]]);
        Assert.Equal(new Estimate(1, 1, 1), exact.Icc(IccForm.Agreement));
        Assert.Equal(new Estimate(1, 1, 1), exact.Icc(IccForm.OneWay));
        Assert.Null(RepeatedReadings.Of([[1, 2], [1, 2]]).Icc(IccForm.Agreement));
    }

    [Fact]
    public void Tables_that_cannot_be_used_are_refused()
    {
        Assert.Throws<ArgumentException>(() => RepeatedReadings.Of([[1, 2]]));
        Assert.Throws<ArgumentException>(() => RepeatedReadings.Of([[1], [2]]));
        Assert.Throws<ArgumentException>(() => RepeatedReadings.Of([[1, 2], [1, 2, 3]]));
        Assert.Throws<ArgumentException>(() => RepeatedReadings.Of([[1, 2], [1, double.NaN]]));
    }

    private static ImmutableArray<ImmutableArray<double>> Pairs(ImmutableArray<double> first, ImmutableArray<double> second) =>
        [.. first.Zip(second, (a, b) => ImmutableArray.Create(a, b))];

    private static double[] Parts(Estimate? estimate) => [estimate!.Value, estimate.Low, estimate.High];

    private static void Same(System.Text.Json.JsonElement expected, params double[] actual)
    {
        var numbers = FromR.Numbers(expected);
        Assert.Equal(numbers.Length, actual.Length);
        for (var i = 0; i < numbers.Length; i++)
            FromR.Near(numbers[i], actual[i], 1e-9);
    }
}
