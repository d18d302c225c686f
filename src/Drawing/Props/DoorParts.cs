using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A closed door that a band is made fast at: leaf, two panels, handle and the mark of the band.</summary>
internal static class DoorParts
{
    private const double HalfWidth = 0.4;
    private const double Thick = 0.05;
    private const double LeastHeight = 1.95;

    /// <summary>The door.</summary>
    /// <param name="at">Where the band is made fast, on the near face of the leaf.</param>
    /// <param name="body">The body, toward which the leaf faces.</param>
    /// <param name="toward">Toward the viewer.</param>
    internal static IEnumerable<BodyPart> Of(Vec3 at, Vec3 body, Vec3 toward)
    {
        var away = at - body;
        var alongX = Math.Abs(away.X) >= Math.Abs(away.Z);
        var sense = (alongX ? away.X : away.Z) >= 0 ? 1 : -1;
        var height = Math.Max(LeastHeight, at.Y + 0.12);

        // Deep along the pull, wide across it.
        Vec3 At(double deep, double y, double wide) => alongX
            ? new Vec3(at.X + sense * deep, y, at.Z + wide)
            : new Vec3(at.X + wide, y, at.Z + sense * deep);
        var (a, b) = (At(0, 0, -HalfWidth), At(Thick, height, HalfWidth));
        var box = new Box(new Vec3(Math.Min(a.X, b.X), 0, Math.Min(a.Z, b.Z)), new Vec3(Math.Max(a.X, b.X), height, Math.Max(a.Z, b.Z)));
        var facing = (At(0, 0, 0) - At(1, 0, 0)).Dot(toward) > 0.05;
        var layers = new List<Layer>
        {
            new(Tone.Prop, [[.. box.Sides(toward, Tone.PropTop, Tone.Prop, Tone.PropShade).SelectMany(side => side.Corners).Select(Point)]]),
        };
        layers.AddRange(box.Sides(toward, Tone.PropTop, Tone.Prop, Tone.PropShade).Select(side => new Layer(side.Tone, [[.. side.Corners.Select(Point)]], false)));
        if (facing)
        {
            layers.Add(Panel(0.12, 0.85));
            layers.Add(Panel(1.05, height - 0.14));
            layers.Add(new Layer(Tone.Weight, [[new Ball(At(-0.02, 0.98, 0.32), 0.02), new Ball(At(-0.02, 0.98, 0.24), 0.014)]], false));
        }

        layers.Add(new Layer(Tone.Weight, [[new Ball(at + new Vec3(0, 0.014, 0), 0.024), new Ball(at - new Vec3(0, 0.014, 0), 0.024)]], false));
        yield return new BodyPart("door", [.. layers])
        {
            Role = ShapeRole.Held,
            Reach = [.. from i in Enumerable.Range(0, 12) from w in (double[])[-0.3, -0.1, 0.1, 0.3] select new Ball(At(Thick / 2, height * i / 11, w), 0.08)],
        };

        Layer Panel(double low, double high) => new(Tone.PropTop, [[Point(At(0, low, -0.29)), Point(At(0, low, 0.29)), Point(At(0, high, 0.29)), Point(At(0, high, -0.29))]], false);
        static Ball Point(Vec3 at) => new(at, 0);
    }
}
