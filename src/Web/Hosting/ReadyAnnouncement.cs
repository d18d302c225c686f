using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace MomentArm.Web.Hosting;

/// <summary>Says on the console, once the app takes requests, where it is.</summary>
public static class ReadyAnnouncement
{
    public static void AnnounceWhenReady(this WebApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses ?? [];
            foreach (var address in addresses)
                Console.WriteLine($"MomentArm is ready: {address}   (Ctrl+C stops it)");
        });
    }
}
