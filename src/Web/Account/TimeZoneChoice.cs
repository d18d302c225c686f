using System.Globalization;

namespace MomentArm.Web.Account;

/// <summary>The time zones to choose from, as cities with their distance from universal time in winter.</summary>
public static class TimeZoneChoice
{
    public static IReadOnlyList<(string Id, string Name)> All() =>
        [.. TimeZoneInfo.GetSystemTimeZones()
            .Where(zone => zone.HasIanaId && (zone.Id == "UTC" || zone.Id.Contains('/', StringComparison.Ordinal)))
            .Where(zone => !zone.Id.StartsWith("Etc/", StringComparison.Ordinal))
            .OrderBy(zone => zone.Id, StringComparer.Ordinal)
            .Select(zone => (zone.Id, Name(zone)))];

    public static bool Exists(string? id) => id is not null && TimeZoneInfo.TryFindSystemTimeZoneById(id, out _);

    private static string Name(TimeZoneInfo zone)
    {
        var offset = zone.BaseUtcOffset;
        var sign = offset < TimeSpan.Zero ? "−" : "+";
        return string.Create(
            CultureInfo.InvariantCulture, $"{zone.Id.Replace('_', ' ')} (UTC{sign}{offset.Duration():hh\\:mm})");
    }
}
