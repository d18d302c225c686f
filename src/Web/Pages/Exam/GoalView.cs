using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Something measured at the shown visit that a goal can be counted by.</summary>
/// <param name="Key">Measure, side and activity joined.</param>
/// <param name="Name">What it is called on the page.</param>
/// <param name="Measure">The measure.</param>
/// <param name="Now">The value, stored unit.</param>
/// <param name="Targets">Targets that can be defended.</param>
public sealed record Countable(string Key, string Name, Measure Measure, double Now, ImmutableArray<GoalTarget> Targets);

/// <summary>Goals against what was measured.</summary>
public static class GoalView
{
    /// <summary>Everything that was measured at the shown visit.</summary>
    public static ImmutableArray<Countable> Of(PatientCase patientCase)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        return
        [
            .. from found in patientCase.Reading.Interpretations
               from reading in found.Readings
               let side = reading.Measurement.Side
               let activity = reading.Measurement.Activity
               select new Countable(
                   GoalForm.Key(found.Measure.Id, side, activity),
                   found.Measure.Name + (activity is { Length: > 0 } ? $", {activity}" : "") + (side is null ? "" : $", {Say.Side(side)}"),
                   found.Measure, reading.Value, GoalTargets.For(found, side, activity)),
        ];
    }

    /// <summary>Where a goal stands: from, now, to.</summary>
    public static string Standing(Goal goal, Measure? measure, double? now)
    {
        ArgumentNullException.ThrowIfNull(goal);
        if (measure is null)
            return "Not counted by a measure.";
        var parts = new List<string>();
        if (goal.Baseline is { } from)
            parts.Add($"from {Say.Shown(measure, from)}");
        parts.Add(now is { } value ? $"now {Say.Shown(measure, value)}" : "not measured last time");
        if (goal.Target is { } target)
            parts.Add($"to {Say.Shown(measure, target)}{(now is { } reached && measure.Gain(target, reached) >= 0 ? ": reached" : "")}");
        return $"{measure.Name}{(goal.Activity is { Length: > 0 } activity ? $", {activity}" : "")}{(goal.Side is null ? "" : $", {Say.Side(goal.Side)}")}: {string.Join(", ", parts)}.";
    }
}
