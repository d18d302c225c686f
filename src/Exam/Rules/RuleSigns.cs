using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>
/// Advice of rules that must be acted on, as danger signs: a positive rule stops prescribing like an answered sign, and a
/// recorded decision lifts it the same way.
/// </summary>
public static class RuleSigns
{
    /// <summary>Begins the id of every sign that stands for a rule; the id of the rule follows.</summary>
    public const string Prefix = "rule/";

    /// <summary>The signs that told rules make present: those whose advice asks to refer or faster.</summary>
    /// <param name="results">Results of the visit.</param>
    /// <returns>One sign for each such rule.</returns>
    public static ImmutableArray<DangerSign> Of(IEnumerable<RuleResult> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        return
        [
            .. results.Where(r => r.Advice?.Urgency >= Urgency.ReferBeforeExercise).Select(r => new DangerSign(
                Prefix + r.Rule.Id, $"{r.Rule.Name}: {r.Advice!.Name}", r.Advice.Name, r.Advice.Urgency!.Value, $"{r.Rule.Name}: {r.Advice.Means}",
                r.Rule.Source, r.Rule.Confirmation)),
        ];
    }
}
