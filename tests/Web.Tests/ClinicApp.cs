using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using MomentArm.Records;
using MomentArm.Web.Account;

namespace MomentArm.Web;

/// <summary>The app in this process, on a fresh database of its own, as it runs in a clinic.</summary>
public sealed partial class ClinicApp : WebApplicationFactory<Program>
{
    public const string Password = "four words in a row";
    public const string Email = "owner@clinic.example";

    private readonly string folder = Directory.CreateTempSubdirectory("momentarm-web-").FullName;
    private readonly List<string> codes = [];

    /// <summary>Runs with https settings and addresses.</summary>
    public bool Https { get; init; }

    /// <summary>The environment the app believes to be in.</summary>
    public string Environment { get; init; } = "Production";

    /// <summary>Where the app's clock stands; null for the real one.</summary>
    public DateTime? Now { get; init; }

    /// <summary>The set-up codes the console has shown, oldest first.</summary>
    public IReadOnlyList<string> Codes => codes;

    /// <summary>A browser that keeps cookies but does not follow redirects, so that tests see them.</summary>
    public HttpClient Browser() => CreateClient(new WebApplicationFactoryClientOptions
    {
        AllowAutoRedirect = false,
        BaseAddress = new Uri(Https ? "https://localhost" : "http://localhost"),
    });

    /// <summary>Sets the clinic up without going through the page.</summary>
    public async Task SetUpAsync(bool demo = false)
    {
        await using var scope = Services.CreateAsyncScope();
        var outcome = await scope.ServiceProvider.GetRequiredService<ClinicSetup>().CreateFirstAsync(
            new ClinicDetails("Pier Street Clinic", "America/Chicago", IsDemo: demo),
            new ClinicianDetails("Ada Owner", Email, Password));
        Assert.Empty(outcome.Faults);
    }

    public async Task<HttpClient> SignedInBrowserAsync()
    {
        var browser = Browser();
        var answer = await SignInAsync(browser, Email, Password);
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        return browser;
    }

    public static Task<HttpResponseMessage> SignInAsync(HttpClient browser, string email, string password, string path = "/sign-in") =>
        SubmitAsync(browser, path, "sign-in", new() { ["Form.Email"] = email, ["Form.Password"] = password });

    /// <summary>Loads a page, and sends its named form with the token the page holds.</summary>
    public static async Task<HttpResponseMessage> SubmitAsync(
        HttpClient browser, string path, string handler, Dictionary<string, string> fields)
    {
        var fault = Token().Match(await browser.GetStringAsync(path));
        Assert.True(fault.Success, "The page holds no form token.");
        fields["__RequestVerificationToken"] = fault.Groups[1].Value;
        fields["_handler"] = handler;
        return await browser.PostAsync(path, new FormUrlEncodedContent(fields));
    }

    /// <summary>The token of the first form of a page.</summary>
    public static string TokenIn(string page) => Token().Match(page).Groups[1].Value;

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment(Environment);
        builder.UseSetting("MomentArm:Database", Path.Combine(folder, "clinic.db"));
        builder.UseSetting("Logging:LogLevel:Default", "Error");
        builder.UseSetting("Logging:LogLevel:Microsoft", "Error");
        builder.UseSetting("Logging:LogLevel:Microsoft.Hosting.Lifetime", "Error");
        builder.UseSetting("MomentArm:Https", Https ? "true" : "false");
        builder.UseStaticWebAssets();
        builder.ConfigureTestServices(services =>
        {
            services.Replace(ServiceDescriptor.Singleton(new SetUpCode(codes.Add)));
            if (Now is { } utc)
                services.Replace(ServiceDescriptor.Singleton<TimeProvider>(new FixedClock(utc)));
        });
    }

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex Token();
}
