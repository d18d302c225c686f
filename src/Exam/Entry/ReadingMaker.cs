using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Turns one read draft into a measurement or an observation, and checks it against what can be true.</summary>
internal sealed class ReadingMaker(string asTyped, EntryContext context)
{
    private readonly List<Measurement> measurements = [];
    private readonly List<Observation> observations = [];
    private readonly List<EntryFault> faults = [];
    private readonly List<EntryQuestion> questions = [];
    private readonly List<string> notes = [];
    private readonly List<EntryPiece> pieces = [];
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
        Pieces = [.. pieces],
    };

    /// <summary>What is known beside the typing.</summary>
    public EntryContext Context => context;

    /// <summary>The unit that a bare number takes over from the one before it.</summary>
    public UnitKind? CarriedUnit => carriedUnit;

    public void Fault(string what, string where, string mend, string? suggestion = null) =>
        faults.Add(new EntryFault(what, where, mend, suggestion));

    public void Question(string where, string sentence, string? suggestion = null) =>
        questions.Add(new EntryQuestion(where, sentence, suggestion));

    /// <summary>The whole entry with one piece of it put otherwise; null when that piece is not in it just once.</summary>
    public string? Replaced(string where, string with)
    {
        var at = asTyped.IndexOf(where, StringComparison.Ordinal);
        return where.Length > 0 && at >= 0 && asTyped.LastIndexOf(where, StringComparison.Ordinal) == at
            ? asTyped[..at] + with + asTyped[(at + where.Length)..]
            : null;
    }

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
        if (measure.Sided && draft.Side is null && (draft.Numbers.Count > 0 || draft.Grade is not null || draft.Symmetry is null))
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
        else if (new TrialMaker(this, measure, draft).Make() is { } made && LeverIsPossible(measure, draft) && PainIsPossible(draft))
            Keep(measure, draft, made);
    }

    private void KeepGrade(Measure measure, ReadingDraft draft)
    {
        Observe(new Observation(measure.Id, draft.Side, string.Join(' ', draft.Words.Prepend(draft.Grade!)), draft.Grade), draft);
        notes.Add(
            $"{measure.Name}: {draft.Grade} is kept as a manual grade. It is not a force, so no torque or load share comes of it.");
    }

    private void KeepWords(Measure measure, ReadingDraft draft)
    {
        var words = string.Join(' ', draft.Words.Concat(Conditions(draft)));
        if (draft.Symmetry is { } symmetry)
        {
            // An index says which side is worse only together with the affected side.
            var side = draft.Side ?? (measure.Sided ? context.AffectedSide : null);
            if (measure.Sided && side is null)
            {
                Fault("A symmetry without sides needs the affected side.", $"LSI {symmetry}", "Write L or R for the side it belongs to, or name the affected side of the episode.");
                return;
            }

            Observe(new Observation(measure.Id, side, string.Join(' ', new[] { $"symmetry {symmetry}", words }.Where(w => w.Length > 0)), null), draft);
            notes.Add($"{measure.Name}: symmetry {symmetry} is kept as told; without the two values it can't be computed or held against the error.");
        }
        else if (words.Length > 0 && draft.Grade is null)
        {
            Observe(new Observation(measure.Id, draft.Side, words, null), draft);
            notes.Add($"{measure.Name}: \"{words}\" is kept as words; there is no number to compute with.");
        }
        else if (draft.Grade is null)
        {
            Fault("The reading itself is missing.", asTyped.Trim(), "Type the number first, then lever arm and pain.");
        }
    }

    private static IEnumerable<string> Conditions(ReadingDraft draft) => new[]
    {
        draft.Conditions.Position is { } position ? position.ToString().ToLowerInvariant() : null,
        draft.Conditions.Device,
        draft.Conditions.Examiner is { } examiner ? "by " + examiner : null,
        draft.Moment,
        draft.Printed,
    }.OfType<string>();

    /// <summary>A reading in words only; a deficit that nothing is known to be taken off, for one.</summary>
    public void KeepAsWords(Measure measure, ReadingDraft draft, string words)
    {
        Observe(new Observation(measure.Id, draft.Side, string.Join(' ', draft.Words.Prepend(words)), null), draft);
        notes.Add($"{measure.Name}: \"{words}\" is kept as words; type the angle itself to have it judged.");
    }

    /// <summary>The other side of a measure, from this entry or from the visit; null when it was not measured.</summary>
    public Measurement? OtherSide(Measure measure, Side? side) =>
        measurements.Concat(context.Now).LastOrDefault(m => m.MeasureId == measure.Id && m.Side is not null && m.Side != side);

    private void Observe(Observation observation, ReadingDraft draft)
    {
        var same = observations.FindIndex(o => o.MeasureId == observation.MeasureId && o.Side == observation.Side);
        if (same >= 0)
            observations[same] = observations[same] with
            {
                Text = $"{observations[same].Text}; {observation.Text}", Grade = observations[same].Grade ?? observation.Grade,
            };
        else
            observations.Add(observation);
        AddPiece(observation.MeasureId, observation.Side, null, draft, isWords: true);
    }

    private void AddPiece(string measureId, Side? side, string? activity, ReadingDraft draft, bool isWords)
    {
        if (draft.Span is { } span)
            pieces.Add(new EntryPiece(span.From, span.To - span.From, measureId, side, activity, isWords));
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

    private void Keep(Measure measure, ReadingDraft draft, MadeTrials made)
    {
        carriedUnit = made.Unit ?? carriedUnit;
        var isTorque = made.IsTorque;
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
        else if (lever is null && context.LeverOf(measure, draft.Side) is { } known)
        {
            lever = known.Metres;
            notes.Add($"{measure.Name}, {Say.Side(draft.Side)}: lever arm taken as {Say.Centimetres(known.Metres)}, {known.From}.");
        }

        carriedLeverM = isTorque ? null : lever;
        if (carriedLeverM is { } typed)
            CarryBack(measure, typed);
        Put(measure, draft, made, lever);
    }

    private void Put(Measure measure, ReadingDraft draft, MadeTrials made, double? lever)
    {
        var words = draft.Words.Count > 0 ? string.Join(' ', draft.Words) : null;
        var namesTask = measure.Kind is MeasureKind.PatientSpecific or MeasureKind.PainRating;
        var printed = string.Join("; ", new[] { draft.Printed, draft.Symmetry is { } lsi ? $"LSI {lsi}" : null, made.Printed }.OfType<string>());
        var one = new Measurement
        {
            MeasureId = measure.Id,
            Side = measure.Sided ? draft.Side : null,
            Trials = made.Trials,
            LeverArmM = lever,
            PainDuring = draft.Pain is { } pain ? (int)pain.Value : null,
            Activity = namesTask ? words : null,
            Moment = draft.Moment,
            Conditions = draft.Conditions with { UnknownUnit = made.UnknownUnit, Printed = printed.Length > 0 ? printed : null },
            AsTyped = asTyped,
            Note = namesTask ? null : words,
        };
        AddPiece(measure.Id, one.Side, one.Activity, draft, isWords: false);
        if (words is not null && !namesTask)
            notes.Add($"{measure.Name}: \"{words}\" is kept as a note.");
        var same = measurements.FindIndex(m => m.MeasureId == one.MeasureId && m.Side == one.Side && m.Activity == one.Activity && m.Moment == one.Moment);
        if (same < 0)
        {
            measurements.Add(one);
            return;
        }

        // Two values for one cell: neither is thrown away, and it is asked which was meant.
        var before = measurements[same];
        var values = string.Join(" and ", before.Trials.Concat(one.Trials).Select(t => Say.Shown(measure, t)));
        Question(
            asTyped.Trim(),
            $"{Named(measure, one.Side)} has more than one value here: {values}. They count as trials; take one out if it was a slip.");
        measurements[same] = before with
        {
            Trials = [.. before.Trials, .. one.Trials], PainDuring = one.PainDuring ?? before.PainDuring, Note = before.Note ?? one.Note,
            Conditions = before.Conditions == TestConditions.None ? one.Conditions : before.Conditions,
        };
    }

    private static string Named(Measure measure, Side? side) => side is null ? measure.Name : $"{measure.Name}, {Say.Side(side)},";

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
