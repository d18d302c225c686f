using System.Net;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using MomentArm.Content;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.Designer;

namespace MomentArm.Web.Designer;

public sealed class OwnFormsTests
{
    [Fact]
    public async Task An_own_form_stands_in_list_page_picture_and_candidates_of_its_clinic_only()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var form = await SaveAsync(made, "Pier clam");
        Assert.Equal("own-pier-clam", form.FormId);
        var browser = await app.SignedInBrowserAsync();
        var list = await browser.GetStringAsync("/exercises");
        Assert.Contains("Pier clam", list, StringComparison.Ordinal);
        Assert.Contains("made by this clinic", list, StringComparison.Ordinal);
        Assert.Contains("Pier clam", await browser.GetStringAsync("/exercises/own-pier-clam"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync("/exercises/own-pier-clam/picture/left")).StatusCode);
        Assert.Contains("Pier clam", await browser.GetStringAsync($"/patients/{made.Patient.Id}/program"), StringComparison.Ordinal);
        var other = await made.Desk.LibraryAsync(await ProgramCase.OtherClinicAsync(app));
        Assert.Empty(other.Own);
        Assert.Null(other.Exercise("own-pier-clam"));
    }

    [Fact]
    public async Task A_retired_form_is_offered_no_more_and_programs_keep_it()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var form = await SaveAsync(made, "Pier clam");
        var browser = await app.SignedInBrowserAsync();
        var turned = await ClinicApp.SubmitAsync(browser, "/exercises/own", "state-" + form.FormId, []);
        Assert.Equal(HttpStatusCode.OK, turned.StatusCode);
        Assert.Equal(ClinicFormState.Retired, (await made.Stores.Forms.LatestAsync(made.Who, form.FormId))!.State);
        var library = await made.Desk.LibraryAsync(made.Who);
        Assert.Empty(library.Own);
        Assert.NotNull(library.Exercise(form.FormId));
        Assert.DoesNotContain("Pier clam", await browser.GetStringAsync("/exercises"), StringComparison.Ordinal);
        Assert.Contains("retired", await browser.GetStringAsync("/exercises/" + form.FormId), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_with_faults_is_not_saved_and_the_second_of_two_editors_overwrites_nothing()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var desk = app.Services.GetRequiredService<FormDesk>();
        Assert.IsType<SaveOutcome<ClinicForm>.Refused>(await desk.SaveAsync(made.Who, NewForm.Neutral(), null));
        var first = await SaveAsync(made, "Pier clam");
        var form = FormDesk.Read(first)!;
        var theirs = (await desk.SaveAsync(made.Who, form with { Exercise = form.Exercise with { Cautions = ["Theirs."] } }, first.Id)).Require();
        var met = Assert.IsType<SaveOutcome<ClinicForm>.Conflict>(
            await desk.SaveAsync(made.Who, form with { Exercise = form.Exercise with { Cautions = ["Mine."] } }, first.Id));
        Assert.Equal(theirs.Id, met.Theirs!.Id);
    }

    [Fact]
    public async Task A_downloaded_file_is_taken_in_as_a_draft_and_a_damaged_one_is_refused_in_words()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var form = await SaveAsync(made, "Pier clam");
        var browser = await app.SignedInBrowserAsync();
        var file = await browser.GetStringAsync($"/exercises/own/{form.FormId}/file");
        Assert.Equal(form.Document, file);
        var taken = await ImportAsync(browser, file);
        Assert.Contains("/exercises/design?draft=new-import-", taken.Headers.Location?.ToString() ?? "", StringComparison.Ordinal);
        var draft = Assert.Single(await made.Stores.Drafts.ListAsync(made.Who, FormDesk.DraftStart));
        Assert.Equal("Pier clam", FormDesk.ReadDraft(draft)?.Form.Exercise.Name);

        var damaged = await (await ImportAsync(browser, file[..(file.Length / 2)])).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("The file was not taken in", damaged, StringComparison.Ordinal);
        Assert.Contains("The file is damaged", damaged, StringComparison.Ordinal);
        Assert.Single(await made.Stores.Drafts.ListAsync(made.Who, FormDesk.DraftStart));
    }

    [Fact]
    public async Task A_stored_form_of_a_newer_format_is_kept_and_said_to_be_so()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        (await made.Stores.Forms.SaveAsync(made.Who, new FormInput("own-later", "Later form", 9, "{}"), null)).Require();
        var page = await (await app.SignedInBrowserAsync()).GetStringAsync("/exercises/own");
        Assert.Contains("written in format 9", page, StringComparison.Ordinal);
        Assert.NotEmpty((await made.Desk.LibraryAsync(made.Who)).Exercises);
    }

    private static async Task<ClinicForm> SaveAsync(ProgramCase made, string name)
    {
        var desk = made.App.Services.GetRequiredService<FormDesk>();
        var form = await desk.StartAsync(made.Who, "clam");
        return (await desk.SaveAsync(made.Who, form! with { Exercise = form.Exercise with { Name = name } }, null)).Require();
    }

    private static async Task<HttpResponseMessage> ImportAsync(HttpClient browser, string file)
    {
        using var content = new MultipartFormDataContent
        {
            { new StringContent(ClinicApp.TokenIn(await browser.GetStringAsync("/exercises/own"))), "__RequestVerificationToken" },
            { new StringContent("import"), "_handler" },
            { new ByteArrayContent(Encoding.UTF8.GetBytes(file)), "Upload", "form.json" },
        };
        return await browser.PostAsync("/exercises/own", content);
    }
}
