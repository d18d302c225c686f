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
            if (faults.Faults.Count == before && MeasureConversion.UnitOf(raw) is { } unit)
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
        if (raw.Kind is MeasureKind.Strength or MeasureKind.RangeOfMotion != raw.Action is not null)
            Fault(
                "action", $"A measure of kind {raw.Kind} {(raw.Action is null ? "needs" : "has no")} joint action.",
                "Name it for strength and range only.");
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

    private void CheckRanges(MeasureFile raw)
    {
        var wanted = raw.Kind switch
        {
            MeasureKind.Strength => MeasureUnit.Newtons,
            MeasureKind.RangeOfMotion or MeasureKind.MuscleLength => MeasureUnit.Radians,
            MeasureKind.PainRating or MeasureKind.PatientSpecific => MeasureUnit.Points,
        };
        var key = KeyOf(wanted);
        if (MeasureConversion.UnitOf(raw) != wanted)
        {
            Fault(
                key, $"A measure of kind {raw.Kind} gives its ranges under {key} and no other key.",
                $"Give {key} with hardLow, softLow, softHigh, hardHigh.");
            return;
        }

        var r = MeasureConversion.Ranges(raw);
        if (!(r.HardLow <= r.SoftLow && r.SoftLow < r.SoftHigh && r.SoftHigh <= r.HardHigh))
            Fault(key, "The four numbers are not in order.", "Order them: hardLow, softLow, softHigh, hardHigh.");
    }

    private void CheckErrors(MeasureFile raw)
    {
        for (var i = 0; i < raw.Errors.Count; i++)
        {
            var (error, path) = (raw.Errors[i], $"errors[{i}]");
            var numbers = MeasureConversion.Numbers(error);
            if (numbers.Count != 1 || !(numbers[0].Value > 0 && double.IsFinite(numbers[0].Value)))
                Fault(
                    path, $"An error gives exactly one number above 0; here are {numbers.Count}.",
                    "Keep one of semDeg, semN, semPoints, semFraction, mdcDeg, mdcN, mdcPoints, mdcFraction.");
            else if (numbers[0].Unit is { } unit && unit != MeasureConversion.UnitOf(raw))
                Fault(
                    path, "The error is in another unit than the measure.",
                    "Give it in the unit of the ranges, or as a fraction.");
            else if (error.Level is not null && (error.Level is not (90 or 95) || numbers[0].Form is ErrorForm.Sem or ErrorForm.RelativeSem))
                Fault(
                    path + ".level", $"The level {error.Level} is not usable here.",
                    "Give 90 or 95 with a printed detectable change, or leave it out.");
            CheckSource(error.Source, path + ".source");
        }
    }

    private void CheckMcid(McidFile mcid)
    {
        var given = new[] { mcid.FixedPoints, mcid.FixedDeg, mcid.Fraction }.OfType<double>().ToList();
        if (given.Count + (mcid.Bands is null ? 0 : 1) != 1 || given.Any(v => !(v > 0)))
            Fault(
                "mcid", "The change that matters is given in exactly one form, above 0.",
                "Keep one of fixedPoints, fixedDeg, fraction, bands.");
        var bands = mcid.Bands ?? [];
        if (bands.Any(b => !(b.ChangePoints > 0)) || bands.Zip(bands.Skip(1)).Any(p => p.First.FromPoints >= p.Second.FromPoints))
            Fault("mcid.bands", "The bands do not rise, or a change is not above 0.", "Order them by fromPoints.");
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

    private static string KeyOf(MeasureUnit unit) => unit switch
    {
        MeasureUnit.Radians => "rangeDeg",
        MeasureUnit.Newtons => "rangeN",
        MeasureUnit.Points => "rangePoints",
    };

    private void CheckSource(string key, string path)
    {
        if (!sources.Contains(key))
            Fault(path, $"The source \"{key}\" is not in sources.json.", "Add it there or correct the key.");
    }

    private void Fault(string path, string what, string mend) => faults.Add(file, null, path, what, mend);
}
