namespace MomentArm.Exam;

/// <summary>Two ends of an interval, the lower first.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public sealed record RatioSpan(double Low, double High);

/// <summary>A likelihood ratio with its 95 % interval.</summary>
/// <param name="Value">The ratio, above 0; 1 says nothing.</param>
/// <param name="Interval">Its 95 % interval; null when none is known.</param>
public sealed record Ratio(double Value, RatioSpan? Interval = null);

/// <summary>Where the interval of a likelihood ratio comes from.</summary>
public enum IntervalOrigin
{
    /// <summary>Printed by the authors.</summary>
    Published,

    /// <summary>Computed from the printed intervals of sensitivity and specificity.</summary>
    FromAccuracyIntervals,

    /// <summary>Computed from sensitivity, specificity and the numbers of people.</summary>
    FromCounts,

    /// <summary>Nothing is known: taken from no shift at all to as far beyond the ratio. Our choice.</summary>
    Assumed,
}
