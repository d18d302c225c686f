using System.Collections.Immutable;

namespace MomentArm.FollowUp.Tests;

/// <summary>Who needs attention and why.</summary>
public class AttentionTests
{
    private static readonly DateOnly Today = new(2026, 3, 20);

    [Fact]
    public void A_quiet_green_week_needs_no_attention() =>
        Assert.Empty(Reasons([Day(5, PainLight.Green), Day(3, PainLight.Green), Day(1, PainLight.Green)]));

    [Fact]
    public void One_red_day_is_urgent_and_says_why() => Assert.Equal(
        [new AttentionReason(true, "Red pain response: pain 7 of 10.")], Reasons([Day(1, PainLight.Red, "pain 7 of 10")]));

    [Fact]
    public void Several_red_days_are_one_reason_with_the_last() => Assert.Equal(
        [new AttentionReason(true, "Red pain response 2 times in 7 days, last: second.")],
        Reasons([Day(5, PainLight.Red, "first"), Day(1, PainLight.Red, "second")]));

    [Theory]
    [InlineData(6, true)]
    [InlineData(7, false)]
    public void A_red_day_counts_for_seven_days(int ago, bool counts) =>
        Assert.Equal(counts, Reasons([Day(ago, PainLight.Red), Day(0, PainLight.Green)]).Any(r => r.Urgent));

    [Fact]
    public void Two_amber_days_stop_a_step_up_and_one_does_not()
    {
        Assert.Equal(
            ["Amber pain response twice or more in 7 days: no step up."],
            Reasons([Day(3, PainLight.Amber), Day(1, PainLight.Amber)]).Select(r => r.Sentence));
        Assert.Empty(Reasons([Day(1, PainLight.Amber)]));
    }

    [Theory]
    [InlineData(6, 0)]
    [InlineData(7, 1)]
    public void A_week_without_a_session_is_quiet(int ago, int count) =>
        Assert.Equal(count, Reasons([Day(ago, PainLight.Green)]).Count(r => r.Sentence == $"No session reported for {ago} days."));

    [Fact]
    public void A_program_never_begun_is_said_as_such() => Assert.Equal(
        ["No session reported since the program began 9 days ago."],
        Attention.Reasons([], [], Today.AddDays(-9), Today).Select(r => r.Sentence));

    [Fact]
    public void A_new_program_is_not_called_quiet_for_the_pause_before_it()
    {
        // Once: "No session reported for 20 days." on the day after a new program was handed over.
        Assert.Empty(Attention.Reasons([Day(20, PainLight.Green)], [], Today.AddDays(-1), Today));
        Assert.Equal(
            ["No session reported since the program began 8 days ago."],
            Attention.Reasons([Day(20, PainLight.Green)], [], Today.AddDays(-8), Today).Select(r => r.Sentence));
    }

    [Fact]
    public void Without_a_program_nobody_is_quiet() => Assert.Empty(Attention.Reasons([Day(30, PainLight.Green)], [], null, Today));

    [Fact]
    public void What_hurt_is_said_once_with_its_count()
    {
        Assert.Equal(["One exercise was stopped because it hurt."], Reasons([Day(1, null)], Report(ExerciseReport.Hurt)).Select(r => r.Sentence));
        Assert.Equal(
            ["Exercises were stopped 2 times because they hurt."],
            Reasons([Day(1, null)], Report(ExerciseReport.Hurt), Report(ExerciseReport.Hurt), Report(ExerciseReport.Done)).Select(r => r.Sentence));
    }

    [Fact]
    public void Too_easy_twice_asks_for_the_next_rung_but_not_beside_a_red_day()
    {
        ExerciseLog[] easy = [Report(ExerciseReport.TooEasy), Report(ExerciseReport.TooEasy)];
        Assert.Equal(
            ["\"Too easy\" 2 times in two weeks: consider the next rung."], Reasons([Day(1, PainLight.Green)], easy).Select(r => r.Sentence));
        Assert.DoesNotContain(Reasons([Day(1, PainLight.Red)], easy), r => r.Sentence.Contains("rung", StringComparison.Ordinal));
        Assert.Empty(Reasons([Day(1, PainLight.Green)], easy[0]));
    }

    [Fact]
    public void Urgent_reasons_come_first()
    {
        var reasons = Reasons([Day(3, PainLight.Amber), Day(2, PainLight.Amber), Day(1, PainLight.Red)], Report(ExerciseReport.Hurt));
        Assert.Equal([true, false, false], reasons.Select(r => r.Urgent));
    }

    private static ImmutableArray<AttentionReason> Reasons(ProgressDay[] days, params ExerciseLog[] reports) =>
        Attention.Reasons([.. days], reports, Today.AddDays(-30), Today);

    private static ProgressDay Day(int ago, PainLight? light, string? why = "because") =>
        new(Today.AddDays(-ago), 1, null, null, null, light, why);

    private static ExerciseLog Report(ExerciseReport report) => new("clam", Body.Side.Right, 3, 30, report);
}
