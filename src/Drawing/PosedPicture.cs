using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A still picture with the body that it shows, so that places of the body can be pointed at in it.</summary>
/// <param name="Picture">The picture.</param>
/// <param name="Placed">The settled body.</param>
/// <param name="Camera">Where it is seen from.</param>
public sealed record PosedPicture(Picture Picture, PlacedBody Placed, Camera Camera)
{
    private PicturePoint Corner { get; init; }

    /// <summary>Draws one moment of a movement.</summary>
    /// <param name="model">The body.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side being treated.</param>
    /// <param name="fraction">0 start, 1 end.</param>
    /// <param name="options">Choices.</param>
    /// <returns>The picture.</returns>
    public static PosedPicture Of(
        BodyModel model, SurfacePoints points, Movement movement, Side working, double fraction, PictureOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var studio = new Studio(model, points, movement, working, options with { Whole = true });
        var figure = studio.Figure(fraction);
        SceneShape[] shapes = [.. studio.Backdrop([studio.Figure(0), figure]), .. studio.Body(figure)];
        var frame = Frame.Round(shapes, options.Aspect);
        return new PosedPicture(studio.Finish(shapes), figure.Placed, studio.Camera) { Corner = new PicturePoint(frame.Left, frame.Top) };
    }

    /// <summary>Where a point of the room lies in the picture.</summary>
    /// <param name="point">Room point, meters.</param>
    /// <returns>The point in picture units from the upper left corner.</returns>
    public PicturePoint At(Vec3 point)
    {
        var seen = Camera.Project(point);
        var x = seen.X - Corner.X;
        return new PicturePoint(Camera.Flip ? Picture.Width - x : x, seen.Y - Corner.Y);
    }
}
