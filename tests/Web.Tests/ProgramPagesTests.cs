using System.Net;
using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using MomentArm.Records;
using MomentArm.Web.Pages.Program;

namespace MomentArm.Web;

public sealed partial class ProgramPagesTests
{
    private static readonly string[] Pages = ["program", "teach", "handout"];

    [Fact]
    public async Task The_program_page_offers_the_findings_the_exercises_and_the_draft()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var page = await PageAsync(await app.SignedInBrowserAsync(), made, "program");
        Assert.Contains("Start from a draft", page, StringComparison.Ordinal);
        Assert.Contains("What it must cover", page, StringComparison.Ordinal);
        Assert.Contains($"20 of {made.Content.Exercises.Count} exercises", page, StringComparison.Ordinal);
        Assert.Contains("Clam", page, StringComparison.Ordinal);
        Assert.Contains($"Show all {made.Content.Exercises.Count}", page, StringComparison.Ordinal);
        Assert.Contains("No exercise chosen yet.", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_danger_sign_hides_the_builder_and_nothing_can_be_saved_or_handed_over()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app, stopped: true);
        var version = (await made.Stores.Programs.SaveAsync(made.Who, made.Episode.Id, made.Program(), null, null)).Require();
        var browser = await app.SignedInBrowserAsync();
        foreach (var name in Pages)
        {
            var page = await PageAsync(browser, made, name);
            Assert.Contains($"/patients/{made.Patient.Id}/exam", page, StringComparison.Ordinal);
            Assert.DoesNotContain("program-live", page, StringComparison.Ordinal);
            Assert.DoesNotContain("id=\"hand-over\"", page, StringComparison.Ordinal);
            Assert.DoesNotContain("id=\"new-link\"", page, StringComparison.Ordinal);
        }

        var desk = app.Services.GetRequiredService<ProgramDesk>();
        var save = await desk.SaveAsync(made.Who, made.Patient.Id, made.Program(5), "more", version.Id);
        Assert.Equal(ProgramDesk.StoppedSentence, Assert.IsType<SaveOutcome<ProgramVersion>.Refused>(save).Sentence);
        var handed = await desk.HandOverAsync(made.Who, made.Patient.Id, version.Id, [], "in a hurry");
        Assert.Equal(ProgramDesk.StoppedSentence, Assert.IsType<SaveOutcome<ProgramVersion>.Refused>(handed).Sentence);
        Assert.Null(await made.Stores.Programs.CurrentAsync(made.Who, made.Episode.Id));
        Assert.Single(await made.Stores.Programs.HistoryAsync(made.Who, made.Episode.Id));
    }

    [Fact]
    public async Task Another_clinics_patient_is_not_there()
    {
        await using var app = new ClinicApp();
        var mine = await ProgramCase.CreateAsync(app);
        var theirs = await ProgramCase.AddAsync(app, await ProgramCase.OtherClinicAsync(app));
        await theirs.HandOverAsync();
        var browser = await app.SignedInBrowserAsync();
        foreach (var name in Pages)
        {
            Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync($"/patients/{theirs.Patient.Id}/{name}")).StatusCode);
            Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync($"/patients/{Guid.NewGuid()}/{name}")).StatusCode);
            Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync($"/patients/{mine.Patient.Id}/{name}")).StatusCode);
        }

        var desk = app.Services.GetRequiredService<ProgramDesk>();
        Assert.IsType<SaveOutcome<ProgramVersion>.Refused>(await desk.SaveAsync(mine.Who, theirs.Patient.Id, mine.Program(), "x", null));
        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync($"/exercises/clam?patient={theirs.Patient.Id}")).StatusCode);
    }

    [Fact]
    public async Task A_change_needs_a_reason_and_a_second_editor_sees_what_stands()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var desk = app.Services.GetRequiredService<ProgramDesk>();
        var first = (await desk.SaveAsync(made.Who, made.Patient.Id, made.Program(), null, null)).Require();
        var without = await desk.SaveAsync(made.Who, made.Patient.Id, made.Program(5), "  ", first.Id);
        Assert.Equal(ProgramDesk.ReasonSentence, Assert.IsType<SaveOutcome<ProgramVersion>.Refused>(without).Sentence);
        var second = (await desk.SaveAsync(made.Who, made.Patient.Id, made.Program(5), "one day more", first.Id)).Require();
        Assert.Equal((2, "one day more"), (second.Number, second.Reason));
        var late = await desk.SaveAsync(made.Who, made.Patient.Id, made.Program(6), "two days more", first.Id);
        var conflict = Assert.IsType<SaveOutcome<ProgramVersion>.Conflict>(late);
        Assert.Equal(5, conflict.Theirs!.ToProgram().DaysPerWeek);
        var kept = ProgramDraft.Read((await made.Stores.Drafts.GetAsync(made.Who, ProgramDraft.Key(made.Episode.Id)))!.Text);
        Assert.Equal(6, kept!.Program.DaysPerWeek);
        var page = await PageAsync(await app.SignedInBrowserAsync(), made, "program");
        Assert.Contains("program-conflict", page, StringComparison.Ordinal);
        Assert.Contains("Take theirs", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Handing_over_without_teach_back_needs_a_reason_which_is_kept()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var version = (await made.Stores.Programs.SaveAsync(made.Who, made.Episode.Id, made.Program(), null, null)).Require();
        var browser = await app.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/teach";
        var fields = Ticks(version, made);
        fields["Form.Rows[0].Missed"] = "held her breath";
        fields.Remove("Form.Rows[1].SaidBack");
        var refused = await ClinicApp.SubmitAsync(browser, path, "hand-over", new(fields));
        Assert.Equal(HttpStatusCode.OK, refused.StatusCode);
        var page = WebUtility.HtmlDecode(await refused.Content.ReadAsStringAsync());
        Assert.Contains(ProgramDesk.TeachSentence, page, StringComparison.Ordinal);
        Assert.Contains("held her breath", page, StringComparison.Ordinal);
        Assert.Null(await made.Stores.Programs.CurrentAsync(made.Who, made.Episode.Id));
        Assert.Empty(await made.Stores.Links.ListAsync(made.Who, made.Episode.Id));

        fields["Form.Reason"] = "the bus leaves";
        var answer = await ClinicApp.SubmitAsync(browser, path, "hand-over", fields);
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        var taught = await made.Stores.Programs.TeachBacksAsync(made.Who, version.Id);
        Assert.Equal(3, taught.Count);
        Assert.Equal("Without teach-back: the bus leaves", Assert.Single(taught, t => !t.SaidBack).Missed);
        Assert.Equal("held her breath", Assert.Single(taught, t => t.ExerciseId == "clam").Missed);
        Assert.Equal(version.Id, (await made.Stores.Programs.CurrentAsync(made.Who, made.Episode.Id))!.Id);
    }

    [Fact]
    public async Task The_handout_shows_a_fresh_link_once_and_no_name()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var version = (await made.Stores.Programs.SaveAsync(made.Who, made.Episode.Id, made.Program(), null, null)).Require();
        var browser = await app.SignedInBrowserAsync();
        var answer = await ClinicApp.SubmitAsync(browser, $"/patients/{made.Patient.Id}/teach", "hand-over", Ticks(version, made));
        var handout = answer.Headers.Location!.ToString();
        var token = TokenIn(await browser.GetStringAsync(handout));
        Assert.NotNull(token);
        Assert.DoesNotContain(token, handout, StringComparison.Ordinal);
        Assert.Equal(200, (await PatientLinkCalls.OpenAsync(app.Browser(), token)).Status);
        var page = await browser.GetStringAsync(handout);
        var sheet = page[page.IndexOf("<article", StringComparison.Ordinal)..page.IndexOf("</article>", StringComparison.Ordinal)];
        Assert.DoesNotContain("Pat Invented", sheet, StringComparison.Ordinal);
        Assert.Contains("handout-code", sheet, StringComparison.Ordinal);
        Assert.Null(TokenIn(await browser.GetStringAsync($"/patients/{made.Patient.Id}/handout")));
        Assert.Null(TokenIn(await browser.GetStringAsync(handout[..^3] + "AAA")));
        Assert.Equal("text/css", (await browser.GetAsync(ProgramEndpoints.HandoutSheet)).Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task A_new_link_closes_the_older_when_wished_and_each_can_be_closed()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        await made.HandOverAsync();
        var old = await made.LinkAsync();
        var browser = await app.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/handout";
        var kept = await ClinicApp.SubmitAsync(browser, path, "new-link", []);
        var second = TokenIn(await browser.GetStringAsync(kept.Headers.Location!.ToString()))!;
        Assert.Equal(200, (await PatientLinkCalls.OpenAsync(app.Browser(), old.Token)).Status);
        var alone = await ClinicApp.SubmitAsync(browser, path, "new-link", new() { ["CloseOlder"] = "true" });
        var third = TokenIn(await browser.GetStringAsync(alone.Headers.Location!.ToString()))!;
        Assert.Equal(404, (await PatientLinkCalls.OpenAsync(app.Browser(), old.Token)).Status);
        Assert.Equal(404, (await PatientLinkCalls.OpenAsync(app.Browser(), second)).Status);
        Assert.Equal(200, (await PatientLinkCalls.OpenAsync(app.Browser(), third)).Status);
        var newest = (await made.Stores.Links.ListAsync(made.Who, made.Episode.Id))[0];
        await ClinicApp.SubmitAsync(browser, path, "revoke", new() { ["LinkId"] = newest.Id.ToString() });
        Assert.Equal(404, (await PatientLinkCalls.OpenAsync(app.Browser(), third)).Status);
    }

    private static Dictionary<string, string> Ticks(ProgramVersion version, ProgramCase made)
    {
        var fields = new Dictionary<string, string> { ["Form.VersionId"] = version.Id.ToString() };
        foreach (var (row, i) in TeachForm.For(version, made.Program()).Rows.Select((row, i) => (row, i)))
        {
            fields[$"Form.Rows[{i}].ExerciseId"] = row.ExerciseId;
            fields[$"Form.Rows[{i}].Side"] = row.Side ?? "";
            fields[$"Form.Rows[{i}].Shown"] = "true";
            fields[$"Form.Rows[{i}].SaidBack"] = "true";
        }

        return fields;
    }

    private static async Task<string> PageAsync(HttpClient browser, ProgramCase made, string name) =>
        WebUtility.HtmlDecode(await browser.GetStringAsync($"/patients/{made.Patient.Id}/{name}"));

    private static string? TokenIn(string page) => Address().Match(page) is { Success: true } found ? found.Groups[1].Value : null;

    [GeneratedRegex("/p/#([A-Za-z0-9_-]{43})")]
    private static partial Regex Address();
}
