using System.Globalization;

namespace MomentArm.Web.Pages.People;

/// <summary>Days and instants as a clinic's clock and calendar show them.</summary>
public sealed class ClinicTime(Records.Clinic clinic)
{
    private readonly TimeZoneInfo zone =
        TimeZoneInfo.TryFindSystemTimeZoneById(clinic.TimeZone, out var found) ? found : TimeZoneInfo.Utc;

    /// <summary>The clinic's day of an instant.</summary>
    public DateOnly DayOf(DateTime utc) => DateOnly.FromDateTime(Local(utc));

    /// <summary>The clinic's day and time of an instant: "20 Nov 2026, 15:12".</summary>
    public string Stamp(DateTime utc) => Local(utc).ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>"20 Nov 2026".</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"20 Nov", with the year when it isn't this one's.</summary>
    public static string Short(DateOnly day, DateOnly today) =>
        day.ToString(day.Year == today.Year ? "d MMM" : "d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"today", "yesterday", "5 days ago", "3 weeks ago".</summary>
    public static string Ago(DateOnly day, DateOnly today) => (today.DayNumber - day.DayNumber) switch
    {
        < 0 => "in the future",
        0 => "today",
        1 => "yesterday",
        < 21 and var days => FormattableString.Invariant($"{days} days ago"),
        var days => FormattableString.Invariant($"{days / 7} weeks ago"),
    };

    private DateTime Local(DateTime utc) => TimeZoneInfo.ConvertTimeFromUtc(DateTime.SpecifyKind(utc, DateTimeKind.Utc), zone);
}
