using System.Collections.Immutable;
using System.Text.Json.Serialization;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>One held pose in a file of its own: angles in degrees, clinical signs, as in an exercise.</summary>
public sealed record PoseInputFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public string? Schema { get; init; }

    /// <summary>What the pose is meant to be, for the reader of the file.</summary>
    public string? Note { get; init; }

    /// <summary>The pose.</summary>
    public required PoseFile Pose { get; init; }

    /// <summary>Added loads, each with its mass.</summary>
    public IReadOnlyList<AddedLoadFile> AddedLoads { get; init; } = [];
}

/// <summary>A held pose read from a file, ready for the Body room.</summary>
/// <param name="Frame">The frame.</param>
/// <param name="Loads">The added loads.</param>
public sealed record PoseInput(PosedFrame Frame, ImmutableArray<AddedLoad> Loads)
{
    /// <summary>Bands, ropes and helping hands that pull.</summary>
    public ImmutableArray<Pull> Pulls { get; init; } = [];

    /// <summary>Reads a pose file.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="points">The named points of the body.</param>
    /// <returns>The pose, or every fault, each with its line.</returns>
    public static (PoseInput? Input, IReadOnlyList<ContentFault> Faults) Read(string path, SurfacePoints points)
    {
        var faults = new FaultList();
        var name = Path.GetFileName(path);
        try
        {
            var text = File.ReadAllText(path);
            return StrictJson.Read<PoseInputFile>(text, name, faults) is { } raw && Make(raw, points, name, faults) is { } input
                ? (input, [])
                : (null, JsonLines.Placed(text, faults.Faults));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            faults.Add(name, null, "", $"The file cannot be read ({error.Message}).", "Check that it exists and may be read.");
            return (null, faults.Faults);
        }
    }

    private static PoseInput? Make(PoseInputFile raw, SurfacePoints points, string name, FaultList faults)
    {
        var rules = new PoseRules(points, name, faults);
        rules.CheckPose(raw.Pose, "pose");
        rules.CheckLoads(raw.AddedLoads, "");
        return faults.Faults.Count > 0 ? null : new PoseInput(PoseConversion.ToFrame(raw.Pose), PoseConversion.ToLoads(raw.AddedLoads));
    }
}
