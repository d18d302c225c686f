using Microsoft.AspNetCore.Components.Server;
using MomentArm.Web.Security;
using MomentArm.Web.Shell;

namespace MomentArm.Web.Hosting;

/// <summary>Pages: server-rendered, with live parts where a page asks for them.</summary>
public static class LookServices
{
    public static IServiceCollection AddLook(this IServiceCollection services, HouseSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        services.AddRazorComponents().AddInteractiveServerComponents();
        services.AddHttpContextAccessor();
        services.AddAntiforgery(options =>
        {
            options.Cookie.Name = CookieNames.For("csrf", settings);
            options.Cookie.HttpOnly = true;
            options.Cookie.SameSite = SameSiteMode.Strict;
            options.Cookie.SecurePolicy = CookieNames.SecurePolicy(settings);
            options.SuppressXFrameOptionsHeader = true;
        });
        return services;
    }

    /// <summary>Maps shipped files and all pages; only those named in <see cref="OpenEndpoints"/> answer without sign-in.</summary>
    public static void MapLook(this WebApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        app.MapStaticAssets().AllowAnonymous().WithMetadata(new MayBeKeptAttribute());
        app.MapRazorComponents<App>()
            .AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null)
            .Add(OpenEndpoints.Open);
    }
}
