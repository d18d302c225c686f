using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Named points of the body's surface, for contacts, loads and props, and groups of them (foot = heel and ball).</summary>
/// <param name="Points">Points by name.</param>
/// <param name="Groups">Groups by name: the names of their points.</param>
public sealed record SurfacePoints(
    ImmutableDictionary<string, SurfacePoint> Points, ImmutableDictionary<string, ImmutableArray<string>> Groups)
{
    /// <summary>The points ordered by name, so that sums over them never depend on the order of a file.</summary>
    public ImmutableArray<SurfacePoint> Ordered { get; } = [.. Points.Values.OrderBy(p => p.Name, StringComparer.Ordinal)];

    /// <summary>The points that a name stands for: itself, or those of the group.</summary>
    /// <param name="name">Name of a point or a group.</param>
    /// <returns>The points, at least one.</returns>
    /// <exception cref="ArgumentException">No point or group has that name.</exception>
    public ImmutableArray<SurfacePoint> Resolve(string name)
    {
        if (Groups.TryGetValue(name, out var members))
            return [.. members.Select(member => Points[member])];
        return Points.TryGetValue(name, out var point)
            ? [point]
            : throw new ArgumentException($"The body has no surface point \"{name}\".", nameof(name));
    }

    /// <summary>Whether a point or group has that name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>True if it can be resolved.</returns>
    public bool Has(string name) => Points.ContainsKey(name) || Groups.ContainsKey(name);
}

/// <summary>A point on the skin (or sole) of the published model.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Segment">The segment that carries it.</param>
/// <param name="BothSides">Whether it exists on both sides.</param>
/// <param name="Local">The point in the segment's frame of the published model, right side, metres.</param>
public sealed record SurfacePoint(string Name, SegmentKind Segment, bool BothSides, Vec3 Local)
{
    /// <summary>Index of the carrying segment and the point in its frame, for a person.</summary>
    /// <param name="model">The person's body.</param>
    /// <param name="side">The side; ignored for segments of the midline, whose points are mirrored for the left.</param>
    /// <returns>Segment index and local point, metres.</returns>
    public (int Segment, Vec3 Local) On(BodyModel model, Side? side)
    {
        ArgumentNullException.ThrowIfNull(model);
        var midline = Segment is SegmentKind.Pelvis or SegmentKind.Torso or SegmentKind.Head;
        var index = model.IndexOf(Segment, midline ? null : side ?? Side.Right);
        var local = model.Segments[index].Scale * Local;
        return (index, side == Side.Left ? local.Mirrored : local);
    }
}
