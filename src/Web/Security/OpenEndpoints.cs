namespace MomentArm.Web.Security;

/// <summary>
/// The only endpoints that answer without sign-in. Everything else asks for it by the fallback policy; a test compares this
/// list with what the running app offers.
/// </summary>
public static class OpenEndpoints
{
    /// <summary>Route patterns, as written where they are mapped, of pages and endpoints open to anyone.</summary>
    public static IReadOnlyList<string> Patterns { get; } =
    [
        "/setup",
        "/sign-in",
        "/enter-demo",
        "/about",
        "/not-found",
        "/error",
        "/health/live",
        "/health/ready",
        // The patient's own page and what it sends, guarded by the link's token instead of an account.
        "/p",
        "/api/patient/open",
        "/api/patient/session",
        "/api/patient/morning",
    ];

    /// <summary>Whether a route pattern is on the list.</summary>
    public static bool Holds(string? pattern) =>
        pattern is not null && Patterns.Contains("/" + pattern.TrimStart('/'), StringComparer.Ordinal);

    /// <summary>Opens the endpoints on the list, and only those.</summary>
    public static void Open(EndpointBuilder endpoint)
    {
        if (endpoint is RouteEndpointBuilder route && Holds(route.RoutePattern.RawText))
        {
            endpoint.Metadata.Add(new Microsoft.AspNetCore.Authorization.AllowAnonymousAttribute());
        }
    }
}
