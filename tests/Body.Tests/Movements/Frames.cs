using System.Collections.Immutable;

namespace MomentArm.Body.Tests.Movements;

/// <summary>Poses made up for these tests.</summary>
internal static class Frames
{
    internal static PosedFrame SideLyingRaise(double abductionDeg) => new()
    {
        Name = "raise",
        Orientation = Orientation.SideLyingOnOther,
        Working = new LimbAngles { HipAbduction = TestBody.Radians(abductionDeg) },
        Other = LimbAngles.Neutral,
        Axial = AxialAngles.Neutral,
        Contacts = OnTheOtherSide,
    };

    internal static PosedFrame Seated(double kneeFlexionDeg) => new()
    {
        Name = "seated",
        Orientation = Orientation.Upright,
        Working = new LimbAngles { HipFlexion = Math.PI / 2, KneeFlexion = TestBody.Radians(kneeFlexionDeg) },
        Other = new LimbAngles { HipFlexion = Math.PI / 2, KneeFlexion = Math.PI / 2 },
        Axial = AxialAngles.Neutral,
        Contacts = [.. Both("sitBone", SurfaceKind.Seat, 0.45), .. Both("thighBack", SurfaceKind.Seat, 0.45)],
    };

    internal static PosedFrame Standing(params SurfaceContact[] contacts) => new()
    {
        Name = "standing",
        Orientation = Orientation.Upright,
        Working = LimbAngles.Neutral,
        Other = LimbAngles.Neutral,
        Axial = AxialAngles.Neutral,
        Contacts = [.. contacts],
    };

    internal static IEnumerable<SurfaceContact> Both(string point, SurfaceKind surface, double height) =>
        [new(point, Limb.Working, surface, height, true), new(point, Limb.Other, surface, height, true)];

    internal static Movement Of(params PosedFrame[] frames) => new()
    {
        Frames = [.. frames],
        Props = [],
        Loads = [],
        View = ViewKind.Side,
    };

    private static ImmutableArray<SurfaceContact> OnTheOtherSide { get; } =
    [
        new("trochanter", Limb.Other, SurfaceKind.Floor, 0, true),
        new("shoulderOuter", Limb.Other, SurfaceKind.Floor, 0, true),
        new("kneeOuter", Limb.Other, SurfaceKind.Floor, 0, true),
        new("ankleOuter", Limb.Other, SurfaceKind.Floor, 0, true),
    ];
}
