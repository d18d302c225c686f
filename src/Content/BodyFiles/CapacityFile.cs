using System.Collections.Immutable;
using System.Text.Json.Serialization;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>content/body/capacity.json.</summary>
public sealed record CapacityFile(
    [property: JsonPropertyName("$schema")] string Schema,
    string Note,
    string CurveSource,
    IReadOnlyDictionary<JointAction, double[]> AnglesDeg,
    IReadOnlyList<CapacityCurveFile> Curves,
    IReadOnlyList<CapacityConstantFile> Constants,
    CapacitySpreadFile Spread)
{
    /// <summary>The tables, or null with faults told.</summary>
    public CapacityTables? ToTables(FaultList faults)
    {
        var before = faults.Faults.Count;
        for (var i = 0; i < Curves.Count; i++)
        {
            if (Curves[i] is not { C1: > 0, C2: > 0, AgeYears: > 0 })
                faults.Add("body/capacity.json", null, $"curves[{i}]", "c1, c2 and ageYears must be above 0.", "Correct the row.");
        }

        foreach (var (action, range) in AnglesDeg)
        {
            if (range is not [var least, var most] || !(least < most))
                faults.Add("body/capacity.json", null, $"anglesDeg.{action}", "Two rising numbers are needed.", "Give [least, most] in degrees.");
        }

        for (var i = 0; i < Constants.Count; i++)
        {
            if (Constants[i] is not { PercentOfWeightTimesStature: > 0, StandardDeviation: > 0 })
                faults.Add("body/capacity.json", null, $"constants[{i}]", "Percent and standard deviation must be above 0.", "Correct the row.");
        }

        if (Spread is not { Untested: > 0 and < 1, TestedRelativeError: > 0 and < 1 })
            faults.Add("body/capacity.json", null, "spread", "Both fractions must lie between 0 and 1.", "Correct them.");
        return faults.Faults.Count > before
            ? null
            : new CapacityTables(
                [.. Curves.Select(c => new CapacityCurve(c.Action, c.Sex, c.AgeYears, c.C1, c.C2, c.C3))],
                AnglesDeg.ToImmutableDictionary(
                    a => a.Key, a => (Angle.FromDegrees(a.Value[0]).Radians, Angle.FromDegrees(a.Value[1]).Radians)),
                [.. Constants.Select(c => new CapacityConstant(
                    c.Action, c.Sex, c.PercentOfWeightTimesStature / 100, c.StandardDeviation / 100))],
                Spread.Untested,
                Spread.TestedRelativeError);
    }
}

/// <summary>One strength curve.</summary>
public sealed record CapacityCurveFile(JointAction Action, Sex Sex, double AgeYears, double C1, double C2, double C3);

/// <summary>One torque known at one position.</summary>
public sealed record CapacityConstantFile(
    JointAction Action, Sex Sex, double PercentOfWeightTimesStature, double StandardDeviation, string Source, string Note);

/// <summary>How far people and tests scatter.</summary>
public sealed record CapacitySpreadFile(
    double Untested, string UntestedSource, double TestedRelativeError, string TestedSource);
