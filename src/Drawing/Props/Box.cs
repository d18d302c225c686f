using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A box with its sides along the room's axes, as the faces that the camera sees.</summary>
/// <param name="Least">Corner of least coordinates, meters.</param>
/// <param name="Most">Opposite corner.</param>
internal readonly record struct Box(Vec3 Least, Vec3 Most)
{
    internal Vec3 Middle => Least.Toward(Most, 0.5);

    /// <summary>The faces seen, the shaded ones first.</summary>
    internal IEnumerable<SceneShape> Faces(string name, Camera camera, Tone top, Tone front, Tone shade) =>
        Sides(camera.Toward, top, front, shade).Select(side => Face(name, camera, side.Tone, side.Corners));

    /// <summary>The same faces as parts of the room.</summary>
    internal IEnumerable<(Tone Tone, Vec3[] Corners)> Sides(Vec3 toward, Tone top, Tone front, Tone shade)
    {
        var (a, b) = (Least, Most);
        var x = toward.X > 0 ? b.X : a.X;
        var z = toward.Z > 0 ? b.Z : a.Z;
        var facesX = Math.Abs(toward.X) > Math.Abs(toward.Z);
        if (Math.Abs(toward.X) > 0.03)
            yield return (facesX ? front : shade, [new(x, a.Y, a.Z), new(x, b.Y, a.Z), new(x, b.Y, b.Z), new(x, a.Y, b.Z)]);
        if (Math.Abs(toward.Z) > 0.03)
            yield return (facesX ? shade : front, [new(a.X, a.Y, z), new(b.X, a.Y, z), new(b.X, b.Y, z), new(a.X, b.Y, z)]);
        if (toward.Y > 0.03)
            yield return (top, [new(a.X, b.Y, a.Z), new(b.X, b.Y, a.Z), new(b.X, b.Y, b.Z), new(a.X, b.Y, b.Z)]);
    }

    private static SceneShape Face(string name, Camera camera, Tone tone, Vec3[] corners)
    {
        Disc[] discs = [.. corners.Select(corner => camera.See(new Ball(corner, 0)))];
        return new SceneShape
        {
            Name = name,
            Tone = tone,
            Role = ShapeRole.Backdrop,
            Depth = discs.Average(d => d.Depth),
            Loops = [CircleHull.Of(discs)],
            Gap = false,
        };
    }
}
