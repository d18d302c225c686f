namespace MomentArm.Body.Tests;

/// <summary>Frames of walls, boards and ties made up for these tests. Angles in degrees.</summary>
internal static class SettlingFrames
{
    internal static BodyModel Woman { get; } = TestBody.Content.Build(new Physique(Sex.Female, 40, 1.65, 65));

    internal static double Degrees(double degrees) => degrees * Math.PI / 180;

    internal static SurfaceContact On(string point, Limb? limb, SurfaceKind surface = SurfaceKind.Floor, double height = 0, bool bears = true) =>
        new(point, limb, surface, height, bears);

    internal static SurfaceContact Wall(string point, Limb? limb, WallPlace? place = null, bool bears = true) =>
        new(point, limb, SurfaceKind.Wall, 0, bears) { Wall = place };

    internal static SurfaceContact Board(string point, Limb limb, double tiltDeg, double height = 0.1) =>
        new(point, limb, SurfaceKind.Board, height, true) { Tilt = Degrees(tiltDeg) };

    internal static PosedFrame Upright(LimbAngles both, params SurfaceContact[] contacts) => new()
    {
        Name = "upright",
        Orientation = Orientation.Upright,
        Working = both,
        Other = both,
        Axial = AxialAngles.Neutral,
        Contacts = [.. contacts],
    };

    internal static SurfaceContact[] BothFeet => [On("foot", Limb.Working), On("foot", Limb.Other)];

    /// <summary>Sitting against a wall without a seat: back and pelvis on the wall, feet out in front.</summary>
    internal static PosedFrame WallSit(double knee = 80, double dorsiflexion = -2) => Upright(
        new LimbAngles { HipFlexion = Degrees(knee), KneeFlexion = Degrees(knee), AnkleDorsiflexion = Degrees(dorsiflexion) },
        [
            .. BothFeet, Wall("pelvisBack", Limb.Working), Wall("pelvisBack", Limb.Other), Wall("upperBack", Limb.Working),
            Wall("upperBack", Limb.Other),
        ]);

    internal static PosedFrame Lying(Orientation orientation, LimbAngles working, LimbAngles other, params SurfaceContact[] contacts) => new()
    {
        Name = "lying",
        Orientation = orientation,
        Working = working,
        Other = other,
        Axial = AxialAngles.Neutral,
        Contacts = [.. contacts],
    };

    internal static SurfaceContact[] OnTheBack =>
    [
        On("pelvisBack", Limb.Working), On("pelvisBack", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other),
        On("headBack", null), On("heelBack", Limb.Other),
    ];

    /// <summary>Knee drawn to the chest, both arms reaching for the shin.</summary>
    internal static PosedFrame KneeToChest(params Tie[] ties)
    {
        var arm = new LimbAngles { ShoulderFlexion = Degrees(35), ElbowFlexion = Degrees(45), ShoulderInternalRotation = Degrees(20) };
        return Lying(
            Orientation.Supine, arm with { HipFlexion = Degrees(110), KneeFlexion = Degrees(125) }, arm, OnTheBack) with { Ties = [.. ties] };
    }

    internal static PlacedBody Settle(PosedFrame frame, Side side = Side.Right, BodyModel? model = null) =>
        Settling.Settle(model ?? Woman, TestBody.Content.Points, frame, side);

    internal static Vec3 At(PlacedBody body, string point, Side side)
    {
        var (segment, local) = TestBody.Content.Points.Points[point].On(Woman, side);
        return TestBody.Posed(Woman, body.Pose).Point(segment, local);
    }
}
