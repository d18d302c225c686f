using System.Collections.Immutable;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Turns a rule file into a rule; conditions that have no single form are faults.</summary>
internal sealed class RuleConversion(string file, FaultList faults)
{
    private static readonly RuleCondition Never = new RuleCondition.Any([]);

    internal DecisionRule Convert(RuleFile raw) => new()
    {
        Id = raw.Id,
        Name = raw.Name,
        Decides = raw.Decides,
        Regions = [.. raw.Regions],
        Group = raw.Group,
        AppliesTo = raw.AppliesTo,
        NotFor = [.. raw.NotFor.Select((n, i) => new RuleExclusion(n.Text, Condition(n.When, $"notFor[{i}].when"), n.Source ?? raw.Source, n.Confirmation ?? raw.Confirmation))],
        Items = [.. raw.Items.Select(i => Item(raw, i))],
        Criteria = [.. raw.Criteria.Select((c, i) => Criterion(raw, c, $"criteria[{i}]"))],
        Scores = [.. raw.Scores.Select(s => new RuleScore(s.Id, s.Name, [.. s.Of ?? [.. raw.Criteria.Select(c => c.Id)]]))],
        Outcomes = [.. raw.Outcomes.Select((o, i) => new RuleOutcome(o.Id, o.Name, [.. o.Bands.Select((b, k) => Band(b, $"outcomes[{i}].bands[{k}]"))]))],
        Accuracy = [.. raw.Accuracy.Select(a => new RuleAccuracy(
            a.Population, [.. (a.Figures ?? []).Select(f => new RuleFigure(f.Kind, f.Value, f.Low, f.High, f.Of))], a.IntervalNote, a.Source, a.Confirmation))],
        Notes = [.. raw.Notes],
        Source = raw.Source,
        Confirmation = raw.Confirmation,
    };

    private static RuleItem Item(RuleFile raw, RuleItemFile item) => new()
    {
        Id = item.Id,
        Text = item.Text,
        Kind = item.Kind,
        Unit = item.Unit ?? "",
        Low = item.Low ?? 0,
        High = item.High ?? 0,
        Choices = [.. item.Choices ?? []],
        Known = item.Known,
        Source = item.Source ?? raw.Source,
        Confirmation = item.Confirmation ?? raw.Confirmation,
    };

    private RuleCriterion Criterion(RuleFile raw, RuleCriterionFile criterion, string place) => new(
        criterion.Id,
        criterion.Text ?? raw.Items.FirstOrDefault(i => i.Id == criterion.Id)?.Text ?? "",
        criterion.Points,
        criterion.When is null ? new RuleCondition.Is(criterion.Id, "yes") : Condition(criterion.When, place + ".when"));

    private RuleBand Band(RuleBandFile band, string place) =>
        new(band.Id, band.Name, band.Means, band.Tone, band.Urgency, band.When is null ? null : Condition(band.When, place + ".when"));

    private RuleCondition Condition(RuleConditionFile raw, string place)
    {
        var limits = new (RuleComparison Comparison, double? Limit)[]
        {
            (RuleComparison.AtLeast, raw.AtLeast), (RuleComparison.Above, raw.Above), (RuleComparison.AtMost, raw.AtMost), (RuleComparison.Below, raw.Below),
        }.Where(l => l.Limit is not null).ToArray();
        var subjects = new object?[] { raw.Item, raw.Score, raw.Criterion, raw.All, raw.Any, raw.Not }.Count(s => s is not null);
        return (subjects, limits.Length, raw) switch
        {
            (1, 0, { Item: { } item, Is: { } word }) => new RuleCondition.Is(item, word),
            (1, 1, { Item: { } item, Is: null }) => new RuleCondition.Number(item, limits[0].Comparison, limits[0].Limit!.Value),
            (1, 1, { Score: { } score, Is: null }) => new RuleCondition.Score(score, limits[0].Comparison, limits[0].Limit!.Value),
            (1, 0, { Criterion: { } criterion, Is: null }) => new RuleCondition.Criterion(criterion),
            (1, 0, { All: { Count: > 0 } all, Is: null }) => new RuleCondition.All(Each(all, place + ".all")),
            (1, 0, { Any: { Count: > 0 } any, Is: null }) => new RuleCondition.Any(Each(any, place + ".any")),
            (1, 0, { Not: { } not, Is: null }) => new RuleCondition.Not(Condition(not, place + ".not")),
            _ => NoForm(place),
        };
    }

    private ImmutableArray<RuleCondition> Each(IReadOnlyList<RuleConditionFile> raw, string place) =>
        [.. raw.Select((c, i) => Condition(c, $"{place}[{i}]"))];

    private RuleCondition NoForm(string place)
    {
        faults.Add(
            file, null, place, "The condition has no single meaning.",
            "Give an item with \"is\", an item or score with one limit, a criterion, or one of all, any, not.");
        return Never;
    }
}
