namespace MomentArm.Exam;

/// <summary>
/// Likelihood ratios and predictive values from sensitivity, specificity and counts, with intervals. Formulas:
/// docs/models/exam-reasoning.md section 2. Intervals on the log scale after Simel 1991, J Clin Epidemiol 44:763 (from memory).
/// </summary>
public static class AccuracyMath
{
    /// <summary>Standard deviations of a two-sided interval of 95 %.</summary>
    public const double Z95 = 1.959964;

    /// <summary>Ratio of a positive result: Se / (1 - Sp).</summary>
    /// <param name="sensitivity">Se, 0 to 1.</param>
    /// <param name="specificity">Sp, 0 to below 1; at 1 use <see cref="OfCounts"/>.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double PositiveRatio(double sensitivity, double specificity) =>
        Unit(sensitivity) / (1 - Below(Unit(specificity), 1));

    /// <summary>Ratio of a negative result: (1 - Se) / Sp.</summary>
    /// <param name="sensitivity">Se, 0 to 1.</param>
    /// <param name="specificity">Sp, above 0 to 1.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double NegativeRatio(double sensitivity, double specificity) =>
        (1 - Unit(sensitivity)) / (1 - Below(1 - Unit(specificity), 1));

    /// <summary>Diagnostic odds ratio: ratio of a positive over ratio of a negative result.</summary>
    /// <param name="sensitivity">Se, above 0 and below 1.</param>
    /// <param name="specificity">Sp, above 0 and below 1.</param>
    /// <returns>The odds ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double OddsRatio(double sensitivity, double specificity) =>
        PositiveRatio(sensitivity, specificity) / NegativeRatio(Below(sensitivity, 1), specificity);

    /// <summary>Share of positive results that are right.</summary>
    /// <param name="sensitivity">Se, 0 to 1.</param>
    /// <param name="specificity">Sp, 0 to 1.</param>
    /// <param name="prevalence">Share with the condition, 0 to 1.</param>
    /// <returns>Positive predictive value; not a number when there is no positive result.</returns>
    public static double PositivePredictive(double sensitivity, double specificity, double prevalence)
    {
        var right = Unit(sensitivity) * Unit(prevalence);
        return right / (right + ((1 - Unit(specificity)) * (1 - prevalence)));
    }

    /// <summary>Share of negative results that are right.</summary>
    /// <param name="sensitivity">Se, 0 to 1.</param>
    /// <param name="specificity">Sp, 0 to 1.</param>
    /// <param name="prevalence">Share with the condition, 0 to 1.</param>
    /// <returns>Negative predictive value; not a number when there is no negative result.</returns>
    public static double NegativePredictive(double sensitivity, double specificity, double prevalence)
    {
        var right = Unit(specificity) * (1 - Unit(prevalence));
        return right / (right + ((1 - Unit(sensitivity)) * prevalence));
    }

    /// <summary>Sensitivity and specificity that belong to a pair of ratios of one cut point.</summary>
    /// <param name="positive">Ratio of a positive result, above 1.</param>
    /// <param name="negative">Ratio of a negative result, 0 to below 1.</param>
    /// <returns>Se and Sp.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratios are not on either side of 1.</exception>
    public static (double Sensitivity, double Specificity) FromRatios(double positive, double negative)
    {
        if (!(positive > 1 && double.IsFinite(positive)) || !(negative is >= 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(positive), positive, "A pair of ratios lies on either side of 1.");
        return (positive * (1 - negative) / (positive - negative), (positive - 1) / (positive - negative));
    }

    /// <summary>Both ratios and their 95 % intervals from the four counts; a zero cell adds 0.5 to all four.</summary>
    /// <param name="truePositive">With the condition, positive; 0 or more.</param>
    /// <param name="falseNegative">With the condition, negative.</param>
    /// <param name="falsePositive">Without it, positive.</param>
    /// <param name="trueNegative">Without it, negative.</param>
    /// <returns>The ratio of a positive and of a negative result.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A count is negative, or nobody is with or without the condition.</exception>
    public static (Ratio Positive, Ratio Negative) OfCounts(
        double truePositive, double falseNegative, double falsePositive, double trueNegative)
    {
        var (tp, fn, fp, tn) = (Count(truePositive), Count(falseNegative), Count(falsePositive), Count(trueNegative));
        if (tp + fn <= 0 || fp + tn <= 0)
            throw new ArgumentOutOfRangeException(nameof(truePositive), tp + fn, "There must be people with and without the condition.");
        const double nobody = 1e-9;
        if (tp < nobody || fn < nobody || fp < nobody || tn < nobody)
            (tp, fn, fp, tn) = (tp + 0.5, fn + 0.5, fp + 0.5, tn + 0.5);
        var (with, without) = (tp + fn, fp + tn);
        return (
            Around(tp / with / (fp / without), Math.Sqrt((1 / tp) - (1 / with) + (1 / fp) - (1 / without))),
            Around(fn / with / (tn / without), Math.Sqrt((1 / fn) - (1 / with) + (1 / tn) - (1 / without))));
    }

    /// <summary>
    /// Both ratios of a study of n people from its sensitivity, specificity and share with the condition, as if the counts
    /// were known; rounding in the paper makes the interval approximate.
    /// </summary>
    /// <param name="sensitivity">Se, 0 to 1.</param>
    /// <param name="specificity">Sp, 0 to 1.</param>
    /// <param name="n">People in the study, 2 or more.</param>
    /// <param name="prevalence">Share with the condition, above 0 and below 1.</param>
    /// <returns>The ratio of a positive and of a negative result.</returns>
    public static (Ratio Positive, Ratio Negative) OfStudy(double sensitivity, double specificity, int n, double prevalence)
    {
        var with = n * Unit(prevalence);
        var without = n - with;
        return OfCounts(
            with * Unit(sensitivity), with * (1 - sensitivity), without * (1 - Unit(specificity)), without * specificity);
    }

    /// <summary>
    /// Interval of a ratio a / b from the 95 % intervals of a and b, taken as independent on the log scale:
    /// half width² = (ln(aHigh / aLow) / 2)² + (ln(bHigh / bLow) / 2)².
    /// </summary>
    /// <param name="value">The ratio, above 0.</param>
    /// <param name="above">Interval of the upper quantity, both ends above 0.</param>
    /// <param name="below">Interval of the lower quantity, both ends above 0.</param>
    /// <returns>The ratio with its interval.</returns>
    public static Ratio OfIntervals(double value, RatioSpan above, RatioSpan below)
    {
        var half = Math.Sqrt(
            Math.Pow(Math.Log(above.High / above.Low) / 2, 2) + Math.Pow(Math.Log(below.High / below.Low) / 2, 2));
        return Around(value, half / Z95);
    }

    private static Ratio Around(double value, double logError) =>
        new(value, new RatioSpan(value * Math.Exp(-Z95 * logError), value * Math.Exp(Z95 * logError)));

    private static double Unit(double share) => share is >= 0 and <= 1
        ? share
        : throw new ArgumentOutOfRangeException(nameof(share), share, "Give a share from 0 to 1.");

    private static double Below(double share, double limit) => share < limit
        ? share
        : throw new ArgumentOutOfRangeException(nameof(share), share, "The ratio has no finite value here; give counts.");

    private static double Count(double count) => count >= 0 && double.IsFinite(count)
        ? count
        : throw new ArgumentOutOfRangeException(nameof(count), count, "A count is 0 or more.");
}
