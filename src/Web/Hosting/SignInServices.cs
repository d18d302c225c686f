using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Identity;
using MomentArm.Records;
using MomentArm.Web.Account;
using MomentArm.Web.Security;

namespace MomentArm.Web.Hosting;

/// <summary>Who may come in: accounts, the cookie, and the rule that everything asks for it.</summary>
public static class SignInServices
{
    private const int TriesPerMinute = 30;

    public static IServiceCollection AddSignIn(
        this IServiceCollection services, IdentityBuilder accounts, HouseSettings settings)
    {
        ArgumentNullException.ThrowIfNull(accounts);
        ArgumentNullException.ThrowIfNull(settings);
        AddAccounts(accounts);
        AddCookie(services, settings);
        services.AddAuthorizationBuilder().SetFallbackPolicy(
            new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
        services.AddCascadingAuthenticationState();
        services.AddScoped<AuthenticationStateProvider, CircuitSignIn>();
        services.AddScoped<SignInDesk>();
        services.AddScoped<SetUpDesk>();
        services.AddSingleton(new SetUpCode(code => Console.WriteLine(
            $"First set-up: open /setup in the browser and type this code: {code}")));
        services.AddHostedService<SetUpAnnouncement>();
        services.AddRateLimiter(LimitTries);
        return services;
    }

    private static void AddAccounts(IdentityBuilder accounts)
    {
        accounts
            .AddPasswordValidator<PasswordRules>()
            .AddClaimsPrincipalFactory<ClinicianClaims>()
            .AddSignInManager();
        accounts.Services.Configure<IdentityOptions>(options => options.Password.RequiredLength = PasswordRules.Shortest);
        accounts.Services.Configure<SecurityStampValidatorOptions>(
            options => options.ValidationInterval = TimeSpan.FromMinutes(1));
    }

    private static void AddCookie(IServiceCollection services, HouseSettings settings)
    {
        services.AddDataProtection()
            .SetApplicationName("MomentArm")
            .PersistKeysToFileSystem(OwnFolder(settings.KeysPath));
        services.AddAuthentication(IdentityConstants.ApplicationScheme)
            .AddIdentityCookies(cookies => cookies.ApplicationCookie!.Configure(options =>
            {
                options.Cookie.Name = CookieNames.For("auth", settings);
                options.Cookie.HttpOnly = true;
                options.Cookie.SameSite = SameSiteMode.Lax;
                options.Cookie.SecurePolicy = CookieNames.SecurePolicy(settings);
                options.LoginPath = "/sign-in";
                options.LogoutPath = "/sign-out";
                options.AccessDeniedPath = "/not-found";
                options.ExpireTimeSpan = SignInDesk.LongestRest;
                options.SlidingExpiration = true;
                options.Events.OnValidatePrincipal = EndLongSessions;
            }));
    }

    /// <summary>The keys that seal the cookies: in a folder only this program's user may read.</summary>
    private static DirectoryInfo OwnFolder(string path) => OperatingSystem.IsWindows()
        ? Directory.CreateDirectory(path)
        : Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);

    private static async Task EndLongSessions(CookieValidatePrincipalContext context)
    {
        var clock = context.HttpContext.RequestServices.GetRequiredService<TimeProvider>();
        var known = context.Properties.Items.TryGetValue(SignInDesk.StartedKey, out var text)
            & DateTimeOffset.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.RoundtripKind, out var started);
        if (!known || clock.GetUtcNow() - started > SignInDesk.LongestSession)
        {
            context.RejectPrincipal();
            return;
        }

        await SecurityStampValidator.ValidatePrincipalAsync(context);
    }

    /// <summary>Guessing is slowed per address, beside the lock on each account.</summary>
    private static void LimitTries(Microsoft.AspNetCore.RateLimiting.RateLimiterOptions options)
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(context =>
        {
            var guessing = HttpMethods.IsPost(context.Request.Method)
                && (context.Request.Path == "/sign-in" || context.Request.Path == "/setup");
            return guessing
                ? RateLimitPartition.GetFixedWindowLimiter(
                    context.Connection.RemoteIpAddress?.ToString() ?? "here",
                    _ => new FixedWindowRateLimiterOptions { PermitLimit = TriesPerMinute, Window = TimeSpan.FromMinutes(1) })
                : RateLimitPartition.GetNoLimiter("");
        });
    }
}
