using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Files speak degrees; measures are stored in radians, newtons and points.</summary>
internal static class MeasureConversion
{
    private const double RadiansPerDegree = Math.PI / 180;

    internal static MeasureUnit? UnitOf(MeasureFile file) => (file.RangeDeg, file.RangeN, file.RangePoints) switch
    {
        ({ }, null, null) => MeasureUnit.Radians,
        (null, { }, null) => MeasureUnit.Newtons,
        (null, null, { }) => MeasureUnit.Points,
        _ => null,
    };

    internal static RangesFile Ranges(MeasureFile file) => (file.RangeDeg ?? file.RangeN ?? file.RangePoints)!;

    internal static double Scale(MeasureUnit unit) => unit == MeasureUnit.Radians ? RadiansPerDegree : 1;

    internal static Measure ToMeasure(MeasureFile file, MeasureUnit unit)
    {
        var (ranges, scale) = (Ranges(file), Scale(unit));
        var errors = file.Errors.Select(ToError).ToImmutableArray();
        return new Measure
        {
            Id = file.Id,
            Name = file.Name,
            Aliases = [.. file.Aliases],
            Kind = file.Kind,
            Position = file.Position,
            Order = file.Order,
            Unit = unit,
            Sided = file.Sided,
            Direction = file.Direction,
            Mode = file.Mode,
            Convention = file.Convention,
            Action = file.Action,
            Group = file.Group,
            Method = new MeasureMethod
            {
                Steps = [.. file.Method.Steps],
                Stabilization = file.Method.Stabilization,
                Placement = file.Method.Placement,
                Technique = file.Method.Technique,
            },
            HardRange = new ValueRange(ranges.HardLow * scale, ranges.HardHigh * scale),
            SoftRange = new ValueRange(ranges.SoftLow * scale, ranges.SoftHigh * scale),
            TrialRule = file.TrialRule,
            Error = errors.FirstOrDefault(),
            OtherErrors = errors.Length > 1 ? errors[1..] : [],
            Mcid = file.Mcid is { } mcid ? ToMcid(mcid) : null,
            SymmetryLimit = file.SymmetryLimit,
            Strength = file.Strength is { } strength ? ToStrength(strength) : null,
            Length = file.Length is { } length ? ToLength(length) : null,
            Cautions = [.. file.Cautions],
            Sources = [.. file.Sources],
            Verified = file.Verified,
        };
    }

    /// <summary>The numbers an error gives, with their form, in the stored unit.</summary>
    internal static List<(ErrorForm Form, double Value, MeasureUnit? Unit)> Numbers(ErrorFile file)
    {
        var list = new List<(ErrorForm, double, MeasureUnit?)>();
        Add(ErrorForm.Sem, file.SemDeg * RadiansPerDegree, MeasureUnit.Radians);
        Add(ErrorForm.Sem, file.SemN, MeasureUnit.Newtons);
        Add(ErrorForm.Sem, file.SemPoints, MeasureUnit.Points);
        Add(ErrorForm.RelativeSem, file.SemFraction, null);
        Add(ErrorForm.PrintedMdc, file.MdcDeg * RadiansPerDegree, MeasureUnit.Radians);
        Add(ErrorForm.PrintedMdc, file.MdcN, MeasureUnit.Newtons);
        Add(ErrorForm.PrintedMdc, file.MdcPoints, MeasureUnit.Points);
        Add(ErrorForm.RelativePrintedMdc, file.MdcFraction, null);
        return list;

        void Add(ErrorForm form, double? value, MeasureUnit? unit)
        {
            if (value is { } number)
                list.Add((form, number, unit));
        }
    }

    private static MeasurementError ToError(ErrorFile file)
    {
        var (form, value, _) = Numbers(file)[0];
        return new MeasurementError
        {
            Form = form,
            Value = value,
            Level = file.Level,
            SameExaminer = file.SameExaminer,
            Population = file.Population,
            Source = file.Source,
        };
    }

    private static McidRule ToMcid(McidFile file) => new()
    {
        Form = file.Bands is not null ? McidForm.ByBaseline : file.Fraction is not null ? McidForm.Fraction : McidForm.Fixed,
        Value = file.FixedPoints ?? (file.FixedDeg * RadiansPerDegree) ?? file.Fraction ?? 0,
        Bands = [.. (file.Bands ?? []).Select(b => new McidBand(b.FromPoints, b.ChangePoints))],
        Population = file.Population,
        Source = file.Source,
    };

    private static LengthSetUp ToLength(LengthFile file) => new()
    {
        PositionText = file.PositionText,
        Orientation = file.Orientation,
        Tested = PoseConversion.ToLimb(file.Tested),
        Other = PoseConversion.ToLimb(file.Other),
        Measured = file.Measured,
    };

    private static StrengthSetUp ToStrength(StrengthFile file) => new()
    {
        LeverArmHintM = file.LeverArmHintM,
        LeverArmMostM = file.LeverArmMostM,
        LeverArmText = file.LeverArmText,
        PositionText = file.PositionText,
        Orientation = file.Orientation,
        Tested = PoseConversion.ToLimb(file.Tested),
        Other = PoseConversion.ToLimb(file.Other),
    };
}
