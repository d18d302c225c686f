namespace MomentArm.Records.Tests;

public sealed class GoalStoreTests
{
    private static readonly GoalDetails Run = new("Run 5 km without pain, invented", new DateOnly(2026, 3, 2))
    {
        MeasureId = "pain-worst",
        Baseline = 6,
        Target = 2,
        TargetReason = "invented",
        DueOn = new DateOnly(2026, 5, 1),
    };

    [Fact]
    public async Task A_goal_is_set_once_changed_and_kept_from_other_clinics()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var goals = records.Stores.Goals;
        var form = Guid.CreateVersion7();
        var goal = (await goals.AddOnceAsync(records.Ana, form, episode.Id, Run)).Require();
        (await goals.AddOnceAsync(records.Ana, form, episode.Id, Run)).Require();
        Assert.Equal(Run, GoalDetails.Of(Assert.Single(await goals.ListAsync(records.Ana, episode.Id))));
        var reached = Run with { State = GoalState.Reached, Outcome = "5.2 km" };
        (await goals.EditAsync(records.Ana, goal.Id, reached, goal.RowVersion)).Require();
        Samples.Conflict(await goals.EditAsync(records.Ben, goal.Id, Run with { Text = "other" }, goal.RowVersion), out _);
        Samples.Refused(await goals.EditAsync(records.Cleo, goal.Id, Run, goal.RowVersion));
        Samples.Refused(await goals.AddOnceAsync(records.Cleo, Guid.CreateVersion7(), episode.Id, Run));
        Assert.Equal(GoalState.Reached, Assert.Single(await goals.ListAsync(records.Ana, episode.Id)).State);
    }

    [Fact]
    public async Task A_goal_without_words_with_no_number_or_due_before_it_was_set_is_refused()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        foreach (var wrong in (GoalDetails[])
            [
                Run with { Text = " " }, Run with { Target = double.NaN }, Run with { MeasureId = null },
                Run with { DueOn = new DateOnly(2026, 3, 1) },
            ])
        {
            Samples.Refused(await records.Stores.Goals.AddOnceAsync(records.Ana, Guid.CreateVersion7(), episode.Id, wrong));
        }
    }
}
