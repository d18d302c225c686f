using MomentArm.Exam;
using CsCheck;

namespace MomentArm.Web.Parts;

public sealed class ShareScaleTests
{
    [Fact]
    public void The_whole_capacity_stands_at_two_thirds_of_the_bar() =>
        Assert.Equal(10 + 200, ShareScale.Place(1), 9);

    [Fact]
    public void A_bigger_share_never_stands_further_left() =>
        Gen.Double[-1, 3].Select(Gen.Double[0, 2]).Sample((share, more) =>
            ShareScale.Place(share + more) >= ShareScale.Place(share));

    [Fact]
    public void A_share_that_is_no_number_is_refused() =>
        Assert.Throws<ArgumentException>(() => ShareScale.Place(double.NaN));

    [Theory]
    [InlineData(0.50, 0.45, 0.58, Tone.Good, "in the window")]
    [InlineData(0.54, 0.44, 0.66, Tone.Good, "in the window, range reaches outside")]
    [InlineData(0.21, 0.15, 0.30, Tone.Watch, "under the window")]
    [InlineData(0.68, 0.55, 0.84, Tone.Watch, "over the window")]
    [InlineData(0.90, 0.70, 1.10, Tone.Watch, "over the window, may pass the capacity")]
    [InlineData(0.55, 0.40, 1.05, Tone.Watch, "may pass the capacity")]
    [InlineData(1.18, 0.90, 1.72, Tone.Stop, "more than the capacity")]
    public void The_interval_is_said_against_a_window_of_40_to_60_percent(
        double middle, double low, double high, Tone tone, string words) =>
        Assert.Equal((tone, words), ShareScale.Verdict(middle, low, high, 0.4, 0.6));

    [Fact]
    public void Without_a_window_only_the_capacity_counts()
    {
        Assert.Equal((Tone.Neutral, "within the capacity"), ShareScale.Verdict(0.7, 0.6, 0.8, null, null));
        Assert.Equal(Tone.Stop, ShareScale.Verdict(1.01, 0.9, 1.2, null, null).Tone);
    }

    [Fact]
    public void Percentages_are_whole_and_independent_of_the_machine() =>
        Assert.Equal("118 %", ShareScale.Percent(1.1849));
}
