using System.Text.Json;
using MomentArm.Body;

namespace MomentArm.Records.Tests;

public sealed class ProgramStoreTests
{
    [Fact]
    public async Task A_program_comes_back_as_it_was_saved()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var program = Samples.Program();
        var saved = (await records.Stores.Programs.SaveAsync(records.Ana, episode.Id, program, null, null)).Require();
        var back = (await records.Stores.Programs.GetAsync(records.Ana, saved.Id))!.ToProgram();
        Assert.Equal(program.Items, back.Items);
        Assert.Equal(program, back with { Items = program.Items });
    }

    [Fact]
    public async Task Versions_count_up_and_the_patient_keeps_theirs_until_the_next_is_handed_over()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, episode, _) = await records.AddVisitAsync(records.Ana);
        var programs = records.Stores.Programs;
        var first = (await programs.SaveAsync(records.Ana, episode.Id, Samples.Program(), null, null)).Require();
        Assert.Null(await programs.CurrentAsync(records.Ana, episode.Id));
        (await programs.HandOverAsync(
            records.Ana, first.Id, [new("side-lying-hip-abduction", Side.Left, true, false, "forgot the hold")])).Require();
        var second = (await programs.SaveAsync(records.Ana, episode.Id, Samples.Program(3), "too much", first.Id)).Require();
        var third = (await programs.SaveAsync(records.Ana, episode.Id, Samples.Program(2), "still too much", second.Id)).Require();
        Assert.Equal(first.Id, (await programs.CurrentAsync(records.Ana, episode.Id))!.Id);
        (await programs.HandOverAsync(records.Ana, third.Id, [])).Require();
        Assert.Equal(third.Id, (await programs.CurrentAsync(records.Ana, episode.Id))!.Id);
        Assert.Equal(
            [(3, ProgramState.HandedOver), (2, ProgramState.Replaced), (1, ProgramState.Replaced)],
            (await programs.HistoryAsync(records.Ana, episode.Id)).Select(p => (p.Number, p.State)));
        var teachBack = Assert.Single(await programs.TeachBacksAsync(records.Ana, first.Id));
        Assert.Equal((true, false, "forgot the hold"), (teachBack.Shown, teachBack.SaidBack, teachBack.Missed));
        Samples.Refused(await programs.HandOverAsync(records.Ana, third.Id, []));
        var trail = await records.Stores.Audit.ListByPatientAsync(records.Ana, patient.Id);
        Assert.Equal(
            [third.Id.ToString(), first.Id.ToString()],
            trail.Where(line => line.Action == "handed over").Select(line => line.SubjectId));
        Assert.Single(trail, line => line is { Action: "added", SubjectType: "teach-back" });
    }

    [Fact]
    public async Task A_program_based_on_an_older_version_conflicts_and_is_kept_as_a_draft()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var programs = records.Stores.Programs;
        var first = (await programs.SaveAsync(records.Ana, episode.Id, Samples.Program(), null, null)).Require();
        Assert.Equal(first.Id, (await programs.SaveAsync(records.Ana, episode.Id, Samples.Program(), null, null)).Require().Id);
        var hers = (await programs.SaveAsync(records.Ana, episode.Id, Samples.Program(5), "more", first.Id)).Require();
        var theirs = Samples.Conflict(
            await programs.SaveAsync(records.Ben, episode.Id, Samples.Program(2), "less", first.Id), out var conflict);
        Assert.Equal(hers.Id, theirs.Id);
        var draft = await records.Stores.Drafts.GetAsync(records.Ben, conflict.DraftKey!);
        Assert.Equal(2, JsonDocument.Parse(draft!.Text).RootElement.GetProperty("daysPerWeek").GetInt32());
        Samples.Conflict(await programs.HandOverAsync(records.Ben, first.Id, []), out _);
    }
}
