using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Finds the norm rows that fit a person and compares values with them.</summary>
internal static class NormChoice
{
    /// <summary>Standard score on the worse side beyond which a grading row calls a value low: the 5th percentile. Our choice.</summary>
    public const double LowBeyondZ = 1.645;

    public static ImmutableArray<NormComparison> Compare(InterpretationInput input, ImmutableArray<SideReading> readings)
    {
        if (input.Person.AgeYears is not { } age)
            return [];
        var predicted = input.Predictions.Where(p => p.MeasureId == input.Measure.Id).Select(p => p.For(input.Person)).OfType<Norm>();
        var rows = input.Norms
            .Where(n => n.MeasureId == input.Measure.Id && n.CoversAge(age) && FitsSex(n, input.Person.Sex))
            .Concat(predicted)
            .Where(n => n.Verified || input.ShowUnverified)
            .OrderByDescending(n => MayGrade(input.Measure, n))
            .ThenByDescending(n => n.Verified)
            .ThenByDescending(n => n.Spread is not null)
            .ThenByDescending(n => SameMode(input.Measure, n))
            .ThenByDescending(n => n.Sex is not null)
            .ThenBy(n => (n.AgeTo ?? 120) - n.AgeFrom)
            .ThenByDescending(n => n.N ?? 0)
            .ThenBy(n => n.Source, StringComparer.Ordinal)
            .ToList();
        return [.. readings.SelectMany(r => rows.Select(n => One(input, r, n)).OfType<NormComparison>())];
    }

    /// <summary>
    /// A row grades only if it may, has a spread between people or a limit of its own, was verified and was not measured in
    /// another mode.
    /// </summary>
    public static bool MayGrade(Measure measure, Norm norm) =>
        norm is { Use: NormUse.Grade, Verified: true } && (norm.Limit ?? norm.Spread) is not null && !OtherMode(measure, norm);

    /// <summary>Whether the row states the other of active and passive.</summary>
    public static bool OtherMode(Measure measure, Norm norm) =>
        norm.Mode != MotionMode.NotApplicable && measure.Mode != MotionMode.NotApplicable && norm.Mode != measure.Mode;

    private static bool SameMode(Measure measure, Norm norm) => !OtherMode(measure, norm);

    private static bool FitsSex(Norm norm, Sex? sex) => norm.Sex is null || norm.Sex == sex;

    private static NormComparison? One(InterpretationInput input, SideReading reading, Norm norm)
    {
        if (ValueFor(input, reading, norm) is not { } value)
            return null;
        double? z = norm is { Spread: { } sd, Mean: { } mean, IsMedian: false } ? NormMath.ZScore(value, mean, sd) : null;
        bool? low = null;
        if (MayGrade(input.Measure, norm) && input.Measure.Direction != Direction.Neither)
            low = norm.Limit is { } limit ? input.Measure.Gain(limit, value) < 0
                : z is { } score ? (input.Measure.Direction == Direction.LowerBetter ? -score : score) < -LowBeyondZ
                : null;
        return new NormComparison(reading.Measurement.Side, norm, value, z, z is { } s ? NormMath.Percentile(s) : null, low);
    }

    private static double? ValueFor(InterpretationInput input, SideReading reading, Norm norm) => norm.Unit switch
    {
        NormUnit.Measure => reading.Value,
        NormUnit.TorquePerMass => reading.TorquePerKg,
        NormUnit.PercentWeightHeight => reading.PercentWeightHeight,
        NormUnit.ForcePerMass => input.Person.MassKg is { } kilograms ? reading.Value / kilograms : null,
        NormUnit.PercentWeight => input.Person.MassKg is { } mass ? 100 * reading.Value / (mass * StrengthMath.Gravity) : null,
    };
}
