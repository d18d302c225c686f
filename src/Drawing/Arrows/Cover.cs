namespace MomentArm.Drawing;

/// <summary>What of the picture the drawn figure covers, roughly: to place arrows where they are seen.</summary>
internal sealed class Cover
{
    private readonly Disc[] discs;

    /// <summary>The cover of parts.</summary>
    internal Cover(IEnumerable<BodyPart> parts, Camera camera) =>
        discs = [.. parts.Where(part => part.Name != "seam").SelectMany(part => PaintOrder.Samples(part, camera))];

    /// <summary>The share of points that the figure covers, 0 to 1.</summary>
    internal double Of(IReadOnlyList<PicturePoint> points) => (double)points.Count(Covers) / points.Count;

    private bool Covers(PicturePoint at)
    {
        foreach (var disc in discs)
        {
            var (dx, dy) = (disc.X - at.X, disc.Y - at.Y);
            if (dx * dx + dy * dy < disc.R * disc.R)
                return true;
        }

        return false;
    }
}
