using System.Globalization;

namespace MomentArm.Web.Pages.Program;

/// <summary>Instants as the clinic's clock shows them.</summary>
public static class ClinicTime
{
    /// <summary>Such as "3 Mar 2026, 10:42".</summary>
    public static string Said(DateTime utc, Records.Clinic clinic)
    {
        ArgumentNullException.ThrowIfNull(clinic);
        var zone = TimeZoneInfo.TryFindSystemTimeZoneById(clinic.TimeZone, out var found) ? found : TimeZoneInfo.Utc;
        return TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc), zone)
            .ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);
    }
}
