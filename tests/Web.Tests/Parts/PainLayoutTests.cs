namespace MomentArm.Web.Parts;

public sealed class PainLayoutTests
{
    private static readonly PainDay[] Week =
    [
        new(new DateOnly(2026, 3, 2), Planned: true, Done: true, PainDuring: 5, Morning: null),
        new(new DateOnly(2026, 3, 3), Planned: false, Done: false, PainDuring: null, Morning: 4),
        new(new DateOnly(2026, 3, 4), Planned: true, Done: false, PainDuring: null, Morning: 3),
        new(new DateOnly(2026, 3, 5), Planned: true, Done: true, PainDuring: 2, Morning: null),
    ];

    [Fact]
    public void The_summary_says_sessions_and_pains_in_words() => Assert.Equal(
        "Hip pain from Mon 2 Mar 2026 to Thu 5 Mar 2026: 2 of 3 sessions done. "
        + "Pain in sessions: first 5, last 2, highest 5 of 10. Pain in the morning: first 4, last 3, highest 4 of 10.",
        new PainLayout("Hip pain", Week).Summary);

    [Fact]
    public void More_pain_stands_higher() =>
        Assert.Equal(Enumerable.Range(0, 11).Select(PainLayout.Y).OrderDescending(), Enumerable.Range(0, 11).Select(PainLayout.Y));

    [Theory]
    [InlineData(-1)]
    [InlineData(11)]
    public void A_rating_outside_0_to_10_is_refused(int pain) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PainLayout.Y(pain));

    [Fact]
    public void The_line_joins_only_days_with_a_rating() =>
        Assert.Equal(1, new PainLayout("Pain", Week).DuringPath.Count(letter => letter == 'L'));

    [Theory]
    [InlineData(1)]
    [InlineData(14)]
    [InlineData(90)]
    [InlineData(400)]
    public void At_most_eight_days_are_named_unless_they_fit(int count)
    {
        var days = Enumerable.Range(0, count)
            .Select(i => new PainDay(new DateOnly(2026, 1, 1).AddDays(i), false, false, null, null)).ToArray();
        Assert.InRange(new PainLayout("Pain", days).DayLabels.Count(), 1, 8);
    }

    [Fact]
    public void No_days_are_said_plainly() => Assert.Equal("Pain: no days yet.", new PainLayout("Pain", []).Summary);
}
