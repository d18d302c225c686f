using System.Text.Json.Serialization;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>content/body/muscles.json.</summary>
/// <param name="Schema">The schema this file keeps to.</param>
/// <param name="Note">How to read the figures.</param>
/// <param name="Credit">Whose figures these are and under which license they are used.</param>
/// <param name="TrustedDeg">Angles between which the straight lines are trusted, degrees in the model's sign.</param>
/// <param name="TrustedSource">Where the trusted angles come from.</param>
/// <param name="Muscles">The published lines, right side.</param>
/// <param name="Band">The iliotibial band.</param>
/// <param name="Obstacles">Bone that lines run round when loaded or lengthened.</param>
public sealed record MusclesFile(
    [property: JsonPropertyName("$schema")] string Schema,
    string Note,
    string Credit,
    IReadOnlyDictionary<Motion, double[]> TrustedDeg,
    string TrustedSource,
    IReadOnlyList<MuscleFile> Muscles,
    BandFile Band,
    IReadOnlyList<ObstacleFile> Obstacles)
{
    internal const string Name = "body/muscles.json";

    /// <summary>The paths, or null with faults told.</summary>
    /// <param name="skeleton">The skeleton they lie on; null when it could not be read.</param>
    /// <param name="faults">Gathers every fault.</param>
    public MuscleTable? ToTable(SkeletonData? skeleton, FaultList faults)
    {
        var before = faults.Faults.Count;
        foreach (var (motion, range) in TrustedDeg)
        {
            if (range is not [var least, var most] || !(least < most))
                Fault(faults, $"trustedDeg.{motion}", "Two rising numbers are needed.", "Give [least, most] in degrees.");
            else if (!(least <= 0 && most >= 0))
                Fault(faults, $"trustedDeg.{motion}", "The neutral angle 0 lies outside.", "Widen the range.");
        }

        if (!TrustedDeg.ContainsKey(Motion.HipFlexion) || !TrustedDeg.ContainsKey(Motion.KneeExtension))
            Fault(faults, "trustedDeg", "hipFlexion and kneeExtension are needed.", "Add them.");
        for (var i = 0; i < Muscles.Count; i++)
            Muscles[i].Check($"muscles[{i}]", skeleton, faults);
        Band.Check(Muscles, skeleton, faults);
        var lines = Muscles.Select(m => m.Id).Concat(Band.Parts.Select(p => p.Id)).ToHashSet();
        for (var i = 0; i < Obstacles.Count; i++)
            Obstacles[i].Check($"obstacles[{i}]", lines, faults);
        foreach (var twice in Muscles.Select(m => m.Id).Concat(Band.Parts.Select(p => p.Id)).GroupBy(id => id).Where(g => g.Count() > 1))
            Fault(faults, "muscles", $"The id {twice.Key} is there twice.", "Keep one.");
        return faults.Faults.Count > before
            ? null
            : new MuscleTable(
                [.. Muscles.Select(m => m.ToPath())],
                [.. Band.Parts.Select(p => p.ToPart())],
                [.. TrustedDeg.Select(t => new TrustedRange(
                    t.Key, Angle.FromDegrees(t.Value[0]).Radians, Angle.FromDegrees(t.Value[1]).Radians))],
                [.. Obstacles.Select(o => new PathObstacle(o.Segment, o.AxisM[0], o.AxisM[1], o.RadiusM, [.. o.Lines]))]);
    }

    internal static void Fault(FaultList faults, string path, string what, string mend) => faults.Add(Name, null, path, what, mend);
}

/// <summary>One published line.</summary>
/// <param name="Id">Short name in kebab case.</param>
/// <param name="Name">Name for the screen.</param>
/// <param name="Function">What the muscle mainly does.</param>
/// <param name="MaximalForceN">Largest isometric force, newtons.</param>
/// <param name="OptimalFiberM">Fiber length at which it is reached, meters.</param>
/// <param name="TendonSlackM">Tendon slack length, meters.</param>
/// <param name="PennationRad">Pennation at optimal fiber length, radians.</param>
/// <param name="Points">Points from the trunk outward.</param>
/// <param name="Source">Where the figures come from.</param>
/// <param name="LengthGroup">The group a length test measures, if any.</param>
/// <param name="Caution">Where the line is known to mislead.</param>
public sealed record MuscleFile(
    string Id,
    string Name,
    MuscleFunction Function,
    double MaximalForceN,
    double OptimalFiberM,
    double TendonSlackM,
    double PennationRad,
    IReadOnlyList<PathPointFile> Points,
    string Source,
    MuscleGroup? LengthGroup = null,
    string? Caution = null)
{
    internal void Check(string path, SkeletonData? skeleton, FaultList faults)
    {
        void Above0(double value, string key, double most)
        {
            if (!(value > 0 && value <= most))
                MusclesFile.Fault(faults, $"{path}.{key}", FormattableString.Invariant($"{value} lies outside 0 to {most}."), "Correct it.");
        }

        Above0(MaximalForceN, "maximalForceN", 20000);
        Above0(OptimalFiberM, "optimalFiberM", 1);
        Above0(TendonSlackM, "tendonSlackM", 1);
        if (PennationRad is not (>= 0 and < Math.PI / 2))
            MusclesFile.Fault(faults, $"{path}.pennationRad", "The pennation must be from 0 to less than a right angle.", "Correct it.");
        PathPointFile.CheckAll(Points, path, skeleton, faults);
    }

    internal MusclePath ToPath() => new(
        Id, Name, Function, LengthGroup, MaximalForceN, OptimalFiberM, TendonSlackM, PennationRad, Caution,
        [.. Points.Select(p => p.ToPoint())]);
}

/// <summary>The iliotibial band: lines of our own beside the published ones.</summary>
/// <param name="Note">What is assumed.</param>
/// <param name="Parts">Its parts.</param>
public sealed record BandFile(string Note, IReadOnlyList<BandPartFile> Parts)
{
    internal void Check(IReadOnlyList<MuscleFile> muscles, SkeletonData? skeleton, FaultList faults)
    {
        for (var i = 0; i < Parts.Count; i++)
        {
            var path = $"band.parts[{i}]";
            if (Parts[i].Share is not (>= 0 and <= 1))
                MusclesFile.Fault(faults, $"{path}.share", "The share must lie between 0 and 1.", "Correct it.");
            if (Parts[i].From.Count == 0)
                MusclesFile.Fault(faults, $"{path}.from", "No muscle pulls on this part.", "Name one or more muscles.");
            foreach (var id in Parts[i].From.Where(id => muscles.All(m => m.Id != id)))
                MusclesFile.Fault(faults, $"{path}.from", $"There is no muscle \"{id}\".", "Name a muscle of this file.");
            PathPointFile.CheckAll(Parts[i].Points, path, skeleton, faults);
        }

        foreach (var id in Parts.SelectMany(p => p.From).Distinct())
        {
            if (Parts.Where(p => p.From.Contains(id)).Sum(p => p.Share) > 1)
                MusclesFile.Fault(faults, "band.parts", $"More than the whole force of {id} is passed on.", "Lower the shares.");
        }
    }
}

/// <summary>One part of the band.</summary>
/// <param name="Id">Short name in kebab case.</param>
/// <param name="Name">Name for the screen.</param>
/// <param name="Function">What it mainly does.</param>
/// <param name="From">Ids of the muscles that pull on it.</param>
/// <param name="Share">Fraction of their force that the band carries, 0 to 1; their own lines keep the rest.</param>
/// <param name="ShareSource">Where the share comes from.</param>
/// <param name="Points">Points from the trunk outward.</param>
/// <param name="Source">Where the points come from.</param>
/// <param name="LengthGroup">The group a length test measures, if any.</param>
/// <param name="Caution">Where the line is known to mislead.</param>
public sealed record BandPartFile(
    string Id,
    string Name,
    MuscleFunction Function,
    IReadOnlyList<string> From,
    double Share,
    string ShareSource,
    IReadOnlyList<PathPointFile> Points,
    string Source,
    MuscleGroup? LengthGroup = null,
    string? Caution = null)
{
    internal BandPart ToPart() => new(
        Id, Name, Function, LengthGroup, [.. From], Share, Caution, [.. Points.Select(p => p.ToPoint())]);
}

/// <summary>A cylinder across the body that lines run behind and under.</summary>
/// <param name="Note">What it stands for and what is assumed.</param>
/// <param name="Segment">The segment that carries it.</param>
/// <param name="AxisM">Forward and upward place of its axis in the segment's frame, meters.</param>
/// <param name="RadiusM">Its radius, meters, 0 to 0.2.</param>
/// <param name="Lines">Ids of the lines it deflects.</param>
/// <param name="Source">Where place and size come from.</param>
public sealed record ObstacleFile(
    string Note, SegmentKind Segment, double[] AxisM, double RadiusM, IReadOnlyList<string> Lines, string Source)
{
    internal void Check(string path, IReadOnlySet<string> lines, FaultList faults)
    {
        if (AxisM is not [_, _] || AxisM.Any(a => Math.Abs(a) > 1))
            MusclesFile.Fault(faults, $"{path}.axisM", "Two numbers between -1 and 1 are needed.", "Give [forward, upward] in meters.");
        if (RadiusM is not (> 0 and <= 0.2))
            MusclesFile.Fault(faults, $"{path}.radiusM", "The radius must be above 0 and at most 0.2.", "Correct it.");
        foreach (var id in Lines.Where(id => !lines.Contains(id)))
            MusclesFile.Fault(faults, $"{path}.lines", $"There is no line \"{id}\".", "Name a muscle or a part of the band.");
    }
}
