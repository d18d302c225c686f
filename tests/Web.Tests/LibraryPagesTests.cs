using System.Net;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using MomentArm.Body;
using MomentArm.Prescribing;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web;

/// <summary>Looking for exercises, holding them side by side, and explanations for patients.</summary>
public sealed class LibraryPagesTests
{
    private static readonly LibraryLine NoLine = new(null, null, null);

    private static Exercise Shipped(ClinicApp app, string id) => app.Services.GetRequiredService<Content.ContentLibrary>().Exercise(id)!;

    [Fact]
    public async Task Every_wish_narrows_by_its_own_rule()
    {
        await using var app = new ClinicApp();
        var clam = Shipped(app, "clam");
        bool Fits(LibraryWish wish, LibraryLine? line = null) => wish.Fits(clam, line ?? NoLine);
        Assert.True(Fits(new LibraryWish()));
        Assert.True(Fits(new LibraryWish { Region = BodyRegion.Hip, Purpose = Purpose.Strengthen, Position = BodyPosition.SideLying, Action = JointAction.HipAbduction }));
        Assert.False(Fits(new LibraryWish { Region = BodyRegion.Knee }));
        Assert.False(Fits(new LibraryWish { Action = JointAction.KneeExtension }));
        Assert.False(Fits(new LibraryWish { Group = MuscleGroup.Soleus }));
        Assert.False(Fits(new LibraryWish { AtHand = [] }));
        Assert.True(Fits(new LibraryWish { AtHand = [Equipment.Mat, Equipment.Step] }));
        Assert.False(Fits(new LibraryWish { Minutes = 1 }));
        Assert.False(Fits(new LibraryWish { ShareFrom = 10 }));
        var share = new ReferenceLoads(app.Services.GetRequiredService<Content.ContentLibrary>()).Loads.Of(clam, Side.Right, 0).Of(JointAction.HipAbduction, Side.Right)!;
        var line = new LibraryLine(share, null, null);
        Assert.True(Fits(new LibraryWish { ShareFrom = (100 * share.Middle) - 1, ShareTo = (100 * share.Middle) + 1 }, line));
        Assert.False(Fits(new LibraryWish { ShareTo = (100 * share.Middle) - 1 }, line));
    }

    [Fact]
    public async Task A_patient_s_shares_and_window_narrow_the_list_and_a_new_test_changes_them()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var browser = await app.SignedInBrowserAsync();
        var page = await browser.GetStringAsync($"/exercises?patient={made.Patient.Id}");
        Assert.Contains("Load shares of", page, StringComparison.Ordinal);
        var window = Regex.Match(WebUtility.HtmlDecode(page), "href=\"([^\"]*from=40[^\"]*to=70[^\"]*)\"").Groups[1].Value;
        Assert.NotEmpty(window);
        var inside = await browser.GetStringAsync(window);
        var shares = Regex.Matches(inside, @"Load share (\d+) %").Select(m => int.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.NotEmpty(shares);
        Assert.All(shares, share => Assert.InRange(share, 40, 70));
        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync($"/exercises?patient={Guid.NewGuid()}")).StatusCode);
        Assert.Contains("is no number from 0 to 1000", WebUtility.HtmlDecode(await browser.GetStringAsync("/exercises?minutes=ten")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_or_three_stand_side_by_side_and_other_numbers_are_refused_in_words()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = await app.SignedInBrowserAsync();
        var page = await browser.GetStringAsync("/exercises/compare?id=clam&id=side-lying-leg-raise&id=hamstring-strap-stretch");
        Assert.Equal(3, Regex.Count(page, "<section class=\"card\""));
        Assert.Equal(3, Regex.Count(page, "Load share along the movement</figcaption>"));
        Assert.Contains("Reach along the movement", page, StringComparison.Ordinal);
        foreach (var query in new[] { "", "?id=clam", "?id=clam&id=bridge&id=sit-to-stand&id=single-leg-bridge", "?id=no-such&id=clam" })
            Assert.Contains("Two or three exercises can stand side by side", await browser.GetStringAsync("/exercises/compare" + query), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pictures_are_given_for_known_exercises_in_three_moments()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = await app.SignedInBrowserAsync();
        var texts = new HashSet<string>();
        foreach (var query in new[] { "", "?moment=start", "?moment=end", "?moment=end&palette=gray" })
        {
            var answer = await browser.GetAsync("/exercises/clam/picture/left" + query);
            Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType!.MediaType);
            Assert.True(texts.Add(await answer.Content.ReadAsStringAsync()));
        }

        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync("/exercises/no-such/picture/left")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync("/exercises/clam/picture/middle")).StatusCode);
    }

    [Fact]
    public async Task Explanations_are_read_in_both_languages_and_spanish_says_that_it_is_not_reviewed()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = await app.SignedInBrowserAsync();
        Assert.Contains("href=\"/cards/outer-knee-band\"", await browser.GetStringAsync("/cards"), StringComparison.Ordinal);
        var english = await browser.GetStringAsync("/cards/outer-knee-band");
        Assert.Contains("The long band at your outer knee", english, StringComparison.Ordinal);
        Assert.DoesNotContain("Not yet reviewed", english, StringComparison.Ordinal);
        var spanish = WebUtility.HtmlDecode(await browser.GetStringAsync("/cards/outer-knee-band?language=es&side=left"));
        Assert.Contains("La banda larga por fuera de la rodilla", spanish, StringComparison.Ordinal);
        Assert.Contains("Not yet reviewed", spanish, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync("/cards/no-such")).StatusCode);
    }
}
