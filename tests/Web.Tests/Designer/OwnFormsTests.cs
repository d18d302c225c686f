using System.Net;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.Designer;
using MomentArm.Web.Pages.Program;

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
        Assert.Equal("Pier clam", FormDesk.ReadDraft(draft).Draft?.Form.Exercise.Name);

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

    [Fact]
    public async Task A_program_keeps_the_version_it_was_made_with_and_offers_the_newer_one()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var first = await SaveAsync(made, "Pier clam");
        var bench = await BenchAsync(made);
        var entry = bench.Add(bench.Candidates.Single(c => c.Exercise.Name == "Pier clam"));
        Assert.Equal("own-pier-clam@1", entry.Item.ExerciseId);
        await made.HandOverAsync(bench.ToProgram());
        var token = (await made.LinkAsync()).Token;
        var form = FormDesk.Read(first)!;
        var desk = app.Services.GetRequiredService<FormDesk>();
        var second = (await desk.SaveAsync(made.Who, form with
        {
            Exercise = form.Exercise with { Name = "Pier clam, new", Poses = [form.Exercise.Poses[0], form.Exercise.Poses[0] with { Name = "end" }] },
            Words = form.Words with { En = form.Words.En with { Title = "The new clam" } },
        }, first.Id)).Require();
        Assert.Equal(2, second.Number);

        // Picture, words, numbers, phone and handout are those of version 1.
        var browser = await app.SignedInBrowserAsync();
        var (_, opened, _) = await PatientLinkCalls.OpenAsync(browser, token);
        Assert.Contains(form.Words.En.Title, opened, StringComparison.Ordinal);
        Assert.DoesNotContain("The new clam", opened, StringComparison.Ordinal);
        Assert.DoesNotContain("The new clam", await browser.GetStringAsync($"/patients/{made.Patient.Id}/handout"), StringComparison.Ordinal);
        Assert.NotEqual(await browser.GetStringAsync("/exercises/own-pier-clam@1/picture/left"), await browser.GetStringAsync("/exercises/own-pier-clam@2/picture/left"));
        Assert.Contains("an earlier one", await browser.GetStringAsync("/exercises/own-pier-clam@1"), StringComparison.Ordinal);
        var page = await browser.GetStringAsync($"/patients/{made.Patient.Id}/program");
        Assert.Contains("Take the newer version", page, StringComparison.Ordinal);
        var later = await BenchAsync(made);
        var item = later.Plan.Items[0].Item;
        Assert.Equal("Pier clam", later.NameOf(item));
        Assert.NotEqual(later.LoadOf(item, Side.Left).Shares[0].Middle, later.LoadOf(item with { ExerciseId = later.NewerOf(item)!.Id }, Side.Left).Shares[0].Middle);
        Assert.Equal("own-pier-clam@2", later.NewerOf(item)!.Id);
        Assert.Equal("own-pier-clam@1", later.ToProgram().Items[0].ExerciseId);

        // Retired, it is offered no more, and the program stands as it was.
        Assert.Null(await desk.TurnAsync(made.Who, second));
        var after = await BenchAsync(made);
        Assert.Null(after.NewerOf(item));
        Assert.Equal("Pier clam", after.NameOf(item));
        Assert.Contains(form.Words.En.Title, (await PatientLinkCalls.OpenAsync(browser, token)).Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_draft_that_cannot_be_read_is_put_aside_whole_and_can_be_downloaded()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var desk = app.Services.GetRequiredService<FormDesk>();
        const string Later = """{ "form": { "format": 9, "exercise": { "name": "Later step" } } }""";
        await made.Stores.Drafts.SaveAsync(made.Who, FormDesk.DraftKey("new"), Later);
        var browser = await app.SignedInBrowserAsync();
        var list = await browser.GetStringAsync("/exercises/own");
        Assert.Contains("Later step", list, StringComparison.Ordinal);
        Assert.Contains("written in format 9", list, StringComparison.Ordinal);

        var found = (await desk.DraftAsync(made.Who, "new"))!.Value;
        Assert.Null(found.Draft);
        Assert.Contains("format 9", found.Why, StringComparison.Ordinal);
        await desk.KeepAsync(made.Who, "new", new DesignDraft { Form = NewForm.Neutral() });
        Assert.Equal(Later, await browser.GetStringAsync(FormDesk.DraftFilePath(found.PutAside!)));
        Assert.Equal(2, (await made.Stores.Drafts.ListAsync(made.Who, FormDesk.DraftStart)).Count);
        foreach (var text in new[] { "{ \"form\"", "[]", "7", """{ "form": { "format": "x", "exercise": {} } }""" })
        {
            await made.Stores.Drafts.SaveAsync(made.Who, FormDesk.DraftKey("new"), text);
            Assert.NotNull((await desk.DraftAsync(made.Who, "new"))!.Value.Why);
        }

        Assert.Equal(HttpStatusCode.OK, (await ClinicApp.SubmitAsync(browser, "/exercises/own", "drop-" + found.PutAside, [])).StatusCode);
        Assert.Null(await made.Stores.Drafts.GetAsync(made.Who, FormDesk.DraftKey(found.PutAside!)));
    }

    [Fact]
    public async Task A_form_is_retired_from_its_own_page()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var form = await SaveAsync(made, "Pier clam");
        var browser = await app.SignedInBrowserAsync();
        var page = await browser.GetStringAsync("/exercises/" + form.FormId);
        foreach (var address in new[] { $"/exercises/design/{form.FormId}", $"/exercises/design?from={form.FormId}", $"/exercises/own/{form.FormId}/file" })
            Assert.Contains($"\"{address}\"", page, StringComparison.Ordinal);
        await ClinicApp.SubmitAsync(browser, "/exercises/" + form.FormId, "state-" + form.FormId, []);
        Assert.Equal(ClinicFormState.Retired, (await made.Stores.Forms.LatestAsync(made.Who, form.FormId))!.State);
    }

    private static async Task<ProgramBench> BenchAsync(ProgramCase made)
    {
        var patientCase = (await made.Desk.LoadAsync(made.Who, made.Patient.Id))!;
        return new ProgramBench(patientCase, made.Desk, Plan.From(patientCase.Latest?.ToProgram()));
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
