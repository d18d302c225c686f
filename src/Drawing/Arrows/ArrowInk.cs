namespace MomentArm.Drawing;

/// <summary>Draws arrows in a size that suits the frame, so that they read alike in a close-up and in a tall picture.</summary>
/// <param name="Size">1 in a frame of 125 picture units height.</param>
internal readonly record struct ArrowInk(double Size)
{
    private const double UsualHeight = 125;

    internal double HeadLength => 7.2 * Size;

    internal double LeastLength => 15 * Size;

    private double Width => 2.1 * Size;

    /// <summary>The ink for a frame of that height.</summary>
    internal static ArrowInk For(double height) => new(Math.Clamp(height / UsualHeight, 0.42, 1.5));

    /// <summary>An arrow along a course.</summary>
    internal IEnumerable<SceneShape> Arrow(IReadOnlyList<PicturePoint> path)
    {
        var tip = path[^1];
        var from = ArrowLine.Cut(path, HeadLength)[^1];
        var length = ArrowLine.Distance(from, tip);
        var (ux, uy) = ((tip.X - from.X) / length, (tip.Y - from.Y) / length);
        var neck = new PicturePoint(tip.X - ux * HeadLength, tip.Y - uy * HeadLength);
        var half = 4.2 * Size;
        yield return new SceneShape
        {
            Name = "arrow", Tone = Tone.Arrow, Role = ShapeRole.Arrow, Line = [.. ArrowLine.Cut(path, HeadLength * 0.7)], LineWidth = Width,
        };
        var round = 0.5 * Size;
        yield return new SceneShape
        {
            Name = "arrowHead",
            Tone = Tone.Arrow,
            Role = ShapeRole.Arrow,
            Loops =
            [
                CircleHull.Of(
                [
                    new Disc(tip.X, tip.Y, 0, round),
                    new Disc(neck.X - uy * half, neck.Y + ux * half, 0, round),
                    new Disc(neck.X + uy * half, neck.Y - ux * half, 0, round),
                ]),
            ],
            Gap = false,
        };
    }

    /// <summary>A short bar across the tip of an arrow: what is pressed against does not give way.</summary>
    internal SceneShape Bar(PicturePoint tip, double ux, double uy)
    {
        var (x, y, half) = (tip.X + 1.9 * Size * ux, tip.Y + 1.9 * Size * uy, 6.2 * Size);
        return new SceneShape
        {
            Name = "arrowBar",
            Tone = Tone.Arrow,
            Role = ShapeRole.Arrow,
            Line = [new PicturePoint(x - uy * half, y + ux * half), new PicturePoint(x + uy * half, y - ux * half)],
            LineWidth = Width * 1.15,
        };
    }
}
