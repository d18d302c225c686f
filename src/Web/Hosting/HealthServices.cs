using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using MomentArm.Web.Security;

namespace MomentArm.Web.Hosting;

/// <summary>Two addresses for whoever watches the app: it lives; it can do its work.</summary>
public static class HealthServices
{
    public static IServiceCollection AddHealth(this IServiceCollection services)
    {
        services.AddHealthChecks();
        return services;
    }

    public static void MapHealth(this IEndpointRouteBuilder app)
    {
        app.MapHealthChecks("/health/live", new HealthCheckOptions { Predicate = static _ => false }).Add(OpenEndpoints.Open);
        app.MapHealthChecks("/health/ready").Add(OpenEndpoints.Open);
    }
}
