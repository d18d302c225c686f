using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>Tinted areas as flesh painted over the parts that carry them.</summary>
internal static class TintParts
{
    /// <summary>An area that turns away from the viewer by more than this shows as an outline (cosine).</summary>
    private const double Hidden = -0.3;

    private const double MarkRadius = 0.0032;

    /// <summary>One tinted area of one side.</summary>
    /// <param name="Tint">The tint.</param>
    /// <param name="Shape">Where it lies.</param>
    internal readonly record struct Placed(Tint Tint, AreaShape Shape);

    /// <summary>The areas of all tints; where two tint the same area, the first counts.</summary>
    internal static IEnumerable<Placed> Of(PlacedFigure f, IReadOnlyList<Tint> tints)
    {
        var taken = new HashSet<(BodyArea, Side)>();
        foreach (var tint in tints)
        {
            Side[] sides = AreaShape.IsMidline(tint.Area) ? [f.Working]
                : tint.Limb is { } limb ? [limb.On(f.Working)] : [f.Working, f.Working.Other()];
            foreach (var side in sides)
            {
                if (taken.Add((tint.Area, side)))
                    yield return new Placed(tint, AreaShape.Of(f, tint.Area, side));
            }
        }
    }

    /// <summary>Parts to paint over the flesh.</summary>
    /// <param name="placed">The areas.</param>
    /// <param name="camera">Where from.</param>
    /// <param name="marked">Whether areas carry stripes, across for work and along for stretch, because colors can't tell them apart.</param>
    internal static IEnumerable<(string Under, string Over, BodyPart Part)> Paint(IEnumerable<Placed> placed, Camera camera, bool marked)
    {
        foreach (var (tint, shape) in placed)
        {
            var work = tint.Kind == TintKind.Work;
            var tone = work ? Tone.TintWork : Tone.TintStretch;
            var layers = new List<Layer>();
            if (shape.Outward.Dot(camera.Toward) < Hidden)
            {
                layers.Add(new Layer(tone, Outline(shape.Balls, camera)));
            }
            else
            {
                layers.Add(Layer.Along(tone, shape.Balls));
                if (marked)
                    layers.Add(new Layer(Tone.TintMark, work ? Across(shape.Balls, camera) : Along(shape.Balls, camera), false));
            }

            yield return (shape.Under, shape.Over, new BodyPart("tint", [.. layers]) { Role = ShapeRole.Tint });
        }
    }

    /// <summary>Where a label points: the thickest ball of the area.</summary>
    internal static Vec3 Middle(AreaShape shape) => shape.Balls[1].Center;

    private static Ball[][] Outline(Ball[] balls, Camera camera)
    {
        Ball Edge(int i, double side) => new(balls[i].Center + side * balls[i].Radius * Sideways(balls, i, camera), MarkRadius);
        Ball[] round =
        [
            .. Enumerable.Range(0, balls.Length).Select(i => Edge(i, 1)),
            .. Enumerable.Range(0, balls.Length).Reverse().Select(i => Edge(i, -1)),
        ];
        return [.. round.Select((ball, i) => (Ball[])[ball, round[(i + 1) % round.Length]])];
    }

    private static Ball[][] Across(Ball[] balls, Camera camera)
    {
        const double step = 0.022;
        var stripes = new List<Ball[]>();
        for (var i = 0; i + 1 < balls.Length; i++)
        {
            var (a, b) = (balls[i], balls[i + 1]);
            var count = Math.Max(1, (int)Math.Round((b.Center - a.Center).Length / step));
            for (var k = 0; k < count; k++)
            {
                var t = (k + 0.5) / count;
                var reach = Math.Max(0, a.Radius + (b.Radius - a.Radius) * t - 2.2 * MarkRadius) * Sideways(balls, i, camera);
                var at = a.Center.Toward(b.Center, t);
                stripes.Add([new Ball(at - reach, MarkRadius), new Ball(at + reach, MarkRadius)]);
            }
        }

        return [.. stripes];
    }

    private static Ball[][] Along(Ball[] balls, Camera camera)
    {
        var stripes = new List<Ball[]>();
        foreach (var share in (double[])[-0.55, 0, 0.55])
        {
            for (var i = 0; i + 1 < balls.Length; i++)
                stripes.Add([At(i), At(i + 1)]);

            Ball At(int i) => new(balls[i].Center + share * balls[i].Radius * Sideways(balls, i, camera), MarkRadius);
        }

        return [.. stripes];
    }

    /// <summary>Across the area's course, in the plane of the picture.</summary>
    private static Vec3 Sideways(Ball[] balls, int i, Camera camera)
    {
        var (before, after) = (Math.Max(0, i - 1), Math.Min(balls.Length - 1, i + 1));
        var across = (balls[after].Center - balls[before].Center).Cross(camera.Toward);
        if (across.Length <= 1e-6)
            return camera.Up;

        // To the right in the picture, so that both sides are drawn alike.
        var (right, up) = (Math.Round(across.Dot(camera.Right), 9), across.Dot(camera.Up));
        return (right < 0 || (right == 0 && up < 0) ? -across : across).Normalized();
    }
}
