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
        "/p/{**rest}",
        "/api/p/{**rest}",
    ];

    /// <summary>Whether a route pattern is on the list. The patient's endpoints may be mapped under their two prefixes.</summary>
    public static bool Holds(string? pattern)
    {
        if (pattern is null)
        {
            return false;
        }

        var path = "/" + pattern.TrimStart('/');
        return Patterns.Contains(path, StringComparer.Ordinal)
            || path.StartsWith("/p/", StringComparison.Ordinal)
            || path.StartsWith("/api/p/", StringComparison.Ordinal);
    }

    /// <summary>Opens the endpoints on the list, and only those.</summary>
    public static void Open(EndpointBuilder endpoint)
    {
        if (endpoint is RouteEndpointBuilder route && Holds(route.RoutePattern.RawText))
        {
            endpoint.Metadata.Add(new Microsoft.AspNetCore.Authorization.AllowAnonymousAttribute());
        }
    }
}
