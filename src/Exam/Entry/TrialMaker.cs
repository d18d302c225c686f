using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>The trials of one reading in the stored unit, and what has to be kept beside them.</summary>
/// <param name="Trials">Stored values; numbers as typed when the unit is not known.</param>
/// <param name="Unit">The unit they were typed in.</param>
/// <param name="IsTorque">Whether they are torques, N m.</param>
/// <param name="UnknownUnit">The unit as typed when nothing can be made of it.</param>
/// <param name="Printed">The number as printed, when another was computed from it.</param>
internal sealed record MadeTrials(ImmutableArray<double> Trials, UnitKind? Unit, bool IsTorque, string? UnknownUnit, string? Printed);

/// <summary>Turns the numbers of one draft into trials: units, percentages, deficits, ends of ranges; and guards against slips.</summary>
internal sealed class TrialMaker(ReadingMaker maker, Measure measure, ReadingDraft draft)
{
    private const double Gravity = 9.80665;

    private string? printed;
    private bool isTorque;

    /// <summary>The trials; null when there are none, which has then been said or kept in words.</summary>
    public MadeTrials? Make()
    {
        if (!ScaleFits())
            return null;
        if (ForeignUnit() is { } foreign)
            return Unjudged(foreign);
        if (draft is { Dashes: 1, Numbers.Count: 2 } && measure.Unit == MeasureUnit.Radians)
            TakeFarEnd();
        AskAboutPair();
        var lastUnit = draft.Numbers.LastOrDefault(n => n.Unit is not null).Unit ?? maker.CarriedUnit;
        var trials = ImmutableArray.CreateBuilder<double>();
        foreach (var number in draft.Numbers)
        {
            var unit = number.Unit ?? lastUnit;
            if (Missing(number) is { } missing)
            {
                if (Remaining(missing, number.Text) is not { } left)
                    return null;
                trials.Add(left);
                continue;
            }

            if (Stored(number.Value, unit, number.Text) is not { } stored || !IsPossible(stored, number.Text))
                return null;
            AskAboutSlips(stored, number);
            trials.Add(stored);
        }

        return new MadeTrials(trials.ToImmutable(), lastUnit, isTorque, null, printed);
    }

    private MadeTrials Unjudged(string unit)
    {
        maker.Note($"{measure.Name}: the unit \"{unit}\" is kept with the number as typed. Nothing is computed from it or judged by it.");
        return new MadeTrials([.. draft.Numbers.Select(n => n.Value)], null, false, unit, null);
    }

    /// <summary>A scale has its own end. Pain may also come out of 100; a 0 to 100 score may come from any raw score; others are kept.</summary>
    private bool ScaleFits()
    {
        if (draft.OutOf is not { } outOf || outOf == measure.HardRange.High)
            return true;
        var (score, text) = (draft.Numbers[^1].Value, draft.Numbers[^1].Text);
        var isRating = measure.Kind is MeasureKind.PainRating or MeasureKind.PatientSpecific or MeasureKind.GlobalChange;
        var scale = isRating ? outOf == 100 ? measure.HardRange.High : 0 : measure.HardRange is { Low: 0, High: 100 } ? 100 : 0;
        if (outOf <= 0 || score > outOf || (isRating && scale == 0))
        {
            maker.Fault(
                outOf > 0 && score > outOf
                    ? $"{Say.Number(score)} is more than the end of its scale, {Say.Number(outOf)}."
                    : $"This scale ends at {Say.Number(measure.HardRange.High)}, not at {Say.Number(outOf)}.",
                text, $"Type the answer as a number from {Say.Number(measure.HardRange.Low)} to {Say.Number(measure.HardRange.High)}.");
            return false;
        }

        if (scale == 0)
        {
            draft.Numbers[^1] = new DraftNumber(score, UnitKind.Foreign, text, $"of {Say.Number(outOf)}");
            return true;
        }

        draft.Numbers[^1] = new DraftNumber(score * scale / outOf, null, text);
        Computed(text, $"{text} was read as {Say.Number(score * scale / outOf)} on the scale to {Say.Number(scale)}. Is it right?");
        return true;
    }

    private void Computed(string text, string question)
    {
        printed = text;
        maker.Question(text, question);
    }

    /// <summary>The unit that this measure can do nothing with, as typed; null when every number can be used.</summary>
    private string? ForeignUnit()
    {
        foreach (var number in draft.Numbers)
        {
            if (number.Unit is { } unit && !IsUsable(unit))
                return number.UnitText;
        }

        return null;
    }

    private bool IsUsable(UnitKind unit) => unit switch
    {
        UnitKind.Foreign => false,
        UnitKind.TorquePerMass => measure.Unit != MeasureUnit.Newtons || maker.Context.MassKg is not null,
        UnitKind.PercentWeight => measure.Unit == MeasureUnit.Newtons && maker.Context.MassKg is not null,
        UnitKind.PercentWeightHeight => measure.Unit == MeasureUnit.Newtons && maker.Context is { MassKg: not null, StatureM: not null },
        UnitKind.Percent => measure.Unit == MeasureUnit.Percent || IsRawScore,
        _ => true,
    };

    private bool IsRawScore => measure is { Unit: MeasureUnit.Points, Kind: MeasureKind.Questionnaire, HardRange.Low: 0 };

    /// <summary>"0-118": the far end is the reading; both ends stay beside it.</summary>
    private void TakeFarEnd()
    {
        var (near, far) = (draft.Numbers[0], draft.Numbers[1]);
        if (Math.Abs(near.Value) > Math.Abs(far.Value))
            (near, far) = (far, near);
        var ends = $"{draft.Numbers[0].Text}-{draft.Numbers[1].Text}";
        draft.Numbers.Clear();
        draft.Numbers.Add(far with { Unit = far.Unit ?? near.Unit });
        draft.Dashes = 0;
        Computed(ends, $"\"{ends}\" reads as the two ends of a range. {far.Text} is taken, the end that is measured; {near.Text} is kept beside it. Is it right?");
    }

    private void AskAboutPair()
    {
        if (draft.Slashes + draft.Dashes != 1 || draft.Numbers.Count != 2)
            return;
        var (a, b) = (draft.Numbers[0].Text, draft.Numbers[1].Text);
        var mark = draft.Dashes == 1 ? '-' : '/';
        var sides = measure.Sided ? $" For two sides write \"L {a}, R {b}\"." : "";
        maker.Question($"{a}{mark}{b}", $"\"{a}{mark}{b}\" was read as two trials.{sides} For one reading type one number.");
    }

    /// <summary>How much is missing, in the stored unit; null when the number is the reading itself.</summary>
    private double? Missing(DraftNumber number) =>
        draft.IsDeficit && measure.Unit == MeasureUnit.Radians ? Math.Abs(number.Value) * (Math.PI / 180) : null;

    /// <summary>A deficit of straightening is measured from straight; any other is taken off the other side, if that is known.</summary>
    private double? Remaining(double missing, string text)
    {
        var what = $"lacks {text}";
        if (IsStraightening)
        {
            printed = what;
            return measure.HardRange.Holds(-missing) ? -missing : Refused(-missing, text);
        }

        if (maker.OtherSide(measure, draft.Side) is { } other)
        {
            var left = measure.Combine(other.Trials) - missing;
            Computed(what, $"\"{what}\" was read as {Say.Shown(measure, left)}, that much less than the {Say.Side(other.Side)} side. Is it right?");
            return measure.HardRange.Holds(left) ? left : Refused(left, text);
        }

        maker.KeepAsWords(measure, draft, what);
        return null;
    }

    private bool IsStraightening =>
        measure.HardRange.Low < 0 && measure.Action is Body.JointAction.KneeExtension or Body.JointAction.ElbowExtension;

    private double? Refused(double stored, string text)
    {
        IsPossible(stored, text);
        return null;
    }

    private bool IsPossible(double stored, string text)
    {
        if (measure.HardRange.Holds(stored))
            return true;
        maker.Fault(
            $"{Say.Shown(measure, stored)} cannot be a {measure.Name.ToLowerInvariant()}.", text,
            $"Give a value from {Say.Shown(measure, measure.HardRange.Low)} to {Say.Shown(measure, measure.HardRange.High)}.");
        return false;
    }

    private void AskAboutSlips(double stored, DraftNumber number)
    {
        if (!isTorque && measure.Unit == MeasureUnit.Newtons && number.Unit is null or UnitKind.Newton && AskAboutPounds(stored, number.Text))
            return;
        if (!measure.SoftRange.Holds(stored))
            maker.Question(
                number.Text,
                $"{Say.Shown(measure, stored)} is unusual for {measure.Name.ToLowerInvariant()} "
                + $"(mostly {Say.Shown(measure, measure.SoftRange.Low)} to {Say.Shown(measure, measure.SoftRange.High)}). Is it right?");
    }

    /// <summary>
    /// A force that is a quarter of the other side's or of last time's was perhaps read in pounds, a tenth in kilograms; so is one
    /// that is unusually low as newtons and usual as pounds. Factors of 3.6 to 5.5 and 8 to 12 are our choice.
    /// </summary>
    private bool AskAboutPounds(double newtons, string text)
    {
        if (maker.Context.Units == UnitChoice.Us && !text.EndsWith('N'))
            return false;
        var held = maker.OtherSide(measure, draft.Side) ?? maker.Context.Last.LastOrDefault(m => m.MeasureId == measure.Id && m.Side == draft.Side);
        var usual = held is { LeverArmM: not 1, Conditions.UnknownUnit: null } ? measure.Combine(held.Trials) : (double?)null;
        var ratio = usual / newtons;
        var (unit, asMeant) = ratio is >= 3.6 and <= 5.5 ? ("lb", StrengthMath.FromPoundForce(newtons))
            : ratio is >= 8 and <= 12 ? ("kgf", StrengthMath.FromKilogramForce(newtons))
            : usual is null && newtons < measure.SoftRange.Low && measure.SoftRange.Holds(StrengthMath.FromPoundForce(newtons))
                ? ("lb", StrengthMath.FromPoundForce(newtons))
                : ("", 0);
        if (unit.Length == 0)
            return false;
        var beside = usual is { } other ? $", and {Say.Number(other, 0)} N was measured {(held!.Side == draft.Side ? "last time" : "on the other side")}" : "";
        var digits = Say.Number(newtons, 2);
        maker.Question(
            text, $"{digits} N is low for {measure.Name.ToLowerInvariant()}{beside}. Were {(unit == "lb" ? "pounds" : "kilograms")} meant? {digits} {unit} is {Say.Number(asMeant, 0)} N.",
            maker.Replaced(text, $"{digits} {unit}"));
        return true;
    }

    private double? Stored(double value, UnitKind? unit, string text)
    {
        var context = maker.Context;
        switch (unit)
        {
            case UnitKind.NewtonMetre when measure.Unit == MeasureUnit.Newtons:
                isTorque = true;
                return value;
            case UnitKind.TorquePerMass when measure.Unit == MeasureUnit.Newtons:
                (isTorque, printed) = (true, text);
                return value * context.MassKg;
            case UnitKind.PercentWeightHeight:
                (isTorque, printed) = (true, text);
                return value / 100 * context.MassKg * Gravity * context.StatureM;
            case UnitKind.PercentWeight:
                printed = text;
                return value / 100 * context.MassKg * Gravity;
            case UnitKind.Percent when IsRawScore:
                var score = value / 100 * measure.HardRange.High;
                if (measure.HardRange.High != 100)
                    Computed(text, $"{text} was read as {Say.Number(score)} of {Say.Number(measure.HardRange.High)}. Is it right?");
                return score;
            case UnitKind.Millimetre or UnitKind.Centimetre when measure is { Kind: MeasureKind.PainRating }:
                printed = text;
                return value * (unit == UnitKind.Millimetre ? 0.1 : 1);
        }

        if (draft.IsHyper && measure.Unit == MeasureUnit.Radians)
            value = Math.Abs(value);
        return EntryUnits.ToStored(value, unit, context.ShownUnitOf(measure)) ?? NotOfThisMeasure(text);
    }

    private double? NotOfThisMeasure(string text)
    {
        var wanted = measure.Unit switch
        {
            MeasureUnit.Newtons => "Type a force in N, kgf or lb, or a torque in Nm.",
            MeasureUnit.Radians => "Type an angle in degrees.",
            MeasureUnit.Points =>
                $"Type a number from {Say.Number(measure.HardRange.Low)} to {Say.Number(measure.HardRange.High)}.",
            MeasureUnit.Seconds => "Type a time in s or min.",
            MeasureUnit.Count => "Type how often, as a whole number.",
            MeasureUnit.Metres => "Type a length in cm, m, km, in, ft or miles.",
            MeasureUnit.MetresPerSecond => "Type a speed in m/s, km/h or mph.",
            MeasureUnit.Percent => "Type a percentage.",
            MeasureUnit.Kilograms => "Type a mass in kg or lb.",
        };
        maker.Fault($"This unit does not belong to {measure.Name.ToLowerInvariant()}.", text, wanted);
        return null;
    }
}
