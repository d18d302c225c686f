using System.Security.Cryptography;
using Microsoft.Net.Http.Headers;

namespace MomentArm.Web.PatientLinks;

/// <summary>
/// The patient's page at /p/: one shipped file for everyone. Whose program it shows is decided by the part of the address after
/// the number sign, which browsers never send.
/// </summary>
internal static class PatientPage
{
    internal const string Address = "/p/";

    internal static IResult Show(HttpContext context, IWebHostEnvironment environment)
    {
        if (context.Request.Path != Address)
            return Results.Redirect(context.Request.PathBase + Address);
        var file = environment.WebRootFileProvider.GetFileInfo("patient/index.html");
        using var stream = file.CreateReadStream();
        using var kept = new MemoryStream();
        stream.CopyTo(kept);
        var bytes = kept.ToArray();
        context.Response.Headers.CacheControl = "no-cache";
        return Results.File(
            bytes, "text/html; charset=utf-8",
            entityTag: new EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(bytes))[..32]}\""));
    }
}
