namespace MomentArm.Exam.Tests.Reasoning;

/// <summary>Published sensitivities, specificities and what follows from them; 1 % of the value unless said.</summary>
public class AccuracyMathTests
{
    [Theory]
    // Sokal 2022 (Lachman); Maffulli 1998 (squeeze of the calf, reported 13.71 and 0.04; prone knee bend).
    [InlineData(0.81, 0.85, 5.40, 0.224)]
    [InlineData(0.96, 0.93, 13.71, 0.043)]
    [InlineData(0.88, 0.85, 5.87, 0.141)]
    public void Ratios_follow_from_sensitivity_and_specificity(double se, double sp, double positive, double negative)
    {
        Assert.Equal(positive, AccuracyMath.PositiveRatio(se, sp), positive / 100);
        Assert.Equal(negative, AccuracyMath.NegativeRatio(se, sp), negative / 100);
    }

    [Theory]
    // Deville 1998, reported 2.66 for rounded inputs; a one-year case series of 334 referrals, reported 3.79, 3.03 and 5.35.
    [InlineData(0.90, 0.23, 2.69)]
    [InlineData(0.72, 0.60, 3.86)]
    [InlineData(0.60, 0.67, 3.05)]
    [InlineData(0.68, 0.72, 5.46)]
    // The same series prints 5.03 for bilateral leg pain; the figures give 3.5.
    [InlineData(0.60, 0.70, 3.50)]
    public void The_diagnostic_odds_ratio_follows(double se, double sp, double expected) =>
        Assert.Equal(expected, AccuracyMath.OddsRatio(se, sp), expected / 100);

    [Fact]
    public void A_printed_odds_ratio_that_does_not_follow_is_told() =>
        Assert.NotNull(AccuracyDoubts.Differs("positive result", 5.03, AccuracyMath.OddsRatio(0.60, 0.70)));

    [Fact]
    public void Predictive_values_are_those_of_Peat_2006()
    {
        // Peat 2006: 44 and 72 %.
        Assert.Equal(0.447, AccuracyMath.PositivePredictive(0.41, 0.75, 0.33), 0.001);
        Assert.Equal(0.721, AccuracyMath.NegativePredictive(0.41, 0.75, 0.33), 0.001);
    }

    [Fact]
    public void The_tuning_fork_study_had_sixty_percent_with_the_condition() =>
        // Lesho 1997, 52 people: Se 0.75, Sp 0.67, PPV 0.77; published NPV 63 %, rounding in the paper.
        Assert.Equal(0.645, AccuracyMath.NegativePredictive(0.75, 0.67, 0.596), 0.005);

    [Fact]
    public void Tender_patellar_tendons_of_Cook_2001_give_their_ratios()
    {
        // Table 5: normal 110/87/30/9, lesion 28/12/18/5 (none, mild, moderate, severe), cut at moderate.
        var (positive, negative) = AccuracyMath.OfCounts(23, 40, 39, 197);
        Assert.Equal(2.21, positive.Value, 0.01);
        Assert.Equal(0.76, negative.Value, 0.01);
        Assert.Equal(0.797, 110 / 138.0, 0.001);
        Assert.Equal(0.365, 23 / 63.0, 0.001);
        Assert.Equal(0.835, 197 / 236.0, 0.001);
    }

    [Theory]
    // De Garceau 2003: 7 of 22 and 0 of 53; 3 of 22 and 0 of 53; 0.5 added to every cell.
    [InlineData(7, 35.2, 0.68)]
    [InlineData(3, 16.4, 0.86)]
    public void A_zero_cell_adds_half_to_every_cell(int found, double positive, double negative)
    {
        var ratios = AccuracyMath.OfCounts(found, 22 - found, 0, 53);
        Assert.Equal(positive, ratios.Positive.Value, 0.1);
        Assert.Equal(negative, ratios.Negative.Value, 0.01);
    }

    [Fact]
    public void Pooled_false_positives_of_Carbone_2010_give_the_specificity()
    {
        var falsePositives = (0.111 * 465) + (0.145 * 48) + (0.062 * 16) + (0.106 * 66);
        var specificity = 1 - (falsePositives / 595);
        Assert.Equal(0.888, specificity, 0.001);
        Assert.Equal(8.62, AccuracyMath.PositiveRatio(0.964, specificity), 0.05);
        Assert.Equal(0.041, AccuracyMath.NegativeRatio(0.964, specificity), 0.001);
    }

    [Theory]
    // Sman 2015: squeeze Sp 0.88, ratio 2.15; Laslett 2005 and the pair of a knee cluster as closed loops.
    [InlineData(0.258, 0.88)]
    [InlineData(0.92, 0.286)]
    [InlineData(0.75, 0.67)]
    public void Sensitivity_and_specificity_come_back_from_a_pair_of_ratios(double se, double sp)
    {
        var (sensitivity, specificity) = AccuracyMath.FromRatios(
            AccuracyMath.PositiveRatio(se, sp), AccuracyMath.NegativeRatio(se, sp));
        Assert.Equal(se, sensitivity, 1e-9);
        Assert.Equal(sp, specificity, 1e-9);
    }

    [Fact]
    public void Values_computed_back_are_those_of_Sman_2015()
    {
        Assert.Equal(2.15, AccuracyMath.PositiveRatio(0.258, 0.88), 0.01);
        Assert.Equal(0.28, AccuracyMath.NegativeRatio(0.92, 0.286), 0.01);
    }

    [Fact]
    public void The_interval_from_counts_is_that_of_the_log_method()
    {
        // By hand: 20/25 over 10/50 = 4; variance of the log 1/20 - 1/25 + 1/10 - 1/50 = 0.09, so exp(+-1.96 * 0.3).
        var (positive, _) = AccuracyMath.OfCounts(20, 5, 10, 40);
        Assert.Equal(4.0, positive.Value, 1e-9);
        Assert.Equal(4 * Math.Exp(-1.959964 * 0.3), positive.Interval!.Low, 1e-6);
        Assert.Equal(4 * Math.Exp(1.959964 * 0.3), positive.Interval.High, 1e-6);
    }

    [Theory]
    // Laslett 2005: one summary prints 0.80. Ottawa ankle review 2022: the abstract prints 1.47 and 0.15 the wrong way round.
    [InlineData(0.94, 0.78, 4.29, 0.80)]
    [InlineData(0.91, 0.25, 0.15, 1.47)]
    public void Printing_errors_are_found(double se, double sp, double positive, double negative) =>
        Assert.NotEmpty(AccuracyDoubts.Of(Made.Figure() with
        {
            Sensitivity = se, Specificity = sp, Positive = new Ratio(positive), Negative = new Ratio(negative),
        }));

    [Fact]
    public void An_exchanged_pair_is_named() => Assert.Contains(
        AccuracyDoubts.Of(Made.Figure() with { Positive = new Ratio(0.15), Negative = new Ratio(1.47) }),
        d => d.Contains("exchanged", StringComparison.Ordinal));
}
