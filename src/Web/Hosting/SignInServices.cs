using Microsoft.AspNetCore.Authentication.Cookies;
using MomentArm.Web.Security;
using Microsoft.AspNetCore.Authorization;

namespace MomentArm.Web.Hosting;

public static class SignInServices
{
    public static IServiceCollection AddSignIn(this IServiceCollection services, HouseSettings settings)
    {
        services.AddAuthentication(CookieAuthenticationDefaults.AuthenticationScheme).AddCookie(o => { o.LoginPath = "/sign-in"; o.Cookie.Name = CookieNames.For("auth", settings); });
        services.AddAuthorizationBuilder().SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().Build());
        services.AddCascadingAuthenticationState();
        return services;
    }
}
