using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
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
    private const int MostNamed = 3;

    // By the exercise itself: a clinic's own form may have the id of another clinic's, and goes when it is replaced.
    private readonly ConditionalWeakTable<Exercise, Drawn> drawn = [];

    /// <summary>The figure that is drawn.</summary>
    public BodyModel Figure { get; } = content.Body.Build(new Physique());

    /// <summary>End pose with the start as a ghost and an arrow.</summary>
    public Picture Combined(Exercise exercise, Side side, bool gray = false)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Of(exercise).Stills.GetOrAdd(
            (side, "combined", gray),
            _ => Pictures.Combined(Figure, content.Body.Points, exercise.Movement, side, Options(gray)));
    }

    /// <summary>The start (0) or the end (1).</summary>
    public Picture Still(Exercise exercise, Side side, bool end, bool gray = false)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Of(exercise).Stills.GetOrAdd(
            (side, end ? "end" : "start", gray),
            _ => Pictures.Still(Figure, content.Body.Points, exercise.Movement, side, end ? 1 : 0, Options(gray)));
    }

    /// <summary>The end with the muscles that should work or be stretched tinted and named; null where none is aimed at.</summary>
    public Picture? Named(Exercise exercise, Side side)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var limb = exercise.Movement.Bilateral ? (Limb?)null : Limb.Working;
        Tint[] tints = exercise.Purpose.Loads()
            ? [.. exercise.Loads.Take(MostNamed).Select(a => Tint.Work(a, limb))]
            : [.. exercise.Groups.Take(MostNamed).Select(g => Tint.Stretch(g, limb))];
        tints = [.. tints.DistinctBy(t => t.Area).Select(t => t with { Label = ExerciseText.Words(t.Area) })];
        return tints.Length == 0
            ? null
            : Of(exercise).Stills.GetOrAdd(
                (side, "named", false),
                _ => Pictures.Still(Figure, content.Body.Points, exercise.Movement, side, 1, PictureOptions.Usual with { Tints = [.. tints] }));
    }

    /// <summary>Frames from start to end.</summary>
    public MovingPicture Moving(Exercise exercise, Side side)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Of(exercise).Moving.GetOrAdd(
            side,
            _ => Pictures.Moving(Figure, content.Body.Points, exercise.Movement, side, PictureOptions.Usual));
    }

    private Drawn Of(Exercise exercise) => drawn.GetValue(exercise, _ => new Drawn());

    private static PictureOptions Options(bool gray) =>
        gray ? PictureOptions.Usual with { Palette = Palette.Gray } : PictureOptions.Usual;

    private sealed class Drawn
    {
        internal ConcurrentDictionary<(Side, string, bool), Picture> Stills { get; } = new();

        internal ConcurrentDictionary<Side, MovingPicture> Moving { get; } = new();
    }
}
