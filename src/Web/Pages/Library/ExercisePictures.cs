using System.Collections.Concurrent;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Library;

/// <summary>
/// Pictures of the library, drawn once each. The figure has the build of the reference person: a patient's own build is
/// nobody's business on a sheet in a kitchen.
/// </summary>
public sealed class ExercisePictures(ContentLibrary content)
{
    private readonly ConcurrentDictionary<(string, Side, string, bool), Picture> stills = new();
    private readonly ConcurrentDictionary<(string, Side), MovingPicture> moving = new();

    /// <summary>The figure that is drawn.</summary>
    public BodyModel Figure { get; } = content.Body.Build(new Physique());

    /// <summary>End pose with the start as a ghost and an arrow.</summary>
    public Picture Combined(Exercise exercise, Side side, bool gray = false)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return stills.GetOrAdd(
            (exercise.Id, side, "combined", gray),
            _ => Pictures.Combined(Figure, content.Body.Points, exercise.Movement, side, Options(gray)));
    }

    /// <summary>The start (0) or the end (1).</summary>
    public Picture Still(Exercise exercise, Side side, bool end, bool gray = false)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return stills.GetOrAdd(
            (exercise.Id, side, end ? "end" : "start", gray),
            _ => Pictures.Still(Figure, content.Body.Points, exercise.Movement, side, end ? 1 : 0, Options(gray)));
    }

    /// <summary>Frames from start to end.</summary>
    public MovingPicture Moving(Exercise exercise, Side side)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return moving.GetOrAdd(
            (exercise.Id, side),
            _ => Pictures.Moving(Figure, content.Body.Points, exercise.Movement, side, PictureOptions.Usual));
    }

    private static PictureOptions Options(bool gray) =>
        gray ? PictureOptions.Usual with { Palette = Palette.Gray } : PictureOptions.Usual;
}
