using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

/// <summary>A signed note stays as it is; goals and the body chart by keyboard alone.</summary>
public class NoteGoalAndChartTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task A_signed_note_cannot_be_changed_by_page_endpoint_or_direct_post_and_an_amendment_shows()
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        var patient = await PatientAsync(page);
        var visits = await VisitsAsync(page, patient);
        var (note, visit) = await SignedNoteAsync(page, patient, visits);
        await Expect(page.Locator("#note-form, [name='Form.Subjective'], #note-save, #note-sign, [id^='take-']")).ToHaveCountAsync(0);
        var before = await page.Locator("main .note-text").AllTextContentsAsync();

        // The page's own form, sent past the page with everything it could hold.
        foreach (var act in new[] { "save", "sign", "take/Objective" })
        {
            var answer = await SendAsync(page, note, "note", ("Form.Subjective", "Overwritten (invented)"), ("Form.Act", act), ("Form.Version", Guid.NewGuid().ToString()));
            Assert.Contains("signed", answer, StringComparison.OrdinalIgnoreCase);
        }

        await SendAsync(page, note, "code-add", ("code", "M76.32"));
        await SendAsync(page, $"{patient}/chart?visit={visit}", "chart-mark", ("feeling", "Pain"), ("place", "Right/trochanter/Right"));
        var endpoint = await page.APIRequest.PostAsync($"{app.Address}/visits/{visit}/chart/front.svg");
        Assert.Equal(405, endpoint.Status);
        await page.GotoAsync(note);
        Assert.Equal(before, await page.Locator("main .note-text").AllTextContentsAsync());
        await Expect(page.Locator("main")).Not.ToContainTextAsync("Overwritten");
        await Expect(page.Locator("#codes")).ToContainTextAsync("None.");
        await Expect(page.Locator("main")).Not.ToContainTextAsync("side of the hip");

        await TabToAsync(page, "#amend-text");
        await page.Keyboard.TypeAsync("Called back: settled overnight (invented).");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#amendments")).ToContainTextAsync("Called back: settled overnight (invented).");
        Assert.Empty(await watched.AccessibilityAsync());
    }

    [Fact]
    public async Task A_goal_is_set_by_keyboard_alone()
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        await page.GotoAsync(await PatientAsync(page) + "/goals");
        await CountMouseAsync(page);
        await TabToAsync(page, "#new-goal [name='Goal.Text']");
        await page.Keyboard.TypeAsync("Ladders without a rest (invented)");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("1");
        Assert.Equal(0, await page.EvaluateAsync<int>("window.mousePresses"));
        await page.Keyboard.PressAsync("Enter");
        var goal = page.Locator("li[id^='goal-']");
        await Expect(goal).ToContainTextAsync("Ladders without a rest (invented)");
        await Expect(goal).ToContainTextAsync(new Regex("from .*, now .*, to "));
        Assert.Empty(await watched.AccessibilityAsync());
        Assert.Empty(watched.Faults);
    }

    [Fact]
    public async Task The_body_chart_is_marked_and_a_mark_removed_by_keyboard_alone()
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        await page.GotoAsync(await PatientAsync(page) + "/chart");
        await CountMouseAsync(page);
        await TabToAsync(page, "#chart-mark [name='feeling']");
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("4");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Tab");
        Assert.Equal(0, await page.EvaluateAsync<int>("window.mousePresses"));
        await page.Keyboard.PressAsync("Enter");
        var marks = page.Locator("ul[aria-labelledby='marks-title'] li");
        await Expect(marks).ToHaveCountAsync(1);
        await Expect(marks).ToContainTextAsync("numbness 4/10");
        Assert.Empty(await watched.AccessibilityAsync());
        await TabToAsync(page, "ul[aria-labelledby='marks-title'] button");
        await page.Keyboard.PressAsync("Enter");
        await Expect(marks).ToHaveCountAsync(0);
        Assert.Empty(watched.Faults);
    }

    private static async Task<string> PatientAsync(IPage page)
    {
        await Steps.EnterDemoAsync(page);
        await page.GotoAsync("/patients");
        return await page.GetByRole(AriaRole.Link, new() { Name = "Rosa Lindqvist" }).First.GetAttributeAsync("href") ?? "";
    }

    private static async Task<string[]> VisitsAsync(IPage page, string patient)
    {
        await page.GotoAsync(patient + "/exam");
        var hrefs = await page.Locator("a[href*='visit=']").EvaluateAllAsync<string[]>("links => links.map(a => a.getAttribute('href'))");
        return [.. hrefs.Select(h => h[(h.IndexOf("visit=", StringComparison.Ordinal) + 6)..]).Select(h => h[..36]).Distinct()];
    }

    private static async Task<(string Note, string Visit)> SignedNoteAsync(IPage page, string patient, string[] visits)
    {
        foreach (var visit in visits)
        {
            var note = $"{patient}/note?visit={visit}";
            await page.GotoAsync(note);
            if (await page.Locator("#amendments").CountAsync() == 1)
                return (note, visit);
        }

        throw new InvalidOperationException("The demo clinic holds no signed visit.");
    }

    /// <summary>Sends a form as a program would, with the token of the page that is open.</summary>
    private static async Task<string> SendAsync(IPage page, string path, string handler, params (string Name, string Value)[] fields)
    {
        var form = page.APIRequest.CreateFormData();
        form.Set("_handler", handler);
        form.Set("__RequestVerificationToken", await page.Locator("[name='__RequestVerificationToken']").First.GetAttributeAsync("value") ?? "");
        foreach (var (name, value) in fields)
            form.Set(name, value);
        var answer = await page.APIRequest.PostAsync(new Uri(new Uri(page.Url), path).ToString(), new() { Form = form });
        return await answer.TextAsync();
    }

    private static async Task CountMouseAsync(IPage page) => await page.EvaluateAsync(
        "() => { window.mousePresses = 0; document.addEventListener('mousedown', () => window.mousePresses++, true); }");

    private static async Task TabToAsync(IPage page, string selector)
    {
        for (var presses = 0; presses < 120; presses++)
        {
            if (await page.EvaluateAsync<bool>("s => document.activeElement.matches(s)", selector))
                return;
            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"The Tab key never reached {selector}.");
    }
}
