using MomentArm.Body;
using static MomentArm.Body.SegmentKind;

namespace MomentArm.Drawing;

/// <summary>Shorts' leg, thigh, lower leg and shoe of one side.</summary>
internal static class LegParts
{
    internal static IEnumerable<BodyPart> Of(PlacedFigure f, Side side, Vec3 toward, Tone leg, Tone shorts)
    {
        var s = side == Side.Right ? "right" : "left";
        yield return f.Barefoot ? BareFoot.Of(f, side, s, toward) : Shoe(f, side, s);
        yield return new BodyPart(s + "Shank", Layer.Along(leg, Shank(f, side)));
        yield return new BodyPart(s + "Thigh", Layer.Along(leg, Thigh(f, side)));
        yield return new BodyPart(s + "Shorts", Layer.Along(shorts, Shorts(f, side)));
    }

    internal static IEnumerable<Patch> Patches(PlacedFigure f, Side side, Tone leg, Tone shorts)
    {
        var s = side == Side.Right ? "right" : "left";
        yield return new Patch(s + "Shank", s + "Thigh", true, Layer.Along(leg, Knee(f, side)) with { Gap = false });
        yield return new Patch("pelvis", s + "Shorts", false, new Layer(shorts, [Hip(f, side)], false));
    }

    // Buttock and flank flow into the leg of the shorts; in front the fold stays when the hip bends.
    private static Ball[] Hip(PlacedFigure f, Side side)
    {
        var thigh = f.At(SegmentKind.Thigh, side, 0, -0.3, 0) - f.At(SegmentKind.Thigh, side, 0, 0, 0);
        var pelvis = f.At(Pelvis, side, 0, -0.3, 0) - f.At(Pelvis, side, 0, 0, 0);
        var bend = Math.Acos(Math.Clamp(thigh.Dot(pelvis) / (thigh.Length * pelvis.Length), -1, 1));
        var front = 0.078 - 0.03 * Math.Clamp((bend - 0.3) / 0.7, 0, 1);
        return
        [
            f.Ball(SegmentKind.Thigh, side, 0, -0.055, 0, 0.085),
            f.Ball(SegmentKind.Thigh, side, -0.004, 0, 0.002, 0.0885),
            f.Ball(Pelvis, side, -0.12, -0.045, 0.07, 0.0815),
            f.Ball(Pelvis, side, -0.055 - 2.2 * (0.078 - front), -0.012, 0.08, front),
        ];
    }

    private static Ball[] Shorts(PlacedFigure f, Side side) =>
    [
        f.Ball(SegmentKind.Thigh, side, -0.004, 0, 0.002, 0.089),
        f.Ball(SegmentKind.Thigh, side, 0, -0.09, 0.0, 0.083),
        f.Ball(SegmentKind.Thigh, side, 0.003, -0.175, -0.002, 0.0765),
    ];

    private static Ball[] Thigh(PlacedFigure f, Side side) =>
    [
        f.Ball(SegmentKind.Thigh, side, 0.001, -0.11, 0, 0.074),
        f.Ball(SegmentKind.Thigh, side, 0.006, -0.2, 0, 0.070),
        f.Ball(SegmentKind.Thigh, side, 0.004, -0.30, 0, 0.0585),
        f.Ball(SegmentKind.Thigh, side, 0.002, -0.395, 0, 0.0515),
    ];

    // Along both parts' own outlines, so that the silhouette has no nick.
    private static Ball[] Knee(PlacedFigure f, Side side) =>
    [
        f.Ball(SegmentKind.Thigh, side, 0.0034, -0.325, 0, 0.0561),
        f.Ball(SegmentKind.Thigh, side, 0.0022, -0.39, 0, 0.0513),
        f.Ball(SegmentKind.Shank, side, 0.004, -0.01, 0, 0.05),
        f.Ball(SegmentKind.Shank, side, 0.0, -0.064, 0, 0.0471),
    ];

    private static Ball[] Shank(PlacedFigure f, Side side) =>
    [
        f.Ball(SegmentKind.Shank, side, 0.004, -0.008, 0, 0.0505),
        f.Ball(SegmentKind.Shank, side, 0.0, -0.06, 0, 0.0475),
        f.Ball(SegmentKind.Shank, side, -0.015, -0.13, 0.002, 0.0525),
        f.Ball(SegmentKind.Shank, side, -0.008, -0.225, 0.001, 0.0435),
        f.Ball(SegmentKind.Shank, side, 0.0, -0.32, 0, 0.0345),
        f.Ball(SegmentKind.Shank, side, 0.002, -0.385, 0, 0.032),
    ];

    private static BodyPart Shoe(PlacedFigure f, Side side, string s)
    {
        Ball F(double x, double y, double z, double r) => f.Ball(Foot, side, x, y, z, r);
        Ball T(double x, double y, double z, double r) => f.Ball(Toes, side, x, y, z, r);
        Ball[] sock = [f.Ball(SegmentKind.Shank, side, 0.001, -0.385, 0, 0.0285), F(0.045, 0.062, -0.006, 0.029)];
        Ball[] heel = [F(0.016, 0.02, -0.008, 0.028), F(0.016, 0.02, 0.008, 0.028), F(0.045, 0.058, -0.005, 0.033), F(0.1, 0.03, 0, 0.034)];
        Ball[] middle = [F(0.045, 0.058, -0.005, 0.033), F(0.1, 0.032, 0, 0.033), F(0.155, 0.013, -0.014, 0.027), F(0.15, 0.011, 0.02, 0.025)];
        Ball[] toes = [F(0.155, 0.013, -0.014, 0.027), F(0.15, 0.011, 0.02, 0.025), T(0.04, 0.006, -0.008, 0.021), T(0.03, 0.005, 0.014, 0.02)];
        Ball[] back = [F(0.016, 0.012, 0, 0.03), F(0.06, 0.01, 0, 0.03), F(0.1, 0.012, 0, 0.03)];
        Ball[] sole = [F(-0.012, -0.009, -0.02, 0.009), F(-0.012, -0.009, 0.02, 0.009), F(0.155, -0.009, -0.03, 0.009), F(0.155, -0.009, 0.04, 0.009)];
        Ball[] tip = [F(0.155, -0.009, -0.03, 0.009), F(0.155, -0.009, 0.04, 0.009), T(0.048, -0.008, -0.014, 0.009), T(0.038, -0.008, 0.02, 0.009)];
        return new BodyPart(
            s + "Shoe",
            new Layer(Tone.FarSkin, [sock]),
            new Layer(Tone.Shoe, [heel, back, middle, toes]),
            new Layer(Tone.Sole, [sole, tip], false));
    }
}
