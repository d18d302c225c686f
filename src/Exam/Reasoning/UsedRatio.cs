namespace MomentArm.Exam;

/// <summary>The ratio that a result gives after the rules on intervals and small studies.</summary>
/// <param name="Figure">The figure it rests on.</param>
/// <param name="Reported">The ratio as stored.</param>
/// <param name="Used">The ratio that counts, with its interval.</param>
/// <param name="Origin">Where the interval comes from.</param>
/// <param name="Note">What was changed and why; null when nothing was.</param>
public sealed record UsedRatio(AccuracyFigure Figure, Ratio Reported, Ratio Used, IntervalOrigin Origin, string? Note)
{
    /// <summary>Distance from no shift, on the natural log scale, 0 or more.</summary>
    public double Strength => Math.Abs(Math.Log(Used.Value));
}

/// <summary>Chooses intervals and applies the rules to one ratio.</summary>
public static class RatioRules
{
    /// <summary>The ratio of one side of a figure under the rules.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="positive">True for a positive result, false for a negative one.</param>
    /// <returns>What counts; null when the figure has no ratio for this result.</returns>
    public static UsedRatio? Of(AccuracyFigure figure, bool positive)
    {
        ArgumentNullException.ThrowIfNull(figure);
        if (Reported(figure, positive) is not { } reported)
            return null;
        var (interval, origin) = IntervalOf(figure, reported, positive);
        if (interval is null)
            return WithoutInterval(figure, reported);
        if (interval.Low <= 1 && interval.High >= 1)
        {
            return new UsedRatio(
                figure, reported with { Interval = interval }, new Ratio(1, new RatioSpan(1, 1)), origin,
                $"its interval {Text(interval)} holds 1, so it shifts nothing");
        }
        var whole = reported with { Interval = interval };
        return new UsedRatio(figure, whole, whole, origin, null);
    }

    /// <summary>The stored ratio, or one computed from sensitivity and specificity when none is stored for a whole pair.</summary>
    private static Ratio? Reported(AccuracyFigure figure, bool positive)
    {
        if ((positive ? figure.Positive : figure.Negative) is { } stored)
            return stored;
        if (figure is not { Sensitivity: { } se, Specificity: { } sp } || figure.Origin is RatioOrigin.None)
            return null;
        if (sp is > 0 and < 1 && se is > 0 and < 1)
            return new Ratio(positive ? AccuracyMath.PositiveRatio(se, sp) : AccuracyMath.NegativeRatio(se, sp));
        return figure is { N: { } n, Prevalence: { } share } ? Side(AccuracyMath.OfStudy(se, sp, n, share), positive) : null;
    }

    private static (RatioSpan? Interval, IntervalOrigin Origin) IntervalOf(AccuracyFigure figure, Ratio reported, bool positive)
    {
        if (reported.Interval is { } published && (positive ? figure.Positive : figure.Negative) is not null)
            return (published, IntervalOrigin.Published);
        if (figure is { SensitivityInterval: { } se, SpecificityInterval: { } sp } && Inside(se) && Inside(sp))
        {
            var made = positive
                ? AccuracyMath.OfIntervals(reported.Value, se, new RatioSpan(1 - sp.High, 1 - sp.Low))
                : AccuracyMath.OfIntervals(reported.Value, new RatioSpan(1 - se.High, 1 - se.Low), sp);
            return (made.Interval, IntervalOrigin.FromAccuracyIntervals);
        }
        if (figure is { Sensitivity: { } sensitivity, Specificity: { } specificity, N: { } n, Prevalence: { } share })
        {
            var counted = Side(AccuracyMath.OfStudy(sensitivity, specificity, n, share), positive);
            var shift = reported.Value / counted.Value;
            return (new RatioSpan(counted.Interval!.Low * shift, counted.Interval.High * shift), IntervalOrigin.FromCounts);
        }
        return (null, IntervalOrigin.Assumed);
    }

    private static UsedRatio WithoutInterval(AccuracyFigure figure, Ratio reported)
    {
        var small = figure.N is < ChainRules.SmallStudy;
        var value = small ? Math.Sqrt(reported.Value) : reported.Value;
        var far = value * value;
        var interval = value >= 1 ? new RatioSpan(1, far) : new RatioSpan(far, 1);
        var note = small
            ? $"no interval is known and only {figure.N} people were studied, so it counts halfway: {Say.Number(value, 2)}"
            : "no interval is known; we show it from no shift at all to as far beyond";
        return new UsedRatio(figure, reported, new Ratio(value, interval), IntervalOrigin.Assumed, note);
    }

    private static bool Inside(RatioSpan span) => span is { Low: > 0, High: < 1 } && span.Low < span.High;

    private static Ratio Side((Ratio Positive, Ratio Negative) both, bool positive) => positive ? both.Positive : both.Negative;

    internal static string Text(RatioSpan span) => $"{Say.Number(span.Low, 2)} to {Say.Number(span.High, 2)}";
}
