using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>
/// Tails and quantiles of the curves behind confidence intervals: normal, Student's t, F, chi-square. Held against R in
/// tests, see tools/statistics.
/// </summary>
public static class Distributions
{
    private const int MostSteps = 500;

    private static readonly ImmutableArray<double> Lanczos =
    [
        0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
        12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
    ];

    /// <summary>Share of the normal curve below a standard score.</summary>
    /// <param name="z">Standard score.</param>
    /// <returns>0 to 1.</returns>
    public static double NormalBelow(double z) => NormMath.Percentile(z) / 100;

    /// <summary>Standard score below which a share of the normal curve lies.</summary>
    /// <param name="share">Over 0 and under 1.</param>
    /// <returns>Standard score.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not between 0 and 1.</exception>
    public static double NormalQuantile(double share)
    {
        CheckShare(share);
        return share < 0.5 ? -NormalQuantile(1 - share) : Solve(NormalBelow, share, 0, 9);
    }

    /// <summary>Share of Student's t curve below a value.</summary>
    /// <param name="t">The value.</param>
    /// <param name="df">Degrees of freedom, above 0.</param>
    /// <returns>0 to 1.</returns>
    public static double StudentBelow(double t, double df)
    {
        CheckDegrees(df);
        var tail = RegularizedBeta(df / (df + (t * t)), df / 2, 0.5) / 2;
        return t > 0 ? 1 - tail : tail;
    }

    /// <summary>The value below which a share of Student's t curve lies.</summary>
    /// <param name="share">Over 0 and under 1.</param>
    /// <param name="df">Degrees of freedom, above 0.</param>
    /// <returns>The quantile.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share or the degrees of freedom cannot be used.</exception>
    public static double StudentQuantile(double share, double df)
    {
        CheckShare(share);
        CheckDegrees(df);
        return share < 0.5 ? -StudentQuantile(1 - share, df) : SolveUp(t => StudentBelow(t, df), share);
    }

    /// <summary>Share of the F curve below a value.</summary>
    /// <param name="f">The value, 0 or more.</param>
    /// <param name="above">Degrees of freedom of the numerator, above 0.</param>
    /// <param name="below">Degrees of freedom of the denominator, above 0.</param>
    /// <returns>0 to 1.</returns>
    public static double FisherBelow(double f, double above, double below)
    {
        CheckDegrees(above);
        CheckDegrees(below);
        return f <= 0 ? 0 : 1 - RegularizedBeta(below / (below + (above * f)), below / 2, above / 2);
    }

    /// <summary>The value below which a share of the F curve lies.</summary>
    /// <param name="share">Over 0 and under 1.</param>
    /// <param name="above">Degrees of freedom of the numerator, above 0.</param>
    /// <param name="below">Degrees of freedom of the denominator, above 0.</param>
    /// <returns>The quantile.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share or the degrees of freedom cannot be used.</exception>
    public static double FisherQuantile(double share, double above, double below)
    {
        CheckShare(share);
        return SolveUp(f => FisherBelow(f, above, below), share);
    }

    /// <summary>Share of the chi-square curve below a value.</summary>
    /// <param name="x">The value, 0 or more.</param>
    /// <param name="df">Degrees of freedom, above 0.</param>
    /// <returns>0 to 1.</returns>
    public static double ChiSquareBelow(double x, double df)
    {
        CheckDegrees(df);
        return x <= 0 ? 0 : RegularizedGamma(df / 2, x / 2);
    }

    /// <summary>The value below which a share of the chi-square curve lies.</summary>
    /// <param name="share">Over 0 and under 1.</param>
    /// <param name="df">Degrees of freedom, above 0.</param>
    /// <returns>The quantile.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share or the degrees of freedom cannot be used.</exception>
    public static double ChiSquareQuantile(double share, double df)
    {
        CheckShare(share);
        return SolveUp(x => ChiSquareBelow(x, df), share);
    }

    /// <summary>Logarithm of the gamma function, by the series of Lanczos.</summary>
    internal static double LogGamma(double x)
    {
        if (x < 0.5)
            return Math.Log(Math.PI / Math.Abs(Math.Sin(Math.PI * x))) - LogGamma(1 - x);
        x--;
        var sum = Lanczos[0];
        for (var i = 1; i < Lanczos.Length; i++)
            sum += Lanczos[i] / (x + i);
        var t = x + Lanczos.Length - 1.5;
        return (0.5 * Math.Log(2 * Math.PI)) + ((x + 0.5) * Math.Log(t)) - t + Math.Log(sum);
    }

    // Regularized incomplete beta function by its continued fraction, on the side where that converges fast.
    private static double RegularizedBeta(double x, double a, double b)
    {
        if (x <= 0 || x >= 1)
            return x <= 0 ? 0 : 1;
        if (x > (a + 1) / (a + b + 2))
            return 1 - RegularizedBeta(1 - x, b, a);
        var front = Math.Exp((a * Math.Log(x)) + (b * Math.Log(1 - x)) + LogGamma(a + b) - LogGamma(a) - LogGamma(b)) / a;
        return front * Fraction(n => BetaTerm(n, x, a, b));
    }

    private static double BetaTerm(int n, double x, double a, double b)
    {
        var m = n / 2;
        return n % 2 == 0
            ? m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)))
            : -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
    }

    // Regularized lower incomplete gamma function: series below a + 1, continued fraction above.
    private static double RegularizedGamma(double a, double x)
    {
        var front = Math.Exp((a * Math.Log(x)) - x - LogGamma(a));
        if (x >= a + 1)
            return 1 - (front * GammaFraction(a, x));
        var (term, sum) = (1 / a, 1 / a);
        for (var n = 1; n < MostSteps && Math.Abs(term) > 1e-17 * sum; n++)
            sum += term *= x / (a + n);
        return front * sum;
    }

    private static double GammaFraction(double a, double x)
    {
        const double Tiny = 1e-300;
        var b = x + 1 - a;
        var (c, d) = (1 / Tiny, 1 / b);
        var h = d;
        for (var n = 1; n < MostSteps; n++)
        {
            var an = -n * (n - a);
            b += 2;
            d = 1 / NotZero((an * d) + b);
            c = NotZero(b + (an / c));
            var step = d * c;
            h *= step;
            if (Math.Abs(step - 1) < 1e-16)
                break;
        }

        return h;
    }

    // 1 / (1 + a1 / (1 + a2 / ...)), terms from 1 on, by the method of Lentz.
    private static double Fraction(Func<int, double> term)
    {
        var (c, d, h) = (1.0, 0.0, 1.0);
        for (var n = 1; n < MostSteps; n++)
        {
            var a = term(n);
            d = 1 / NotZero(1 + (a * d));
            c = NotZero(1 + (a / c));
            var step = c * d;
            h *= step;
            if (Math.Abs(step - 1) < 1e-16)
                break;
        }

        return 1 / h;
    }

    private static double NotZero(double value) => Math.Abs(value) < 1e-300 ? 1e-300 : value;

    private static double SolveUp(Func<double, double> below, double share)
    {
        var high = 1.0;
        while (below(high) < share && high < 1e12)
            high *= 2;
        return Solve(below, share, 0, high);
    }

    // Halving: some 60 steps to the last digit, and nothing to go wrong.
    private static double Solve(Func<double, double> below, double share, double low, double high)
    {
        for (var step = 0; step < 200 && high - low > 1e-15 * Math.Max(1, high); step++)
        {
            var middle = (low + high) / 2;
            if (below(middle) < share)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    private static void CheckShare(double share)
    {
        if (!(share is > 0 and < 1))
            throw new ArgumentOutOfRangeException(nameof(share), share, "Give a share between 0 and 1.");
    }

    private static void CheckDegrees(double df)
    {
        if (!(df > 0 && double.IsFinite(df)))
            throw new ArgumentOutOfRangeException(nameof(df), df, "Give degrees of freedom above 0.");
    }
}
