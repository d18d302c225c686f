using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>
/// Targets that can be defended: the other side, the change that matters to patients, and what is usual for age and sex.
/// Only figures that were read in their source are offered.
/// </summary>
public static class GoalTargets
{
    /// <summary>The targets for one side of a measure, nearest first.</summary>
    /// <param name="found">What the measure says now.</param>
    /// <param name="side">The side; null for measures without side.</param>
    /// <param name="activity">The named activity, for measures that have one.</param>
    /// <returns>Targets better than now and within what can be true; empty when nothing was measured or no better direction is known.</returns>
    public static ImmutableArray<GoalTarget> For(Interpretation found, Side? side, string? activity = null)
    {
        ArgumentNullException.ThrowIfNull(found);
        var measure = found.Measure;
        var reading = found.Readings.LastOrDefault(r => r.Measurement.Side == side && r.Measurement.Activity == activity);
        if (reading is null || measure.Direction == Direction.Neither)
            return [];
        var now = reading.Value;
        return
        [
            .. new[] { ByOtherSide(found, reading, side), ByChange(measure, now), ByNorm(found, side) }
                .OfType<GoalTarget>()
                .Select(t => t with { Value = Math.Clamp(t.Value, measure.HardRange.Low, measure.HardRange.High) })
                .Where(t => measure.Gain(now, t.Value) > 0)
                .OrderBy(t => measure.Gain(now, t.Value)),
        ];
    }

    private static GoalTarget? ByOtherSide(Interpretation found, SideReading reading, Side? side)
    {
        if (side is not { } own || found.Of(own.Other()) is not { } other || found.Sides is not { Verdict: not ErrorVerdict.NotComparable } sides)
            return null;
        var measure = found.Measure;
        // A force compares only at the same lever arm: bring the other side's torque to this side's lever arm.
        var value = sides.ByTorque && other.TorqueNm is { } torque && reading.Measurement.LeverArmM is { } arm ? torque / arm : other.Value;
        if (measure.SymmetryLimit is { } limit)
            return new GoalTarget(
                measure.Direction == Direction.LowerBetter ? value / limit : value * limit,
                $"{Say.Percent(limit)} of the {Say.Side(own.Other())} side ({Say.Shown(measure, value)}).", null);
        return new GoalTarget(value, $"As the {Say.Side(own.Other())} side: {Say.Shown(measure, value)}.", null);
    }

    private static GoalTarget? ByChange(Measure measure, double now)
    {
        if (measure.Mcid?.Needed(now) is not { } mcid)
            return null;
        var detectable = measure.Error?.Detectable(now, now);
        var needed = ErrorMath.RequiredChange(detectable ?? 0, mcid);
        var value = measure.Direction == Direction.LowerBetter ? now - needed : now + needed;
        var error = detectable > mcid ? $", and {Say.Difference(measure, detectable.Value)} is needed to be beyond error" : "";
        return new GoalTarget(
            value, $"The change that matters to patients is {Say.Difference(measure, mcid)}{error}.", measure.Mcid!.Source);
    }

    private static GoalTarget? ByNorm(Interpretation found, Side? side)
    {
        var norm = found.Norms.FirstOrDefault(n => n.Side == side && n.Norm is { Verified: true, Unit: NormUnit.Measure, Mean: not null })?.Norm;
        return norm is null
            ? null
            : new GoalTarget(
                norm.Mean!.Value,
                $"The {(norm.IsMedian ? "median" : "mean")} of {norm.Population} is {Say.Shown(found.Measure, norm.Mean.Value)}.",
                norm.Source);
    }
}
