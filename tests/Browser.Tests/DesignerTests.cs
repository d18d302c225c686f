using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

/// <summary>A form made by the therapist: from nothing to the patient's phone, in two tabs, and from a damaged file.</summary>
public class DesignerTests(Chromium chromium) : IClassFixture<Chromium>
{
    private const string OpenGroups = "document.querySelectorAll('.designer details').forEach(d => d.open = true)";

    [Fact]
    public async Task From_a_neutral_stance_to_a_form_that_the_patient_opens()
    {
        await using var app = await RunningApp.StartAsync(demo: false);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        var therapist = new Therapist(page);
        await page.GotoAsync("/");
        await Steps.SetUpAsync(page, await app.SetUpCodeAsync());
        var patient = await therapist.AddPatientAsync("Juniper Vale (invented)", "right shoulder", "Right");
        await therapist.StartVisitAsync(patient);

        await page.GotoAsync("/exercises/design");
        await LiveAsync(page);
        await page.Locator("#show-end").ClickAsync();
        await page.Locator("[data-grip=working-shoulder]").FocusAsync();
        for (var i = 1; i <= 6; i++)
        {
            await page.Keyboard.PressAsync("PageUp");
            await Expect(page.Locator("[data-grip=working-shoulder]")).ToHaveAttributeAsync("aria-valuenow", $"{10 * i}");
        }

        await WriteAsync(page);
        await Expect(page.Locator("#no-faults")).ToBeVisibleAsync();

        // What was typed is still there after the page is left and opened again.
        await Expect(page.Locator(".program-save .saved")).ToContainTextAsync("Kept as your draft");
        await page.ReloadAsync();
        await LiveAsync(page);
        await Expect(page.Locator("#name")).ToHaveValueAsync("Pier arm lift");
        await page.Locator("#save").ClickAsync();
        await Expect(page.Locator(".program-save")).ToContainTextAsync("in the library as version 1");

        await page.GotoAsync(patient + "/program");
        await Expect(page.Locator("#start-draft")).ToBeEnabledAsync();
        await page.Locator("#candidate-filter").FillAsync("Pier arm");
        await page.Locator(".candidate-add").First.ClickAsync();
        await Expect(page.Locator("li.program-item")).ToContainTextAsync("Pier arm lift");
        await page.Locator("#save-teach").ClickAsync();
        await page.WaitForURLAsync(new Regex("/teach"));
        await therapist.TeachAsync();
        await Expect(page.Locator(".handout")).ToContainTextAsync("Lift your arm");
        var link = await page.Locator("#patient-link").GetAttributeAsync("href") ?? "";
        await using (var phone = await chromium.PhoneAsync(app.Address))
        {
            await phone.Page.GotoAsync(link);
            await Expect(phone.Page.Locator("main")).ToContainTextAsync("Lift your arm");
            Assert.Empty(phone.Faults);
        }

        Assert.Empty(watched.Faults);
    }

    [Fact]
    public async Task Of_two_tabs_on_one_form_the_second_is_shown_both_and_overwrites_nothing()
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var first = watched.Page;
        await Steps.EnterDemoAsync(first);
        await first.GotoAsync("/exercises/design?from=clam");
        await LiveAsync(first);
        await first.Locator("#name").FillAsync("Pier clam");
        await first.Locator("#save").ClickAsync();
        await Expect(first.Locator(".program-save")).ToContainTextAsync("version 1");

        var second = await first.Context.NewPageAsync();
        await second.GotoAsync("/exercises/design/own-pier-clam");
        await LiveAsync(second);
        await first.Locator("#name").FillAsync("Pier clam, hers");
        await first.Locator("#save").ClickAsync();
        await Expect(first.Locator(".program-save")).ToContainTextAsync("version 2");
        await second.Locator("#name").FillAsync("Pier clam, his");
        await second.Locator("#save").ClickAsync();
        await Expect(second.Locator("#form-conflict")).ToContainTextAsync("Pier clam, hers");
        await Expect(second.Locator("#form-conflict")).ToContainTextAsync("Pier clam, his");
        Assert.Empty(await watched.AccessibilityAsync());
        await second.Locator("#keep-mine").ClickAsync();
        await second.Locator("#save").ClickAsync();
        await Expect(second.Locator(".program-save")).ToContainTextAsync("version 3");
        await first.GotoAsync("/exercises/own");
        await Expect(first.Locator("main")).ToContainTextAsync("Pier clam, his");
        Assert.Empty(watched.Faults);
    }

    [Fact]
    public async Task A_damaged_file_is_refused_in_words_and_a_pull_with_the_mouse_is_taken_back_by_keys()
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        await Steps.EnterDemoAsync(page);
        await page.GotoAsync("/exercises/own");
        await page.Locator("#file").SetInputFilesAsync(new FilePayload { Name = "form.json", MimeType = "application/json", Buffer = Encoding.UTF8.GetBytes("{ \"format\": 1, \"exercise\": {") });
        await page.Locator("#import").ClickAsync();
        await Expect(page.Locator("#import-faults")).ToContainTextAsync("The file is damaged");
        Assert.Empty(await watched.AccessibilityAsync());

        await page.GotoAsync("/exercises/design?from=side-lying-leg-raise");
        await LiveAsync(page);
        var grip = page.Locator("[data-grip=working-hip]");
        var before = await grip.GetAttributeAsync("aria-valuenow");
        var box = (await grip.Locator(".grip-dot").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(box.X + box.Width / 2 + 40, box.Y - 40, new() { Steps = 8 });
        await page.Mouse.UpAsync();
        await Expect(page.Locator("#undo")).ToBeEnabledAsync();
        await page.Keyboard.PressAsync("Control+z");
        await Expect(page.Locator("#undo")).ToBeDisabledAsync();
        await Expect(grip).ToHaveAttributeAsync("aria-valuenow", before!);
        Assert.Empty(watched.Faults);
    }

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 390)]
    public async Task The_designer_keeps_the_rules_of_every_page(ColorScheme scheme, int width)
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await WatchedPage.OpenAsync(chromium.Browser, app.Address, width, 900, scheme);
        await Steps.EnterDemoAsync(watched.Page);
        foreach (var path in new[] { "/exercises/own", "/exercises/design", "/exercises/design?from=hamstring-strap-stretch" })
        {
            await watched.Page.GotoAsync(path);
            await watched.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
            await watched.Page.EvaluateAsync(OpenGroups);
            Assert.Equal(1, await watched.Page.Locator("h1").CountAsync());
            Assert.Empty(await watched.AccessibilityAsync());
            Assert.False(await watched.ScrollsSidewaysAsync());
        }

        Assert.Empty(watched.Faults);
    }

    private static async Task LiveAsync(IPage page)
    {
        await Expect(page.Locator("#name")).ToBeEnabledAsync();
        await page.EvaluateAsync(OpenGroups);
    }

    private static async Task WriteAsync(IPage page)
    {
        foreach (var (field, text) in new[]
        {
            ("name", "Pier arm lift"), ("cautions", "Stop short of pain."), ("fault-0", "The shoulder hikes."), ("cue-0", "Keep the shoulder low."),
            ("fault-1", "The trunk leans back."), ("cue-1", "Stand tall."), ("words-en-title", "Lift your arm"), ("words-en-set-up", "Stand tall."),
            ("words-en-steps", "Lift your {side} arm in front.\nLower it slowly."), ("words-en-feel", "Feel your {side} shoulder work."),
            ("words-en-watch", "Keep your shoulder low.\nStand tall."), ("words-en-easier", "Lift less high."), ("words-en-harder", "Go more slowly."),
            ("words-en-word", "lift"),
        })
        {
            await page.Locator("#" + field).FillAsync(text);
        }

        await page.GetByLabel("Shoulder flexion", new() { Exact = true }).CheckAsync();
    }
}
