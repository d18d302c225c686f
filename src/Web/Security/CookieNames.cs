using MomentArm.Web.Hosting;

namespace MomentArm.Web.Security;

/// <summary>
/// Names and safety of our cookies. With https the name begins with __Host-, which browsers only take from this very host over
/// https; on a plain http address (one's own computer) they would refuse it.
/// </summary>
public static class CookieNames
{
    public static string For(string name, HouseSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return (settings.Https ? "__Host-momentarm-" : "momentarm-") + name;
    }

    public static CookieSecurePolicy SecurePolicy(HouseSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return settings.Https ? CookieSecurePolicy.Always : CookieSecurePolicy.SameAsRequest;
    }
}
