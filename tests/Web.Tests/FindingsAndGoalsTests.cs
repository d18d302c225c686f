using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Pages.Exam;

namespace MomentArm.Web;

public sealed class FindingsAndGoalsTests
{
    [Fact]
    public async Task A_finding_keeps_the_clinicians_words_and_place_and_the_computed_words_stand_beside()
    {
        await using var made = await ExamCase.CreateAsync();
        using (var sheet = await made.SheetAsync())
            await sheet.TakeOverAsync("hip abd L 100 at 36 cm, R 150 at 36 cm; pain worst 6");
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/findings";
        var found = (await made.Desk.LoadAsync(made.Ada, made.Patient.Id))!.Reading.Findings[0];
        await ClinicApp.SubmitAsync(browser, path, $"finding-{found.Id}", new()
        {
            ["Decision.FindingId"] = found.Id, ["Decision.Accepted"] = "true", ["Decision.Headline"] = "Side of the hip gives way", ["Decision.Rank"] = "1",
        });
        var page = await browser.GetStringAsync(path);
        Assert.Contains("<h3>Side of the hip gives way</h3>", page, StringComparison.Ordinal);
        Assert.Contains("Computed as:", page, StringComparison.Ordinal);
        Assert.Equal("Side of the hip gives way", (await made.Desk.LoadAsync(made.Ada, made.Patient.Id))!.Accepted[0].Headline);
    }

    [Fact]
    public async Task An_own_finding_sent_twice_is_one_and_feeds_the_program()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/findings";
        var fields = new Dictionary<string, string>
        {
            ["Own.Id"] = $"{Guid.CreateVersion7()}", ["Own.Headline"] = "Knee falls inward on stairs", ["Own.Kind"] = nameof(ImpairmentKind.PoorControl),
            ["Own.Action"] = nameof(JointAction.HipAbduction), ["Own.Side"] = "Left", ["Own.Percent"] = "30",
        };
        await ClinicApp.SubmitAsync(browser, path, "own-finding", new(fields));
        await ClinicApp.SubmitAsync(browser, path, "own-finding", new(fields));
        var patientCase = (await made.Desk.LoadAsync(made.Ada, made.Patient.Id))!;
        var own = Assert.Single(patientCase.Accepted);
        Assert.Equal(new Impairment(ImpairmentKind.PoorControl, Side.Left, JointAction.HipAbduction, null, 0.3), own.Impairment);
        var candidates = made.Desk.CandidatesFor(patientCase, new AgreedLimits(), null);
        Assert.Contains(candidates, c => c.Findings.Contains(own.Id));

        fields["Own.Headline"] = " ";
        fields["Own.Id"] = $"{Guid.CreateVersion7()}";
        var refused = await ClinicApp.SubmitAsync(browser, path, "own-finding", new(fields));
        Assert.Contains("Write the finding in a sentence", await refused.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_goal_is_set_with_the_value_of_today_changed_and_told_on_its_page()
    {
        await using var made = await ExamCase.CreateAsync();
        using (var sheet = await made.SheetAsync())
            await sheet.TakeOverAsync("hip abd L 100 at 36 cm, R 150 at 36 cm");
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/goals";
        Assert.Contains("90 % of the right side (150 N)", await browser.GetStringAsync(path), StringComparison.Ordinal);
        var fields = new Dictionary<string, string>
        {
            ["Goal.Id"] = $"{Guid.CreateVersion7()}", ["Goal.Text"] = "Stairs without the hip aching, invented",
            ["Goal.On"] = GoalForm.Key("hip-abduction-strength", Side.Left, null), ["Goal.Target"] = "135", ["Goal.Due"] = "2030-05-01",
        };
        await ClinicApp.SubmitAsync(browser, path, "new-goal", new(fields));
        await ClinicApp.SubmitAsync(browser, path, "new-goal", new(fields));
        var goal = Assert.Single(await made.Desk.Stores.Goals.ListAsync(made.Ada, made.Episode.Id));
        Assert.Equal((100.0, 135.0, new DateOnly(2030, 5, 1)), (goal.Baseline, goal.Target, goal.DueOn));
        Assert.Contains("from 100 N, now 100 N, to 135 N.", await browser.GetStringAsync(path), StringComparison.Ordinal);

        fields["Goal.Version"] = $"{goal.RowVersion}";
        fields["Goal.State"] = nameof(GoalState.Reached);
        await ClinicApp.SubmitAsync(browser, path, $"goal-{goal.Id:N}", new(fields));
        Assert.Equal(GoalState.Reached, Assert.Single(await made.Desk.Stores.Goals.ListAsync(made.Ada, made.Episode.Id)).State);
    }

    [Theory]
    [InlineData("Goal.Target", "much", "is no number")]
    [InlineData("Goal.Target", "99999", "cannot be 99999")]
    [InlineData("Goal.Due", "soon", "is no day")]
    [InlineData("Goal.Due", "2001-01-01", "lies before the day it was set")]
    [InlineData("Goal.Text", " ", "Write the goal")]
    public async Task A_goal_that_cannot_be_meant_is_told_what_to_mend_and_keeps_what_was_typed(string field, string typed, string told)
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var fields = new Dictionary<string, string>
        {
            ["Goal.Id"] = $"{Guid.CreateVersion7()}", ["Goal.Text"] = "Stairs, invented", ["Goal.On"] = "hip-abduction-strength|Left|",
            ["Goal.Target"] = "135", ["Goal.Due"] = "2030-05-01", [field] = typed,
        };
        var answer = await ClinicApp.SubmitAsync(browser, $"/patients/{made.Patient.Id}/goals", "new-goal", new(fields));
        var page = await answer.Content.ReadAsStringAsync();
        Assert.Contains(told, page, StringComparison.Ordinal);
        if (field != "Goal.Text")
            Assert.Contains("value=\"Stairs, invented\"", page, StringComparison.Ordinal);
        Assert.Empty(await made.Desk.Stores.Goals.ListAsync(made.Ada, made.Episode.Id));
    }

    [Fact]
    public async Task A_signed_note_takes_amendments_with_name_and_time_and_an_open_one_none()
    {
        await using var made = await ExamCase.CreateAsync();
        await made.SignAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/note?visit={made.Visit.Id}";
        await ClinicApp.SubmitAsync(browser, path, "amend", new() { ["Amendment"] = "Called back: settled overnight, invented." });
        var page = await browser.GetStringAsync(path);
        Assert.Contains("Called back: settled overnight, invented.", page, StringComparison.Ordinal);
        Assert.Contains(made.Ada.Name, page, StringComparison.Ordinal);
        var blank = await ClinicApp.SubmitAsync(browser, path, "amend", new() { ["Amendment"] = " " });
        Assert.Contains("Write what is added", await blank.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Single((await made.RecordAsync()).Amendments);
    }

    [Fact]
    public async Task A_code_is_added_by_word_or_number_and_what_fits_many_or_none_is_told()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/note?visit={made.Visit.Id}";
        await ClinicApp.SubmitAsync(browser, path, "code-add", new() { ["code"] = "m76.32" });
        var row = Assert.Single((await made.RecordAsync()).Answers);
        Assert.Equal(("code", "M76.32", "M76.32 iliotibial band syndrome, left"), (row.Sheet, row.Item, row.Value));
        foreach (var (typed, told) in new[] { ("iliotibial", "fits 3 codes"), ("unheard of", "No code here"), (" ", "Type a code") })
        {
            var answer = await ClinicApp.SubmitAsync(browser, path, "code-add", new() { ["code"] = typed });
            Assert.Contains(told, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        }

        await ClinicApp.SubmitAsync(browser, path, "code-remove-M76.32", new() { ["code"] = "M76.32", ["version"] = $"{row.RowVersion}" });
        Assert.Empty((await made.RecordAsync()).Answers);
    }
}
