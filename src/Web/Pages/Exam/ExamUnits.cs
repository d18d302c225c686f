using MomentArm.Exam;
using MomentArm.Web.Hosting;
using MomentArm.Web.Security;

namespace MomentArm.Web.Pages.Exam;

/// <summary>The units a user works in, kept in this browser. What is stored never depends on it.</summary>
public static class ExamUnits
{
    private const string Name = "units";

    /// <summary>The units of whoever asks.</summary>
    public static UnitChoice Of(HttpContext http, HouseSettings settings)
    {
        ArgumentNullException.ThrowIfNull(http);
        return http.Request.Cookies[CookieNames.For(Name, settings)] == "us" ? UnitChoice.Us : UnitChoice.Metric;
    }

    /// <summary>Keeps a choice for a year.</summary>
    public static void Keep(HttpContext http, HouseSettings settings, UnitChoice choice)
    {
        ArgumentNullException.ThrowIfNull(http);
        http.Response.Cookies.Append(CookieNames.For(Name, settings), choice == UnitChoice.Us ? "us" : "metric", new CookieOptions
        {
            HttpOnly = true, Secure = settings.Https || http.Request.IsHttps, SameSite = SameSiteMode.Lax, Path = "/", IsEssential = true,
            MaxAge = TimeSpan.FromDays(365),
        });
    }
}
