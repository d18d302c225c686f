using System.Text;
using MomentArm.Content;
using MomentArm.Web.Account;

namespace MomentArm.Web.Pages.Designer;

/// <summary>What the designer's pages work with, and the file of a form.</summary>
public static class DesignerEndpoints
{
    public static IServiceCollection AddDesigner(this IServiceCollection services) => services.AddSingleton<FormDesk>();

    public static void MapDesigner(this IEndpointRouteBuilder app)
    {
        app.MapGet("/exercises/own/{id}/file", FileAsync);
        app.MapGet("/exercises/own/drafts/{name}/file", DraftFileAsync);
    }

    private static async Task<IResult> FileAsync(string id, FormDesk forms, HttpContext http) =>
        await forms.RowAsync(http.User.Acting(), id) is { } form ? File(form.Document, form.FormId) : Results.NotFound();

    /// <summary>A draft as a file that can be taken in again; one that can't be read just as it is kept.</summary>
    private static async Task<IResult> DraftFileAsync(string name, Records.RecordsStores stores, HttpContext http) =>
        await stores.Drafts.GetAsync(http.User.Acting(), FormDesk.DraftKey(name), http.RequestAborted) is { } row
            ? File(FormDesk.ReadDraft(row).Draft is { } draft ? OwnForm.Write(draft.Form) : row.Text, "draft-" + name)
            : Results.NotFound();

    private static IResult File(string text, string name) => Results.File(Encoding.UTF8.GetBytes(text), "application/json", name + ".json");
}
