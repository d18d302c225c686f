using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>Runs checks: calculates, compares, and varies the pose where the check asks for it.</summary>
internal sealed class CheckRunner(ContentLibrary library, HoldPose hold)
{
    private readonly Quantities quantities = new(new CheckPeople(library, hold));

    internal CheckResult Run(CheckFile check) =>
        check.Expected.Order is { } order ? Order(check, order)
        : check.Expected.Table is { } table ? Table(check, table)
        : One(check);

    private CheckResult One(CheckFile check)
    {
        var got = quantities.Of(check.Quantity!, new Place(check, Variation.None));
        var expected = check.Expected;
        if (got.Value is not { } value)
            return new CheckResult(check, null, null, null, expected.Number, null, 0, [], got.Why);
        var agrees = expected.Number is { } number
            ? Math.Abs(value - number) <= Allowed(expected, number)
            : value >= expected.Low && value <= expected.High;
        var varied = check.Vary
            ? Variation.All.Select(v => quantities.Of(check.Quantity!, new Place(check, v)).Value).OfType<double>().ToArray()
            : [];
        (double, double)? spread = varied.Length > 0 ? (Math.Min(value, varied.Min()), Math.Max(value, varied.Max())) : null;
        return new CheckResult(check, agrees, value, null, expected.Number, spread, varied.Length, [], null);
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
                return new CheckResult(check, null, null, row, number, null, 0, [], got.Why);
            values.Add((row, value));
            var off = Math.Abs(value - number) / Allowed(check.Expected, number);
            if (off > worstOff)
                (worst, worstOff) = (new CheckResult(check, off <= 1, value, row, number, null, 0, [], null), off);
        }

        return worst! with { Values = values.ToImmutable() };
    }

    private CheckResult Order(CheckFile check, IReadOnlyList<IReadOnlyList<string>> order)
    {
        var values = new Dictionary<string, double>();
        foreach (var name in order.SelectMany(n => n))
        {
            var got = quantities.Of(check.Values![name], new Place(check, Variation.None));
            if (got.Value is not { } value)
                return new CheckResult(check, null, null, name, null, null, 0, [], $"{name}: {got.Why}");
            values[name] = value;
        }

        string? fault = null;
        for (var level = 0; level + 1 < order.Count && fault is null; level++)
        {
            var least = order[level].MinBy(n => values[n])!;
            var most = order[level + 1].MaxBy(n => values[n])!;
            if (!(values[least] > values[most]))
            {
                fault = string.Create(
                    CultureInfo.InvariantCulture, $"{least} ({values[least]:0.##}) is not above {most} ({values[most]:0.##}).");
            }
        }

        return new CheckResult(check, fault is null, null, null, null, null, 0, [.. values.Select(v => (v.Key, v.Value))], fault);
    }

    private static double Allowed(ExpectedFile expected, double number) =>
        expected.Absolute ?? Math.Abs(expected.Relative!.Value * number);
}
