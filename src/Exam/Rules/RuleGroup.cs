using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Several rules that answer the same question, taken together.</summary>
/// <param name="Group">Id of the group.</param>
/// <param name="Told">The result that counts; null while one that is not told yet could be more urgent, or none is for this person.</param>
/// <param name="Open">Rules of the group that are not told yet.</param>
public sealed record RuleGroup(string Group, RuleResult? Told, ImmutableArray<RuleResult> Open)
{
    /// <summary>Takes the results of one group together: the most urgent advice counts (our choice: the safer one).</summary>
    /// <param name="results">Results of rules; those without a group are left out.</param>
    /// <returns>One entry a group with at least two rules, in the order met.</returns>
    public static ImmutableArray<RuleGroup> Of(IReadOnlyList<RuleResult> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        return
        [
            .. results.Where(r => r.Rule.Group is not null).GroupBy(r => r.Rule.Group!).Where(g => g.Count() > 1).Select(g => Together(g.Key, [.. g])),
        ];
    }

    private static RuleGroup Together(string group, RuleResult[] results)
    {
        var open = results.Where(r => r.State == RuleState.NotYet).ToImmutableArray();
        var worst = results.Where(r => r.State == RuleState.Told).MaxBy(r => Speed(r.Advice!));
        var most = open.SelectMany(r => r.Outcomes[0].Possible).Select(Speed).DefaultIfEmpty(int.MinValue).Max();
        return new RuleGroup(group, worst is not null && Speed(worst.Advice!) >= most ? worst : null, open);
    }

    private static int Speed(RuleBand band) => band.Urgency is { } urgency ? (int)urgency : -1;
}
