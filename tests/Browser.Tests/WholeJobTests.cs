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

        // The program, from a draft, shortened so that the session at home takes seconds.
        await therapist.BuildProgramAsync(patient);
        await therapist.TeachAsync();
        await Expect(page).ToHaveURLAsync(new Regex("/handout"));
        await Expect(page.Locator(".handout")).ToContainTextAsync("Your home program: left hip, outer side");
        await Expect(page.Locator(".handout")).ToContainTextAsync("Your left side works.");
        await Expect(page.Locator(".handout")).Not.ToContainTextAsync("Juniper");
        var link = await page.Locator("#patient-link").GetAttributeAsync("href") ?? "";
        Assert.Contains("/p/#", link, StringComparison.Ordinal);

        // The patient, at home, on a phone.
        await using (var phone = await chromium.PhoneAsync(app.Address))
        {
            var home = new AtHome(phone);
            await phone.Page.GotoAsync(link);
            await Expect(phone.Page.Locator("main")).ToContainTextAsync("Today");
            Assert.DoesNotContain("Juniper", await phone.Page.ContentAsync(), StringComparison.Ordinal);
            await home.LookAsync();
            await home.DoSessionAsync(pain: 4, effort: 6);
            Assert.Empty(home.Broken);
            Assert.Empty(phone.Faults);
        }

        // The clinic sees it, changes the program, and the trail tells all of it.
        await page.GotoAsync(patient + "/progress");
        await Expect(page.Locator("main")).ToContainTextAsync("pain 4 of 10 while exercising");
        await Expect(page.Locator("main")).ToContainTextAsync("amber");
        await therapist.ChangeProgramAsync(patient, "Ached on the last lift.");
        await page.GotoAsync(patient + "/audit");
        var trail = await page.Locator("main").TextContentAsync() ?? "";
        foreach (var part in new[] { "Avery Quill", "Ached on the last lift.", "handed over", "session" })
            Assert.True(trail.Contains(part, StringComparison.OrdinalIgnoreCase), $"\"{part}\" is not in the trail:\n{trail}");
        Assert.Empty(watched.Faults);
    }
}
