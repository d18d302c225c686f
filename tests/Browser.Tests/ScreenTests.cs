using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

/// <summary>Danger signs and decision rules by keyboard alone: an emergency stops the program page until a decision is recorded.</summary>
public class ScreenTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task An_emergency_of_the_region_and_a_positive_rule_stop_the_program_until_decided()
    {
        await using var app = await RunningApp.StartAsync(demo: false);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        var therapist = new Therapist(page);
        await page.GotoAsync("/");
        await Steps.SetUpAsync(page, await app.SetUpCodeAsync());
        var patient = await therapist.AddPatientAsync("Linden Frost (invented)", "right knee, fell yesterday", "Right");
        await page.GotoAsync(patient + "/exam");
        await page.Locator("#start-visit").FocusAsync();
        await therapist.PressAsync("Enter");
        await therapist.LiveAsync();

        await page.GotoAsync(patient + "/screen");
        await Expect(page.Locator(".asks[data-keys=on]")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        await Expect(page.Locator(".rules[data-keys=on]")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        var ids = await page.Locator(".asks fieldset.ask").EvaluateAllAsync<string[]>("all => all.map(one => one.dataset.sign)");
        Assert.Contains("knee-cold-foot", ids);
        Assert.DoesNotContain("hip-broken", ids);
        await page.Locator($"#danger-{ids[0]}-yes").FocusAsync();
        for (var i = 0; i < ids.Length; i++)
        {
            await therapist.PressAsync(ids[i] == "knee-cold-foot" ? "y" : "n");
            await Expect(page.Locator("#danger-state")).ToContainTextAsync($"{i + 1} of {ids.Length} asked");
        }

        await IsStoppedAsync(page, patient, "Stop and call the emergency service.");
        await DecideAsync(page, therapist, patient, "knee-cold-foot", "Pulse and scan normal, Dr. Example (invented).");
        await page.GotoAsync(patient + "/program");
        await Expect(page.Locator("#start-draft")).ToBeEnabledAsync();

        // The knee rule, by keyboard: two answers are enough once it applies, since nothing unknown can change it.
        await OpenRuleAsync(page, therapist, patient);
        await page.Locator("#ottawa-knee-days").FocusAsync();
        await therapist.TypeAsync("1");
        await therapist.PressAsync("Enter");
        await Expect(page.Locator("#ottawa-knee-unfit-unknown")).ToBeFocusedAsync();
        await therapist.PressAsync("n");
        await page.Locator("#ottawa-knee-weight-unknown").FocusAsync();
        await Expect(page.Locator("#says-ottawa-knee")).ToContainTextAsync("Cannot be told yet");
        await therapist.PressAsync("y");
        await Expect(page.Locator("#says-ottawa-knee")).ToContainTextAsync("Positive: radiograph");
        await page.Locator("#draft-letter").FocusAsync();
        await therapist.PressAsync("Enter");
        await Expect(page.Locator("#letter-text")).ToHaveValueAsync(new Regex("Please see the person today"));

        await IsStoppedAsync(page, patient, "Medical contact today");
        await DecideAsync(page, therapist, patient, "rule-ottawa-knee", "Film clear, Dr. Example (invented).");
        await page.GotoAsync(patient + "/program");
        await Expect(page.Locator("#start-draft")).ToBeEnabledAsync();
        Assert.Empty(watched.Faults);
    }

    private static async Task OpenRuleAsync(IPage page, Therapist therapist, string patient)
    {
        await page.GotoAsync(patient + "/screen");
        await Expect(page.Locator(".rules[data-keys=on]")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        await page.Locator("#rule-ottawa-knee > summary").FocusAsync();
        await therapist.PressAsync("Enter");
    }

    private static async Task IsStoppedAsync(IPage page, string patient, string headline)
    {
        await page.GotoAsync(patient + "/program");
        await Expect(page.Locator("section.danger")).ToContainTextAsync(headline);
        await Expect(page.Locator("#start-draft")).ToHaveCountAsync(0);
    }

    private static async Task DecideAsync(IPage page, Therapist therapist, string patient, string sign, string reason)
    {
        await page.GotoAsync(patient + "/screen");
        await Expect(page.Locator(".asks[data-keys=on]")).ToBeVisibleAsync(new() { Timeout = 20_000 });
        await page.Locator($"#reason-{sign}").FocusAsync();
        await therapist.TypeAsync(reason);
        await page.Locator($"#record-{sign}").FocusAsync();
        await therapist.PressAsync("Enter");
        await Expect(page.Locator($"#decide-{sign}")).ToContainTextAsync("Decided by Avery Quill");
    }
}
