using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A tilted board as a wedge under the contacts that stand on it.</summary>
internal static class BoardParts
{
    internal static IEnumerable<SceneShape> Of(PlacedFigure[] figures, Camera camera)
    {
        var on = figures.SelectMany(f => f.Placed.Contacts).Where(c => c.Contact.Surface == SurfaceKind.Board).ToArray();
        if (on.Length == 0)
            return [];
        var (at, normal) = (on[0].Point, on[0].Normal);
        double Height(double x, double z) => Math.Max(0.012, at.Y - (normal.X * (x - at.X) + normal.Z * (z - at.Z)) / normal.Y);

        // Room for the toes, which reach farther than what touches.
        var (x0, x1) = (on.Min(c => c.Point.X) - 0.07, on.Max(c => c.Point.X) + 0.13);
        var (z0, z1) = (on.Min(c => c.Point.Z) - 0.1, on.Max(c => c.Point.Z) + 0.1);
        Vec3 Top(double x, double z) => new(x, Height(x, z), z);
        Vec3 Foot(double x, double z) => new(x, 0, z);
        Vec3[] SideAt(double z) => [Foot(x0, z), Top(x0, z), Top(x1, z), Foot(x1, z)];
        Vec3[] EndAt(double x) => [Foot(x, z0), Top(x, z0), Top(x, z1), Foot(x, z1)];

        var (x, z) = (camera.Toward.X > 0 ? x1 : x0, camera.Toward.Z > 0 ? z1 : z0);
        var facesX = Math.Abs(camera.Toward.X) > Math.Abs(camera.Toward.Z);
        var faces = new List<SceneShape>();
        Vec3[] top = [Top(x0, z0), Top(x0, z1), Top(x1, z1), Top(x1, z0)];
        if (normal.Dot(camera.Toward) > 0.02)
            faces.Add(Face(top, Tone.PropTop, camera));
        if (Math.Abs(camera.Toward.X) > 0.03)
            faces.Add(Face(EndAt(x), facesX ? Tone.Prop : Tone.PropShade, camera));
        if (Math.Abs(camera.Toward.Z) > 0.03)
            faces.Add(Face(SideAt(z), facesX ? Tone.PropShade : Tone.Prop, camera));
        return faces;
    }

    private static SceneShape Face(Vec3[] corners, Tone tone, Camera camera) => new()
    {
        Name = "board",
        Tone = tone,
        Role = ShapeRole.Backdrop,
        Loops = [CircleHull.Of([.. corners.Select(corner => camera.See(new Ball(corner, 0)))])],
        Gap = false,
    };
}
