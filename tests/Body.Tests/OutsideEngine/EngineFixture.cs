using System.Text.Json;
using System.Text.Json.Serialization;

namespace MomentArm.Body.Tests.OutsideEngine;

/// <summary>
/// What a general physics engine says of one person in many poses, as tools/outside-engine wrote it down. The engine knows
/// nothing of this code: its model is written from content/body by a script with its own scaling, splines and joint order.
/// </summary>
internal sealed record EngineFixture(
    string About,
    string Script,
    string Package,
    string Engine,
    EnginePerson Person,
    string[] Segments,
    string[] Coordinates,
    string[] Muscles,
    int[][] ArmCoordinates,
    EnginePose[] Poses)
{
    private static readonly JsonSerializerOptions Strict =
        new(JsonSerializerDefaults.Web) { UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow };

    internal static EngineFixture Woman { get; } = Read("woman");

    internal static EngineFixture Man { get; } = Read("man");

    internal static string Folder => Path.Combine(Path.GetDirectoryName(TestBody.ContentFolder)!, "tests", "Body.Tests", "OutsideEngine", "fixtures");

    private static EngineFixture Read(string name) =>
        JsonSerializer.Deserialize<EngineFixture>(File.ReadAllText(Path.Combine(Folder, name + ".json")), Strict)!;
}

/// <summary>Whose body it is.</summary>
internal sealed record EnginePerson(string Sex, double StatureM, double MassKg);

/// <summary>One pose: what was posed, and what the engine made of it. Rotations by rows; moments about the pelvis origin in the room.</summary>
internal sealed record EnginePose(
    string Name,
    double[][] PelvisTurns,
    double[] PelvisAtM,
    double[] AnglesRad,
    double[][] OriginsM,
    double[][] OriginsInPelvisM,
    double[][] Rotations,
    double[] MomentsNm,
    double[] RootForceN,
    double[] RootMomentNm,
    EnginePush[] Pushes,
    double[] PushedMomentsNm,
    double[] PushedRootForceN,
    double[] PushedRootMomentNm,
    double[] LengthsM,
    double[][] ArmsM);

/// <summary>A force besides gravity on a point of a segment.</summary>
internal sealed record EnginePush(string Segment, double[] AtM, double[] PointM, double[] ForceN);
