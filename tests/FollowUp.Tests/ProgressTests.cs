using CsCheck;

namespace MomentArm.FollowUp.Tests;

/// <summary>Home exercise day by day.</summary>
public class ProgressTests
{
    private static readonly DateOnly Monday = new(2026, 3, 2);

    [Fact]
    public void A_morning_answer_belongs_to_the_session_of_the_day_before()
    {
        var days = Progress.Days(
            [Session(0, during: 2), Session(2, during: 1)], [Morning(0, 3), Morning(1, 5), Morning(2, 6), Morning(3, 4)], 3);
        Assert.Equal([Monday, Monday.AddDays(2)], days.Select(d => d.Day));
        Assert.Equal([5, 4], days.Select(d => d.NextMorning));
    }

    [Fact]
    public void The_usual_morning_is_the_median_of_the_week_up_to_the_session_and_not_the_morning_judged()
    {
        // Mornings 2, 2, 3 before and on the day; the next one, 4, is two points up.
        var day = Progress.Days([Session(0, during: 1)], [Morning(-2, 2), Morning(-1, 2), Morning(0, 3), Morning(1, 4)], 3).Single();
        Assert.Equal(PainLight.Amber, day.Light);
        Assert.Equal("next morning 2 points above usual", day.Why);

        // A morning eight days ago is no longer usual.
        Assert.Equal(PainLight.Green, Progress.Days([Session(0, during: 1)], [Morning(-7, 0), Morning(1, 4)], 3).Single().Light);
    }

    [Fact]
    public void Two_sessions_of_one_day_are_one_day_with_the_worst_of_both()
    {
        var day = Progress.Days([Session(0, during: 2, after: 4, effort: 5), Session(0, during: 3, after: 1, effort: 7)], [], 3).Single();
        Assert.Equal((2, 4, 7), (day.Sessions, day.WorstPain, day.Effort));
        Assert.Equal(PainLight.Amber, day.Light);
    }

    [Fact]
    public void The_same_session_sent_twice_is_one_session()
    {
        // Once it counted as two.
        var session = Session(0, during: 2);
        Assert.Equal(1, Progress.Days([session, session with { }], [], 3).Single().Sessions);
    }

    [Fact]
    public void Of_two_answers_for_one_morning_the_worse_counts() =>
        Assert.Equal(6, Progress.Days([Session(0)], [Morning(1, 2), Morning(1, 6)], 3).Single().NextMorning);

    [Fact]
    public void A_day_without_answers_has_no_light_and_unknown_is_not_zero()
    {
        var day = Progress.Days([Session(0)], [], 3).Single();
        Assert.Null(day.Light);
        Assert.Null(day.WorstPain);
        Assert.Null(day.Effort);
        Assert.Null(day.NextMorning);
    }

    [Fact]
    public void The_order_in_which_logs_arrive_does_not_matter()
    {
        var sessions = Enumerable.Range(0, 8).Select(i => Session(i * 3 % 8, during: i % 6, effort: i)).ToArray();
        var mornings = Enumerable.Range(0, 9).Select(i => Morning(i, i * 5 % 7)).ToArray();
        var expected = Progress.Days(sessions, mornings, 3);
        Gen.Select(Gen.Shuffle(sessions), Gen.Shuffle(mornings)).Sample((s, m) => Assert.Equal(expected, Progress.Days(s, m, 3)));
    }

    [Fact]
    public void No_logs_make_no_days() => Assert.Empty(Progress.Days([], [Morning(0, 3)], 3));

    private static SessionLog Session(int day, int? during = null, int? after = null, int? effort = null) => new()
    {
        Id = Guid.NewGuid(),
        Day = Monday.AddDays(day),
        Exercises = [],
        PainDuring = during,
        PainAfter = after,
        Effort = effort,
    };

    private static MorningLog Morning(int day, int pain) => new(Guid.NewGuid(), Monday.AddDays(day), pain, MorningChange.Same);
}
