using CsCheck;

namespace MomentArm.Exam.Tests.Reasoning;

/// <summary>
/// Posterior probabilities as published. Tolerance half a percentage point, since authors round. Fagan 1975 is the rule itself;
/// each row names its study.
/// </summary>
public class OddsTests
{
    [Theory]
    // Sutlive 2008 (read in a summary): 21 of 72 with osteoarthritis; published 68, 91 and 75 %.
    [InlineData(21 / 72.0, 5.2, 0.68)]
    [InlineData(21 / 72.0, 24.3, 0.91)]
    [InlineData(21 / 72.0, 7.3, 0.75)]
    // Wainner 2003 (read in a summary): 19 of 82; published 21, 65 and 90 %.
    [InlineData(19 / 82.0, 0.88, 0.21)]
    [InlineData(19 / 82.0, 6.1, 0.65)]
    [InlineData(19 / 82.0, 30.3, 0.90)]
    // Kastelein 2008: 35 of 134, ratio 6.4: computed 69.3 %.
    [InlineData(35 / 134.0, 6.4, 0.693)]
    // Metcalfe 2019: 34 %, ratios 6.1 and 0.25: computed 75.9 and 11.4 %.
    [InlineData(0.34, 6.1, 0.759)]
    [InlineData(0.34, 0.25, 0.114)]
    // Bachmann 2003: 15 %, 0.08: published under 1.4 %. Rule of thumb on the same review: 10 %, 0.1 gives 1.1 %.
    [InlineData(0.15, 0.08, 0.014)]
    [InlineData(0.10, 0.1, 0.011)]
    // Bachmann 2004: 7 % (from memory), 0.05: 0.4 %.
    [InlineData(0.07, 0.05, 0.004)]
    // A public post-test calculator: 1.2 %, 5: 5.7 % (printed 5.66 after rounding the odds).
    [InlineData(0.012, 5, 0.057)]
    // Park 2005 ratio at our own start of 10 %: 63.4 %.
    [InlineData(0.10, 15.57, 0.634)]
    // Cook 2010 without a cap: 5 %, 30.9: 61.9 %.
    [InlineData(0.05, 30.9, 0.619)]
    public void Probability_after_a_result_is_as_published(double before, double ratio, double published) =>
        Assert.Equal(published, Odds.After(before, ratio), 0.005);

    [Theory]
    // Park 2005: 91 % after 15.57, 95 % after 10.56: a surgeon's clinic starts at 39.4 and 64.3 %. Cook 2010: 94 % after 30.9.
    [InlineData(0.91, 15.57, 0.394)]
    [InlineData(0.95, 10.56, 0.643)]
    [InlineData(0.94, 30.9, 0.336)]
    public void Probability_before_is_found_from_the_published_one_after(double after, double ratio, double before) =>
        Assert.Equal(before, Odds.Before(after, ratio), 0.005);

    [Fact]
    public void A_result_and_its_reverse_bring_the_probability_back() => Gen.Select(Gen.Double[0.01, 0.99], Gen.Double[0.05, 20]).Sample(
        (p, lr) => Math.Abs(Odds.After(Odds.After(p, lr), 1 / lr) - p) < 1e-12);

    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    [InlineData(double.NaN)]
    public void Certainty_is_no_starting_value(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Odds.After(probability, 2));

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(double.PositiveInfinity)]
    public void A_ratio_is_above_zero_and_finite(double ratio) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Odds.After(0.5, ratio));
}
