using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Drawing;
using MomentArm.Prescribing;
using MomentArm.Web.Account;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Library;

/// <summary>The frames of a moving picture, fetched when it is played.</summary>
public static class LibraryEndpoints
{
    public static IServiceCollection AddLibrary(this IServiceCollection services)
    {
        services.AddSingleton<ExercisePictures>();
        services.AddSingleton<ReferenceLoads>();
        services.AddSingleton<LibraryNumbers>();
        services.AddSingleton<Education.CardPictures>();
        services.AddSingleton<BodyChart.ChartFigures>();
        return services;
    }

    public static void MapLibrary(this IEndpointRouteBuilder app)
    {
        app.MapGet("/exercises/{id}/frames/{side}", Frames);
        app.MapGet("/exercises/{id}/picture/{side}", Picture);
    }

    /// <summary>Where an exercise's picture is; the content's version makes it another address when the poses change.</summary>
    public static string PicturePath(ClinicLibrary library, Exercise exercise, Side side, PictureMoment moment = PictureMoment.Combined, bool gray = false)
    {
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(exercise);
        return $"/exercises/{exercise.Id}/picture/{ExerciseText.Path(side)}?of={library.VersionOf(exercise)}"
            + (moment == PictureMoment.Combined ? "" : $"&moment={ExerciseText.Words(moment)}") + (gray ? "&palette=gray" : "");
    }

    /// <summary>Where an exercise's frames are.</summary>
    public static string FramesPath(Exercise exercise, Side side)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return $"/exercises/{exercise.Id}/frames/{ExerciseText.Path(side)}";
    }

    private static async Task<IResult> Frames(string id, string side, ClinicLibraries libraries, ExercisePictures pictures, HttpContext http)
    {
        if ((await libraries.ForAsync(http.User.Acting(), http.RequestAborted)).Exercise(id) is not { } exercise || ExerciseText.SideOf(side) is not { } working)
            return Results.NotFound();
        var moving = pictures.Moving(exercise, working);
        return Results.Json(new
        {
            viewBox = moving.ViewBox,
            frames = moving.Frames.Select(frame => moving.Backdrop + frame),
            dose = new { exercise.Dose.OutSeconds, exercise.Dose.HoldSeconds, exercise.Dose.BackSeconds },
        });
    }

    private static async Task<IResult> Picture(
        string id, string side, ClinicLibraries libraries, ExercisePictures pictures, HttpContext http, string? moment = null, string? palette = null)
    {
        if ((await libraries.ForAsync(http.User.Acting(), http.RequestAborted)).Exercise(id) is not { } exercise || ExerciseText.SideOf(side) is not { } working)
            return Results.NotFound();
        var gray = palette == "gray";
        var picture = moment switch
        {
            "start" => pictures.Still(exercise, working, false, gray),
            "end" => pictures.Still(exercise, working, true, gray),
            "named" => pictures.Named(exercise, working) ?? pictures.Combined(exercise, working),
            _ => pictures.Combined(exercise, working, gray),
        };
        http.Response.Headers.CacheControl = "private, max-age=86400";
        return Results.Text(SvgWriter.Document(picture, exercise.Name, ""), "image/svg+xml");
    }
}

/// <summary>Which moment of an exercise a picture shows.</summary>
public enum PictureMoment
{
    /// <summary>The start.</summary>
    Start,

    /// <summary>The end.</summary>
    End,

    /// <summary>The end with the start as a ghost.</summary>
    Combined,

    /// <summary>The end with muscles tinted and named.</summary>
    Named,
}
