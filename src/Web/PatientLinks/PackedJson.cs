using System.IO.Compression;
using System.Text.Json;
using Microsoft.Net.Http.Headers;

namespace MomentArm.Web.PatientLinks;

/// <summary>
/// An answer with pictures, compressed for the phone when it takes that. Nothing the sender could steer stands beside a secret in
/// it, so its length tells nothing.
/// </summary>
internal sealed class PackedJson<T>(T value) : IResult
{
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var response = httpContext.Response;
        response.ContentType = "application/json; charset=utf-8";
        response.Headers.Vary = HeaderNames.AcceptEncoding;
        if (!httpContext.Request.Headers.AcceptEncoding.ToString().Contains("gzip", StringComparison.OrdinalIgnoreCase))
        {
            await JsonSerializer.SerializeAsync(response.Body, value, PatientRequests.Plain, httpContext.RequestAborted);
            return;
        }

        response.Headers.ContentEncoding = "gzip";
        await using var packed = new GZipStream(response.Body, CompressionLevel.Fastest);
        await JsonSerializer.SerializeAsync(packed, value, PatientRequests.Plain, httpContext.RequestAborted);
    }
}
