using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace MomentArm.Browser.Tests;

/// <summary>Every page of the demo clinic: accessibility rules, no sideways scroll on a phone, no console error, light and dark.</summary>
public class EveryPageTests(Chromium chromium) : IClassFixture<Chromium>
{
    private static readonly string[] Paths =
    [
        "/", "/patients", "/patients?q=ro", "/patients/new", "{p}", "{p}/edit", "{p}/exam", "{p}/screen", "{p}/letter", "{p}/reasoning", "{p}/findings", "{p}/goals", "{p}/chart", "{p}/note", "{p}/program", "{p}/teach",
        "{p}/handout", "{p}/progress", "{p}/report", "{p}/report?kind=discharge", "{p}/audit", "/audit", "/exercises", "/exercises/clam", "/exercises/single-leg-bridge?patient={id}", "/exercises/sheet", "/exercises?patient={id}&from=10&to=90", "/exercises/compare?id=clam&id=bridge&id=sit-to-stand", "/cards", "/cards/outer-knee-band", "/cards/side-of-hip-tendon?language=es", "/about", "/not-there",
    ];

    /// <summary>Pages that look otherwise for other patients: open danger signs, no program, a program waiting, red days.</summary>
    private static readonly string[] PathsThatDiffer = ["{p}/exam", "{p}/screen", "{p}/program", "{p}/progress"];

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 390)]
    public async Task Every_clinician_page_keeps_the_rules(ColorScheme scheme, int width)
    {
        await using var app = await RunningApp.StartAsync(demo: true);
        await using var watched = await WatchedPage.OpenAsync(chromium.Browser, app.Address, width, 900, scheme);
        var page = watched.Page;
        var broken = new List<string>();
        await page.GotoAsync("/sign-in");
        broken.AddRange(await watched.AccessibilityAsync());
        await Steps.EnterDemoAsync(page);
        foreach (var patient in await PatientsAsync(page))
        {
            foreach (var path in patient.First ? Paths : PathsThatDiffer)
            {
                await page.GotoAsync(path.Replace("{p}", patient.Path, StringComparison.Ordinal).Replace("{id}", patient.Path[^36..], StringComparison.Ordinal));
                await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
                Assert.Equal(1, await page.Locator("h1").CountAsync());
                broken.AddRange(await watched.AccessibilityAsync());
                if (await watched.ScrollsSidewaysAsync())
                    broken.Add($"{page.Url}: scrolls sideways at {width} px");
            }
        }

        Assert.True(broken.Count == 0, string.Join(Environment.NewLine, broken));

        // The page that is not there answers 404, which the console reports; nothing else may be there.
        Assert.DoesNotContain(watched.Faults, f => !f.Contains("404", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task The_first_set_up_keeps_the_rules(ColorScheme scheme)
    {
        await using var app = await RunningApp.StartAsync(demo: false);
        await using var watched = await chromium.PhoneAsync(app.Address, scheme);
        await watched.Page.GotoAsync("/");
        Assert.Empty(await watched.AccessibilityAsync());
        Assert.False(await watched.ScrollsSidewaysAsync());
        Assert.Empty(watched.Faults);
    }

    /// <summary>The patients' pages; the first stands for the pages that are alike for all.</summary>
    private static async Task<IReadOnlyList<(string Path, bool First)>> PatientsAsync(IPage page)
    {
        await page.GotoAsync("/patients");
        var hrefs = await page.Locator("main a[href^='/patients/']").EvaluateAllAsync<string[]>("links => links.map(a => a.getAttribute('href'))");
        return [.. hrefs.Where(h => Regex.IsMatch(h, "^/patients/[0-9a-f-]{36}$")).Distinct().Select((path, i) => (path, i == 0))];
    }
}
