using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>
/// Where the picture is seen from, without perspective. A camera for the left side is the mirror image of the one for the
/// right, so both give the same coordinates; <see cref="Flip"/> says that the finished picture is to be flipped.
/// </summary>
/// <param name="Right">Room direction that points right in the picture.</param>
/// <param name="Up">Room direction that points up in the picture.</param>
/// <param name="Toward">Room direction toward the viewer.</param>
/// <param name="Flip">Whether the picture is flipped when finished.</param>
public sealed record Camera(Vec3 Right, Vec3 Up, Vec3 Toward, bool Flip)
{
    /// <summary>Picture units to the meter.</summary>
    public const double UnitsPerMeter = 100;

    private const double Degree = Math.PI / 180;

    /// <summary>The camera for a view.</summary>
    /// <param name="view">The view an exercise asks for.</param>
    /// <param name="orientation">How the body lies.</param>
    /// <param name="working">The side being treated.</param>
    /// <param name="foot">Whether the picture is close round a foot: then the oblique view shows its inner side with the arch.</param>
    /// <returns>The camera.</returns>
    public static Camera For(ViewKind view, Orientation orientation, Side working, bool foot = false)
    {
        var (turn, height) = orientation switch
        {
            Orientation.Upright when foot && view == ViewKind.Oblique => (112, 24),
            Orientation.Upright => Upright(view),
            Orientation.Supine => Lying(view, 0),
            Orientation.Prone => Lying(view, 10),

            // The right side works: on the left side the face is toward -z, on the right toward +z.
            Orientation.SideLyingOnOther => OnSide(view, 180, -1),
            Orientation.SideLyingOnWorking => OnSide(view, 0, 1),
        };
        var camera = From(turn * Degree, height * Degree);
        return working == Side.Right
            ? camera
            : new Camera(camera.Right.Mirrored, camera.Up.Mirrored, camera.Toward.Mirrored, true);
    }

    /// <summary>Where a point of the room lies in the picture.</summary>
    /// <param name="point">Room point, meters.</param>
    /// <returns>The point in picture units.</returns>
    public PicturePoint Project(Vec3 point) => new(UnitsPerMeter * Right.Dot(point), -UnitsPerMeter * Up.Dot(point));

    /// <summary>A ball of the room as the camera sees it.</summary>
    internal Disc See(Ball ball) => new(
        UnitsPerMeter * Right.Dot(ball.Center),
        -UnitsPerMeter * Up.Dot(ball.Center),
        Toward.Dot(ball.Center),
        UnitsPerMeter * ball.Radius);

    // Turn is measured from the person's right (0) toward where an upright person looks (90); height from level.
    private static (double Turn, double Height) Upright(ViewKind view) => view switch
    {
        ViewKind.Side => (16, 8),
        ViewKind.Front => (90, 7),
        ViewKind.Back => (-90, 7),
        ViewKind.Oblique => (52, 13),
    };

    private static (double Turn, double Height) Lying(ViewKind view, double turn) => view switch
    {
        ViewKind.Side => (turn, 13),
        ViewKind.Front => (0, 60),
        ViewKind.Back => (180, 13),
        ViewKind.Oblique => (35, 24),
    };

    private static (double Turn, double Height) OnSide(ViewKind view, double facing, double sense) => view switch
    {
        ViewKind.Side or ViewKind.Front => (facing, 15),
        ViewKind.Back => (180 - facing, 13),
        ViewKind.Oblique => (facing - sense * 28, 24),
    };

    private static Camera From(double turn, double height)
    {
        var (st, ct) = Math.SinCos(turn);
        var (sh, ch) = Math.SinCos(height);
        var toward = new Vec3(st * ch, sh, ct * ch);
        var right = new Vec3(ct, 0, -st);
        return new Camera(right, toward.Cross(right), toward, false);
    }
}
