using Microsoft.EntityFrameworkCore;
using MomentArm.Body;

namespace MomentArm.Records;

/// <summary>What is saved of a goal.</summary>
public sealed record GoalDetails(string Text, DateOnly SetOn)
{
    public string? MeasureId { get; init; }

    public Side? Side { get; init; }

    public string? Activity { get; init; }

    /// <summary>In the stored unit of the measure.</summary>
    public double? Baseline { get; init; }

    /// <summary>In the stored unit of the measure.</summary>
    public double? Target { get; init; }

    public string? TargetReason { get; init; }

    public DateOnly? DueOn { get; init; }

    public GoalState State { get; init; }

    public string? Outcome { get; init; }

    /// <summary>What a row says, ready for editing.</summary>
    public static GoalDetails Of(Goal row) => new(row.Text, row.SetOn)
    {
        MeasureId = row.MeasureId,
        Side = row.Side,
        Activity = row.Activity,
        Baseline = row.Baseline,
        Target = row.Target,
        TargetReason = row.TargetReason,
        DueOn = row.DueOn,
        State = row.State,
        Outcome = row.Outcome,
    };

    internal string? Fault() => this switch
    {
        { Text: var text } when string.IsNullOrWhiteSpace(text) => "Write the goal in the patient's words.",
        { Target: { } target } when !double.IsFinite(target) => "The target is not a number.",
        { Baseline: { } baseline } when !double.IsFinite(baseline) => "The starting value is not a number.",
        { Target: not null, MeasureId: null } => "Say which measure the target belongs to.",
        { DueOn: { } due } when due < SetOn => "The day to reach it lies before the day it was set.",
        _ => null,
    };

    internal void WriteTo(Goal row)
    {
        (row.Text, row.SetOn, row.MeasureId, row.Side, row.Activity) = (Text.Trim(), SetOn, MeasureId, Side, Activity?.Trim());
        (row.Baseline, row.Target, row.TargetReason) = (Baseline, Target, TargetReason);
        (row.DueOn, row.State, row.Outcome) = (DueOn, State, Outcome);
    }
}

/// <summary>The goals of episodes.</summary>
public sealed class GoalStore(RecordsWork work)
{
    private const string NotHere = "This clinic has no such goal.";

    /// <summary>The goals of an episode, oldest first.</summary>
    public Task<IReadOnlyList<Goal>> ListAsync(Acting who, Guid episodeId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<Goal>>(
            who,
            async db => await db.Goals.Where(g => g.EpisodeId == episodeId).OrderBy(g => g.Id).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>Sets a goal under an id the form was given when it was shown: the same form sent twice is one goal.</summary>
    public Task<SaveOutcome<Goal>> AddOnceAsync(
        Acting who, Guid formId, Guid episodeId, GoalDetails details, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (details.Fault() is { } fault)
                    return Outcome.Refused<Goal>(fault);
                if (await EpisodeStore.FindAsync(db, episodeId, cancellationToken) is null)
                    return Outcome.Refused<Goal>(EpisodeStore.NotHere);
                if (await db.Goals.FirstOrDefaultAsync(g => g.Id == formId, cancellationToken) is { } there)
                    return Outcome.Saved(there);
                var row = new Goal { ClinicId = who.ClinicId, Id = formId, EpisodeId = episodeId, Text = details.Text };
                details.WriteTo(row);
                db.Goals.Add(row);
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"episode/{episodeId:D}/goal",
            details);

    /// <summary>Changes a goal, or says that it was reached or given up, if nobody did since the version that was read.</summary>
    public Task<SaveOutcome<Goal>> EditAsync(
        Acting who, Guid goalId, GoalDetails details, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (details.Fault() is { } fault)
                    return Outcome.Refused<Goal>(fault);
                var row = await db.Goals.FirstOrDefaultAsync(g => g.Id == goalId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<Goal>(NotHere);
                await EpisodeStore.FindAsync(db, row.EpisodeId, cancellationToken);
                if (row.RowVersion != expectedVersion && GoalDetails.Of(row) != details)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                details.WriteTo(row);
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"goal/{goalId:D}",
            details);
}
