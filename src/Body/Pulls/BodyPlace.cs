namespace MomentArm.Body;

/// <summary>A place on a limb: a named point, or a place between two named points of the same segment.</summary>
/// <param name="At">Name of a point in content/body/surface-points.json.</param>
/// <param name="Limb">The limb it belongs to; null for points of the midline.</param>
/// <param name="Toward">A second point of the same segment; null for the first point itself.</param>
/// <param name="Fraction">How far from the first point toward the second, 0 to 1.</param>
public sealed record BodyPlace(string At, Limb? Limb, string? Toward = null, double Fraction = 0)
{
    /// <summary>The segment that carries the place and the place in its frame, for a person.</summary>
    /// <param name="model">The person's body.</param>
    /// <param name="points">The named points.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>Segment index and local point, metres.</returns>
    /// <exception cref="ArgumentException">A name is unknown, the two points lie on different segments, or the fraction is not from 0 to 1.</exception>
    public (int Segment, Vec3 Local) On(BodyModel model, SurfacePoints points, Side working)
    {
        ArgumentNullException.ThrowIfNull(points);
        var side = Limb?.On(working);
        var first = points.Resolve(At)[0].On(model, side);
        if (Toward is null)
            return first;
        var second = points.Resolve(Toward)[0].On(model, side);
        if (second.Segment != first.Segment)
            throw new ArgumentException($"\"{At}\" and \"{Toward}\" lie on different parts of the body: name two points of one part.", nameof(points));
        return (first.Segment, first.Local.Toward(second.Local, Quantity.Within(Fraction, 0, 1, "of the way", nameof(Fraction))));
    }
}
