using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>Draws movements: one pose, start and end in one picture, or frames to be played.</summary>
public static class Pictures
{
    private const int PathSteps = 6;

    /// <summary>One moment of a movement.</summary>
    /// <param name="model">The body.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side being treated.</param>
    /// <param name="fraction">0 start, 1 end.</param>
    /// <param name="options">Choices.</param>
    /// <returns>The picture.</returns>
    public static Picture Still(
        BodyModel model, SurfacePoints points, Movement movement, Side working, double fraction, PictureOptions options)
    {
        var studio = new Studio(model, points, movement, working, options);
        var figure = studio.Figure(fraction);
        return Labeled(studio, figure, [.. studio.Backdrop([studio.Figure(0), figure]), .. studio.Body(figure)]);
    }

    /// <summary>The end pose, with the start pose as a ghost behind it and an arrow along the real path.</summary>
    /// <param name="model">The body.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side being treated.</param>
    /// <param name="options">Choices.</param>
    /// <returns>The picture; a still for a hold or a motion too small to see.</returns>
    public static Picture Combined(
        BodyModel model, SurfacePoints points, Movement movement, Side working, PictureOptions options)
    {
        var studio = new Studio(model, points, movement, working, options);
        var end = studio.Figure(1);
        if (studio.IsHold)
            return Labeled(studio, end, [.. studio.Backdrop([end]), .. studio.Body(end)]);
        var path = Enumerable.Range(0, PathSteps + 1).Select(i => studio.Figure((double)i / PathSteps)).ToArray();
        SceneShape[] still = [.. studio.Backdrop([path[0], end])];
        SceneShape[] body = [.. studio.Body(end)];
        var arrows = studio.Arrows(path, [.. still, .. body]);
        var shows = arrows.Length > 0;
        return Labeled(
            studio,
            end,
        [
            .. still,
            .. shows && options.Ghost ? studio.Ghost(path[0], end) : [],
            .. body,
            .. shows && options.Arrow ? arrows : [],
        ]);
    }

    /// <summary>One moment of a movement with lines of muscle drawn over the body, to show where they run.</summary>
    /// <param name="muscles">The body's muscles.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side being treated; lines of this side are drawn.</param>
    /// <param name="fraction">0 start, 1 end.</param>
    /// <param name="lines">Ids of the lines.</param>
    /// <param name="options">Choices.</param>
    /// <returns>The picture.</returns>
    public static Picture WithLines(
        MuscleSet muscles, SurfacePoints points, Movement movement, Side working, double fraction, IReadOnlyList<string> lines, PictureOptions options)
    {
        ArgumentNullException.ThrowIfNull(muscles);
        ArgumentNullException.ThrowIfNull(lines);
        var studio = new Studio(muscles.Model, points, movement, working, options);
        var figure = studio.Figure(fraction);
        SceneShape[] shapes = [.. studio.Backdrop([figure]), .. studio.Body(figure), .. studio.Lines(figure, muscles, lines)];
        return studio.Finish([.. shapes, .. studio.Labels(figure, shapes)]);
    }

    /// <summary>Frames from start to end.</summary>
    /// <param name="model">The body.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side being treated.</param>
    /// <param name="options">Choices.</param>
    /// <param name="frames">How many frames, at least 2.</param>
    /// <returns>The moving picture; one frame for a hold.</returns>
    public static MovingPicture Moving(
        BodyModel model, SurfacePoints points, Movement movement, Side working, PictureOptions options, int frames = 9)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(frames, 2);
        var studio = new Studio(model, points, movement, working, options);
        var figures = studio.IsHold
            ? [studio.Figure(0)]
            : Enumerable.Range(0, frames).Select(i => studio.Figure((double)i / (frames - 1))).ToArray();
        var backdrop = studio.Backdrop([figures[0], figures[^1]]);
        var bodies = figures.Select(studio.Body).ToArray();
        var frame = studio.FrameOf(backdrop.Concat(bodies.SelectMany(body => body)));
        string Write(IEnumerable<SceneShape> shapes) =>
            SvgWriter.Inner(frame.Place(shapes, studio.Camera.Flip), options.Palette);
        return new MovingPicture(frame.Width, frame.Height, Write(backdrop), [.. bodies.Select(body => Write(body))]);
    }

    private static Picture Labeled(Studio studio, PlacedFigure figure, SceneShape[] drawn) =>
        studio.Finish([.. drawn, .. studio.Labels(figure, drawn)]);
}
