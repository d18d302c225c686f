using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using MomentArm.Records;
using MomentArm.Web.Security;

namespace MomentArm.Web.Hosting;

/// <summary>Two addresses for whoever watches the app: it lives; it can do its work.</summary>
public static class HealthServices
{
    public static IServiceCollection AddHealth(this IServiceCollection services)
    {
        services.AddHealthChecks().AddCheck<DatabaseCheck>("database");
        return services;
    }

    public static void MapHealth(this IEndpointRouteBuilder app)
    {
        app.MapHealthChecks("/health/live", new HealthCheckOptions { Predicate = static _ => false }).Add(OpenEndpoints.Open);
        app.MapHealthChecks("/health/ready").Add(OpenEndpoints.Open);
    }

    private sealed class DatabaseCheck(Database database) : IHealthCheck
    {
        public async Task<HealthCheckResult> CheckHealthAsync(
            HealthCheckContext context, CancellationToken cancellationToken = default) =>
            await database.IsReadyAsync(cancellationToken) ? HealthCheckResult.Healthy() : HealthCheckResult.Unhealthy();
    }
}
