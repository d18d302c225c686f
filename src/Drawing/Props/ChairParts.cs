using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A plain chair with four legs and a back.</summary>
internal static class ChairParts
{
    private const double HalfWidth = 0.21;
    private const double Thickness = 0.035;

    /// <summary>A chair to sit on, facing where an upright person looks (+x).</summary>
    /// <param name="seat">Where the sit bones touch the seat's top.</param>
    /// <param name="camera">Where from.</param>
    internal static IEnumerable<SceneShape> Seat(Vec3 seat, Camera camera) =>
        Build(seat.X - 0.19, seat.X + 0.22, true, seat.Y, seat.Z, camera);

    /// <summary>A chair whose back a hand holds; its seat points away from the person.</summary>
    /// <param name="hand">The hand.</param>
    /// <param name="person">The person's pelvis.</param>
    /// <param name="camera">Where from.</param>
    internal static IEnumerable<SceneShape> Support(Vec3 hand, Vec3 person, Camera camera)
    {
        var ahead = hand.X >= person.X;
        var (back, front) = ahead ? (hand.X - 0.02, hand.X + 0.38) : (hand.X - 0.38, hand.X + 0.02);
        return Build(back, front, ahead, 0.45, hand.Z, camera, hand.Y - 0.025);
    }

    /// <summary>A chair on whose seat a leg rests; its back stands beyond it.</summary>
    /// <param name="rest">Where the leg touches the seat's top.</param>
    /// <param name="person">The person's pelvis.</param>
    /// <param name="camera">Where from.</param>
    internal static IEnumerable<SceneShape> Rest(Vec3 rest, Vec3 person, Camera camera)
    {
        var ahead = rest.X >= person.X;
        var (x0, x1) = ahead ? (rest.X - 0.12, rest.X + 0.29) : (rest.X - 0.29, rest.X + 0.12);
        return Build(x0, x1, !ahead, rest.Y, rest.Z, camera);
    }

    private static IEnumerable<SceneShape> Build(
        double x0, double x1, bool backAtLeast, double height, double z, Camera camera, double? backHeight = null)
    {
        var top = backHeight ?? height + 0.42;
        const double leg = 0.034;
        var back = backAtLeast ? x0 : x1 - leg;
        var boxes = new List<Box>
        {
            new(new Vec3(x0, height - Thickness, z - HalfWidth), new Vec3(x1, height, z + HalfWidth)),
            new(new Vec3(back, top - 0.17, z - HalfWidth), new Vec3(back + leg * 0.7, top, z + HalfWidth)),
        };
        foreach (var legX in (double[])[x0, x1 - leg])
        {
            foreach (var legZ in (double[])[z - HalfWidth, z + HalfWidth - leg])
            {
                boxes.Add(new(new Vec3(legX, 0, legZ), new Vec3(legX + leg, height - Thickness, legZ + leg)));
                if (legX == back)
                    boxes.Add(new(new Vec3(legX, height, legZ), new Vec3(legX + leg * 0.7, top, legZ + leg)));
            }
        }

        return boxes
            .OrderBy(box => Math.Round(camera.Toward.Dot(box.Middle), 6))
            .ThenBy(box => camera.Project(box.Middle).X)
            .SelectMany(box => box.Faces("chair", camera, Tone.PropTop, Tone.Prop, Tone.PropShade));
    }
}
