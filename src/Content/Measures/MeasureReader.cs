using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Turns measure files into measures and tells every fault of meaning.</summary>
internal sealed class MeasureReader(ISet<string> sources, FaultList faults)
{
    private string file = "";

    /// <summary>Reads content/measures, in the order of an exam.</summary>
    internal IReadOnlyList<Measure> ReadAll(string contentFolder)
    {
        var measures = new List<Measure>();
        foreach (var path in StrictJson.FilesIn(Path.Combine(contentFolder, "measures"), ".json"))
        {
            file = "measures/" + Path.GetFileName(path);
            var raw = StrictJson.ReadFile<MeasureFile>(path, file, faults);
            if (raw is null)
                continue;
            if (raw.Id != Path.GetFileNameWithoutExtension(path))
                Fault("id", $"The id \"{raw.Id}\" differs from the file name.", "Give both the same name.");
            var before = faults.Faults.Count;
            Check(raw);
            if (faults.Faults.Count == before && ShownUnit.Of(raw.Unit) is { } unit)
                measures.Add(MeasureConversion.ToMeasure(raw, unit));
        }

        CheckTogether(measures);
        return TypedEntry.InExamOrder(measures);
    }

    private void Check(MeasureFile raw)
    {
        if (string.IsNullOrWhiteSpace(raw.Name))
            Fault("name", "The name is empty.", "Give the trade name.");
        if (raw.Order is < 1 or > 99)
            Fault("order", $"The order {raw.Order} is not usable.", "Give a number from 1 to 99.");
        if (raw.Method.Steps.Count == 0)
            Fault("method.steps", "There is no step.", "Say how the measure is taken.");
        for (var i = 0; i < raw.Aliases.Count; i++)
        {
            if (raw.Aliases[i].Length == 0 || raw.Aliases[i] != raw.Aliases[i].Trim() || raw.Aliases[i].Any(char.IsUpper))
                Fault(
                    $"aliases[{i}]", $"\"{raw.Aliases[i]}\" is not a short name in lower case.",
                    "Write it in lower case without blanks at the ends.");
        }

        CheckKind(raw);
        CheckRanges(raw);
        CheckErrors(raw);
        if (raw.Mcid is { } mcid)
            CheckMcid(mcid);
        if (raw.SymmetryLimit is { } limit && limit is not (> 0.5 and <= 1))
            Fault(
                "symmetryLimit", $"The limit {Say.Number(limit, 3)} is not usable.",
                "Give a fraction over 0.5 and up to 1, such as 0.9.");
        for (var i = 0; i < raw.Sources.Count; i++)
            CheckSource(raw.Sources[i], $"sources[{i}]");
    }

    private void CheckKind(MeasureFile raw)
    {
        if (raw.Kind is MeasureKind.Strength != raw.Action is not null && raw.Kind is not (MeasureKind.RangeOfMotion or MeasureKind.Endurance))
            Fault(
                "action", $"A measure of kind {raw.Kind} {(raw.Action is null ? "needs" : "has no")} joint action.",
                "Name it for strength, and for range and endurance where the body model has the joint.");
        if (raw.Kind is MeasureKind.MuscleLength != raw.Group is not null)
            Fault(
                "group", $"A measure of kind {raw.Kind} {(raw.Group is null ? "needs" : "has no")} muscle group.",
                "Name it for muscle length only.");
        if (raw.Kind is MeasureKind.Strength != raw.Strength is not null)
            Fault(
                "strength", $"A measure of kind {raw.Kind} {(raw.Strength is null ? "needs" : "has no")} strength set-up.",
                "Give it for strength only.");
        if (raw.Kind is MeasureKind.MuscleLength != raw.Length is not null)
            Fault(
                "length", $"A measure of kind {raw.Kind} {(raw.Length is null ? "needs" : "has no")} length set-up.",
                "Give the test pose and the joint that is read for muscle length only.");
        if (raw.Kind is MeasureKind.Questionnaire != raw.Questionnaire is not null)
            Fault(
                "questionnaire", $"A measure of kind {raw.Kind} {(raw.Questionnaire is null ? "needs" : "has no")} scoring.",
                "Give it for questionnaires only.");
        if (raw.Questionnaire is { } questionnaire)
            CheckQuestionnaire(questionnaire);
        if (raw.Shows is { } shows)
            CheckShows(raw, shows);
        if (raw.CoreMinutes is { } minutes && minutes is not (> 0 and <= 3))
            Fault("coreMinutes", "A part of the core set takes over 0 and up to 3 minutes.", "Give the minutes, or leave it out.");
        if (raw.Strength is not { } strength)
            return;
        if (!(strength.LeverArmHintM is >= 0.05 and <= 1 && strength.LeverArmMostM >= strength.LeverArmHintM && strength.LeverArmMostM <= 1.2))
            Fault(
                "strength.leverArmHintM", "The lever arms are not usable.",
                "Give metres: a hint from 0.05 to 1, and a longest from the hint to 1.2.");
        foreach (var (limb, name) in new[] { (strength.Tested, "strength.tested"), (strength.Other, "strength.other") })
        {
            foreach (var fault in FrameCheck.Faults(PoseConversion.ToLimb(limb), name))
                Fault(fault.Place, fault.What, fault.Mend);
        }
    }

    private void CheckShows(MeasureFile raw, ShownLackFile shows)
    {
        if (raw.Kind is not (MeasureKind.Performance or MeasureKind.LoadHistory)
            || shows.Kind is not (ImpairmentKind.PoorControl or ImpairmentKind.LowLoadTolerance))
            Fault("shows.kind", $"A measure of kind {raw.Kind} can't name {shows.Kind} itself.", "Name poorControl or lowLoadTolerance, for tasks and load histories only.");
        if (shows.From is { } from && (raw.Direction == Direction.Neither || from < raw.Range.HardLow || from > raw.Range.HardHigh))
            Fault("shows.from", "The value from which it is a lack is not usable.", "Give a value inside the hard range, for a measure with a better direction.");
        if (string.IsNullOrWhiteSpace(shows.Words))
            Fault("shows.words", "What the source calls it is empty.", "Say it in a few words.");
    }

    private void CheckQuestionnaire(QuestionnaireFile raw)
    {
        var isTotal = raw.Form == ScoreForm.TotalOnly;
        if (isTotal != (raw.ItemCount == 0) || (isTotal && raw.Items.Count > 0))
            Fault("questionnaire.itemCount", "Items are given exactly when they are scored.", "Give their number, or the form totalOnly without items.");
        if (!isTotal && !(raw.ItemLow < raw.ItemHigh && raw.LeastAnswered >= 1 && raw.LeastAnswered <= raw.ItemCount))
            Fault("questionnaire.leastAnswered", "The answers or the fewest of them are not usable.", "Give itemLow under itemHigh, and leastAnswered from 1 to itemCount.");
        if (raw.Form == ScoreForm.Sum && raw.LeastAnswered != raw.ItemCount)
            Fault("questionnaire.leastAnswered", "A sum with items missing is too low.", "Ask for all items.");
        if (raw.Items.Count > 0 && raw.Items.Count != raw.ItemCount)
            Fault("questionnaire.items", $"There are {raw.Items.Count} texts and {raw.ItemCount} items.", "Give one text an item, or none.");
        if (string.IsNullOrWhiteSpace(raw.Terms))
            Fault("questionnaire.terms", "The terms of use are empty.", "Say who owns it and what may be shown.");
    }

    private void CheckRanges(MeasureFile raw)
    {
        var units = UnitsOf(raw.Kind);
        if (ShownUnit.Of(raw.Unit) is not { } unit || !units.Contains(unit.Stored))
        {
            var words = ShownUnit.All.Where(u => units.Contains(u.Stored)).Select(u => u.Word);
            Fault("unit", $"A measure of kind {raw.Kind} has no unit \"{raw.Unit}\".", $"Give one of: {string.Join(", ", words)}.");
        }

        var r = raw.Range;
        if (!(r.HardLow <= r.SoftLow && r.SoftLow < r.SoftHigh && r.SoftHigh <= r.HardHigh))
            Fault("range", "The four numbers are not in order.", "Order them: hardLow, softLow, softHigh, hardHigh.");
    }

    private static MeasureUnit[] UnitsOf(MeasureKind kind) => kind switch
    {
        MeasureKind.Strength => [MeasureUnit.Newtons],
        MeasureKind.RangeOfMotion => [MeasureUnit.Radians, MeasureUnit.Metres],
        MeasureKind.MuscleLength => [MeasureUnit.Radians],
        MeasureKind.PainRating or MeasureKind.PatientSpecific or MeasureKind.Questionnaire or MeasureKind.GlobalChange =>
            [MeasureUnit.Points],
        MeasureKind.Endurance => [MeasureUnit.Seconds, MeasureUnit.Count],
        MeasureKind.Performance =>
            [
                MeasureUnit.Metres, MeasureUnit.Seconds, MeasureUnit.Count, MeasureUnit.MetresPerSecond, MeasureUnit.Radians,
                MeasureUnit.Percent, MeasureUnit.Points, MeasureUnit.Kilograms,
            ],
        MeasureKind.Girth => [MeasureUnit.Metres],
        MeasureKind.LoadHistory => [MeasureUnit.Metres, MeasureUnit.Seconds, MeasureUnit.Count, MeasureUnit.Kilograms],
    };

    private void CheckErrors(MeasureFile raw)
    {
        for (var i = 0; i < raw.Errors.Count; i++)
        {
            var (error, path) = (raw.Errors[i], $"errors[{i}]");
            var numbers = MeasureConversion.Numbers(error);
            if (numbers.Count != 1 || !(numbers[0].Value > 0 && double.IsFinite(numbers[0].Value)))
                Fault(
                    path, $"An error gives exactly one number above 0; here are {numbers.Count}.",
                    "Keep one of sem, semFraction, mdc, mdcFraction.");
            else if (error.Level is not null && (error.Level is not (90 or 95) || numbers[0].Form is ErrorForm.Sem or ErrorForm.RelativeSem))
                Fault(
                    path + ".level", $"The level {error.Level} is not usable here.",
                    "Give 90 or 95 with a printed detectable change, or leave it out.");
            CheckSource(error.Source, path + ".source");
        }
    }

    private void CheckMcid(McidFile mcid)
    {
        var given = new[] { mcid.Fixed, mcid.Fraction }.OfType<double>().ToList();
        if (given.Count + (mcid.Bands is null ? 0 : 1) != 1 || given.Any(v => !(v > 0)))
            Fault(
                "mcid", "The change that matters is given in exactly one form, above 0.",
                "Keep one of fixed, fraction, bands.");
        var bands = mcid.Bands ?? [];
        if (bands.Any(b => !(b.Change > 0)) || bands.Zip(bands.Skip(1)).Any(p => p.First.From >= p.Second.From))
            Fault("mcid.bands", "The bands do not rise, or a change is not above 0.", "Order them by from.");
        CheckSource(mcid.Source, "mcid.source");
    }

    private void CheckTogether(List<Measure> measures)
    {
        file = "measures";
        var names = measures.SelectMany(m => m.Aliases.Append(m.Id).Append(m.Name.ToLowerInvariant()).Distinct().Select(a => (Name: a, m.Id)));
        foreach (var twice in names.GroupBy(n => n.Name).Where(g => g.Count() > 1))
            Fault(
                twice.Key, $"The short name is used by {string.Join(" and ", twice.Select(t => t.Id))}.",
                "Leave it to one of them.");
        foreach (var place in measures.GroupBy(m => (m.Position, m.Order)).Where(g => g.Count() > 1))
            Fault(
                "order",
                $"Place {place.Key.Order} in {place.Key.Position} is held by {string.Join(" and ", place.Select(m => m.Id))}.",
                "Give each its own order.");
    }

    private void CheckSource(string key, string path)
    {
        if (!sources.Contains(key))
            Fault(path, $"The source \"{key}\" is not in sources.json.", "Add it there or correct the key.");
    }

    private void Fault(string path, string what, string mend) => faults.Add(file, null, path, what, mend);
}
