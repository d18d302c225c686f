using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

/// <summary>An exercise's page by keyboard alone: another person, another side, what is asked for less.</summary>
public class ExercisePageTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task Person_and_side_are_chosen_by_keyboard_and_both_sections_follow()
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await chromium.PhoneAsync(app.Address, ColorScheme.Light);
        var page = watched.Page;
        await Steps.EnterDemoAsync(page);
        await page.GotoAsync("/exercises/single-leg-bridge");
        await Expect(page.Locator("#load ~ .load-columns caption").First).ToHaveTextAsync("Reference person, right side working");

        // The first patient of the list, then the left side, then Enter on the button: no mouse.
        await page.Locator("#patient").FocusAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        var name = await page.Locator("#patient option:checked").InnerTextAsync();
        Assert.NotEqual("Reference person", name);
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator("#side")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowUp");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync(url => url.Contains("side=left", StringComparison.Ordinal) && url.EndsWith("#load", StringComparison.Ordinal));
        await Expect(page).ToHaveTitleAsync($"Single-leg bridge · {name} · MomentArm");
        foreach (var section in new[] { "load", "reach" })
            await Expect(page.Locator($"#{section} ~ .load-columns caption").First).ToHaveTextAsync($"{name}, left side working");

        // What is asked for less is one key away, and the page still fits the phone.
        await page.Locator(".load-more > summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".load-more table")).ToBeVisibleAsync();
        Assert.Empty(await watched.AccessibilityAsync());
        Assert.False(await watched.ScrollsSidewaysAsync());
        Assert.Empty(watched.Faults);
    }
}
