namespace MomentArm.Exam;

/// <summary>
/// How findings are weighed and when a difference without a published error counts. All of this is our design choice,
/// written down in docs/models/exam.md section 6.
/// </summary>
public static class FindingRules
{
    /// <summary>Default limit for angles without a published error: 10 degrees, in radians.</summary>
    public const double AngleLimitRad = 10 * Math.PI / 180;

    /// <summary>Default limit for forces without a published error, as a fraction of the mean of both.</summary>
    public const double ForceLimitFraction = 0.15;

    /// <summary>Default limit for scales without a published error, as a fraction of the scale: 2 points of 10.</summary>
    public const double PointLimitFraction = 0.2;

    /// <summary>Default limit for times, distances, speeds and counts without a published error, as a fraction of the mean of both.</summary>
    public const double OtherLimitFraction = 0.2;

    /// <summary>A named activity scored at this or less becomes a finding, points.</summary>
    public const double ActivityAtMost = 7;

    /// <summary>Pain during a strength test from which pain under load becomes a finding.</summary>
    public const int PainUnderLoadFrom = 3;

    /// <summary>Deficit given to words and manual grades, which carry no number.</summary>
    public const double DeficitOfWords = 0.1;

    /// <summary>Weight of a difference that is within error: shown last, never acted on.</summary>
    public const double WithinErrorWeight = 0.05;

    /// <summary>Weight of a change for the better: told, nothing to act on.</summary>
    public const double BetterWeight = 0.1;

    /// <summary>Part of the way to 1 that a finding goes up when an open goal is counted by its measure.</summary>
    public const double GoalShare = 0.3;

    /// <summary>Part of the way to 1 that a finding goes up when it fits the working pattern.</summary>
    public const double PatternShare = 0.2;

    /// <summary>Weight from the size of the lack, the side, and whether it is beyond error.</summary>
    /// <param name="deficit">Lack as a fraction, 0 to 1; 0.4 and more counts in full.</param>
    /// <param name="onAffectedSide">True on the affected side, false on the other, null when no side is named.</param>
    /// <param name="beyondError">True beyond error, null when no error is known.</param>
    /// <returns>0.2 + 0.4 size + 0.25 side + 0.15 certainty, 0 to 1.</returns>
    public static double Weight(double deficit, bool? onAffectedSide, bool? beyondError)
    {
        var size = Math.Clamp(deficit / 0.4, 0, 1);
        var side = onAffectedSide switch { true => 1.0, null => 0.5, false => 0.0 };
        var certainty = beyondError == true ? 1.0 : 0.0;
        return 0.2 + (0.4 * size) + (0.25 * side) + (0.15 * certainty);
    }

    /// <summary>The default limit for a difference between two values of a measure without published error.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="first">One value, in the unit compared.</param>
    /// <param name="second">The other value.</param>
    /// <returns>The limit in the unit compared.</returns>
    public static double DefaultLimit(Measure measure, double first, double second)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Unit switch
        {
            MeasureUnit.Radians => AngleLimitRad,
            MeasureUnit.Newtons => ForceLimitFraction * (Math.Abs(first) + Math.Abs(second)) / 2,
            MeasureUnit.Points => PointLimitFraction * (measure.HardRange.High - measure.HardRange.Low),
            _ => OtherLimitFraction * (Math.Abs(first) + Math.Abs(second)) / 2,
        };
    }
}
