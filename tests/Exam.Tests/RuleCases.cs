using MomentArm.Body;

namespace MomentArm.Exam.Tests;

/// <summary>Applies shipped rules to written cases.</summary>
internal static class RuleCases
{
    public static DecisionRule Rule(string id) => Shipped.Exam.Rule(id) ?? throw new ArgumentException(id);

    /// <summary>Applies a rule to "item=value" words; an item that is not named is unknown.</summary>
    public static RuleResult Apply(string id, string known) => RuleEvaluation.Of(Rule(id), Answers(Rule(id), known, null));

    /// <summary>Applies a rule where every yes-or-no item that is not named was asked and answered no.</summary>
    public static RuleResult ElseNo(string id, string known) => RuleEvaluation.Of(Rule(id), Answers(Rule(id), known, RuleValue.No));

    public static Dictionary<string, RuleValue> Answers(DecisionRule rule, string known, RuleValue? others)
    {
        var answers = rule.Items.Where(i => others is not null && i.Kind == RuleItemKind.YesNo).ToDictionary(i => i.Id, _ => others!);
        foreach (var pair in known.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var parts = pair.Split('=');
            var reading = RuleReading.Of(rule.Item(parts[0]) ?? throw new ArgumentException(pair), parts[1]);
            Assert.Null(reading.Fault);
            answers[parts[0]] = reading.Value!;
        }

        return answers;
    }

    public static RulePerson Person(double? age, Sex? sex = null) => new(age, sex);
}
