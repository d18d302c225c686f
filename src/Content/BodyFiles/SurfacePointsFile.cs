using System.Collections.Immutable;
using System.Text.Json.Serialization;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>content/body/surface-points.json.</summary>
public sealed record SurfacePointsFile(
    [property: JsonPropertyName("$schema")] string Schema,
    string Note,
    IReadOnlyDictionary<string, SurfacePointFile> Points,
    IReadOnlyDictionary<string, string[]> Groups)
{
    /// <summary>The points, or null with faults told.</summary>
    public SurfacePoints? ToPoints(FaultList faults)
    {
        var before = faults.Faults.Count;
        foreach (var (name, point) in Points)
        {
            if (point.PointM.Length != 3 || point.PointM.Any(v => !double.IsFinite(v)))
                faults.Add("body/surface-points.json", null, $"points.{name}.pointM", "Three numbers are needed.", "Give [x, y, z] in meters.");
        }

        foreach (var (name, members) in Groups)
        {
            foreach (var member in members.Where(m => !Points.ContainsKey(m)))
                faults.Add("body/surface-points.json", null, $"groups.{name}", $"There is no point \"{member}\".", "Name a point of the file.");
            if (members.Length == 0)
                faults.Add("body/surface-points.json", null, $"groups.{name}", "The group is empty.", "Name its points or remove it.");
        }

        return faults.Faults.Count > before
            ? null
            : new SurfacePoints(
                Points.ToImmutableDictionary(
                    p => p.Key,
                    p => new SurfacePoint(
                        p.Key, p.Value.Segment, p.Value.BothSides, new Vec3(p.Value.PointM[0], p.Value.PointM[1], p.Value.PointM[2]))),
                Groups.ToImmutableDictionary(g => g.Key, g => g.Value.ToImmutableArray()));
    }
}

/// <summary>One surface point.</summary>
public sealed record SurfacePointFile(SegmentKind Segment, bool BothSides, double[] PointM);
