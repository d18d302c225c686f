using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Left against right.</summary>
internal static class SideMath
{
    public static SideComparison? Compare(Measure measure, ImmutableArray<SideReading> readings, Side? affected)
    {
        var left = readings.LastOrDefault(r => r.Measurement.Side == Side.Left);
        var right = readings.LastOrDefault(r => r.Measurement.Side == Side.Right);
        if (left is null || right is null)
            return null;
        var pair = ComparablePair.Of(measure, left, right);
        var gain = measure.Gain(pair.First, pair.Second);
        Side? worse = measure.Direction == Direction.Neither || gain == 0 ? null : gain > 0 ? Side.Left : Side.Right;
        var detectable = pair.Detectable(measure.Error);
        var difference = Math.Abs(gain);
        return new SideComparison
        {
            WorseSide = pair.WhyNot is null ? worse : null,
            Index = pair.WhyNot is null ? Index(measure, pair, affected ?? worse ?? Side.Left) : null,
            Difference = difference,
            ByTorque = pair.ByTorque,
            Detectable = pair.WhyNot is null ? detectable : null,
            Verdict = Verdict(pair, difference, detectable),
            Deficit = pair.WhyNot is null ? Deficit(measure, pair.First, pair.Second) : 0,
        };
    }

    /// <summary>The lack as a fraction of the way from the worst possible value to the better value, 0 to 1.</summary>
    public static double Deficit(Measure measure, double first, double second)
    {
        if (measure.Direction == Direction.Neither)
            return 0;
        var worst = measure.Kind == MeasureKind.Strength ? 0
            : measure.Direction == Direction.HigherBetter ? measure.HardRange.Low
            : measure.HardRange.High;
        var better = measure.Gain(first, second) > 0 ? second : first;
        var span = measure.Gain(worst, better);
        return span > 0 ? Math.Clamp(Math.Abs(first - second) / span, 0, 1) : 0;
    }

    private static double? Index(Measure measure, ComparablePair pair, Side affected)
    {
        if (measure.Unit == MeasureUnit.Radians)
            return null;
        return affected == Side.Left
            ? StrengthMath.SymmetryIndex(pair.First, pair.Second, measure.Direction)
            : StrengthMath.SymmetryIndex(pair.Second, pair.First, measure.Direction);
    }

    private static ErrorVerdict Verdict(ComparablePair pair, double difference, double? detectable)
    {
        if (pair.WhyNot is not null)
            return ErrorVerdict.NotComparable;
        if (detectable is not { } limit)
            return ErrorVerdict.NoErrorKnown;
        return difference > limit ? ErrorVerdict.BeyondError : ErrorVerdict.WithinError;
    }
}
