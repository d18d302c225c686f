using CsCheck;

namespace MomentArm.Exam.Tests.Reasoning;

public class ProbabilityChainTests
{
    private static readonly Gen<TestReading[]> Readings = Gen.Select(Gen.Int[0, 4], Gen.Double[0.05, 20.0], Gen.Bool)
        .Select((family, ratio, wide) => (family, ratio: Math.Abs(ratio - 1) < 0.01 ? 2.0 : ratio, wide))
        .Array[0, 7]
        .Select(rows => rows.Select((r, i) => Made.Reading($"t{i}", $"family{r.family}", Made.Figure(r.ratio, id: $"f{i}"))).ToArray());

    [Fact]
    public void The_order_of_the_tests_does_not_matter() => Gen.Select(Gen.Double[0.03, 0.9], Readings).Sample((before, readings) =>
    {
        var one = ProbabilityChain.From(before, null, readings);
        var other = ProbabilityChain.From(before, null, readings.Reverse().ToArray());
        Assert.Equal((one.Value, one.Low, one.High, one.TotalRatio), (other.Value, other.Low, other.High, other.TotalRatio));
        Assert.Equal(one.Steps.Select(s => s.Reading.Test.Id), other.Steps.Select(s => s.Reading.Test.Id));
    });

    [Fact]
    public void The_caps_hold_whatever_was_found() => Gen.Select(Gen.Double[0.001, 0.999], Readings).Sample((before, readings) =>
    {
        var found = ProbabilityChain.From(before, null, readings);
        Assert.InRange(found.TotalRatio, ChainRules.LowestRatio, ChainRules.HighestRatio);
        Assert.InRange(found.Value, ChainRules.LowestShown, ChainRules.HighestShown);
        Assert.InRange(found.Value, found.Low, found.High);
        Assert.InRange(found.Low, ChainRules.LowestShown, ChainRules.HighestShown);
        Assert.InRange(found.High, ChainRules.LowestShown, ChainRules.HighestShown);
    });

    [Fact]
    public void One_ratio_of_a_family_counts() => Readings.Sample(readings =>
        Assert.True(ProbabilityChain.From(0.4, null, readings).Steps.Where(s => s.Weight > 0)
            .GroupBy(s => s.Reading.Test.Family).All(g => g.Count() == 1)));

    [Fact]
    public void A_positive_in_place_of_a_negative_never_lowers_the_probability() =>
        Gen.Select(Gen.Double[0.03, 0.9], Readings, Gen.Int[0, 4], Gen.Double[1.1, 18], Gen.Double[0.06, 0.9]).Sample(
            (before, readings, family, positive, negative) =>
            {
                var figure = Made.Figure(positive, negative, "x");
                double With(bool isPositive) => ProbabilityChain.From(
                    before, null, [.. readings, Made.Reading("x", $"family{family}", figure, isPositive)]).Value;
                Assert.True(With(true) >= With(false) - 1e-12);
            });

    [Fact]
    public void No_result_leaves_the_starting_value_and_an_unclear_one_too()
    {
        Assert.Equal(0.3, ProbabilityChain.From(0.3, null, []).Value, 1e-12);
        var unclear = Made.Shipped("lachman", "acl-tear", TestOutcome.Unclear);
        Assert.Equal(0.3, ProbabilityChain.From(0.3, null, [unclear]).Value, 1e-12);
    }

    [Fact]
    public void A_range_of_the_starting_value_widens_the_interval()
    {
        var reading = Made.Reading("a", "a", Made.Figure(4));
        var narrow = ProbabilityChain.From(0.3, null, [reading]);
        var wide = ProbabilityChain.From(0.3, new RatioSpan(0.1, 0.6), [reading]);
        Assert.Equal(narrow.Value, wide.Value, 1e-12);
        Assert.True(wide.Low < narrow.Low && wide.High > narrow.High);
    }

    [Fact]
    public void With_one_test_the_interval_is_the_starting_value_times_the_ends_of_the_ratio()
    {
        var found = ProbabilityChain.From(0.3, null, [Made.Reading("a", "a", Made.Figure(4))]);
        Assert.Equal(Odds.After(0.3, 2), found.Low, 1e-9);
        Assert.Equal(Odds.After(0.3, 8), found.High, 1e-9);
    }

    [Fact]
    public void Chained_tests_of_one_tendon_overstate_and_only_one_counts()
    {
        // Maffulli 2003: 3.76 x 3.14 x 6.16 = 72.8; the combination of all three was 3.51. 24 people, so the one that counts is pulled halfway.
        string[] three = ["achilles-tenderness", "achilles-arc", "achilles-two-positions"];
        var readings = three.Select(t => Made.Shipped(t, "achilles-tendinopathy", TestOutcome.Positive)).ToArray();
        Assert.Equal(72.8, readings.Aggregate(1.0, (all, r) => all * r.Ratio!.Reported.Value), 0.5);
        var found = ProbabilityChain.From(0.2, null, readings);
        Assert.Single(found.Steps, s => s.Weight > 0);
        Assert.Equal(Math.Sqrt(6.16), found.TotalRatio, 0.01);
        var cluster = Made.Shipped("achilles-three-tests", "achilles-tendinopathy", TestOutcome.Positive);
        var replaced = ProbabilityChain.From(0.2, null, [.. readings, cluster]);
        Assert.Equal("achilles-three-tests", Assert.Single(replaced.Steps, s => s.Weight > 0).Reading.Test.Id);
        Assert.All(replaced.Steps.Where(s => s.Weight == 0), s => Assert.Contains("replaces it", s.Why, StringComparison.Ordinal));
    }

    [Fact]
    public void A_second_family_counts_at_half_weight()
    {
        // Metcalfe 2019 with our rule: 4.5 x sqrt(2.1) = 6.52; from 34 % to 77.1 %, against 83.0 % without the rule.
        var found = ProbabilityChain.From(0.34, null,
        [
            Made.Shipped("hip-stairs-pain", "hip-osteoarthritis", TestOutcome.Positive),
            Made.Shipped("hip-abductor-weakness", "hip-osteoarthritis", TestOutcome.Positive),
        ]);
        Assert.Equal(6.52, found.TotalRatio, 0.01);
        Assert.Equal(0.771, found.Value, 0.001);
        Assert.Equal(0.830, Odds.After(0.34, 4.5 * 2.1), 0.001);
    }

    [Fact]
    public void The_total_is_capped_at_twenty()
    {
        // Cook 2010: 30.9; from 5 % to 51.3 % with the cap.
        var found = ProbabilityChain.From(0.05, null, [Made.Shipped("myelopathy-five-signs", "cervical-myelopathy", TestOutcome.Counted, 3)]);
        Assert.Equal(0.513, found.Value, 0.001);
        Assert.NotNull(found.Capped);
    }

    [Fact]
    public void A_ratio_whose_interval_holds_one_shifts_nothing()
    {
        // Sman 2015: squeeze 2.15 (0.86 to 5.39) stays; tenderness absent 0.28 (0.09 to 0.89) goes to 6.5 %. Reiman 2013: 1.02 stays.
        var squeeze = Made.Shipped("syndesmosis-squeeze", "syndesmosis-injury", TestOutcome.Positive);
        Assert.Equal(0.20, ProbabilityChain.From(0.20, null, [squeeze]).Value, 1e-12);
        var absent = Made.Shipped("syndesmosis-tenderness", "syndesmosis-injury", TestOutcome.Negative);
        Assert.Equal(0.065, ProbabilityChain.From(0.20, null, [absent]).Value, 0.001);
        var fadir = Made.Shipped("fadir", "fai-labral-tear", TestOutcome.Positive);
        Assert.Equal(0.40, ProbabilityChain.From(0.40, null, [fadir]).Value, 1e-12);
    }

    [Fact]
    public void A_small_study_without_interval_is_pulled_halfway()
    {
        // Hutchison 2013, 21 people: 0.84 / 0.27 = 3.11, counted as 1.76.
        var used = RatioRules.Of(Made.Figure() with { Sensitivity = 0.84, Specificity = 0.73, N = 21, Origin = RatioOrigin.Computed }, true)!;
        Assert.Equal(3.11, used.Reported.Value, 0.01);
        Assert.Equal(1.76, used.Used.Value, 0.01);
        Assert.Equal(IntervalOrigin.Assumed, used.Origin);
    }

    [Fact]
    public void A_printed_ratio_is_kept_where_the_pooled_figures_give_another()
    {
        // Bachmann 2004: Se 0.985, Sp 0.486, printed 0.05, computed 0.031.
        var used = RatioRules.Of(Made.Figure() with
        {
            Sensitivity = 0.985, Specificity = 0.486, Negative = new Ratio(0.05, new RatioSpan(0.02, 0.2)),
        }, false)!;
        Assert.Equal(0.05, used.Used.Value, 1e-12);
        Assert.Equal(0.031, AccuracyMath.NegativeRatio(0.985, 0.486), 0.001);
    }

    [Theory]
    // Laslett 2005 with our rule: none of six 0.08, two shift nothing, three 4.29.
    [InlineData(0, 0.08)]
    [InlineData(2, null)]
    [InlineData(3, 4.29)]
    [InlineData(6, 4.29)]
    public void Sacroiliac_tests_are_counted(int count, double? ratio)
    {
        var reading = Made.Shipped("sij-provocation", "sacroiliac-joint-pain", TestOutcome.Counted, count);
        Assert.Equal(ratio, reading.Ratio?.Reported.Value);
    }

    [Theory]
    // Sutlive 2008: five of five has a lower ratio than four of five, and is not read as four of five.
    [InlineData(3, 5.2)]
    [InlineData(4, 24.3)]
    [InlineData(5, 7.3)]
    public void More_signs_are_not_always_more_certain(int count, double ratio) =>
        Assert.Equal(ratio, Made.Shipped("hip-oa-five-signs", "hip-osteoarthritis", TestOutcome.Counted, count).Ratio!.Reported.Value);

    [Fact]
    public void Knee_criteria_count_as_in_the_community_and_not_as_in_the_first_clinic()
    {
        // Peat 2006: 1.64 in people of 50 and over; Altman 1986 gave 3.1 in a rheumatology clinic.
        var used = Made.Shipped("knee-oa-clinical-criteria", "knee-osteoarthritis", TestOutcome.Positive).Ratio!;
        Assert.Equal(1.64, used.Used.Value);
        Assert.Equal("peat-2006", used.Figure.Source);
    }

    [Fact]
    public void The_ankle_examined_too_early_has_no_weight_and_names_the_day()
    {
        // van Dijk 1996: examined at about five days; within 48 hours it tells nothing.
        var early = Made.Shipped("ankle-delayed-exam", "lateral-ankle-sprain", TestOutcome.Negative, days: 1);
        Assert.Null(early.Ratio);
        Assert.Contains("examine again on day 4", early.WhyNot, StringComparison.Ordinal);
        Assert.NotNull(Made.Shipped("ankle-delayed-exam", "lateral-ankle-sprain", TestOutcome.Negative, days: 5).Ratio);
    }

    [Fact]
    public void Results_of_one_family_that_disagree_are_told()
    {
        var found = ProbabilityChain.From(0.3, null,
            [Made.Reading("a", "same", Made.Figure(6)), Made.Reading("b", "same", Made.Figure(negative: 0.5), false)]);
        Assert.Contains("points the other way", Assert.Single(found.Steps, s => s.Weight == 0).Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.199, ProbabilityBand.Unlikely)]
    [InlineData(0.2, ProbabilityBand.Possible)]
    [InlineData(0.5, ProbabilityBand.Probable)]
    [InlineData(0.8, ProbabilityBand.Probable)]
    [InlineData(0.801, ProbabilityBand.VeryProbable)]
    public void Bands_meet_without_gap(double probability, ProbabilityBand band) => Assert.Equal(band, ChainRules.Band(probability));
}
