using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

/// <summary>A whole evaluation by keyboard alone, and the re-evaluation after it. Everybody in it is invented.</summary>
public class EvaluationTests(Chromium chromium, ITestOutputHelper told) : IClassFixture<Chromium>
{
    // Counts every event a mouse, pen or finger makes. A button pressed by keyboard makes a click without a pointer.
    private const string CountPointers =
        """
        window.pointers = 0;
        for (const name of ["pointerdown", "mousedown", "touchstart", "mousemove", "wheel"])
          addEventListener(name, () => { window.pointers++; }, { capture: true });
        """;

    // Thirty measures in the order a therapist examines: the interview, then standing, sitting, on the back, on the side.
    private static readonly (string Measure, string[] Values)[] Exam =
    [
        ("pain-now", ["3"]), ("pain-worst", ["6"]), ("patient-specific-function", ["stairs 4, running 2, kneeling 3"]), ("single-number", ["60"]),
        ("single-leg-stance-open", ["22", "38"]), ("single-leg-stance-closed", ["6", "9"]), ("reach-anterior", ["58", "63"]),
        ("reach-posteromedial", ["92", "98"]), ("reach-posterolateral", ["88", "95"]), ("step-down-count", ["11", "16"]), ("step-down-quality", ["4", "2"]),
        ("hop-single", ["98", "124"]), ("hop-triple", ["310", "372"]), ("hop-crossover", ["285", "340"]), ("hop-six-metres", ["2.6", "2.2"]),
        ("timed-up-and-go", ["7.4"]), ("walk-speed", ["1.2"]), ("walk-six-minutes", ["520"]), ("hip-internal-rotation-range", ["28", "34"]),
        ("knee-extension-strength", ["310@32p3", "405"]), ("chair-stand-30", ["14"]), ("sit-to-stand-five", ["9.8"]), ("step-stool-height", ["35", "30"]),
        ("hip-flexion-range", ["112", "115"]), ("knee-flexion-range", ["118", "140"]), ("straight-leg-raise", ["62", "74"]), ("active-knee-extension", ["24", "20"]),
        ("modified-ober", ["12", "18"]), ("hip-abduction-strength", ["112@36p2", "150"]),
    ];

    [Fact]
    public async Task Thirty_measures_by_keyboard_alone_and_a_second_visit_that_tells_real_change_from_chance()
    {
        await using var app = await RunningApp.StartAsync(demo: false);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        await page.AddInitScriptAsync(CountPointers);
        var therapist = new Therapist(page);
        await page.GotoAsync("/");
        await Steps.SetUpAsync(page, await app.SetUpCodeAsync());
        var patient = await therapist.AddPatientAsync("Linden Marsh (invented)", "left knee and hip", "Left");

        var before = therapist.Keys;
        await therapist.StartVisitAsync(patient);
        var danger = therapist.Keys - before;
        var cells = await EvaluateAsync(page, therapist);
        var exam = therapist.Keys - before - danger;
        told.WriteLine($"{danger} keys for the danger signs, {exam} for 30 measures in {cells} cells: {(double)exam / cells:0.0} keys a cell.");
        Assert.Equal(0, await page.EvaluateAsync<int>("window.pointers"));
        Assert.True(exam <= 290, $"{exam} keys for {cells} cells.");
        await Expect(page.Locator("[aria-labelledby=so-far]")).ToContainTextAsync("weaker than the right");

        await ReEvaluateAsync(page, therapist, patient);
        Assert.Equal(0, await page.EvaluateAsync<int>("window.pointers"));
        Assert.True(watched.Faults.Count == 0, string.Join('\n', watched.Faults) + "\n" + app.Console);
    }

    private static async Task<int> EvaluateAsync(IPage page, Therapist therapist)
    {
        await Expect(page.Locator("#type-as-you-measure")).ToBeFocusedAsync();

        // A questionnaire by its name, item by item: twenty answers are twenty keys.
        await therapist.TypeAsync("lefs");
        await therapist.PressAsync("Enter");
        await Expect(page.Locator("#cell-lower-limb-function")).ToBeFocusedAsync();
        await therapist.PressAsync("F2");
        await Expect(page.Locator("#answers-cell-lower-limb-function")).ToBeFocusedAsync();
        await therapist.TypeAsync("33333322333322223333");
        await Expect(page.Locator(".items-score")).ToContainTextAsync("54/80");
        await therapist.PressAsync("Enter");
        await Expect(page.Locator("#cell-lower-limb-function")).ToHaveValueAsync("54");

        // The chip of the performance tests: back to the line by a key, then along the chips.
        await page.Locator("#cell-pain-now").FocusAsync();
        await therapist.PressAsync("/");
        for (var tabs = 0; tabs < 20 && !await IsOnAsync(page, "Performance tests"); tabs++)
            await therapist.PressAsync("Tab");
        await therapist.PressAsync("Space");
        await Expect(page.Locator("#cell-hop-single-left")).ToBeVisibleAsync();
        for (var tabs = 0; tabs < 10 && await ActiveAsync(page) != "cell-pain-now"; tabs++)
            await therapist.PressAsync("Tab");

        var cells = 1;
        foreach (var (measure, values) in Exam)
        {
            string[] ids = values.Length == 1 ? [$"cell-{measure}"] : [$"cell-{measure}-left", $"cell-{measure}-right"];
            for (var i = 0; i < values.Length; i++, cells++)
            {
                await GoToAsync(page, therapist, ids[i]);
                await therapist.TypeAsync(values[i]);
                await therapist.PressAsync("Enter");
                if (measure == "patient-specific-function")
                    await Expect(page.Locator("#cell-patient-specific-function-kneeling")).ToBeVisibleAsync();
            }
        }

        await Expect(page.Locator("#exam-status")).ToContainTextAsync("All that is typed is saved");
        await Expect(page.Locator("#cell-hip-abduction-strength-right")).ToHaveValueAsync("150 N at 36 cm");
        return cells;
    }

    private static async Task ReEvaluateAsync(IPage page, Therapist therapist, string patient)
    {
        await page.GotoAsync(patient + "/note");
        await page.Locator("#note-sign").FocusAsync();
        await therapist.PressAsync("Enter");
        await Expect(page.Locator("main")).ToContainTextAsync("The visit is signed");
        await page.GotoAsync(patient + "/exam");
        await page.Locator("#start-visit").FocusAsync();
        await therapist.PressAsync("Enter");
        await Expect(page.Locator("h1")).ToContainTextAsync("visit 2");
        await therapist.LiveAsync();
        await page.Locator("#type-as-you-measure").FocusAsync();
        await therapist.TypeAsync("knee flex L 131 R 140, slr L 64 R 74, worst pain 3");
        await therapist.PressAsync("Enter");

        // Knee flexion: MDC95 9.5 degrees; straight-leg raise: 7.2 degrees.
        ILocator Says(string cell) => page.Locator($"tr:has(#{cell}) .exam-says");
        await Expect(Says("cell-knee-flexion-range-left")).ToContainTextAsync("really better (beyond 9.5°)");
        await Expect(Says("cell-straight-leg-raise-left")).ToContainTextAsync("within error (a change under 7.2° can be chance)");
        await Expect(Says("cell-pain-worst")).ToContainTextAsync("large enough to matter");

        // Last time's value by one key.
        await page.Locator("#cell-modified-ober-left").FocusAsync();
        await therapist.TypeAsync("=");
        await therapist.PressAsync("Enter");
        await Expect(page.Locator("#cell-modified-ober-left")).ToHaveValueAsync("12°");

        // A paragraph: shown first, taken over by Enter, the rest into the note.
        await page.Locator("#type-as-you-measure").FocusAsync();
        await therapist.TypeAsync("Pain now is two. Hip flexion one hundred and fourteen on the left. Sleeps well again and walks the dog.");
        await therapist.PressAsync("Enter");
        await Expect(page.Locator("#paragraph mark")).ToHaveCountAsync(2);
        await Expect(page.Locator("#paragraph")).ToContainTextAsync("Sleeps well again");
        await therapist.PressAsync("Enter");
        await Expect(page.Locator("#cell-hip-flexion-range-left")).ToHaveValueAsync("114°");
        await Expect(page.Locator("#line-says")).ToContainTextAsync("Note, what the patient says: Sleeps well again and walks the dog");
    }

    /// <summary>Enter to the next cell, arrows over rows that are left out.</summary>
    private static async Task GoToAsync(IPage page, Therapist therapist, string cell)
    {
        for (var steps = 0; steps < 60; steps++)
        {
            var at = await ActiveAsync(page);
            if (at == cell)
                return;
            var sameRow = await page.EvaluateAsync<bool>(
                "([a, b]) => document.getElementById(a)?.closest('tr') === document.getElementById(b)?.closest('tr')", new[] { at, cell });
            await therapist.PressAsync(sameRow ? "Enter" : "ArrowDown");
        }

        Assert.Fail($"No key led to {cell}; the focus is on {await ActiveAsync(page)}.");
    }

    private static async Task<string> ActiveAsync(IPage page) => await page.EvaluateAsync<string>("document.activeElement?.id ?? ''");

    private static async Task<bool> IsOnAsync(IPage page, string text) =>
        await page.EvaluateAsync<bool>("text => document.activeElement?.textContent === text", text);
}
