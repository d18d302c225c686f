using CsCheck;

namespace MomentArm.FollowUp.Tests;

/// <summary>Days done against days prescribed.</summary>
public class AdherenceTests
{
    private static readonly DateOnly Monday = new(2026, 3, 2);

    /// <summary>Source: Newcombe 1998, Stat Med 17:857 (first four; figures from memory, worked again); the others worked by hand.</summary>
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    [InlineData(18, 21, 0.6536, 0.9502)]
    [InlineData(12, 12, 0.7575, 1)]
    [InlineData(0, 7, 0, 0.3543)]
    public void Wilson_s_interval_is_as_published(int successes, int trials, double low, double high)
    {
        var interval = Adherence.Wilson(successes, trials);
        Assert.Equal(low, interval.Low, 0.00005);
        Assert.Equal(high, interval.High, 0.00005);
    }

    [Fact]
    public void The_interval_holds_the_share_and_is_its_own_mirror_image() =>
        Gen.Int[1, 200].SelectMany(n => Gen.Int[0, n].Select(k => (k, n))).Sample(c =>
        {
            var (low, high) = Adherence.Wilson(c.k, c.n);
            var share = (double)c.k / c.n;
            Assert.True(low >= 0 && low <= share + 1e-12 && share - 1e-12 <= high && high <= 1);
            var mirrored = Adherence.Wilson(c.n - c.k, c.n);
            Assert.Equal(1 - high, mirrored.Low, 1e-12);
            Assert.Equal(1 - low, mirrored.High, 1e-12);
        });

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-1, 5)]
    [InlineData(6, 5)]
    public void Counts_that_cannot_be_are_refused(int successes, int trials) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Adherence.Wilson(successes, trials));

    [Fact]
    public void Fourteen_of_twenty_one_planned_days_are_two_thirds()
    {
        // Three weeks, every day prescribed, 14 different days done: 66.7 % (worked by hand; what is not logged counts as not done here).
        var adherence = Adherence.Of(Enumerable.Range(0, 14).Select(i => Monday.AddDays(i)), Monday, Monday.AddDays(20), 7);
        Assert.Equal((14, 21), (adherence.DoneDays, adherence.PlannedDays));
        Assert.Equal(2.0 / 3, adherence.Share!.Value, 1e-12);
        Assert.Equal(Adherence.Wilson(14, 21), (adherence.Low, adherence.High));
    }

    [Fact]
    public void The_same_day_twice_counts_once_and_days_outside_the_period_do_not_count()
    {
        DateOnly[] days = [Monday, Monday, Monday.AddDays(2), Monday.AddDays(-1), Monday.AddDays(7)];
        var adherence = Adherence.Of(days, Monday, Monday.AddDays(6), 4);
        Assert.Equal((2, 4), (adherence.DoneDays, adherence.PlannedDays));
        Assert.Equal(0.5, adherence.Share);
    }

    [Fact]
    public void Both_ends_of_the_period_are_inside() =>
        Assert.Equal(2, Adherence.Of([Monday, Monday.AddDays(6)], Monday, Monday.AddDays(6), 7).DoneDays);

    [Theory]
    [InlineData(7, 3, 3)]
    [InlineData(10, 3, 4)] // 4.29
    [InlineData(14, 5, 10)]
    [InlineData(6, 4, 3)] // 3.43
    [InlineData(1, 3, 0)] // 0.43
    [InlineData(4, 4, 2)] // 2.29
    public void Planned_days_are_the_period_s_share_of_the_week_rounded(int length, int perWeek, int planned) =>
        Assert.Equal(planned, Adherence.Of([], Monday, Monday.AddDays(length - 1), perWeek).PlannedDays);

    [Fact]
    public void More_than_prescribed_is_all_of_it_and_no_more()
    {
        var adherence = Adherence.Of(Enumerable.Range(0, 7).Select(i => Monday.AddDays(i)), Monday, Monday.AddDays(6), 3);
        Assert.Equal((7, 3, 1.0), (adherence.DoneDays, adherence.PlannedDays, adherence.Share));
    }

    [Fact]
    public void Where_nothing_was_planned_there_is_no_share()
    {
        var adherence = Adherence.Of([Monday], Monday, Monday.AddDays(-1), 3);
        Assert.Null(adherence.Share);
        Assert.Equal((0.0, 1.0), (adherence.Low, adherence.High));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(8)]
    public void A_week_has_one_to_seven_days(int perWeek) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Adherence.Of([], Monday, Monday, perWeek));
}
