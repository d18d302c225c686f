using MomentArm.Web.Account;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.BodyChart;

/// <summary>The pictures of a visit's body chart.</summary>
public static class ChartEndpoints
{
    public static void MapBodyChart(this IEndpointRouteBuilder app) => app.MapGet("/visits/{visitId:guid}/chart/{view}.svg", Picture);

    /// <summary>Where a picture of a visit's chart is.</summary>
    public static string Path(Guid visitId, ChartView view) => $"/visits/{visitId}/chart/{view.ToString().ToLowerInvariant()}.svg";

    private static async Task<IResult> Picture(Guid visitId, string view, CaseDesk desk, ChartFigures figures, HttpContext http)
    {
        if (!Enum.TryParse<ChartView>(view, true, out var seen) || !Enum.IsDefined(seen)
            || await desk.Stores.Visits.GetAsync(http.User.Acting(), visitId, http.RequestAborted) is not { } visit)
            return Results.NotFound();
        http.Response.Headers.CacheControl = "no-store";
        return Results.Text(figures.Svg(seen, ChartMark.Of(visit)), "image/svg+xml");
    }
}
