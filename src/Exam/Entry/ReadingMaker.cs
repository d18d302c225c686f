using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Turns one read draft into a measurement or an observation, and checks it against what can be true.</summary>
internal sealed class ReadingMaker(string asTyped)
{
    private readonly List<Measurement> measurements = [];
    private readonly List<Observation> observations = [];
    private readonly List<EntryFault> faults = [];
    private readonly List<EntryQuestion> questions = [];
    private readonly List<string> notes = [];
    private int firstOfMeasure;
    private double? carriedLeverM;
    private UnitKind? carriedUnit;

    public EntryResult Result() => new()
    {
        AsTyped = asTyped,
        Measurements = [.. measurements],
        Observations = [.. observations],
        Faults = [.. faults.Distinct()],
        Questions = [.. questions.Distinct()],
        Notes = [.. notes.Distinct()],
    };

    public void Fault(string what, string where, string mend, string? suggestion = null) =>
        faults.Add(new EntryFault(what, where, mend, suggestion));

    public void Question(string where, string sentence) => questions.Add(new EntryQuestion(where, sentence));

    public void Note(string sentence) => notes.Add(sentence);

    public void StartMeasure() => (carriedLeverM, carriedUnit, firstOfMeasure) = (null, null, measurements.Count);

    public void Make(Measure measure, ReadingDraft draft)
    {
        if (draft.Broken)
            return;
        if (draft is { Both: true, Side: null })
        {
            foreach (var side in new[] { Side.Left, Side.Right })
            {
                draft.Side = side;
                Make(measure, draft);
            }

            return;
        }

        if (IsSharedLever(measure, draft))
            return;
        if (measure.Sided && draft.Side is null)
        {
            Fault(
                "The side is missing.", asTyped.Trim(),
                $"{measure.Name} is measured on each side: write L or R before the number.");
            return;
        }

        if (draft.Grade is not null)
            KeepGrade(measure, draft);
        if (draft.Numbers.Count == 0)
            KeepWords(measure, draft);
        else if (Values(measure, draft) is { } trials && LeverIsPossible(measure, draft) && PainIsPossible(draft))
            Keep(measure, draft, trials);
    }

    private void KeepGrade(Measure measure, ReadingDraft draft)
    {
        observations.Add(new Observation(measure.Id, draft.Side, string.Join(' ', draft.Words.Prepend(draft.Grade!)), draft.Grade));
        notes.Add(
            $"{measure.Name}: {draft.Grade} is kept as a manual grade. It is not a force, so no torque or load share comes of it.");
    }

    private void KeepWords(Measure measure, ReadingDraft draft)
    {
        if (draft.Words.Count > 0 && draft.Grade is null)
        {
            observations.Add(new Observation(measure.Id, draft.Side, string.Join(' ', draft.Words), null));
            notes.Add($"{measure.Name}: \"{string.Join(' ', draft.Words)}\" is kept as words; there is no number to compute with.");
        }
        else if (draft.Grade is null)
        {
            Fault("The reading itself is missing.", asTyped.Trim(), "Type the number first, then lever arm and pain.");
        }
    }

    private ImmutableArray<double>? Values(Measure measure, ReadingDraft draft)
    {
        if (draft.OutOf is { } outOf && outOf != 10)
        {
            Fault(
                $"This scale ends at 10, not at {Say.Number(outOf)}.", draft.Numbers[0].Text,
                "Type the answer as a number from 0 to 10.");
            return null;
        }

        if (draft.Dashes > 0 && measure.Unit == MeasureUnit.Radians)
        {
            var ends = string.Join('-', draft.Numbers.Select(n => n.Text));
            Fault(
                "This reads as the two ends of a range.", ends,
                $"Type the end that is measured alone, such as {draft.Numbers[^1].Text}.");
            return null;
        }

        AskAboutPair(measure, draft);
        var lastUnit = draft.Numbers.LastOrDefault(n => n.Unit is not null).Unit ?? carriedUnit;
        var trials = ImmutableArray.CreateBuilder<double>();
        foreach (var (value, unit, text) in draft.Numbers)
        {
            if (Stored(measure, value, unit ?? lastUnit, text) is not { } stored)
                return null;
            if (!measure.HardRange.Holds(stored))
            {
                Fault(
                    $"{Say.Shown(measure, stored)} cannot be a {measure.Name.ToLowerInvariant()}.", text,
                    $"Give a value from {Say.Shown(measure, measure.HardRange.Low)} to {Say.Shown(measure, measure.HardRange.High)}.");
                return null;
            }

            if (!measure.SoftRange.Holds(stored))
                Question(
                    text,
                    $"{Say.Shown(measure, stored)} is unusual for {measure.Name.ToLowerInvariant()} "
                    + $"(mostly {Say.Shown(measure, measure.SoftRange.Low)} to {Say.Shown(measure, measure.SoftRange.High)}). Is it right?");
            trials.Add(stored);
        }

        carriedUnit = lastUnit;
        return trials.ToImmutable();
    }

    private void AskAboutPair(Measure measure, ReadingDraft draft)
    {
        if (draft.Slashes + draft.Dashes != 1 || draft.Numbers.Count != 2)
            return;
        var (a, b) = (draft.Numbers[0].Text, draft.Numbers[1].Text);
        var mark = draft.Dashes == 1 ? '-' : '/';
        var sides = measure.Sided ? $" For two sides write \"L {a}, R {b}\"." : "";
        Question($"{a}{mark}{b}", $"\"{a}{mark}{b}\" was read as two trials.{sides} For one reading type one number.");
    }

    private double? Stored(Measure measure, double value, UnitKind? unit, string text)
    {
        if (EntryUnits.ToStored(value, unit, measure.Shown) is { } stored)
            return stored;
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
        var what = unit switch
        {
            UnitKind.Percent => "A percentage is not a reading.",
            UnitKind.TorquePerMass => "A value per kilogram of body mass cannot be traced to a reading.",
            _ => $"This unit does not belong to {measure.Name.ToLowerInvariant()}.",
        };
        Fault(what, text, wanted);
        return null;
    }

    private bool LeverIsPossible(Measure measure, ReadingDraft draft)
    {
        if (draft.LeverM is not { } lever)
            return true;
        var where = draft.LeverText ?? "";
        if (measure.Strength is not { } test)
        {
            Fault($"{measure.Name} has no lever arm.", where, "Leave it out.");
            return false;
        }

        if (lever is >= 0.03 and <= 1.2)
        {
            if (lever > test.LeverArmMostM)
                Question(
                    where,
                    $"A lever arm of {Say.Centimetres(lever)} is long for {measure.Name.ToLowerInvariant()} "
                    + $"(usually about {Say.Centimetres(test.LeverArmHintM)}). Is it right?");
            return true;
        }

        var guess = lever > 1.2 ? new[] { lever / 10, lever / 100 }.FirstOrDefault(g => g is > 0.1 and <= 0.9) : 0;
        var mean = guess > 0 ? $" Did you mean {Say.Centimetres(guess)}?" : "";
        var what = lever > 1.2
            ? $"A lever arm of {Say.Number(lever)} m is longer than a leg.{mean}"
            : $"A lever arm of {Say.Centimetres(lever)} is too short to push on.";
        var suggestion = guess > 0 && where.Length > 0
            ? asTyped.Replace(where, Say.Centimetres(guess), StringComparison.Ordinal)
            : null;
        Fault(
            what, where, $"Give the distance from joint centre to pad, such as \"at {Say.Centimetres(test.LeverArmHintM)}\".",
            suggestion);
        return false;
    }

    private bool PainIsPossible(ReadingDraft draft)
    {
        if (draft.Pain is not { } pain || (pain.Value is >= 0 and <= 10 && pain.Value == Math.Floor(pain.Value)))
            return true;
        Fault(
            $"Pain {Say.Number(pain.Value)} is not on the scale.", pain.Text,
            "Give pain during the test as a whole number from 0 to 10.");
        return false;
    }

    private void Keep(Measure measure, ReadingDraft draft, ImmutableArray<double> trials)
    {
        var isTorque = carriedUnit == UnitKind.NewtonMetre;
        var lever = draft.LeverM ?? carriedLeverM;
        if (measure.Strength is null)
            lever = null;
        else if (isTorque)
        {
            // A torque T is the same as a force T at one metre.
            lever = 1;
            notes.Add($"{measure.Name}: typed as torque in N m, kept as the same torque (that many newtons at 1 m).");
        }
        else if (draft.LeverM is null && lever is { } carried)
            notes.Add(SharedLever(measure, draft.Side, carried));

        carriedLeverM = isTorque ? null : lever;
        if (carriedLeverM is { } typed)
            CarryBack(measure, typed);
        var words = draft.Words.Count > 0 ? string.Join(' ', draft.Words) : null;
        var namesTask = measure.Kind is MeasureKind.PatientSpecific or MeasureKind.PainRating;
        measurements.Add(new Measurement
        {
            MeasureId = measure.Id,
            Side = measure.Sided ? draft.Side : null,
            Trials = trials,
            LeverArmM = lever,
            PainDuring = draft.Pain is { } pain ? (int)pain.Value : null,
            Activity = namesTask ? words : null,
            AsTyped = asTyped,
            Note = namesTask ? null : words,
        });
        if (words is not null && !namesTask)
            notes.Add($"{measure.Name}: \"{words}\" is kept as a note.");
    }

    private static string SharedLever(Measure measure, Side? side, double leverM) =>
        $"{measure.Name}, {Say.Side(side)}: lever arm taken as {Say.Centimetres(leverM)}, as on the other side.";

    /// <summary>"118 L 149 R at 36 cm": a lever arm after the last side belongs to both.</summary>
    private bool IsSharedLever(Measure measure, ReadingDraft draft)
    {
        var onlyLever = draft is { Side: null, LeverM: not null, Pain: null, Grade: null, Numbers.Count: 0, Words.Count: 0 };
        if (!onlyLever || !measure.Sided || measurements.Count == firstOfMeasure || !LeverIsPossible(measure, draft))
            return false;
        CarryBack(measure, draft.LeverM!.Value);
        return true;
    }

    /// <summary>"L 118, R 149 at 36 cm" means 36 cm on both sides.</summary>
    private void CarryBack(Measure measure, double leverM)
    {
        for (var i = firstOfMeasure; i < measurements.Count; i++)
        {
            if (measurements[i].MeasureId != measure.Id || measurements[i].LeverArmM is not null)
                continue;
            measurements[i] = measurements[i] with { LeverArmM = leverM };
            notes.Add(SharedLever(measure, measurements[i].Side, leverM));
        }
    }
}
