using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Program;

/// <summary>
/// Carries a new link's token over one redirect: sealed, for one clinician and one episode, for a quarter of an hour. The token
/// itself is kept nowhere, so afterwards only a new link helps.
/// </summary>
public sealed class FreshLink(IDataProtectionProvider protection)
{
    public static readonly TimeSpan Lifetime = TimeSpan.FromMinutes(15);

    public string Seal(Acting who, Guid episodeId, string token) => Box(who, episodeId).Protect(token, Lifetime);

    /// <summary>The token; null when the seal is foreign, altered or too old.</summary>
    public string? Open(Acting who, Guid episodeId, string? text)
    {
        if (string.IsNullOrEmpty(text))
            return null;
        try
        {
            return Box(who, episodeId).Unprotect(text);
        }
        catch (CryptographicException)
        {
            return null;
        }
    }

    private ITimeLimitedDataProtector Box(Acting who, Guid episodeId)
    {
        ArgumentNullException.ThrowIfNull(who);
        return protection
            .CreateProtector("MomentArm.FreshLink", who.ClinicianId?.ToString("D") ?? "", episodeId.ToString("D"))
            .ToTimeLimitedDataProtector();
    }
}
