namespace MomentArm.Exam;

/// <summary>
/// Probability, odds and likelihood ratio. Formulas: docs/models/exam-reasoning.md section 1 (Fagan 1975, N Engl J Med 293:257,
/// the rule of the nomogram).
/// </summary>
public static class Odds
{
    /// <summary>Odds of a probability: p / (1 - p).</summary>
    /// <param name="probability">Above 0 and below 1.</param>
    /// <returns>The odds, above 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not between 0 and 1.</exception>
    public static double Of(double probability) => Checked(probability) / (1 - probability);

    /// <summary>Probability of odds: o / (1 + o).</summary>
    /// <param name="odds">0 or more.</param>
    /// <returns>The probability.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The odds are negative or not a number.</exception>
    public static double Probability(double odds) => odds >= 0 && double.IsFinite(odds)
        ? odds / (1 + odds)
        : throw new ArgumentOutOfRangeException(nameof(odds), odds, "Odds are 0 or more.");

    /// <summary>Probability after a result: the odds before, times the likelihood ratio.</summary>
    /// <param name="before">Probability before, above 0 and below 1.</param>
    /// <param name="ratio">Likelihood ratio of the result, above 0.</param>
    /// <returns>Probability after.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not between 0 and 1, or the ratio is not above 0.</exception>
    public static double After(double before, double ratio) => Probability(Of(before) * Positive(ratio));

    /// <summary>Probability before, from the probability after and the ratio.</summary>
    /// <param name="after">Probability after, above 0 and below 1.</param>
    /// <param name="ratio">Likelihood ratio, above 0.</param>
    /// <returns>Probability before.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not between 0 and 1, or the ratio is not above 0.</exception>
    public static double Before(double after, double ratio) => Probability(Of(after) / Positive(ratio));

    private static double Checked(double probability) => probability is > 0 and < 1
        ? probability
        : throw new ArgumentOutOfRangeException(nameof(probability), probability, "Give a probability above 0 and below 1.");

    private static double Positive(double ratio) => ratio > 0 && double.IsFinite(ratio)
        ? ratio
        : throw new ArgumentOutOfRangeException(nameof(ratio), ratio, "A likelihood ratio is above 0.");
}
