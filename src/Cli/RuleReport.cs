using System.Globalization;
using System.Text;
using MomentArm.Content;
using MomentArm.Exam;

namespace MomentArm.Cli;

/// <summary>An applied rule as text and as data, the same facts in both.</summary>
internal static class RuleReport
{
    internal static string Text(RuleResult result, IReadOnlyDictionary<string, RuleValue> answers, ContentLibrary library)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{result.Rule.Name}: {result.Rule.Decides}");
        text.AppendLine(CultureInfo.InvariantCulture, $"For {result.Rule.AppliesTo}.").AppendLine();
        foreach (var item in result.Rule.Items)
            text.AppendLine(CultureInfo.InvariantCulture, $"  {item.Id,-18} {Shown(item, answers),-12} {item.Text}");
        text.AppendLine();
        foreach (var criterion in result.Criteria)
            text.AppendLine(CultureInfo.InvariantCulture, $"  {RuleText.Counted(criterion),-22} {criterion.Criterion.Text}");
        foreach (var score in result.Scores)
            text.AppendLine(CultureInfo.InvariantCulture, $"  {score.Score.Name}: {RuleText.Points(score)}");
        text.AppendLine().AppendLine(RuleText.Headline(result));
        foreach (var outcome in result.Outcomes.Skip(1).Where(o => !o.Possible.IsEmpty))
            text.AppendLine(CultureInfo.InvariantCulture, $"  {outcome.Outcome.Name}: {string.Join(" or ", outcome.Possible.Select(b => b.Name))}");
        text.AppendLine().AppendLine("How well it did:");
        foreach (var row in result.Rule.Accuracy)
            text.AppendLine(CultureInfo.InvariantCulture, $"  {RuleText.Accuracy(row)} [{row.Source}, {row.Confirmation}]");
        foreach (var note in result.Rule.Notes)
            text.AppendLine(CultureInfo.InvariantCulture, $"  {note}");
        text.Append(CultureInfo.InvariantCulture, $"Source: {library.Sources[result.Rule.Source].Text} ({result.Rule.Confirmation})");
        return text.ToString();
    }

    internal static object Data(RuleResult result, IReadOnlyDictionary<string, RuleValue> answers) => new
    {
        Rule = result.Rule.Id,
        result.State,
        Headline = RuleText.Headline(result),
        Items = result.Rule.Items.Select(i => new { i.Id, Value = answers.GetValueOrDefault(i.Id)?.ToString() ?? "unknown", Unit = i.Unit.Length == 0 ? null : i.Unit }),
        Criteria = result.Criteria.Select(c => new { c.Criterion.Id, c.Criterion.Points, Met = c.Met switch { true => "yes", false => "no", null => "unknown" } }),
        Scores = result.Scores.Select(s => new { s.Score.Id, s.Low, s.High }),
        Outcomes = result.Outcomes.Select(o => new { o.Outcome.Id, Told = o.Told?.Id, o.Told?.Urgency, Possible = o.Possible.Select(b => b.Id) }),
        Needs = result.Needs.Select(i => i.Id),
        NotFor = result.Excluded.Select(e => e.Text),
        NotChecked = result.ExclusionsOpen.Select(e => e.Text),
        Accuracy = result.Rule.Accuracy,
        result.Rule.Source,
        result.Rule.Confirmation,
    };

    private static string Shown(RuleItem item, IReadOnlyDictionary<string, RuleValue> answers) =>
        !answers.TryGetValue(item.Id, out var value) ? "unknown" : item.Unit.Length == 0 ? value.ToString() : $"{value} {item.Unit}";
}
