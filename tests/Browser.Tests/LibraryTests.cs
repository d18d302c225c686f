using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

/// <summary>The library by keyboard alone: looked for, marked, held side by side; an explanation on the phone.</summary>
public class LibraryTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task Exercises_are_looked_for_and_compared_by_keyboard_alone()
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await WatchedPage.OpenAsync(chromium.Browser, app.Address, 1280, 900, ColorScheme.Light);
        var page = watched.Page;
        await Steps.EnterDemoAsync(page);
        await page.GotoAsync("/exercises");
        var all = await page.Locator(".library-tile").CountAsync();

        // Words, then Enter.
        await page.Locator("#q").FocusAsync();
        await page.Keyboard.TypeAsync("side-lying");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync(url => url.Contains("q=side-lying", StringComparison.Ordinal));
        var found = await page.Locator(".library-tile").CountAsync();
        Assert.InRange(found, 2, all - 1);

        // The part of the body by its letter; the search stays.
        await page.Locator("#region").FocusAsync();
        await page.Keyboard.TypeAsync("Hip");
        await page.Keyboard.PressAsync("Tab");
        await page.Locator("#q").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync(url => url.Contains("region=hip", StringComparison.Ordinal));

        // Two marks with the space bar, then the button.
        foreach (var name in new[] { "Clam", "Side-lying hip abduction" })
        {
            await page.GetByRole(AriaRole.Checkbox, new() { Name = $"Compare {name}", Exact = true }).FocusAsync();
            await page.Keyboard.PressAsync("Space");
        }

        await page.GetByRole(AriaRole.Button, new() { Name = "Compare the marked ones" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync(url => url.Contains("/exercises/compare", StringComparison.Ordinal));
        await Expect(page.Locator(".compare-columns > section")).ToHaveCountAsync(2);
        await Expect(page.Locator(".compare-columns .chart")).ToHaveCountAsync(2);
        Assert.Empty(await watched.AccessibilityAsync());
        Assert.False(await watched.ScrollsSidewaysAsync());
        Assert.Empty(watched.Faults);
    }
}
