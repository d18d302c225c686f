using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

public class FirstRunTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task An_owner_sets_the_clinic_up_by_keyboard_alone_and_signs_out_and_in()
    {
        await using var app = await RunningApp.StartAsync(demo: false);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        await page.GotoAsync("/");
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/setup"));

        await Steps.SetUpAsync(page, await app.SetUpCodeAsync());
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Today");

        // Out and in again, by keyboard.
        await page.Locator("details.account summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/sign-in"));
        await page.Locator("#email").FocusAsync();
        await page.Keyboard.TypeAsync(Steps.Email);
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync(Steps.Password);
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("Today");
        Assert.Empty(watched.Faults);
    }
}
