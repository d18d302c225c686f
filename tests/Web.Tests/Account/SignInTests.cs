using System.Net;
using System.Text.RegularExpressions;

namespace MomentArm.Web.Account;

public sealed partial class SignInTests
{
    [Fact]
    public async Task The_right_password_opens_the_page_that_was_wanted()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = app.Browser();
        var answer = await ClinicApp.SignInAsync(browser, ClinicApp.Email, ClinicApp.Password, "/sign-in?ReturnUrl=%2Fabout");
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.EndsWith("/about", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Contains("Ada Owner", await browser.GetStringAsync("/about"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_place_outside_the_app_is_never_gone_to()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var answer = await ClinicApp.SignInAsync(
            app.Browser(), ClinicApp.Email, ClinicApp.Password, "/sign-in?ReturnUrl=https%3A%2F%2Felsewhere.example%2F");
        Assert.DoesNotContain("elsewhere", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Unknown_address_wrong_password_and_locked_account_get_the_same_page()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var unknown = await RefusedPageAsync(app, "nobody@clinic.example", "any old password");
        var wrong = await RefusedPageAsync(app, ClinicApp.Email, "any old password");
        Assert.Equal(unknown, wrong);
        for (var i = 0; i < 5; i++)
        {
            await RefusedPageAsync(app, ClinicApp.Email, "any old password");
        }

        var locked = await RefusedPageAsync(app, ClinicApp.Email, ClinicApp.Password);
        Assert.Equal(unknown, locked);
    }

    [Fact]
    public async Task Too_many_tries_from_one_address_are_turned_away()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = app.Browser();
        var answers = new List<HttpStatusCode>();
        for (var i = 0; i < 31; i++)
        {
            answers.Add((await browser.PostAsync("/sign-in", new FormUrlEncodedContent([]))).StatusCode);
        }

        Assert.DoesNotContain(HttpStatusCode.TooManyRequests, answers[..30]);
        Assert.Equal(HttpStatusCode.TooManyRequests, answers[30]);
        Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync("/sign-in")).StatusCode);
    }

    [Fact]
    public async Task Signing_out_closes_the_door_and_needs_our_own_form()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = await app.SignedInBrowserAsync();
        var forged = await browser.PostAsync("/sign-out", new FormUrlEncodedContent([]));
        Assert.Equal(HttpStatusCode.BadRequest, forged.StatusCode);
        var token = ClinicApp.TokenIn(await browser.GetStringAsync("/about"));
        var answer = await browser.PostAsync("/sign-out", new FormUrlEncodedContent([new("__RequestVerificationToken", token)]));
        Assert.Equal("/sign-in", answer.Headers.Location!.ToString());
        Assert.Contains("/sign-in?", (await browser.GetAsync("/nowhere")).Headers.Location!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_a_demo_clinic_may_be_entered_without_an_account()
    {
        await using var clinic = new ClinicApp();
        await clinic.SetUpAsync();
        var page = await clinic.Browser().GetStringAsync("/sign-in");
        Assert.DoesNotContain("demo", page, StringComparison.OrdinalIgnoreCase);
        var answer = await EnterDemoAsync(clinic.Browser());
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task The_demo_clinic_is_entered_by_its_button()
    {
        await using var demo = new ClinicApp();
        await demo.SetUpAsync(demo: true);
        var browser = demo.Browser();
        Assert.Contains("Enter the demo clinic", await browser.GetStringAsync("/sign-in"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.BadRequest, (await browser.PostAsync("/enter-demo", new FormUrlEncodedContent([]))).StatusCode);
        Assert.Equal(HttpStatusCode.Found, (await EnterDemoAsync(browser)).StatusCode);
        Assert.Contains("Ada Owner", await browser.GetStringAsync("/about"), StringComparison.Ordinal);
    }

    private static async Task<HttpResponseMessage> EnterDemoAsync(HttpClient browser)
    {
        var token = ClinicApp.TokenIn(await browser.GetStringAsync("/sign-in"));
        return await browser.PostAsync("/enter-demo", new FormUrlEncodedContent([new("__RequestVerificationToken", token)]));
    }

    private static async Task<string> RefusedPageAsync(ClinicApp app, string email, string password)
    {
        var answer = await ClinicApp.SignInAsync(app.Browser(), email, password);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.False(answer.Headers.TryGetValues("Set-Cookie", out var cookies)
            && cookies.Any(cookie => cookie.Contains("auth", StringComparison.Ordinal)));
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains(SignInDesk.Refusal, page, StringComparison.Ordinal);
        // What was typed comes back into its field, and protected tokens differ each time; nothing else may.
        return Tokens().Replace(page.Replace(email, "*", StringComparison.Ordinal), "");
    }

    [GeneratedRegex("CfDJ8[A-Za-z0-9_+/=-]+")]
    private static partial Regex Tokens();
}
