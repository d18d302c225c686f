namespace MomentArm.Web.Security;

public sealed class SecurityHeadersTests
{
    private static readonly string[] Paths =
        ["/", "/sign-in", "/setup", "/about", "/nowhere", "/css/base.css", "/js/shell.js", "/fonts/OFL.txt", "/health/live", "/health/ready"];

    [Fact]
    public async Task Every_answer_carries_the_headers()
    {
        await using var app = new ClinicApp();
        var stranger = app.Browser();
        foreach (var path in Paths)
        {
            await AssertHeadersAsync(stranger, path);
        }

        await app.SetUpAsync();
        var clinician = await app.SignedInBrowserAsync();
        foreach (var path in Paths)
        {
            await AssertHeadersAsync(clinician, path);
        }
    }

    [Fact]
    public async Task The_content_policy_lets_nothing_inline_and_nothing_foreign_in()
    {
        await using var app = new ClinicApp();
        var answer = await app.Browser().GetAsync("/setup");
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("*", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pages_are_never_kept_but_shipped_files_may_be()
    {
        await using var app = new ClinicApp();
        var browser = app.Browser();
        foreach (var page in new[] { "/", "/setup", "/about", "/nowhere", "/health/ready" })
        {
            Assert.Equal("no-store", (await browser.GetAsync(page)).Headers.CacheControl?.ToString());
        }

        Assert.NotEqual(true, (await browser.GetAsync("/css/base.css")).Headers.CacheControl?.NoStore);
    }

    [Fact]
    public async Task Only_https_answers_ask_for_https_from_now_on()
    {
        await using var plain = new ClinicApp();
        Assert.False((await plain.Browser().GetAsync("/setup")).Headers.Contains("Strict-Transport-Security"));
        await using var secure = new ClinicApp { Https = true };
        var answer = await secure.Browser().GetAsync("/setup");
        Assert.Equal("max-age=31536000; includeSubDomains", Assert.Single(answer.Headers.GetValues("Strict-Transport-Security")));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Cookies_are_hidden_from_scripts_and_bound_to_the_host(bool https)
    {
        await using var app = new ClinicApp { Https = https };
        await app.SetUpAsync();
        var browser = app.Browser();
        var cookies = (await browser.GetAsync("/sign-in")).Headers.GetValues("Set-Cookie")
            .Concat((await ClinicApp.SignInAsync(browser, ClinicApp.Email, ClinicApp.Password)).Headers.GetValues("Set-Cookie"))
            .ToList();
        Assert.Equal(2, cookies.Count);
        Assert.All(cookies, cookie =>
        {
            Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("samesite=", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("path=/", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("domain=", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Equal(https, cookie.StartsWith("__Host-", StringComparison.Ordinal));
            Assert.Equal(https, cookie.Contains("; secure", StringComparison.OrdinalIgnoreCase));
        });
    }

    private static async Task AssertHeadersAsync(HttpClient browser, string path)
    {
        var headers = (await browser.GetAsync(path)).Headers;
        string One(string name) =>
            Assert.Single(headers.TryGetValues(name, out var values) ? values : throw new InvalidOperationException($"{path}: no {name}"));
        Assert.Equal(SecurityHeaders.ContentPolicy, One("Content-Security-Policy"));
        Assert.Equal("nosniff", One("X-Content-Type-Options"));
        Assert.Equal("no-referrer", One("Referrer-Policy"));
        Assert.Equal("same-origin", One("Cross-Origin-Opener-Policy"));
        Assert.Equal("same-origin", One("Cross-Origin-Resource-Policy"));
        Assert.Contains("camera=()", One("Permissions-Policy"), StringComparison.Ordinal);
    }
}
