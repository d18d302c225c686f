using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

/// <summary>What a patient does at home with a phone.</summary>
internal sealed class AtHome(WatchedPage watched)
{
    private IPage Page => watched.Page;

    /// <summary>What the accessibility rules say of every screen seen.</summary>
    internal List<string> Broken { get; } = [];

    /// <summary>Does a session: the first exercise to the end, the others skipped for want of time.</summary>
    /// <returns>The title of the first exercise.</returns>
    internal async Task<string> DoSessionAsync(int pain, int effort)
    {
        await TapAsync("Start");
        var title = await Page.Locator("h1").InnerTextAsync();
        await LookAsync();
        await TapAsync("Start");
        await LookAsync();
        await Expect(Button("About right")).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await LookAsync();
        await TapAsync("About right");
        while (await Button("Skip this one").CountAsync() > 0)
        {
            await TapAsync("Skip this one");
            await LookAsync();
            await TapAsync("I have no time");
        }

        await AnswerAsync(effort);
        await AnswerAsync(pain);
        await AnswerAsync(Math.Max(0, pain - 1));
        await LookAsync();
        await TapAsync("Save");
        await Expect(Page.Locator("main")).ToContainTextAsync("Saved");
        await LookAsync();
        return title;
    }

    /// <summary>Runs the rules and the phone's limits on the screen as it stands.</summary>
    internal async Task LookAsync()
    {
        Broken.AddRange(await watched.AccessibilityAsync());
        if (await watched.ScrollsSidewaysAsync())
            Broken.Add("A screen scrolls sideways.");
    }

    private async Task AnswerAsync(int number)
    {
        await LookAsync();
        await Page.GetByRole(AriaRole.Radio, new() { Name = number.ToString(System.Globalization.CultureInfo.InvariantCulture), Exact = true }).CheckAsync();
        await TapAsync("Next");
    }

    private async Task TapAsync(string name) => await Button(name).First.ClickAsync();

    private ILocator Button(string name) =>
        Page.GetByRole(AriaRole.Button, new() { NameRegex = new System.Text.RegularExpressions.Regex("^" + name) });
}
