using System.CommandLine;
using System.Globalization;
using System.Text;
using MomentArm.Content;
using MomentArm.Exam;

namespace MomentArm.Cli;

/// <summary>rules list and rules apply.</summary>
internal static class RuleCommands
{
    private const string ListExample = "Example: momentarm rules list";
    private const string ApplyExample = "Example: momentarm rules apply ottawa-knee age=55 days=1 unfit=no weight=yes";

    internal static Command Build() => new("rules", $"Published decision rules.\n{ApplyExample}") { List(), Apply() };

    private static Command List()
    {
        var list = new Command("list", $"Lists the rules with what each decides.\n{ListExample}");
        list.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            var text = new StringBuilder();
            foreach (var rule in library.Exam.Rules)
                text.AppendLine(CultureInfo.InvariantCulture, $"{rule.Id,-26} {rule.Decides}  ({rule.Confirmation})");
            output.Write(
                library.Exam.Rules.Select(r => new { r.Id, r.Name, r.Decides, r.Regions, Items = r.Items.Select(i => i.Id), r.Source, r.Confirmation }),
                text.ToString().TrimEnd());
            return 0;
        });
        return list;
    }

    private static Command Apply()
    {
        var id = new Argument<string>("rule") { Description = "Id of the rule; see rules list." };
        var pairs = new Argument<string[]>("item=value") { Description = "What is known; what is left out is unknown, never no.", Arity = ArgumentArity.ZeroOrMore };
        var apply = new Command("apply", $"Applies a rule: each item with its points, the outcome, or what is still needed.\n{ApplyExample}") { id, pairs };
        apply.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            if (library.Exam.Rule(parse.GetValue(id)!) is not { } rule)
                return output.Faults([$"There is no rule \"{parse.GetValue(id)}\". See: momentarm rules list"]);
            var (answers, faults) = Read(rule, parse.GetValue(pairs) ?? []);
            if (faults.Count > 0)
                return output.Faults(faults);
            var result = RuleEvaluation.Of(rule, answers);
            output.Write(RuleReport.Data(result, answers), RuleReport.Text(result, answers, library));
            return 0;
        });
        return apply;
    }

    private static (Dictionary<string, RuleValue> Answers, List<string> Faults) Read(DecisionRule rule, IReadOnlyList<string> pairs)
    {
        var answers = new Dictionary<string, RuleValue>();
        var faults = new List<string>();
        var seen = new HashSet<string>();
        foreach (var pair in pairs)
        {
            var at = pair.IndexOf('=', StringComparison.Ordinal);
            if (at <= 0)
            {
                faults.Add($"\"{pair}\" is not item=value, such as {rule.Items[0].Id}={Sample(rule.Items[0])}.");
                continue;
            }

            var name = pair[..at].Trim();
            if (rule.Item(name) is not { } item)
                faults.Add($"The rule {rule.Id} asks nothing called \"{name}\". It asks: {string.Join(", ", rule.Items.Select(i => i.Id))}.");
            else if (!seen.Add(name))
                faults.Add($"\"{name}\" is given twice. Give it once.");
            else if (RuleReading.Of(item, pair[(at + 1)..]) is var reading && reading.Fault is { } fault)
                faults.Add($"{name}: {fault}");
            else if (reading.Value is { } value)
                answers[name] = value;
        }

        return (answers, faults);
    }

    private static string Sample(RuleItem item) => item.Kind switch
    {
        RuleItemKind.YesNo => "no",
        RuleItemKind.Number => Say.Number(item.High, 0),
        RuleItemKind.Choice => item.Choices[0].Id,
    };
}
