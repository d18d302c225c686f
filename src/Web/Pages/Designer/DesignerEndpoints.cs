using System.Text;
using MomentArm.Web.Account;

namespace MomentArm.Web.Pages.Designer;

/// <summary>What the designer's pages work with, and the file of a form.</summary>
public static class DesignerEndpoints
{
    public static IServiceCollection AddDesigner(this IServiceCollection services) => services.AddSingleton<FormDesk>();

    public static void MapDesigner(this IEndpointRouteBuilder app) => app.MapGet("/exercises/own/{id}/file", FileAsync);

    private static async Task<IResult> FileAsync(string id, Records.RecordsStores stores, HttpContext http) =>
        await stores.Forms.LatestAsync(http.User.Acting(), id, http.RequestAborted) is { } form
            ? Results.File(Encoding.UTF8.GetBytes(form.Document), "application/json", form.FormId + ".json")
            : Results.NotFound();
}
