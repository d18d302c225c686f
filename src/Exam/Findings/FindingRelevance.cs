using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>What matters to a person beyond the size of a difference: the own goals, and what the working pattern concerns. Our choice.</summary>
/// <param name="GoalMeasures">Ids of the measures by which open goals are counted.</param>
/// <param name="Actions">Joint actions of the working pattern.</param>
/// <param name="Groups">Muscle groups of the working pattern.</param>
public sealed record FindingRelevance(
    ImmutableArray<string> GoalMeasures, ImmutableArray<JointAction> Actions, ImmutableArray<MuscleGroup> Groups)
{
    /// <summary>Nothing known.</summary>
    public static FindingRelevance None { get; } = new([], [], []);

    /// <summary>
    /// Moves a finding part of the way to 1: <see cref="FindingRules.GoalShare"/> for a goal, <see cref="FindingRules.PatternShare"/>
    /// for the pattern, both together added. What is within error, and what got better, stays where it is.
    /// </summary>
    /// <param name="finding">A computed finding.</param>
    /// <returns>The finding, with a sentence saying what it counts for.</returns>
    public Finding Weigh(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        if (finding.BeyondError == false || finding.Better == true)
            return finding;
        var goal = finding.MeasureIds.Any(GoalMeasures.Contains);
        var pattern = finding.Impairment is { } lack
            && ((lack.Action is { } action && Actions.Contains(action)) || (lack.Group is { } group && Groups.Contains(group)));
        var share = (goal ? FindingRules.GoalShare : 0) + (pattern ? FindingRules.PatternShare : 0);
        return share == 0
            ? finding
            : finding with
            {
                Weight = finding.Weight + (share * (1 - finding.Weight)),
                Detail = finding.Detail + (goal ? " An open goal is counted by it." : "") + (pattern ? " It belongs to the working hypothesis." : ""),
            };
    }
}
