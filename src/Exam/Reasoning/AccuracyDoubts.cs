using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Finds what in a figure cannot go together: printing errors of papers and digests are common here.</summary>
public static class AccuracyDoubts
{
    /// <summary>A stored value further than this from the computed one is told, as a fraction. Our choice.</summary>
    public const double Tolerance = 0.15;

    /// <summary>What does not go together in a figure.</summary>
    /// <param name="figure">The figure.</param>
    /// <returns>Sentences; empty when all agrees.</returns>
    public static ImmutableArray<string> Of(AccuracyFigure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        var doubts = ImmutableArray.CreateBuilder<string>();
        if (figure.Use != TestUse.None && figure is { Positive.Value: < 1 and var positive, Negative.Value: > 1 and var negative })
        {
            doubts.Add($"The ratio of a positive result ({Say.Number(positive, 2)}) is below 1 and that of a negative one ({Say.Number(negative, 2)}) above: they may be exchanged.");
        }
        if (figure is not { Sensitivity: > 0 and < 1 and var se, Specificity: > 0 and < 1 and var sp })
            return doubts.ToImmutable();
        if (figure.Positive is { } lrPositive && Differs("positive result", lrPositive.Value, AccuracyMath.PositiveRatio(se, sp)) is { } first)
            doubts.Add(first);
        if (figure.Negative is { } lrNegative && Differs("negative result", lrNegative.Value, AccuracyMath.NegativeRatio(se, sp)) is { } second)
            doubts.Add(second);
        return doubts.ToImmutable();
    }

    /// <summary>Says that a stored and a computed value differ by more than <see cref="Tolerance"/>.</summary>
    /// <param name="what">What is compared.</param>
    /// <param name="stored">The stored value, above 0.</param>
    /// <param name="computed">The computed value, above 0.</param>
    /// <returns>A sentence; null when they agree.</returns>
    public static string? Differs(string what, double stored, double computed) =>
        Math.Abs((stored / computed) - 1) <= Tolerance
            ? null
            : $"The ratio of a {what} is stored as {Say.Number(stored, 3)}; sensitivity and specificity give {Say.Number(computed, 3)}.";
}
