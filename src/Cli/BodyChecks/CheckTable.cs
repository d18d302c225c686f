using System.Globalization;
using System.Text;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>The results as a table of 100 columns, and as data.</summary>
internal static class CheckTable
{
    private const int Width = 100;

    internal static string Text(IReadOnlyList<CheckResult> results)
    {
        var text = new StringBuilder();
        text.AppendLine(Row("check", "source", "expected", "tolerance", "got", "verdict").TrimEnd()).AppendLine(new string('-', Width));
        foreach (var group in results.GroupBy(r => r.Check.Group).OrderBy(g => g.Key))
        {
            text.AppendLine(group.Key.ToString().ToLowerInvariant());
            foreach (var result in group)
                Add(text, result);
        }

        return text.AppendLine(new string('-', Width)).Append(Counts(results)).ToString();
    }

    internal static object Data(IReadOnlyList<CheckResult> results) => new
    {
        counts = new
        {
            checks = results.Count,
            pass = Count(results, Verdict.Pass),
            miss = Count(results, Verdict.Miss),
            reportedOnly = Count(results, Verdict.ReportedOnly),
            notComputed = Count(results, Verdict.NotComputed),
        },
        checks = results.Select(r => new
        {
            r.Check.Id,
            r.Check.Group,
            r.Check.What,
            r.Check.Source,
            r.Check.Marks,
            r.Check.Gate,
            unit = r.Check.Unit.Sign(),
            r.Check.Expected,
            got = r.Got,
            gotFor = r.GotFor,
            varied = r.Check.Vary ? new { tried = Variation.All.Length, held = r.Varied, agreeing = r.Agreeing, low = r.Spread?.Low, high = r.Spread?.High } : null,
            values = r.Values.IsEmpty ? null : r.Values.ToDictionary(v => v.Name, v => v.Value),
            agrees = r.Agrees,
            r.Verdict,
            reason = r.Fault,
            r.Check.Remark,
        }),
    };

    private static void Add(StringBuilder text, CheckResult r)
    {
        var unit = r.Check.Unit.Sign();
        var expected = r.Check.Expected;
        var fine = expected.Absolute < 0.2;
        var wanted = expected.Order is not null ? "an order"
            : expected.Ranks is { } ranks ? $"{ranks.Count} ranks"
            : expected.Table is { } table ? string.Create(CultureInfo.InvariantCulture, $"{table.Count} in {unit}")
            : expected.Number is { } number ? $"{Number(number, fine)} {unit}"
            : $"{Number(expected.Low!.Value)} to {Number(expected.High!.Value)}";
        var tolerance = expected.Absolute is { } absolute ? $"+-{Number(absolute)}"
            : expected.Relative is { } relative ? $"+-{Number(100 * relative)} %"
            : expected.Order is not null || expected.Ranks is not null ? "" : "band";
        var got = r.Agrees is null ? "-"
            : expected.Order is not null ? r.Agrees == true ? "holds" : "broken"
            : expected.Ranks is not null ? $"rho {Number(r.Got!.Value, true)}"
            : r.Expected is { } one && expected.Table is not null ? $"off {Number(Math.Abs(r.Got!.Value - one))}"
            : $"{Number(r.Got!.Value, fine)} {unit}";
        text.AppendLine(Row("  " + r.Check.Id, r.Check.Source, wanted, tolerance, got, Words(r)).TrimEnd());
        if ((expected.Order is not null || expected.Ranks is not null) && !r.Values.IsEmpty)
            Indent(text, string.Join(", ", r.Values.Select(v => $"{v.Name} {Number(v.Value)}")) + (unit.Length > 0 ? " " + unit : ""));
        if (r.Varied > 0)
        {
            var range = r.Spread is { } spread ? $"{Number(spread.Low)} to {Number(spread.High)} {unit} " : "";
            Indent(text, string.Create(
                CultureInfo.InvariantCulture,
                $"{range}with trunk, shank and pressure varied: {r.Varied} of {Variation.All.Length} can be held, {r.Agreeing} of them agree"));
        }

        if (r.Agrees != true && r.Fault is { } fault)
            Indent(text, fault);
        if (r.Agrees != true && r.Check.Remark is { } remark)
            Indent(text, remark);
    }

    private static string Row(string check, string source, string expected, string tolerance, string got, string verdict) =>
        $"{Cut(check, 31),-31} {Cut(source, 20),-20} {expected,-14} {tolerance,-9} {got,-12} {verdict}";

    private static string Cut(string text, int most) => text.Length <= most ? text : text[..(most - 1)] + ".";

    /// <summary>Wraps a sentence under its row.</summary>
    private static void Indent(StringBuilder text, string sentence)
    {
        var line = "   ";
        foreach (var word in sentence.Split(' '))
        {
            if (line.Length + 1 + word.Length > Width)
            {
                text.AppendLine(line);
                line = "   ";
            }

            line += " " + word;
        }

        text.AppendLine(line);
    }

    private static string Words(CheckResult r) => r.Verdict switch
    {
        Verdict.Pass => "pass",
        Verdict.Miss => "MISS",
        Verdict.ReportedOnly => r.Agrees == true ? "reported" : "reported*",
        Verdict.NotComputed => "no value",
    };

    private static string Counts(IReadOnlyList<CheckResult> results)
    {
        var outside = results.Count(r => r.Verdict == Verdict.ReportedOnly && r.Agrees == false);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{results.Count} checks: {Count(results, Verdict.Pass)} pass, {Count(results, Verdict.Miss)} miss, {Count(results, Verdict.ReportedOnly)} reported only (*{outside} of them outside), {Count(results, Verdict.NotComputed)} not computed");
    }

    private static int Count(IReadOnlyList<CheckResult> results, Verdict verdict) => results.Count(r => r.Verdict == verdict);

    /// <summary>Three digits that count, without trailing zeros; two decimals at least where the tolerance is small.</summary>
    private static string Number(double value, bool fine = false) => Math.Abs(value) switch
    {
        >= 10 when fine => value.ToString("0.00", CultureInfo.InvariantCulture),
        >= 100 => value.ToString("0", CultureInfo.InvariantCulture),
        >= 10 => value.ToString("0.#", CultureInfo.InvariantCulture),
        >= 0.01 or < 0.00005 => value.ToString("0.##", CultureInfo.InvariantCulture),
        _ => value.ToString("0.####", CultureInfo.InvariantCulture),
    };
}
