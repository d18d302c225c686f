using System.Collections.Immutable;
using MomentArm.Exam;

namespace MomentArm.Prescribing;

/// <summary>
/// A first draft for the clinician to change: for each finding in order, the best-ranked candidate that acts on it.
/// Simple on purpose; it claims nothing about being the best set.
/// </summary>
public static class DraftProgram
{
    /// <summary>Exercises in a draft at most: two to four are what people do.</summary>
    public const int MostExercises = 3;

    /// <summary>Makes the draft.</summary>
    /// <param name="candidates">Candidates, most suitable first.</param>
    /// <param name="findings">Findings, most important first.</param>
    /// <returns>Items in the order they were picked; empty when nothing acts on any finding.</returns>
    public static ImmutableArray<ProgramItem> From(ImmutableArray<Candidate> candidates, IReadOnlyList<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var items = ImmutableArray.CreateBuilder<ProgramItem>();
        var ladders = new HashSet<string>();
        foreach (var finding in findings)
        {
            if (items.Count == MostExercises)
                break;
            var best = candidates.FirstOrDefault(c =>
                c.Findings.Contains(finding.Id) && c.Obstacles.IsEmpty && c.Fit != LoadFit.TooHeavy
                && !ladders.Contains(c.Exercise.Ladder));
            if (best is null)
                continue;
            ladders.Add(best.Exercise.Ladder);
            items.Add(Item(best, finding.Id));
        }

        return items.ToImmutable();
    }

    /// <summary>A program item for a candidate, at its usual dose.</summary>
    /// <param name="candidate">The candidate.</param>
    /// <param name="findingId">The finding it is for; null when chosen without one.</param>
    /// <returns>The item, with the load share as shown now.</returns>
    public static ProgramItem Item(Candidate candidate, string? findingId)
    {
        ArgumentNullException.ThrowIfNull(candidate);
        var exercise = candidate.Exercise;
        return new ProgramItem
        {
            ExerciseId = exercise.Id,
            WorkingSide = exercise.Movement.Bilateral ? null : candidate.Side,
            Dose = exercise.Dose,
            FindingId = findingId,
            LoadShare = candidate.Main is { } main ? new StoredLoadShare(main.Action, main.Low, main.Middle, main.High) : null,
        };
    }
}
