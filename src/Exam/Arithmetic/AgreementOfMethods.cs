using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>How far two ways of measuring the same people differ: bias and limits of agreement (Bland and Altman 1986).</summary>
public sealed record AgreementOfMethods
{
    /// <summary>People.</summary>
    public required int People { get; init; }

    /// <summary>Mean difference, first minus second, with its 95 % interval.</summary>
    public required Estimate Bias { get; init; }

    /// <summary>Standard deviation of the differences.</summary>
    public required double Sd { get; init; }

    /// <summary>Lower limit, bias - 1.96 SD, with its 95 % interval.</summary>
    public required Estimate LowerLimit { get; init; }

    /// <summary>Upper limit, bias + 1.96 SD, with its 95 % interval.</summary>
    public required Estimate UpperLimit { get; init; }

    /// <summary>Compares two ways of measuring.</summary>
    /// <param name="first">Readings of the first way.</param>
    /// <param name="second">Readings of the second way, of the same people in the same order.</param>
    /// <returns>Bias and limits; the intervals of the limits use SE = sqrt(3/n) SD, as the paper does.</returns>
    /// <exception cref="ArgumentException">Fewer than 3 people, unlike lengths, or a value that is no number.</exception>
    public static AgreementOfMethods Of(ImmutableArray<double> first, ImmutableArray<double> second)
    {
        if (first.IsDefault || second.IsDefault || first.Length != second.Length || first.Length < 3)
            throw new ArgumentException("Give readings of the same three people or more.", nameof(second));
        if (!first.All(double.IsFinite) || !second.All(double.IsFinite))
            throw new ArgumentException("Every reading must be a finite number.", nameof(first));
        var differences = first.Zip(second, (a, b) => a - b).ToArray();
        var n = differences.Length;
        var bias = differences.Average();
        var sd = Math.Sqrt(differences.Sum(d => (d - bias) * (d - bias)) / (n - 1));
        var t = Distributions.StudentQuantile(0.975, n - 1);
        return new AgreementOfMethods
        {
            People = n,
            Bias = Around(bias, t * sd / Math.Sqrt(n)),
            Sd = sd,
            LowerLimit = Around(bias - (ErrorMath.Z95 * sd), t * sd * Math.Sqrt(3.0 / n)),
            UpperLimit = Around(bias + (ErrorMath.Z95 * sd), t * sd * Math.Sqrt(3.0 / n)),
        };
    }

    private static Estimate Around(double value, double half) => new(value, value - half, value + half);
}
