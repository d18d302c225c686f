using System.Security.Cryptography;
using System.Text;
using System.Threading.RateLimiting;

namespace MomentArm.Web.PatientLinks;

/// <summary>
/// How often the patient's page may ask: per link, and per address so that guessing tokens is slow. A waiting room shares one
/// address, hence the wider limit there.
/// </summary>
internal sealed class PatientLimits : IDisposable
{
    internal const int OpensPerLink = 40;
    internal const int LogsPerLink = 120;
    internal const int OpensPerAddress = 400;
    internal const int LogsPerAddress = 1200;

    private readonly PartitionedRateLimiter<string> openLink = Hourly(OpensPerLink);
    private readonly PartitionedRateLimiter<string> openAddress = Hourly(OpensPerAddress);
    private readonly PartitionedRateLimiter<string> logLink = Hourly(LogsPerLink);
    private readonly PartitionedRateLimiter<string> logAddress = Hourly(LogsPerAddress);

    /// <summary>Whether one more opening is within both limits.</summary>
    internal bool MayOpen(HttpContext context, string token) => Take(openAddress, openLink, context, token);

    /// <summary>Whether one more report is within both limits.</summary>
    internal bool MayReport(HttpContext context, string token) => Take(logAddress, logLink, context, token);

    public void Dispose()
    {
        openLink.Dispose();
        openAddress.Dispose();
        logLink.Dispose();
        logAddress.Dispose();
    }

    private static bool Take(
        PartitionedRateLimiter<string> byAddress, PartitionedRateLimiter<string> byLink, HttpContext context, string token)
    {
        using var address = byAddress.AttemptAcquire(context.Connection.RemoteIpAddress?.ToString() ?? "here");
        if (!address.IsAcquired)
            return false;

        // The token itself is kept nowhere, not even here.
        using var link = byLink.AttemptAcquire(Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(token))));
        return link.IsAcquired;
    }

    private static PartitionedRateLimiter<string> Hourly(int permits) => PartitionedRateLimiter.Create<string, string>(
        key => RateLimitPartition.GetFixedWindowLimiter(
            key, _ => new FixedWindowRateLimiterOptions { PermitLimit = permits, Window = TimeSpan.FromHours(1) }));
}
