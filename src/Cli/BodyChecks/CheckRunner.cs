using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>Runs checks: calculates, compares, and varies the pose where the check asks for it.</summary>
internal sealed class CheckRunner(ContentLibrary library, HoldPose hold)
{
    private readonly Quantities quantities = new(new CheckPeople(library, hold));

    internal CheckResult Run(CheckFile check) =>
        check.Expected.Ranks is { } ranks ? Ranks(check, ranks)
        : check.Expected.Order is { } order ? Order(check, order)
        : check.Expected.Table is { } table ? Table(check, table)
        : One(check);

    private CheckResult One(CheckFile check)
    {
        var got = quantities.Of(check.Quantity!, new Place(check, Variation.None));
        if (got.Value is not { } value)
            return Nothing(check, null, got);
        var varied = Variations(check).Select(v => quantities.Of(check.Quantity!, new Place(check, v)).Value).OfType<double>().ToArray();
        (double, double)? spread = varied.Length > 0 ? (Math.Min(value, varied.Min()), Math.Max(value, varied.Max())) : null;
        return new CheckResult(
            check, Agrees(check.Expected, value), value, null, check.Expected.Number, spread, varied.Length,
            varied.Count(v => Agrees(check.Expected, v)), [], null);
    }

    private CheckResult Table(CheckFile check, IReadOnlyDictionary<string, double> table)
    {
        CheckResult? worst = null;
        var worstOff = -1.0;
        var values = ImmutableArray.CreateBuilder<(string, double)>();
        foreach (var (row, number) in table)
        {
            var got = quantities.Of(check.Quantity!, new Place(check, Variation.None, row));
            if (got.Value is not { } value)
                return Nothing(check, row, got);
            values.Add((row, value));
            var off = Math.Abs(value - number) / Allowed(check.Expected, number);
            if (off > worstOff)
                (worst, worstOff) = (new CheckResult(check, off <= 1, value, row, number, null, 0, 0, [], null), off);
        }

        return worst! with { Values = values.ToImmutable() };
    }

    private CheckResult Order(CheckFile check, IReadOnlyList<IReadOnlyList<string>> order)
    {
        var (values, why) = Values(check, order, Variation.None);
        if (values is null)
            return Nothing(check, null, why);
        var varied = Variations(check).Select(v => Values(check, order, v).Values).Where(v => v is not null).ToArray();
        var fault = OutOfOrder(order, values);
        return new CheckResult(
            check, fault is null, null, null, null, null, varied.Length, varied.Count(v => OutOfOrder(order, v!) is null),
            [.. values.Select(v => (v.Key, v.Value))], fault);
    }

    /// <summary>Rank correlation of the expected and the calculated numbers of other checks.</summary>
    private CheckResult Ranks(CheckFile check, IReadOnlyList<string> ids)
    {
        var rows = ids.Select(id => library.BodyChecks.Checks.First(c => c.Id == id)).ToArray();
        var values = new double[rows.Length];
        for (var i = 0; i < rows.Length; i++)
        {
            var got = quantities.Of(rows[i].Quantity!, new Place(rows[i], Variation.None));
            if (got.Value is not { } value)
                return Nothing(check, null, got with { Why = $"{rows[i].Id}: {got.Why}" });
            values[i] = value;
        }

        var correlation = Spearman.Of([.. rows.Select(r => r.Expected.Number!.Value)], values);
        return new CheckResult(check, correlation > 0, correlation, null, null, null, 0, 0, [.. ids.Zip(values)], null);
    }

    private (Dictionary<string, double>? Values, Calculated Why) Values(CheckFile check, IReadOnlyList<IReadOnlyList<string>> order, Variation variation)
    {
        var values = new Dictionary<string, double>();
        foreach (var name in order.SelectMany(n => n))
        {
            var got = quantities.Of(check.Values![name], new Place(check, variation));
            if (got.Value is not { } value)
                return (null, got with { Why = $"{name}: {got.Why}" });
            values[name] = value;
        }

        return (values, default);
    }

    /// <summary>The first pair that is out of order, in words; null when the order holds.</summary>
    private static string? OutOfOrder(IReadOnlyList<IReadOnlyList<string>> order, Dictionary<string, double> values)
    {
        for (var level = 0; level + 1 < order.Count; level++)
        {
            var least = order[level].MinBy(n => values[n])!;
            var most = order[level + 1].MaxBy(n => values[n])!;
            if (!(values[least] > values[most]))
                return string.Create(CultureInfo.InvariantCulture, $"{least} ({values[least]:0.##}) is not above {most} ({values[most]:0.##}).");
        }

        return null;
    }

    private static CheckResult Nothing(CheckFile check, string? row, Calculated why) =>
        new(check, null, null, row, check.Expected.Number, null, 0, 0, [], why.Why, why.Awaited);

    private static Variation[] Variations(CheckFile check) => check.Vary ? Variation.All : [];

    private static bool Agrees(ExpectedFile expected, double value) => expected.Number is { } number
        ? Math.Abs(value - number) <= Allowed(expected, number)
        : value >= expected.Low && value <= expected.High;

    private static double Allowed(ExpectedFile expected, double number) =>
        expected.Absolute ?? Math.Abs(expected.Relative!.Value * number);
}
