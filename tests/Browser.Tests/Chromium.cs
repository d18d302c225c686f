using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace MomentArm.Browser.Tests;

/// <summary>Debian's Chromium under Playwright, shared by the tests of one class.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? playwright;

    public IBrowser Browser { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        Browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Environment.GetEnvironmentVariable("MOMENTARM_CHROMIUM") ?? "/usr/bin/chromium",
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync",
            ],
        });
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        playwright?.Dispose();
    }

    /// <summary>A desktop page whose console errors, policy violations and foreign requests are gathered.</summary>
    internal async Task<WatchedPage> DesktopAsync(string address, ColorScheme scheme = ColorScheme.Light) =>
        await WatchedPage.OpenAsync(Browser, address, 1280, 900, scheme);

    /// <summary>A phone-size page, watched likewise.</summary>
    internal async Task<WatchedPage> PhoneAsync(string address, ColorScheme scheme = ColorScheme.Light) =>
        await WatchedPage.OpenAsync(Browser, address, 390, 844, scheme);
}

/// <summary>A page and what went wrong on it.</summary>
internal sealed class WatchedPage : IAsyncDisposable
{
    private readonly IBrowserContext context;

    private WatchedPage(IBrowserContext context, IPage page)
    {
        this.context = context;
        Page = page;
    }

    internal IPage Page { get; }

    internal List<string> Faults { get; } = [];

    internal static async Task<WatchedPage> OpenAsync(IBrowser browser, string address, int width, int height, ColorScheme scheme)
    {
        var context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = address,
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = scheme,
            Locale = "en-US",
            TimezoneId = "America/Chicago",
        });
        context.SetDefaultTimeout(20_000);
        var watched = new WatchedPage(context, await context.NewPageAsync());
        watched.Page.Console += (_, message) =>
        {
            if (message.Type is "error")
                watched.Faults.Add(message.Text);
        };
        watched.Page.PageError += (_, error) => watched.Faults.Add(error);
        watched.Page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(address, StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal)
                && !request.Url.StartsWith("ws" + address[4..], StringComparison.Ordinal))
            {
                watched.Faults.Add("Foreign request: " + request.Url);
            }
        };
        return watched;
    }

    /// <summary>Runs the accessibility rules of WCAG 2.2 A and AA on the page as it stands.</summary>
    internal async Task<string[]> AccessibilityAsync()
    {
        var result = await Page.RunAxe(new AxeRunOptions
        {
            RunOnly = new RunOnlyOptions { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
        });
        return [.. result.Violations.Select(v => $"{Page.Url}: {v.Id}: {v.Help}: {string.Join("; ", v.Nodes.Take(3).Select(n => n.Html))}")];
    }

    /// <summary>Whether the page scrolls sideways.</summary>
    internal async Task<bool> ScrollsSidewaysAsync() =>
        await Page.EvaluateAsync<bool>("document.documentElement.scrollWidth > document.documentElement.clientWidth + 1");

    public async ValueTask DisposeAsync() => await context.DisposeAsync();
}
