using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>Tells every fault of meaning of the checks file: a check that could never be evaluated must not be shipped.</summary>
internal sealed class CheckRules(ChecksFile raw, BodyContent body, ISet<string> sources, string file, FaultList faults)
{
    private static readonly string[] WithoutSource = ["computed", "from memory", "common practice, no source"];

    private readonly HashSet<string> muscles =
        [.. body.Muscles.Paths.Select(p => p.Id), .. body.Muscles.BandParts.Select(p => p.Id)];

    private readonly HashSet<string> poses = [.. raw.Poses.Select(p => p.Pose.Name)];

    internal void CheckAll()
    {
        foreach (var (name, person) in raw.Persons)
            CheckPerson(person, $"persons.{name}");
        var rules = new PoseRules(body.Points, file, faults);
        for (var i = 0; i < raw.Poses.Count; i++)
        {
            rules.CheckPose(raw.Poses[i].Pose, $"poses[{i}].pose", free: true);
            rules.CheckLoads(raw.Poses[i].AddedLoads, $"poses[{i}].");
            var own = new FaultList();
            new PullReader(body.Points, sources, file, own).Read(raw.Poses[i].Pulls);
            foreach (var fault in own.Faults)
                Fault($"poses[{i}].{fault.Path}", fault.What, fault.Mend);
        }

        foreach (var twice in raw.Poses.GroupBy(p => p.Pose.Name).Where(g => g.Count() > 1))
            Fault("poses", $"The pose \"{twice.Key}\" is there twice.", "Give each its own name.");
        foreach (var twice in raw.Checks.GroupBy(c => c.Id).Where(g => g.Count() > 1))
            Fault("checks", $"The check \"{twice.Key}\" is there twice.", "Give each its own id.");
        for (var i = 0; i < raw.Checks.Count; i++)
            CheckOne(raw.Checks[i], $"checks[{i}]");
    }

    private void CheckPerson(CheckPersonFile person, string path)
    {
        var given = person.Sex is not null || person.AgeYears is not null || person.StatureM is not null || person.MassKg is not null;
        if (person.Published == given)
            Fault(path, "A person is either published or has facts of their own.", "Give one of the two.");
        if (person.StatureM is < 0.8 or > 2.4 || person.MassKg is < 15 or > 350 || person.AgeYears is < 0 or > 120)
            Fault(path, "Age, stature or mass is not that of a person.", "Correct the numbers.");
    }

    private void CheckOne(CheckFile check, string path)
    {
        if (check.Id.Length is 0 or > 29)
            Fault($"{path}.id", $"The id \"{check.Id}\" is not of 1 to 29 letters.", "Shorten it: it heads a row of a table.");
        if (!sources.Contains(check.Source) && !WithoutSource.Contains(check.Source))
            Fault($"{path}.source", $"There is no source \"{check.Source}\".", "Add it to sources.json, or say where it comes from.");
        if (check is { Gate: true, Marks: CheckMarks.Memory })
            Fault($"{path}.gate", "A figure from memory may not gate.", "Set gate to false, or confirm the figure.");
        CheckExpected(check, path);
        if (check.Quantity is { } quantity)
            CheckQuantity(quantity, check, $"{path}.quantity", open: check.Expected.Table is not null);
        foreach (var (name, value) in check.Values ?? new Dictionary<string, QuantityFile>())
            CheckQuantity(value, check, $"{path}.values.{name}", open: false);
    }

    private void CheckExpected(CheckFile check, string path)
    {
        var expected = check.Expected;
        var kinds = new[] { expected.Number is not null, expected.Low is not null || expected.High is not null, expected.Table is not null, expected.Order is not null || expected.Ranks is not null };
        if (kinds.Count(k => k) != 1)
            Fault($"{path}.expected", "Exactly one of number, band, table, order and ranks is needed.", "Give one.");
        if (kinds[1] && !(expected.Low < expected.High))
            Fault($"{path}.expected", "A band needs low below high.", "Give both.");
        var tolerance = (expected.Absolute is > 0 ? 1 : 0) + (expected.Relative is > 0 and < 1 ? 1 : 0);
        if (tolerance != (kinds[0] || kinds[2] ? 1 : 0))
            Fault($"{path}.expected", "A number and a table need one tolerance, absolute or relative; a band, an order and ranks none.", "Correct it.");
        if (expected.Order is not null != check.Values is not null || kinds[3] == check.Quantity is not null)
            Fault(path, "An order needs values, ranks nothing, everything else a quantity.", "Give the one that belongs.");
        CheckRanks(check, path);
        var named = (expected.Order ?? []).SelectMany(n => n).ToArray();
        if (expected.Order is { Count: < 2 } || named.Distinct().Count() != named.Length
            || check.Values is { } values && !named.Order().SequenceEqual(values.Keys.Order()))
            Fault($"{path}.expected.order", "The order must name every value once, in two lists or more.", "Name them.");
        if (expected.Table is { Count: 0 })
            Fault($"{path}.expected.table", "The table is empty.", "Give its rows.");
    }

    private void CheckRanks(CheckFile check, string path)
    {
        if (check.Expected.Ranks is not { } ranks)
            return;
        if (ranks.Count < 3 || ranks.Distinct().Count() != ranks.Count)
            Fault($"{path}.expected.ranks", "Ranks need three checks or more, each once.", "Name them.");
        foreach (var id in ranks.Where(id => !raw.Checks.Any(c => c.Id == id && c.Expected.Number is not null && c.Unit == check.Unit)))
            Fault($"{path}.expected.ranks", $"There is no check \"{id}\" with a number in the same unit.", "Name one of checks.");
    }

    private void CheckQuantity(QuantityFile q, CheckFile check, string path, bool open, bool inside = false)
    {
        void Need(bool there, string key)
        {
            if (!there)
                Fault(path, $"A quantity of this kind needs {key}.", $"Give {key}.");
        }

        if (CheckUnits.Of(q) is { } unit && unit != check.Unit && !inside)
            Fault(path, $"It comes out in {unit}, the check says {check.Unit}.", "Correct the unit of the check.");
        if (q.Kind != QuantityKind.Lever && (q.Person ?? check.Person) is not { } person)
            Need(q.Of.Count > 0, "a person");
        else if (q.Kind != QuantityKind.Lever && !raw.Persons.ContainsKey((q.Person ?? check.Person)!))
            Fault(path, $"There is no person \"{q.Person ?? check.Person}\".", "Name one of persons.");
        foreach (var pose in (q.Along ?? []).Append(q.Pose ?? (q.Along is null ? check.Pose : null)).OfType<string>().Where(p => !poses.Contains(p)))
            Fault(path, $"There is no pose \"{pose}\".", "Name one of poses.");
        foreach (var muscle in (q.Muscles ?? []).Append(q.Muscle).OfType<string>().Where(m => !muscles.Contains(m)))
            Fault(path, $"There is no muscle \"{muscle}\".", "Use an id of body/muscles.json.");
        if (open && q.Muscle is null && QuantityNeeds.Muscle(q))
        {
            foreach (var row in check.Expected.Table!.Keys.Where(m => !muscles.Contains(m)))
                Fault($"{path}", $"There is no muscle \"{row}\" for a row of the table.", "Use an id of body/muscles.json.");
        }

        Need(open || q.Muscle is not null || !QuantityNeeds.Muscle(q), "a muscle");
        Need(open || q.AngleDeg is not null || q.Kind != QuantityKind.Capacity, "angleDeg");
        Need(q.Along is not null || (q.Pose ?? check.Pose) is not null || !QuantityNeeds.Pose(q), "a pose");
        foreach (var missing in QuantityNeeds.Missing(q))
            Need(false, missing);
        for (var i = 0; i < q.Of.Count; i++)
            CheckQuantity(q.Of[i], check, $"{path}.of[{i}]", open, inside: true);
    }

    private void Fault(string path, string what, string mend) => faults.Add(file, null, path, what, mend);
}
