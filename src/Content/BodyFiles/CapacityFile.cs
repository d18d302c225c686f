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
    IReadOnlyList<CapacityTorqueFile> Torques,
    CapacitySpreadFile Spread,
    IReadOnlyList<ReaderErrorFile> ReaderErrors,
    EnduranceFile Endurance)
{
    private const string FileName = "body/capacity.json";

    /// <summary>The tables, or null with faults told.</summary>
    public CapacityTables? ToTables(FaultList faults)
    {
        var before = faults.Faults.Count;
        CheckCurves(faults);
        CheckFigures(faults);
        CheckReaders(faults);
        var endurance = Endurance.ToTables(FileName, faults);
        return faults.Faults.Count > before
            ? null
            : new CapacityTables(
                [.. Curves.Select(c => new CapacityCurve(c.Action, c.Sex, c.AgeYears, c.C1, c.C2, c.C3))],
                AnglesDeg.ToImmutableDictionary(
                    a => a.Key, a => (Angle.FromDegrees(a.Value[0]).Radians, Angle.FromDegrees(a.Value[1]).Radians)),
                [.. Constants.Select(c => c.ToConstant()), .. Torques.Select(t => t.ToConstant())],
                Spread.Untested,
                [.. ReaderErrors.Select(e => new ReaderError(e.Reader, e.Action, e.RelativeError))],
                endurance!);
    }

    private void CheckCurves(FaultList faults)
    {
        for (var i = 0; i < Curves.Count; i++)
        {
            if (Curves[i] is not { C1: > 0, C2: > 0, AgeYears: > 0 })
                faults.Add(FileName, null, $"curves[{i}]", "c1, c2 and ageYears must be above 0.", "Correct the row.");
        }

        foreach (var (action, range) in AnglesDeg)
        {
            if (range is not [var least, var most] || !(least < most))
                faults.Add(FileName, null, $"anglesDeg.{action}", "Two rising numbers are needed.", "Give [least, most] in degrees.");
        }
    }

    private void CheckFigures(FaultList faults)
    {
        for (var i = 0; i < Constants.Count; i++)
        {
            if (Constants[i] is not { PercentOfWeightTimesStature: > 0, StandardDeviation: > 0 })
                faults.Add(FileName, null, $"constants[{i}]", "Percent and standard deviation must be above 0.", "Correct the row.");
        }

        for (var i = 0; i < Torques.Count; i++)
        {
            if (Torques[i] is not { TorqueNm: > 0, SampleMassKg: > 0, SampleStatureM: > 0, Spread: > 0 and < 1 })
                faults.Add(FileName, null, $"torques[{i}]", "Torque, mass and stature must be above 0, spread between 0 and 1.", "Correct the row.");
        }

        var twice = Constants.Select(c => (c.Action, c.Sex)).Concat(Torques.Select(t => (t.Action, t.Sex)))
            .GroupBy(row => row).Where(rows => rows.Count() > 1 || Curves.Any(c => (c.Action, c.Sex) == rows.Key));
        foreach (var rows in twice)
            faults.Add(FileName, null, $"torques.{rows.Key.Action}", "An action has two figures for one sex.", "Keep one of them.");
        if (Spread is not { Untested: > 0 and < 1 })
            faults.Add(FileName, null, "spread", "The fraction must lie between 0 and 1.", "Correct it.");
    }

    private void CheckReaders(FaultList faults)
    {
        for (var i = 0; i < ReaderErrors.Count; i++)
        {
            if (ReaderErrors[i] is not { RelativeError: > 0 and < 1 })
                faults.Add(FileName, null, $"readerErrors[{i}]", "The fraction must lie between 0 and 1.", "Correct the row.");
        }

        foreach (var reader in Enum.GetValues<ForceReader>())
        {
            if (ReaderErrors.All(e => e.Reader != reader || e.Action is not null))
                faults.Add(FileName, null, "readerErrors", $"No error is given for {reader}.", "Add a row without an action.");
        }
    }
}

/// <summary>One strength curve.</summary>
public sealed record CapacityCurveFile(JointAction Action, Sex Sex, double AgeYears, double C1, double C2, double C3);

/// <summary>One torque known at one position, as a part of weight times stature.</summary>
public sealed record CapacityConstantFile(
    JointAction Action, Sex Sex, double PercentOfWeightTimesStature, double StandardDeviation, string Source, string Note, bool Weak = false)
{
    internal CapacityConstant ToConstant() =>
        new(Action, Sex, PercentOfWeightTimesStature / 100, 0, StandardDeviation / PercentOfWeightTimesStature, true, Weak);
}

/// <summary>One torque known at one position, as measured on a sample of known build.</summary>
public sealed record CapacityTorqueFile(
    JointAction Action,
    Sex Sex,
    double TorqueNm,
    double SampleMassKg,
    double SampleStatureM,
    double Spread,
    string Source,
    string Note,
    bool FollowsBuild = true,
    bool CarriedToOtherAges = true,
    bool Weak = false)
{
    internal CapacityConstant ToConstant() => new(
        Action,
        Sex,
        FollowsBuild ? TorqueNm / (SampleMassKg * BodyModel.Gravity * SampleStatureM) : 0,
        FollowsBuild ? 0 : TorqueNm,
        Spread,
        CarriedToOtherAges,
        Weak);
}

/// <summary>How far people scatter.</summary>
public sealed record CapacitySpreadFile(double Untested, string UntestedSource);

/// <summary>How far tests with one kind of reader scatter.</summary>
public sealed record ReaderErrorFile(ForceReader Reader, double RelativeError, string Source, string Note, JointAction? Action = null);
