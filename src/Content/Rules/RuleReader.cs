using System.Globalization;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Reads content/rules, one file a rule.</summary>
internal sealed class RuleReader(ISet<string> sources, FaultList faults)
{
    private static readonly string[] Confirmations = ["read", "read in a summary", "from memory", "common practice"];
    private string file = "";

    /// <summary>Reads every rule, ordered by file name.</summary>
    internal IReadOnlyList<DecisionRule> ReadAll(string contentFolder)
    {
        var all = new List<DecisionRule>();
        foreach (var path in StrictJson.FilesIn(Path.Combine(contentFolder, "rules"), ".json"))
        {
            file = "rules/" + Path.GetFileName(path);
            if (StrictJson.ReadFile<RuleFile>(path, file, faults) is not { } raw)
                continue;
            var before = faults.Faults.Count;
            var rule = new RuleConversion(file, faults).Convert(raw);
            if (all.Any(r => r.Id == rule.Id) || rule.Id != Path.GetFileNameWithoutExtension(path))
                Fault("id", $"The id \"{rule.Id}\" is used twice or is not the file's name.", "Name the file like the rule.");
            CheckParts(rule);
            if (faults.Faults.Count == before)
                CheckConditions(rule);
            all.Add(rule);
        }

        return all;
    }

    private void CheckParts(DecisionRule rule)
    {
        Filled("", rule.Name, rule.Decides, rule.AppliesTo);
        Backed("", rule.Source, rule.Confirmation);
        Once("items", rule.Items.Select(i => i.Id));
        Once("criteria", rule.Criteria.Select(c => c.Id));
        Once("scores", rule.Scores.Select(s => s.Id));
        Once("outcomes", rule.Outcomes.Select(o => o.Id));
        for (var i = 0; i < rule.Items.Length; i++)
            CheckItem(rule.Items[i], $"items[{i}]");
        for (var i = 0; i < rule.NotFor.Length; i++)
        {
            Filled($"notFor[{i}]", rule.NotFor[i].Text);
            Backed($"notFor[{i}]", rule.NotFor[i].Source, rule.NotFor[i].Confirmation);
        }

        for (var i = 0; i < rule.Criteria.Length; i++)
            Filled($"criteria[{i}]", rule.Criteria[i].Text);
        for (var i = 0; i < rule.Accuracy.Length; i++)
            CheckAccuracy(rule.Accuracy[i], $"accuracy[{i}]");
        if (rule.Accuracy.IsEmpty)
            Fault("accuracy", "Nothing is said about how well the rule did.", "Add a row; when there is no study, say so in population and intervalNote.");
        if (rule.Outcomes.IsEmpty)
            Fault("outcomes", "The rule has no outcome.", "Give at least the advice.");
        for (var i = 0; i < rule.Outcomes.Length; i++)
        {
            var bands = rule.Outcomes[i].Bands;
            Once($"outcomes[{i}].bands", bands.Select(b => b.Id));
            if (bands.Length < 2 || bands[..^1].Any(b => b.When is null) || bands[^1].When is not null)
                Fault($"outcomes[{i}].bands", "The last band, and only that, is the one without a condition.", "Give every other band its \"when\".");
            for (var k = 0; k < bands.Length; k++)
                Filled($"outcomes[{i}].bands[{k}]", bands[k].Name, bands[k].Means);
        }
    }

    private void CheckItem(RuleItem item, string place)
    {
        Filled(place, item.Id, item.Text);
        Backed(place, item.Source, item.Confirmation);
        if (item.Kind == RuleItemKind.Number && (item.Unit.Length == 0 || !(item.Low < item.High)))
            Fault(place, "A number needs a unit and a range.", "Give unit, low and high.");
        if (item.Kind == RuleItemKind.Choice && item.Choices.Length < 2)
            Fault(place, "A choice needs at least two choices.", "Give choices.");
    }

    private void CheckAccuracy(RuleAccuracy accuracy, string place)
    {
        Filled(place, accuracy.Population);
        Backed(place, accuracy.Source, accuracy.Confirmation);
        var bare = accuracy.Figures.IsEmpty || accuracy.Figures.Any(f => f.Low is null || f.High is null);
        if (bare && string.IsNullOrWhiteSpace(accuracy.IntervalNote))
            Fault(place, "A figure has no interval.", "Give low and high, or say in intervalNote why there is none.");
        foreach (var figure in accuracy.Figures)
        {
            if (figure.Value < (figure.Low ?? figure.Value) || figure.Value > (figure.High ?? figure.Value))
                Fault(place, string.Create(CultureInfo.InvariantCulture, $"{figure.Value} lies outside its interval."), "Correct the row.");
            if (figure.Kind is not (RuleFigureKind.LikelihoodRatio or RuleFigureKind.NegativeLikelihoodRatio) && (figure.Value is < 0 or > 1 || figure.High is > 1))
                Fault(place, string.Create(CultureInfo.InvariantCulture, $"{figure.Value} is no share."), "Write shares from 0 to 1.");
        }
    }

    private void CheckConditions(DecisionRule rule)
    {
        foreach (var condition in rule.Conditions())
        {
            var (known, what) = condition switch
            {
                RuleCondition.Is c => (rule.Item(c.Item) is { } i && (i.Kind == RuleItemKind.YesNo ? c.Word is "yes" or "no" : i.Choices.Any(x => x.Id == c.Word)), $"{c.Item} is {c.Word}"),
                RuleCondition.Number c => (rule.Item(c.Item) is { Kind: RuleItemKind.Number } i && c.Limit >= i.Low && c.Limit <= i.High, c.Item),
                RuleCondition.Criterion c => (rule.Criteria.Any(x => x.Id == c.Id), c.Id),
                RuleCondition.Score c => (rule.Scores.Any(x => x.Id == c.Id), c.Id),
                _ => (true, ""),
            };
            if (!known)
                Fault("", $"A condition names \"{what}\", which the rule does not have in that form.", "Correct the name, the answer or the limit.");
        }

        foreach (var score in rule.Scores.Where(s => s.Criteria.Any(id => rule.Criteria.All(c => c.Id != id))))
            Fault($"scores.{score.Id}", "It sums a criterion that is not there.", "Correct the name.");
        if (rule.Criteria.SelectMany(c => c.When.Parts()).Any(c => c is RuleCondition.Criterion or RuleCondition.Score))
            Fault("criteria", "A criterion rests on another criterion or a score.", "Build criteria from items only.");
        var used = rule.Conditions().Select(c => c is RuleCondition.Is @is ? @is.Item : (c as RuleCondition.Number)?.Item).ToHashSet();
        foreach (var item in rule.Items.Where(i => !used.Contains(i.Id)))
            Fault($"items.{item.Id}", "Nothing in the rule uses this item.", "Use it or remove it.");
        if (RuleCells.Combinations(rule) > DecisionRule.MostCombinations)
            Fault("items", "The rule has too many items to try every answer.", "Join items that count the same way.");
    }

    private void Once(string place, IEnumerable<string> ids)
    {
        foreach (var id in ids.GroupBy(i => i).Where(g => g.Count() > 1).Select(g => g.Key))
            Fault(place, $"The id \"{id}\" is used twice.", "Give each its own id.");
    }

    private void Filled(string place, params string[] texts)
    {
        if (texts.Any(string.IsNullOrWhiteSpace))
            Fault(place, "A text is empty.", "Fill it.");
    }

    private void Backed(string place, string source, string confirmation)
    {
        if (!sources.Contains(source))
            Fault(place, $"The source \"{source}\" is not in sources.json.", "Add it there or correct the key.");
        if (!Confirmations.Contains(confirmation))
            Fault(place, $"\"{confirmation}\" is not known.", "Write one of: " + string.Join(", ", Confirmations) + ".");
    }

    private void Fault(string place, string what, string mend) => faults.Add(file, null, place, what, mend);
}
