using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace MomentArm.Browser.Tests;

/// <summary>The whole job end to end: as the therapist at a desk, then as the patient at a phone.</summary>
public class WholeJobTests(Chromium chromium) : IClassFixture<Chromium>
{
    [Fact]
    public async Task From_first_run_to_a_changed_program()
    {
        await using var app = await RunningApp.StartAsync(demo: false);
        await using var watched = await chromium.DesktopAsync(app.Address);
        var page = watched.Page;
        var therapist = new Therapist(page);

        await page.GotoAsync("/");
        await Steps.SetUpAsync(page, await app.SetUpCodeAsync());
        var patient = await therapist.AddPatientAsync("Juniper Vale (invented)", "left hip, outer side", "Left");

        await therapist.StartVisitAsync(patient);
        await page.Locator("#cell-pain-now").FocusAsync();
        await therapist.TypeCellsAsync(
        [
            ("cell-pain-now", "2"),
            ("cell-pain-worst", "5"),
            ("cell-straight-leg-raise-left", "71"),
            ("cell-straight-leg-raise-right", "74"),
            ("cell-hip-abduction-strength-left", "112 N at 36 cm pain 2"),
            ("cell-hip-abduction-strength-right", "150 at 36 cm"),
        ]);
        await Expect(page.Locator("[aria-labelledby=so-far]")).ToContainTextAsync("weaker than the right");

        await page.GotoAsync(patient + "/findings");
        await Expect(page.Locator("h1")).ToContainTextAsync("Findings");
        await Expect(page.Locator("main")).ToContainTextAsync("Hip abduction strength, left");
        Assert.Empty(watched.Faults);
    }
}
