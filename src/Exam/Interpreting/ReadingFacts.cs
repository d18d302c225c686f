using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>What follows from each reading alone.</summary>
internal static class ReadingFacts
{
    /// <summary>Pain during a strength test from which the force is taken as held back by pain. Our choice.</summary>
    public const int PainLimitsFrom = 3;

    public static ImmutableArray<SideReading> All(InterpretationInput input) =>
        [.. input.Now
            .Where(m => m.MeasureId == input.Measure.Id)
            .OrderBy(m => m.Side)
            .Select(m => Of(input.Measure, m, input.Person, Gravity(input, m.Side)))];

    public static SideReading Of(Measure measure, Measurement measurement, Physique person, double? gravityNm)
    {
        var value = measure.Combine(measurement.Trials);
        var isStrength = measure.Kind == MeasureKind.Strength;
        double? torque = isStrength && measurement.LeverArmM is { } lever ? StrengthMath.Torque(value, lever) : null;
        return new SideReading
        {
            Measurement = measurement,
            Value = value,
            Shown = Say.Shown(measure, value),
            TorqueNm = torque,
            TorquePerKg = torque / person.MassKg,
            PercentWeightHeight = torque is { } t && person is { MassKg: { } mass, StatureM: { } stature }
                ? StrengthMath.PercentWeightHeight(t, mass, stature)
                : null,
            TotalTorqueNm = torque + gravityNm,
            PainLimited = isStrength && measurement.PainDuring >= PainLimitsFrom,
        };
    }

    private static double? Gravity(InterpretationInput input, Side? side) => side switch
    {
        Side.Left => input.GravityTorqueLeftNm,
        Side.Right => input.GravityTorqueRightNm,
        null => null,
    };
}
