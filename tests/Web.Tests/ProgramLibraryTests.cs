using System.Net;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using MomentArm.Prescribing;

namespace MomentArm.Web;

public sealed class ProgramLibraryTests
{
    [Fact]
    public async Task Exercises_are_found_by_words_and_purpose()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = await app.SignedInBrowserAsync();
        var count = app.Services.GetRequiredService<Content.ContentLibrary>().Exercises.Count;
        Assert.Contains($"{count} of {count} exercises", await browser.GetStringAsync("/exercises"), StringComparison.Ordinal);
        var strap = await browser.GetStringAsync("/exercises?q=strap&purpose=stretch");
        Assert.Contains("/exercises/hamstring-strap-stretch", strap, StringComparison.Ordinal);
        Assert.DoesNotContain("/exercises/clam", strap, StringComparison.Ordinal);
        Assert.Contains("No exercise fits all of this", await browser.GetStringAsync("/exercises?q=trombone"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_exercise_has_its_page_with_load_source_and_limits()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var browser = await app.SignedInBrowserAsync();
        foreach (var exercise in made.Content.Exercises)
        {
            var page = WebUtility.HtmlDecode(await browser.GetStringAsync($"/exercises/{exercise.Id}?patient={made.Patient.Id}&side=left"));
            Assert.Contains(made.Content.Sources[exercise.DoseSource].Text, page, StringComparison.Ordinal);
            Assert.Contains("Each pose is held still", page, StringComparison.Ordinal);
            Assert.Contains("Pat Invented, ", page, StringComparison.Ordinal);
            Assert.Contains("How far it lengthens", page, StringComparison.Ordinal);
            if (page.Contains("Load not computed", StringComparison.Ordinal))
            {
                // A landing has no pose held between its two ends; the page says so in place of numbers.
                Assert.True(exercise.Purpose == Purpose.Power, $"{exercise.Id}: no load for this patient");
                continue;
            }

            Assert.Contains("What carries the body", page, StringComparison.Ordinal);
            Assert.Contains("a rule of least effort divides each joint’s torque among muscles", page, StringComparison.Ordinal);
            Assert.Contains("A length test stops at the first tissue that is short", page, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"[\s>]NaN[\s<%]", page);
        }

        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync("/exercises/no-such")).StatusCode);
    }

    [Fact]
    public async Task A_stretch_shows_its_reach_as_curves_in_words_and_as_a_table()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = await app.SignedInBrowserAsync();
        var page = WebUtility.HtmlDecode(await browser.GetStringAsync("/exercises/hamstring-strap-stretch?side=left"));

        // The picture, the same in words, and the table say one thing.
        Assert.Contains("class=\"chart-line chart-1\"", page, StringComparison.Ordinal);
        Assert.Matches(@"Reach along the movement\. Hamstrings, left: \d+ % at the start, (\d+) % at the end, highest \1 % at 100 % of the movement", page);
        var peak = System.Text.RegularExpressions.Regex.Match(page, @"Hamstrings, left: \d+ % at the start, (\d+) %").Groups[1].Value;
        Assert.Contains($"<strong>{peak} %</strong>", page, StringComparison.Ordinal);
        Assert.Contains("not tested; Straight-leg raise, published mean, not verified", page, StringComparison.Ordinal);
        Assert.Contains("What would lengthen the left hamstrings more: more hip flexion", page, StringComparison.Ordinal);
        Assert.Contains("not brought beyond standing in these poses: Gastrocnemius, left", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_sheet_shows_every_picture_on_both_sides()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = await app.SignedInBrowserAsync();
        var count = app.Services.GetRequiredService<Content.ContentLibrary>().Exercises.Count;
        foreach (var path in new[] { "/exercises/sheet", "/exercises/sheet?palette=gray" })
        {
            var page = await browser.GetStringAsync(path);
            Assert.Equal(count * 2 * 3, page.Split("<figcaption").Length - 1);
        }
    }

    [Fact]
    public async Task Frames_are_given_for_a_known_exercise_and_side_only()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = await app.SignedInBrowserAsync();
        var frames = JsonDocument.Parse(await browser.GetStringAsync("/exercises/clam/frames/left")).RootElement;
        Assert.Equal(9, frames.GetProperty("frames").GetArrayLength());
        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync("/exercises/clam/frames/up")).StatusCode);
        Assert.Equal(HttpStatusCode.Found, (await app.Browser().GetAsync("/exercises/clam/frames/left")).StatusCode);
    }
}
