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

        await PoseByKeysAsync(page);
        await WriteAsync(page);
        await Expect(page.Locator("#no-faults")).ToBeVisibleAsync();

        // What was typed is still there after the page is left and opened again.
        await Expect(page.Locator(".program-save .saved")).ToContainTextAsync("Kept as your draft");
        await page.ReloadAsync();
        await LiveAsync(page);
        await Expect(page.Locator("#name")).ToHaveValueAsync("Pier arm lift");
        await Expect(page.Locator("#pull-0-f100")).ToHaveValueAsync("24");
        await Expect(page.Locator("#show-1")).ToHaveTextAsync("Middle");
        await PressAsync(page, "#save");
        await Expect(page.Locator(".program-save")).ToContainTextAsync("in the library as version 1");

        await page.GotoAsync(patient + "/program", new() { Timeout = 60_000 });
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
            var home = new AtHome(phone);
            await phone.Page.GotoAsync(link);
            await Expect(phone.Page.Locator("main")).ToContainTextAsync("Lift your arm");
            Assert.Equal("Lift your arm", await home.DoSessionAsync(pain: 1, effort: 5));
            Assert.Empty(home.Broken);
            Assert.Empty(phone.Faults);
        }

        await TakeSecondVersionAsync(page, patient);
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

    [Fact]
    public async Task A_form_is_retired_where_it_is_made_taken_into_use_and_downloaded_on_its_own_page()
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        await Steps.EnterDemoAsync(page);
        await page.GotoAsync("/exercises/design?from=clam");
        await LiveAsync(page);
        await page.Locator("#name").FillAsync("Pier clam");
        await PressAsync(page, "#save");
        await Expect(page.Locator(".program-save")).ToContainTextAsync("version 1");
        await PressAsync(page, "#turn");
        await Expect(page.Locator(".program-save")).ToContainTextAsync("offered no more");
        await page.GotoAsync("/exercises/own-pier-clam");
        await Expect(page.Locator("main")).ToContainTextAsync("retired");
        Assert.Empty(await watched.AccessibilityAsync());
        await PressAsync(page, "#turn-own-pier-clam");
        await Expect(page.Locator("#turn-own-pier-clam")).ToHaveTextAsync("Retire");
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Download" }).ClickAsync());
        Assert.Equal("own-pier-clam.json", download.SuggestedFilename);
        Assert.Empty(watched.Faults);
    }

    /// <summary>Start, middle and end with a band, by keys alone: groups fold, each is opened by its own key.</summary>
    private static async Task PoseByKeysAsync(IPage page)
    {
        await page.GotoAsync("/exercises/design");
        await LiveAsync(page, open: false);
        await PressAsync(page, "#show-end");
        await Expect(page.Locator("#show-end")).ToHaveAttributeAsync("aria-pressed", "true");
        await page.Locator("[data-grip=working-shoulder]").FocusAsync();
        for (var i = 1; i <= 6; i++)
        {
            await page.Keyboard.PressAsync("PageUp");
            await Expect(page.Locator("[data-grip=working-shoulder]")).ToHaveAttributeAsync("aria-valuenow", $"{10 * i}");
        }

        await PressAsync(page, "#add-pose");
        await Expect(page.Locator("#show-1")).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(page.Locator("[data-grip=working-shoulder]")).ToHaveAttributeAsync("aria-valuenow", "30");
        await page.Locator("[data-grip=working-shoulder]").FocusAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await Expect(page.Locator("[data-grip=working-shoulder]")).ToHaveAttributeAsync("aria-valuenow", "31");
        var share = await page.Locator("#results").InnerTextAsync();
        await PressAsync(page, "#group-pulls > summary");
        await PressAsync(page, "#add-link");
        await Expect(page.Locator("#pull-0-at")).ToHaveValueAsync("palm");
        await Expect(page.Locator("#results")).Not.ToHaveTextAsync(share);
        await page.Locator("#pull-0-f100").FocusAsync();
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync("24");
        foreach (var group in new[] { "what", "dose", "cautions", "words" })
            await PressAsync(page, $"#group-{group} > summary");
        await page.Locator("#sets").FillAsync("1");
        await page.Locator("#repetitions").FillAsync("2");
    }

    /// <summary>A second version leaves the program as it is until the therapist takes it.</summary>
    private static async Task TakeSecondVersionAsync(IPage page, string patient)
    {
        await page.GotoAsync("/exercises/design/own-pier-arm-lift");
        await LiveAsync(page);
        await page.Locator("#name").FillAsync("Pier arm lift, slower");
        await page.Locator("#out").FillAsync("4");
        await PressAsync(page, "#save");
        await Expect(page.Locator(".program-save")).ToContainTextAsync("version 2");
        await page.GotoAsync(patient + "/program", new() { Timeout = 60_000 });
        await Expect(page.Locator("#item-1-newer")).ToBeEnabledAsync();
        await Expect(page.Locator("#item-1-name")).Not.ToContainTextAsync("slower");
        await PressAsync(page, "#item-1-newer");
        await Expect(page.Locator("#item-1-name")).ToContainTextAsync("slower");
        await Expect(page.Locator("#item-1-newer")).ToHaveCountAsync(0);
    }

    private static async Task LiveAsync(IPage page, bool open = true)
    {
        await Expect(page.Locator("#add-pose")).ToBeEnabledAsync();
        await Expect(page.Locator(".design-stage[data-heard]")).ToHaveCountAsync(1);
        if (open)
            await page.EvaluateAsync(OpenGroups);
    }

    private static async Task PressAsync(IPage page, string place)
    {
        await page.Locator(place).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
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

        await page.Locator(".design-many summary", new() { HasTextString = "Meant to load" }).FocusAsync();
        if (!await page.GetByLabel("Shoulder flexion", new() { Exact = true }).IsVisibleAsync())
            await page.Keyboard.PressAsync("Enter");
        await page.GetByLabel("Shoulder flexion", new() { Exact = true }).CheckAsync();
    }
}
