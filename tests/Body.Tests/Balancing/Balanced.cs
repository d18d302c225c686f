using MomentArm.Body.Tests.Movements;
using Xunit;

namespace MomentArm.Body.Tests.Balancing;

/// <summary>Poses made up for tests of the balance.</summary>
internal static class Balanced
{
    /// <summary>The names of all poses.</summary>
    public static TheoryData<string> All => [.. Poses.Keys];

    internal static PosedFrame Supine { get; } = Frames.Standing(
    [
        .. Frames.Both("pelvisBack", SurfaceKind.Floor, 0), .. Frames.Both("upperBack", SurfaceKind.Floor, 0),
        new SurfaceContact("headBack", null, SurfaceKind.Floor, 0, true), .. Frames.Both("calfBack", SurfaceKind.Floor, 0),
        .. Frames.Both("heelBack", SurfaceKind.Floor, 0), .. Frames.Both("elbow", SurfaceKind.Floor, 0), .. Frames.Both("hand", SurfaceKind.Floor, 0),
    ]) with { Name = "supine", Orientation = Orientation.Supine };

    /// <summary>Both feet, upright, a little plantarflexion brings the mass over the feet.</summary>
    internal static PosedFrame TwoLegs { get; } = Frames.Standing([.. Frames.Both("foot", SurfaceKind.Floor, 0)]);

    /// <summary>Other knee bent behind; at 6 degrees of adduction the pelvis is level and the foot under the mass.</summary>
    internal static PosedFrame OneLeg(double abductionDeg = -6, double bendDeg = 0) => TwoLegs with
    {
        Name = "one leg",
        Working = new LimbAngles
        {
            HipAbduction = TestBody.Radians(abductionDeg), SubtalarEversion = TestBody.Radians(8), AnkleDorsiflexion = TestBody.Radians(2),
        },
        Other = new LimbAngles { HipAbduction = TestBody.Radians(-abductionDeg), KneeFlexion = TestBody.Radians(60) },
        Axial = new AxialAngles { TrunkBendToWorking = TestBody.Radians(bendDeg) },
        Contacts = [new("foot", Limb.Working, SurfaceKind.Floor, 0, true)],
    };

    internal static PosedFrame Squat(double kneeDeg, double hipDeg, double ankleDeg) => TwoLegs with
    {
        Name = "squat",
        Working = new LimbAngles { HipFlexion = TestBody.Radians(hipDeg), KneeFlexion = TestBody.Radians(kneeDeg), AnkleDorsiflexion = TestBody.Radians(ankleDeg) },
        Other = new LimbAngles { HipFlexion = TestBody.Radians(hipDeg), KneeFlexion = TestBody.Radians(kneeDeg), AnkleDorsiflexion = TestBody.Radians(ankleDeg) },
    };

    private static Dictionary<string, PosedFrame> Poses { get; } = new()
    {
        ["supine"] = Supine,
        ["two legs"] = TwoLegs,
        ["one leg"] = OneLeg(),
        ["squat"] = Squat(60, 80, 20),
        ["side-lying raise"] = Frames.SideLyingRaise(20),
        ["seated"] = Frames.Seated(30),
    };

    internal static PosedFrame Named(string name) => Poses[name];
}
