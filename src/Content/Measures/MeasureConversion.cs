using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Files speak degrees; measures are stored in radians, newtons and points.</summary>
internal static class MeasureConversion
{
    internal static Measure ToMeasure(MeasureFile file, ShownUnit unit)
    {
        var scale = unit.StoredPerShown;
        var errors = file.Errors.Select(e => ToError(e, scale)).ToImmutableArray();
        return new Measure
        {
            Id = file.Id,
            Name = file.Name,
            Aliases = [.. file.Aliases],
            Kind = file.Kind,
            Position = file.Position,
            Order = file.Order,
            Regions = [.. file.Regions],
            Shown = unit,
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
                WithoutDevice = file.Method.WithoutDevice,
            },
            HardRange = new ValueRange(file.Range.HardLow * scale, file.Range.HardHigh * scale),
            SoftRange = new ValueRange(file.Range.SoftLow * scale, file.Range.SoftHigh * scale),
            TrialRule = file.TrialRule,
            Error = errors.FirstOrDefault(),
            OtherErrors = errors.Length > 1 ? errors[1..] : [],
            Mcid = file.Mcid is { } mcid ? ToMcid(mcid, scale) : null,
            SymmetryLimit = file.SymmetryLimit,
            Strength = file.Strength is { } strength ? ToStrength(strength) : null,
            Length = file.Length is { } length ? ToLength(length) : null,
            Questionnaire = file.Questionnaire is { } questionnaire ? ToQuestionnaire(questionnaire) : null,
            Shows = file.Shows is { } shows ? new ShownLack(shows.Kind, shows.Action, shows.From * scale, shows.Words) : null,
            CoreMinutes = file.CoreMinutes,
            Cautions = [.. file.Cautions],
            Sources = [.. file.Sources],
            Verified = file.Verified,
        };
    }

    /// <summary>The numbers an error gives, with their form, as in the file.</summary>
    internal static List<(ErrorForm Form, double Value)> Numbers(ErrorFile file)
    {
        var list = new List<(ErrorForm, double)>();
        Add(ErrorForm.Sem, file.Sem);
        Add(ErrorForm.RelativeSem, file.SemFraction);
        Add(ErrorForm.PrintedMdc, file.Mdc);
        Add(ErrorForm.RelativePrintedMdc, file.MdcFraction);
        return list;

        void Add(ErrorForm form, double? value)
        {
            if (value is { } number)
                list.Add((form, number));
        }
    }

    private static MeasurementError ToError(ErrorFile file, double scale)
    {
        var (form, value) = Numbers(file)[0];
        return new MeasurementError
        {
            Form = form,
            Value = form is ErrorForm.Sem or ErrorForm.PrintedMdc ? value * scale : value,
            Level = file.Level,
            SameExaminer = file.SameExaminer,
            Population = file.Population,
            Source = file.Source,
        };
    }

    private static McidRule ToMcid(McidFile file, double scale) => new()
    {
        Form = file.Bands is not null ? McidForm.ByBaseline : file.Fraction is not null ? McidForm.Fraction : McidForm.Fixed,
        Value = file.Fixed * scale ?? file.Fraction ?? 0,
        Bands = [.. (file.Bands ?? []).Select(b => new McidBand(b.From * scale, b.Change * scale))],
        Population = file.Population,
        Source = file.Source,
    };

    private static QuestionnaireSetUp ToQuestionnaire(QuestionnaireFile file) => new()
    {
        Form = file.Form,
        ItemCount = file.ItemCount,
        LeastAnswered = file.LeastAnswered,
        ItemLow = file.ItemLow,
        ItemHigh = file.ItemHigh,
        Items = [.. file.Items],
        Terms = file.Terms,
    };

    private static LengthSetUp ToLength(LengthFile file) => new()
    {
        PositionText = file.PositionText,
        Orientation = file.Orientation,
        Tested = PoseConversion.ToLimb(file.Tested),
        Other = PoseConversion.ToLimb(file.Other),
        Measured = file.Measured,
        NormStandsIn = file.NormStandsIn,
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
