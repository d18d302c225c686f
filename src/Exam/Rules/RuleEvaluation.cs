using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>
/// Evaluates a rule by trying every answer that unknown items may have. So an advice is told only when nothing unknown can
/// change it, and what is still needed is exactly what can. See docs/models/exam-rules.md.
/// </summary>
public static class RuleEvaluation
{
    /// <summary>Evaluates a rule.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="answers">Known answers by item id; an item that is missing is unknown.</param>
    /// <returns>What can be told.</returns>
    /// <exception cref="ArgumentException">An answer belongs to no item, or does not fit its item.</exception>
    public static RuleResult Of(DecisionRule rule, IReadOnlyDictionary<string, RuleValue> answers)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(answers);
        foreach (var (id, value) in answers)
        {
            if (rule.Item(id) is not { } item)
                throw new ArgumentException($"The rule {rule.Id} asks nothing called \"{id}\".", nameof(answers));
            if (RuleReading.FaultOf(item, value) is { } fault)
                throw new ArgumentException(fault, nameof(answers));
        }

        return new Trial(rule, answers).Result();
    }

    /// <summary>Answers that the record gives, under what was answered; an answer always stands over the record.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="answers">What was answered.</param>
    /// <param name="person">What the record knows.</param>
    /// <returns>Both together.</returns>
    public static ImmutableDictionary<string, RuleValue> WithFacts(
        DecisionRule rule, IReadOnlyDictionary<string, RuleValue> answers, RulePerson person)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(person);
        var all = answers.ToImmutableDictionary();
        foreach (var item in rule.Items.Where(i => i.Known is not null && !answers.ContainsKey(i.Id)))
        {
            if (person.Says(item.Known!.Value) is { } value && RuleReading.FaultOf(item, value) is null)
                all = all.Add(item.Id, value);
        }

        return all;
    }

    /// <summary>One evaluation: the unknown items counted through like the digits of a number.</summary>
    private sealed class Trial
    {
        private const int NotFor = -1;
        private readonly DecisionRule rule;
        private readonly (RuleItem Item, ImmutableArray<RuleValue> Cells)[] unknown;
        private readonly Dictionary<string, RuleValue> values;
        private readonly int[] advice;
        private readonly HashSet<int>[] bands;
        private readonly (bool Yes, bool No)[] met;
        private readonly (bool Yes, bool No)[] excluded;
        private readonly (int Low, int High)[] points;

        internal Trial(DecisionRule rule, IReadOnlyDictionary<string, RuleValue> answers)
        {
            this.rule = rule;
            unknown = [.. rule.Items.Where(i => !answers.ContainsKey(i.Id)).Select(i => (i, RuleCells.Of(rule, i)))];
            values = answers.ToDictionary();
            var count = unknown.Aggregate(1L, (product, u) => product * u.Cells.Length);
            if (count > DecisionRule.MostCombinations)
                throw new ArgumentException($"The rule {rule.Id} has too many combinations.", nameof(rule));
            advice = new int[count];
            bands = [.. rule.Outcomes.Select(_ => new HashSet<int>())];
            met = new (bool, bool)[rule.Criteria.Length];
            excluded = new (bool, bool)[rule.NotFor.Length];
            points = [.. rule.Scores.Select(_ => (int.MaxValue, int.MinValue))];
        }

        internal RuleResult Result()
        {
            for (var i = 0; i < advice.Length; i++)
                Try(i);
            var state = advice.All(a => a == NotFor) ? RuleState.NotForThisPerson
                : advice.Distinct().Count() == 1 ? RuleState.Told
                : RuleState.NotYet;
            return new RuleResult
            {
                Rule = rule,
                State = state,
                Excluded = [.. rule.NotFor.Where((_, i) => excluded[i] is (true, false))],
                ExclusionsOpen = [.. rule.NotFor.Where((_, i) => excluded[i] is (true, true))],
                Criteria = [.. rule.Criteria.Select((c, i) => new CriterionResult(c, met[i] is (true, true) ? null : met[i].Yes))],
                Scores = [.. rule.Scores.Select((s, i) => new ScoreResult(s, points[i].Low, points[i].High))],
                Outcomes = [.. rule.Outcomes.Select((o, i) => Outcome(o, bands[i], i == 0 ? state == RuleState.Told : bands[i].Count == 1 && state == RuleState.Told))],
                Needs = state == RuleState.NotYet ? [.. Needs()] : [],
            };
        }

        private static OutcomeResult Outcome(RuleOutcome outcome, HashSet<int> possible, bool told)
        {
            ImmutableArray<RuleBand> open = [.. outcome.Bands.Where((_, i) => possible.Contains(i))];
            return new OutcomeResult(outcome, told ? open[0] : null, open);
        }

        private void Try(int number)
        {
            var rest = number;
            foreach (var (item, cells) in unknown)
            {
                values[item.Id] = cells[rest % cells.Length];
                rest /= cells.Length;
            }

            var none = true;
            for (var i = 0; i < excluded.Length; i++)
            {
                var holds = rule.NotFor[i].When.Holds(values, rule);
                excluded[i] = (excluded[i].Yes || holds, excluded[i].No || !holds);
                none &= !holds;
            }

            for (var i = 0; i < met.Length; i++)
            {
                var holds = rule.Criteria[i].When.Holds(values, rule);
                met[i] = (met[i].Yes || holds, met[i].No || !holds);
            }

            for (var i = 0; i < points.Length; i++)
            {
                var sum = rule.PointsOf(rule.Scores[i], values);
                points[i] = (Math.Min(points[i].Low, sum), Math.Max(points[i].High, sum));
            }

            advice[number] = none ? BandOf(rule.Outcomes[0]) : NotFor;
            for (var i = 0; none && i < bands.Length; i++)
                bands[i].Add(BandOf(rule.Outcomes[i]));
        }

        private int BandOf(RuleOutcome outcome)
        {
            for (var i = 0; i < outcome.Bands.Length; i++)
            {
                if (outcome.Bands[i].When is not { } when || when.Holds(values, rule))
                    return i;
            }

            return outcome.Bands.Length - 1;
        }

        /// <summary>An item is needed when two combinations that differ in it alone give different advice.</summary>
        private IEnumerable<RuleItem> Needs()
        {
            var step = 1;
            foreach (var (item, cells) in unknown)
            {
                var (width, turn) = (step, step * cells.Length);
                if (Enumerable.Range(0, advice.Length).Any(i => advice[i] != advice[i - (i % turn) + (i % width)]))
                    yield return item;
                step = turn;
            }
        }
    }
}
