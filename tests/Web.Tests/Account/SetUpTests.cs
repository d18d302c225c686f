using System.Net;

namespace MomentArm.Web.Account;

public sealed class SetUpTests
{
    [Fact]
    public async Task The_code_from_the_console_sets_the_clinic_up_once()
    {
        await using var app = new ClinicApp();
        var browser = app.Browser();
        Assert.EndsWith("/setup", (await browser.GetAsync("/sign-in")).Headers.Location!.ToString(), StringComparison.Ordinal);
        var code = Assert.Single(app.Codes);
        var second = app.Browser();
        var secondToken = ClinicApp.TokenIn(await second.GetStringAsync("/setup"));

        var answer = await ClinicApp.SubmitAsync(browser, "/setup", "setup", Fields(code));
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.Contains("Pier Street Clinic", await browser.GetStringAsync("/about"), StringComparison.Ordinal);

        var again = Fields(code);
        again["Form.Email"] = "other@clinic.example";
        again["__RequestVerificationToken"] = secondToken;
        again["_handler"] = "setup";
        var late = await second.PostAsync("/setup", new FormUrlEncodedContent(again));
        Assert.EndsWith("/sign-in", late.Headers.Location!.ToString(), StringComparison.Ordinal);
        var refused = await ClinicApp.SignInAsync(app.Browser(), "other@clinic.example", ClinicApp.Password);
        Assert.Equal(HttpStatusCode.OK, refused.StatusCode);
    }

    [Fact]
    public async Task A_wrong_code_sets_nothing_up_and_keeps_what_was_typed()
    {
        await using var app = new ClinicApp();
        var browser = app.Browser();
        var answer = await ClinicApp.SubmitAsync(browser, "/setup", "setup", Fields("AAAAA-AAAAA"));
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains("not the one on the console", page, StringComparison.Ordinal);
        Assert.Contains("value=\"Pier Street Clinic\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain(ClinicApp.Password, page, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync("/setup")).StatusCode);
    }

    [Theory]
    [InlineData("short words", "at least 15 characters")]
    [InlineData("aaaaaaaaaaaaaaaaaaaa", "different characters")]
    [InlineData("momentarm momentarm", "too close")]
    public async Task A_weak_password_is_refused_in_words(string password, string said)
    {
        await using var app = new ClinicApp();
        var browser = app.Browser();
        var fields = Fields(CodeOf(app));
        fields["Form.Password"] = fields["Form.PasswordAgain"] = password;
        var answer = await ClinicApp.SubmitAsync(browser, "/setup", "setup", fields);
        Assert.Contains(said, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync("/setup")).StatusCode);
    }

    [Fact]
    public async Task A_password_of_any_letters_and_128_places_is_taken_whole()
    {
        await using var app = new ClinicApp();
        var password = "  žlutý kůň 🐎 and a saddle" + new string('x', 90);
        var fields = Fields(CodeOf(app));
        fields["Form.Password"] = fields["Form.PasswordAgain"] = password;
        Assert.Equal(HttpStatusCode.Found, (await ClinicApp.SubmitAsync(app.Browser(), "/setup", "setup", fields)).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await ClinicApp.SignInAsync(app.Browser(), ClinicApp.Email, password[..^1])).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await ClinicApp.SignInAsync(app.Browser(), ClinicApp.Email, password.Trim())).StatusCode);
        Assert.Equal(HttpStatusCode.Found, (await ClinicApp.SignInAsync(app.Browser(), ClinicApp.Email, password)).StatusCode);
    }

    [Fact]
    public async Task An_empty_form_names_every_missing_field()
    {
        await using var app = new ClinicApp();
        var answer = await ClinicApp.SubmitAsync(app.Browser(), "/setup", "setup", []);
        var page = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains("Type the set-up code from the console.", page, StringComparison.Ordinal);
        Assert.Contains("Choose the clinic's time zone.", page, StringComparison.Ordinal);
        Assert.Contains("Choose a password.", page, StringComparison.Ordinal);
        Assert.Contains("data-focus-first", page, StringComparison.Ordinal);
    }

    private static string CodeOf(ClinicApp app)
    {
        _ = app.Server;
        return Assert.Single(app.Codes);
    }

    private static Dictionary<string, string> Fields(string code) => new()
    {
        ["Form.Code"] = code,
        ["Form.ClinicName"] = "Pier Street Clinic",
        ["Form.TimeZone"] = "America/Chicago",
        ["Form.YourName"] = "Ada Owner",
        ["Form.Email"] = ClinicApp.Email,
        ["Form.Password"] = ClinicApp.Password,
        ["Form.PasswordAgain"] = ClinicApp.Password,
    };
}
