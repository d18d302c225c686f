using System.Net;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Pages.Exam;

namespace MomentArm.Web;

public sealed class ExamPageTests
{
    [Fact]
    public async Task A_signed_visit_refuses_the_note_by_a_direct_post_says_why_and_keeps_what_was_typed()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/note?visit={made.Visit.Id}";
        var open = (await made.RecordAsync()).Visit;
        var saved = await ClinicApp.SubmitAsync(browser, path, "note", Note("as it was", open.RowVersion));
        Assert.Equal(HttpStatusCode.OK, saved.StatusCode);
        await made.SignAsync();
        var signed = (await made.RecordAsync()).Visit;

        var answer = await ClinicApp.SubmitAsync(browser, path, "note", Note("changed later", signed.RowVersion));
        Assert.Contains("is signed and can&#x27;t be changed", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal("as it was", (await made.RecordAsync()).Visit.Plan);
        var draft = await made.Desk.Stores.Drafts.GetAsync(made.Ada, NoteDraftKeeper.KeyOf(made.Visit.Id));
        Assert.Contains("changed later", draft!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_signed_visit_refuses_a_decision_on_a_finding_by_a_direct_post()
    {
        await using var made = await ExamCase.CreateAsync();
        var id = await FindingAsync(made);
        await made.SignAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var answer = await ClinicApp.SubmitAsync(
            browser, $"/patients/{made.Patient.Id}/findings", $"finding-{id}",
            new() { ["Decision.FindingId"] = id, ["Decision.Accepted"] = "false", ["Decision.Reason"] = "late" });
        Assert.Contains("is signed and can&#x27;t be changed", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Empty((await made.RecordAsync()).FindingDecisions);
    }

    [Fact]
    public async Task A_signed_visit_shows_its_cells_without_letting_anything_be_typed()
    {
        await using var made = await ExamCase.CreateAsync();
        await FindingAsync(made);
        await made.SignAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var page = await browser.GetStringAsync($"/patients/{made.Patient.Id}/exam?visit={made.Visit.Id}");
        Assert.Contains("This visit is signed", page, StringComparison.Ordinal);
        Assert.Contains("id=\"cell-hip-abduction-strength-left\"", page, StringComparison.Ordinal);
        Assert.Contains("100 N at 36 cm", page, StringComparison.Ordinal);
        Assert.DoesNotContain("type-as-you-measure", page, StringComparison.Ordinal);
        Assert.DoesNotContain("danger-all-no", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_finding_is_dismissed_only_with_a_reason_and_then_left_out()
    {
        await using var made = await ExamCase.CreateAsync();
        var id = await FindingAsync(made);
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/findings";
        var fields = new Dictionary<string, string> { ["Decision.FindingId"] = id, ["Decision.Accepted"] = "false", ["Decision.Reason"] = " " };
        var asked = await ClinicApp.SubmitAsync(browser, path, $"finding-{id}", new(fields));
        Assert.Contains("Write why a finding is dismissed", await asked.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Empty((await made.RecordAsync()).FindingDecisions);

        fields["Decision.Reason"] = "old injury";
        await ClinicApp.SubmitAsync(browser, path, $"finding-{id}", new(fields));
        var decision = Assert.Single((await made.RecordAsync()).FindingDecisions);
        Assert.Equal((id, false, "old injury"), (decision.FindingId, decision.Accepted, decision.Reason));
    }

    [Fact]
    public async Task Irritability_can_be_set_and_given_back_to_the_pain_ratings()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/findings";
        foreach (var (choice, expected) in new (string, Irritability?)[] { ("High", Irritability.High), ("", null), ("17", null) })
        {
            var version = (await made.Desk.Stores.Episodes.GetAsync(made.Ada, made.Episode.Id))!.RowVersion;
            await ClinicApp.SubmitAsync(browser, path, "irritability", new() { ["Grade.Choice"] = choice, ["Grade.Version"] = $"{version}" });
            Assert.Equal(expected, (await made.Desk.Stores.Episodes.GetAsync(made.Ada, made.Episode.Id))!.Irritability);
        }
    }

    [Fact]
    public async Task Two_people_writing_the_note_see_both_texts_and_lose_none()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/note?visit={made.Visit.Id}";
        var read = (await made.RecordAsync()).Visit.RowVersion;
        (await made.Desk.Stores.Visits.SaveNoteAsync(made.Ben, made.Visit.Id, new VisitNote(Plan: "his plan"), read)).Require();

        var answer = await ClinicApp.SubmitAsync(browser, path, "note", Note("her plan", read));
        var page = await answer.Content.ReadAsStringAsync();
        Assert.Contains("Ben Second changed this before you saved", page, StringComparison.Ordinal);
        Assert.Contains("Saved now: his plan", page, StringComparison.Ordinal);
        Assert.Contains(">her plan</textarea>", page, StringComparison.Ordinal);
        Assert.Equal("his plan", (await made.RecordAsync()).Visit.Plan);
        Assert.Contains("her plan</textarea>", await browser.GetStringAsync(path), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Signing_saves_what_is_typed_and_fixes_the_visit()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/note?visit={made.Visit.Id}";
        var fields = Note("come back in a week", (await made.RecordAsync()).Visit.RowVersion);
        fields["Form.Act"] = "sign";
        var answer = await ClinicApp.SubmitAsync(browser, path, "note", fields);
        Assert.Contains("The visit is signed.", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        var visit = (await made.RecordAsync()).Visit;
        Assert.Equal((VisitState.Signed, "come back in a week"), (visit.State, visit.Plan));
    }

    [Theory]
    [InlineData("exam")]
    [InlineData("findings")]
    [InlineData("note")]
    public async Task A_visit_or_patient_of_another_clinic_is_not_found(string page)
    {
        await using var made = await ExamCase.CreateAsync();
        var (patient, _, visit) = await made.AddVisitAsync(made.Stranger);
        var browser = await made.App.SignedInBrowserAsync();
        foreach (var path in (string[])
            [$"/patients/{patient.Id}/{page}", $"/patients/{made.Patient.Id}/{page}?visit={visit.Id}", $"/patients/{Guid.NewGuid()}/{page}"])
        {
            Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync(path)).StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync($"/patients/{made.Patient.Id}/{page}?visit={made.Visit.Id}")).StatusCode);
    }

    [Fact]
    public async Task Without_a_visit_today_the_page_offers_to_start_one_and_starts_only_one()
    {
        await using var made = await ExamCase.CreateAsync();
        var today = made.Desk.Today(await made.Desk.Stores.Patients.ClinicAsync(made.Ada));
        var patient = (await made.Desk.Stores.Patients.AddAsync(made.Ada, new PatientDetails("Kim Invented"))).Require();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{patient.Id}/exam";
        Assert.Contains("No episode of care yet", await browser.GetStringAsync(path), StringComparison.Ordinal);
        var episode = (await made.Desk.Stores.Episodes.AddAsync(made.Ada, patient.Id, new EpisodeDetails("right knee", today, AffectedSide: Side.Right))).Require();
        var start = await ClinicApp.SubmitAsync(browser, path, "start-visit", []);
        Assert.Equal(HttpStatusCode.Found, start.StatusCode);
        Assert.Contains("id=\"type-as-you-measure\"", await browser.GetStringAsync(path), StringComparison.Ordinal);
        Assert.Single(await made.Desk.Stores.Visits.ListAsync(made.Ada, episode.Id));
    }

    private static Dictionary<string, string> Note(string plan, Guid version) => new()
    {
        ["Form.Plan"] = plan, ["Form.Version"] = $"{version}", ["Form.Act"] = "save",
    };

    /// <summary>Measures a weak left hip and gives the id of the finding.</summary>
    private static async Task<string> FindingAsync(ExamCase made)
    {
        using var sheet = await made.SheetAsync();
        await sheet.TakeOverAsync("hip abd L 100 N at 36 cm, R 150");
        return sheet.Reading.Findings.First(f => f.BeyondError == true).Id;
    }
}
