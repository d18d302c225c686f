using System.Collections.Immutable;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Clinic;

/// <summary>One rule of a visit.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Given">What was answered in the visit.</param>
/// <param name="All">The same with what the record knows.</param>
/// <param name="Told">What can be told.</param>
public sealed record VisitRule(
    DecisionRule Rule, ImmutableDictionary<string, RuleValue> Given, ImmutableDictionary<string, RuleValue> All, RuleResult Told);

/// <summary>The decision rules that were begun in a visit, as stored in its answers.</summary>
public static class VisitRules
{
    /// <summary>The sheet that holds a rule's answers.</summary>
    public static string SheetOf(DecisionRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return RuleSigns.Prefix + rule.Id;
    }

    /// <summary>Whom the danger signs of a visit are asked of.</summary>
    public static ScreenedPerson PersonOf(VisitRecord visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return new ScreenedPerson(RegionWords.Read(visit.Episode.Region, visit.Episode.Title), visit.Patient.AgeOn(visit.Visit.Day));
    }

    /// <summary>Every rule with at least one answer in the visit.</summary>
    public static ImmutableArray<VisitRule> Of(VisitRecord visit, IEnumerable<DecisionRule> rules)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(rules);
        return visit.Answers.Any(a => a.Sheet.StartsWith(RuleSigns.Prefix, StringComparison.Ordinal))
            ? [.. rules.Where(rule => visit.Answers.Any(a => a.Sheet == SheetOf(rule))).Select(rule => One(visit, rule))]
            : [];
    }

    /// <summary>One rule of a visit, begun or not. A stored answer that no longer fits its item is left unknown.</summary>
    public static VisitRule One(VisitRecord visit, DecisionRule rule)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(rule);
        var given = ImmutableDictionary.CreateBuilder<string, RuleValue>();
        foreach (var row in visit.Answers.Where(a => a.Sheet == SheetOf(rule)))
        {
            if (rule.Item(row.Item) is { } item && RuleReading.Of(item, row.Value).Value is { } value)
                given[row.Item] = value;
        }

        var answers = given.ToImmutable();
        var all = RuleEvaluation.WithFacts(rule, answers, new RulePerson(visit.Patient.AgeOn(visit.Visit.Day), visit.Patient.Sex));
        return new VisitRule(rule, answers, all, RuleEvaluation.Of(rule, all));
    }
}
