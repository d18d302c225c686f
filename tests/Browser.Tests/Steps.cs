using Microsoft.Playwright;

namespace MomentArm.Browser.Tests;

/// <summary>What several journeys do. Everybody in them is invented.</summary>
internal static class Steps
{
    internal const string Email = "owner@clinic.invalid";
    internal const string Password = "river-lantern-copper-walk";

    /// <summary>Fills the first set-up by keyboard alone.</summary>
    internal static async Task SetUpAsync(IPage page, string code)
    {
        await page.Locator("#code").FocusAsync();
        foreach (var text in new[] { code, "Harbor Street Physical Therapy (invented)", "555-0199" })
        {
            await page.Keyboard.TypeAsync(text);
            await page.Keyboard.PressAsync("Tab");
        }

        await page.Locator("#zone").SelectOptionAsync("America/Chicago");
        await page.Keyboard.PressAsync("Tab");
        await page.Locator("#name").FocusAsync();
        foreach (var text in new[] { "Avery Quill", Email, Password, Password })
        {
            await page.Keyboard.TypeAsync(text);
            await page.Keyboard.PressAsync("Tab");
        }

        await page.Keyboard.PressAsync("Enter");
        await page.WaitForURLAsync(url => !url.Contains("/setup", StringComparison.Ordinal));
    }

    /// <summary>Enters the demo clinic.</summary>
    internal static async Task EnterDemoAsync(IPage page)
    {
        await page.GotoAsync("/sign-in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Enter the demo clinic" }).ClickAsync();
        await page.WaitForURLAsync(url => !url.Contains("/sign-in", StringComparison.Ordinal));
    }
}
