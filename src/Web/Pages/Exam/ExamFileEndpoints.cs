using Microsoft.Net.Http.Headers;
using MomentArm.Records;
using MomentArm.Web.Account;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Photos and files of visits, to those of the clinic and nobody else.</summary>
public static class ExamFileEndpoints
{
    /// <summary>Where a file is read.</summary>
    public static string Address(Guid attachmentId) => $"/files/{attachmentId}";

    public static void MapExamFiles(this IEndpointRouteBuilder app)
    {
        ArgumentNullException.ThrowIfNull(app);
        app.MapGet("/files/{id:guid}", static async (Guid id, HttpContext http, CaseDesk desk) =>
        {
            var file = await desk.Stores.Attachments.GetAsync(http.User.Acting(), id, http.RequestAborted);
            if (file is null)
                return Results.NotFound();
            // Nothing of it may be kept or run: no-store and nosniff stand on every answer; a document is saved, a photo is shown.
            var disposition = new ContentDispositionHeaderValue(file.MediaType.StartsWith("image/", StringComparison.Ordinal) ? "inline" : "attachment");
            disposition.SetHttpFileName(file.Name);
            http.Response.Headers.ContentDisposition = disposition.ToString();
            return Results.Bytes(file.Content, file.MediaType);
        });
    }
}
