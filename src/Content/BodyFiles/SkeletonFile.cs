using System.Collections.Immutable;
using System.Text.Json.Serialization;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>content/body/skeleton.json.</summary>
public sealed record SkeletonFile(
    [property: JsonPropertyName("$schema")] string Schema,
    string Note,
    ReferenceLengthsFile ReferenceLengthsM,
    IReadOnlyList<SegmentFile> Segments)
{
    private const string Name = "body/skeleton.json";

    /// <summary>The skeleton, or null with faults told.</summary>
    public SkeletonData? ToSkeleton(FaultList faults)
    {
        var seen = new HashSet<SegmentKind>();
        var good = true;
        for (var i = 0; i < Segments.Count; i++)
        {
            var segment = Segments[i];
            if (segment.Parent is { } parent && !seen.Contains(parent))
            {
                faults.Add(Name, null, $"segments[{i}].parent", $"The parent {parent} does not come before {segment.Kind}.", "Order parents first.");
                good = false;
            }

            if (!seen.Add(segment.Kind))
            {
                faults.Add(Name, null, $"segments[{i}].kind", $"{segment.Kind} is there twice.", "Keep one.");
                good = false;
            }

            good &= segment.Check($"segments[{i}]", faults);
        }

        if (!good)
            return null;
        var lengths = ReferenceLengthsM;
        return new SkeletonData(
            [.. Segments.Select(s => s.ToData())],
            new ReferenceLengths(
                lengths.Thigh, lengths.Shank, lengths.Foot, lengths.Trunk, lengths.Head, lengths.UpperArm, lengths.Forearm, lengths.Hand));
    }
}

/// <summary>Lengths of the published model, metres.</summary>
public sealed record ReferenceLengthsFile(
    double Thigh, double Shank, double Foot, double Trunk, double Head, double UpperArm, double Forearm, double Hand);

/// <summary>One segment of the skeleton file.</summary>
public sealed record SegmentFile(
    SegmentKind Kind,
    bool BothSides,
    double[] OffsetM,
    IReadOnlyList<CoordinateFile> Coordinates,
    string Source,
    SegmentKind? Parent = null,
    double[][]? SlideX = null,
    double[][]? SlideY = null,
    string? SlideSource = null)
{
    internal bool Check(string path, FaultList faults)
    {
        var before = faults.Faults.Count;
        void Triple(double[] value, string where)
        {
            if (value.Length != 3 || value.Any(v => !double.IsFinite(v)))
                faults.Add("body/skeleton.json", null, where, "Three numbers are needed.", "Give [x, y, z].");
        }

        Triple(OffsetM, path + ".offsetM");
        for (var k = 0; k < Coordinates.Count; k++)
        {
            Triple(Coordinates[k].Axis, $"{path}.coordinates[{k}].axis");
            if (Coordinates[k].NormalDeg is not [var least, var most] || !(least < most))
                faults.Add("body/skeleton.json", null, $"{path}.coordinates[{k}].normalDeg", "Two rising numbers are needed.", "Give [least, most] in degrees.");
        }

        if (SlideX is null != SlideY is null)
            faults.Add("body/skeleton.json", null, path, "slideX and slideY go together.", "Give both or neither.");
        foreach (var (knots, name) in new[] { (SlideX, "slideX"), (SlideY, "slideY") })
        {
            if (knots is not null && (knots.Length < 4 || knots.Any(k => k.Length != 2)))
                faults.Add("body/skeleton.json", null, $"{path}.{name}", "At least four knots [angle rad, slide m] are needed.", "Add knots.");
        }

        return faults.Faults.Count == before;
    }

    internal SegmentData ToData() => new(
        Kind, Parent, BothSides, new Vec3(OffsetM[0], OffsetM[1], OffsetM[2]), [.. Coordinates.Select(c => c.ToData())],
        Spline(SlideX), Spline(SlideY));

    private static CubicSpline? Spline(double[][]? knots) =>
        knots is null ? null : new CubicSpline([.. knots.Select(k => (k[0], k[1]))]);
}

/// <summary>One joint coordinate of the skeleton file.</summary>
public sealed record CoordinateFile(Motion Motion, double[] Axis, double[] NormalDeg, string NormalSource)
{
    internal CoordinateData ToData() => new(
        Motion, new Vec3(Axis[0], Axis[1], Axis[2]),
        Angle.FromDegrees(NormalDeg[0]).Radians, Angle.FromDegrees(NormalDeg[1]).Radians);
}
