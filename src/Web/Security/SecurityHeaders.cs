namespace MomentArm.Web.Security;

/// <summary>Headers that tell the browser what this app never does. They stand on every response.</summary>
public static class SecurityHeaders
{
    /// <summary>
    /// No script or style written into a page, nothing from another place, no frames. The live connection of page parts is a
    /// web socket of the same origin, which 'self' covers.
    /// </summary>
    public const string ContentPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; "
        + "connect-src 'self'; manifest-src 'self'; worker-src 'self'; media-src 'self'; form-action 'self'; "
        + "base-uri 'self'; object-src 'none'; frame-ancestors 'none'";

    private const string OneYear = "max-age=31536000; includeSubDomains";

    public static IApplicationBuilder UseSecurityHeaders(this IApplicationBuilder app)
    {
        ArgumentNullException.ThrowIfNull(app);
        return app.Use(static (context, next) =>
        {
            context.Response.OnStarting(static state => Write((HttpContext)state), context);
            return next(context);
        });
    }

    private static Task Write(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = ContentPolicy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), screen-wake-lock=(self)";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        if (context.Request.IsHttps)
        {
            headers.StrictTransportSecurity = OneYear;
        }

        if (!MayBeKept(context))
        {
            headers.CacheControl = "no-store";
        }

        return Task.CompletedTask;
    }

    /// <summary>Only shipped files, and endpoints that say so, may be kept by a browser; never a page.</summary>
    private static bool MayBeKept(HttpContext context) =>
        context.Response.StatusCode < 400
        && (context.GetEndpoint()?.Metadata.GetMetadata<MayBeKeptAttribute>() is not null);
}
