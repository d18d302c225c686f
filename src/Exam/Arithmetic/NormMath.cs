namespace MomentArm.Exam;

/// <summary>Where a value stands among people, from a mean and a standard deviation.</summary>
public static class NormMath
{
    /// <summary>Standard score.</summary>
    /// <param name="value">The value.</param>
    /// <param name="mean">Mean of the people.</param>
    /// <param name="sd">Standard deviation between people, above zero.</param>
    /// <returns>(value - mean) / SD.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The SD is not above zero.</exception>
    public static double ZScore(double value, double mean, double sd)
    {
        if (!(sd > 0 && double.IsFinite(sd)))
            throw new ArgumentOutOfRangeException(nameof(sd), sd, "Give a standard deviation above 0.");
        return (value - mean) / sd;
    }

    /// <summary>Percentile of a standard score under the normal curve, 0 to 100.</summary>
    /// <param name="z">Standard score.</param>
    /// <returns>Percent of people below.</returns>
    public static double Percentile(double z) => 50 * (1 + Erf(z / Math.Sqrt(2)));

    /// <summary>
    /// Standard deviation between people from the 95 % confidence interval of their mean: half-width / 1.96 x sqrt(n).
    /// The interval itself is never a normal range: it narrows with n while people stay as different as they are.
    /// </summary>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end.</param>
    /// <param name="n">People in that very cell of the table, at least 2.</param>
    /// <returns>Standard deviation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ends are not in order, or n is under 2.</exception>
    public static double SdFromConfidenceInterval(double low, double high, int n)
    {
        if (!(high > low))
            throw new ArgumentOutOfRangeException(nameof(high), high, "The upper end must lie above the lower end.");
        if (n < 2)
            throw new ArgumentOutOfRangeException(nameof(n), n, "Give the number of people in the cell, at least 2.");
        return (high - low) / (2 * ErrorMath.Z95) * Math.Sqrt(n);
    }

    /// <summary>
    /// Error function by the series exp(-x2) 2x/sqrt(pi) (1 + 2x2/3 + (2x2)2/(3 5) + ...), all terms of one sign, so no
    /// digits cancel; beyond 6 it is 1 to double precision.
    /// </summary>
    private static double Erf(double x)
    {
        if (Math.Abs(x) > 6)
            return Math.Sign(x);
        var term = 2 * x / Math.Sqrt(Math.PI) * Math.Exp(-x * x);
        var sum = 0.0;
        for (var odd = 3; Math.Abs(term) > 1e-17; odd += 2)
        {
            sum += term;
            term *= 2 * x * x / odd;
        }

        return sum;
    }
}
