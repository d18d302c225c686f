using MomentArm.Body;
using static MomentArm.Body.SegmentKind;

namespace MomentArm.Drawing;

/// <summary>An area on the flesh: balls along it, just inside the parts that carry it.</summary>
/// <param name="Under">A part that carries it, without its side.</param>
/// <param name="Over">The other part that carries it, or the same.</param>
/// <param name="Outward">Which way its skin faces, in the room, of length 1.</param>
/// <param name="Balls">Its course.</param>
internal sealed record AreaShape(string Under, string Over, Vec3 Outward, Ball[] Balls)
{
    /// <summary>Whether the area lies in the midline and has no side.</summary>
    internal static bool IsMidline(BodyArea area) =>
        area is BodyArea.Belly or BodyArea.LowBack or BodyArea.FrontOfNeck or BodyArea.BackOfNeck;

    internal static AreaShape Of(PlacedFigure f, BodyArea area, Side side)
    {
        var s = side == Side.Right ? "right" : "left";
        return area switch
        {
            BodyArea.FrontOfHip => Pelvic(1, 0, B(Pelvis, -0.03, 0.05, 0.06, 0.026), B(Pelvis, -0.018, -0.01, 0.073, 0.03), B(Thigh, 0.042, -0.045, -0.008, 0.03), B(Thigh, 0.05, -0.085, -0.01, 0.02)),
            BodyArea.Buttock => Pelvic(-1, 0.2, B(Pelvis, -0.13, 0.025, 0.06, 0.036), B(Pelvis, -0.146, -0.045, 0.07, 0.046), B(Thigh, -0.042, -0.065, 0, 0.03)),
            BodyArea.OuterHip => Pelvic(0, 1, B(Pelvis, -0.07, 0.06, 0.095, 0.03), B(Pelvis, -0.075, 0.0, 0.11, 0.037), B(Thigh, -0.005, -0.02, 0.045, 0.036), B(Thigh, 0, -0.075, 0.052, 0.022)),
            BodyArea.FrontOfThigh => Leg("Thigh", Thigh, 1, 0, B(Thigh, 0.044, -0.095, 0.004, 0.028), B(Thigh, 0.033, -0.165, 0.006, 0.037), B(Thigh, 0.024, -0.25, 0.004, 0.035), B(Thigh, 0.026, -0.335, 0.002, 0.022)),
            BodyArea.BackOfThigh => Leg("Thigh", Thigh, -1, 0, B(Thigh, -0.044, -0.105, 0, 0.028), B(Thigh, -0.03, -0.175, 0, 0.036), B(Thigh, -0.02, -0.265, 0, 0.032), B(Thigh, -0.026, -0.35, 0, 0.018)),
            BodyArea.InnerThigh => Leg("Thigh", Thigh, 0, -1, B(Thigh, 0, -0.08, -0.042, 0.028), B(Thigh, 0, -0.16, -0.034, 0.034), B(Thigh, 0, -0.25, -0.03, 0.027), B(Thigh, 0, -0.33, -0.032, 0.016)),
            BodyArea.Calf => Lower(-1, 0, B(Shank, -0.02, -0.05, 0, 0.022), B(Shank, -0.035, -0.12, 0, 0.029), B(Shank, -0.03, -0.19, 0, 0.025), B(Shank, -0.016, -0.28, 0, 0.015)),
            BodyArea.Shin => Lower(1, 0.3, B(Shank, 0.022, -0.08, 0.012, 0.019), B(Shank, 0.013, -0.16, 0.014, 0.021), B(Shank, 0.012, -0.25, 0.01, 0.017), B(Shank, 0.012, -0.33, 0.004, 0.012)),
            BodyArea.OuterLowerLeg => Lower(0, 1, B(Shank, -0.004, -0.08, 0.024, 0.02), B(Shank, -0.01, -0.17, 0.024, 0.02), B(Shank, -0.006, -0.26, 0.018, 0.016), B(Shank, 0, -0.33, 0.012, 0.012)),
            BodyArea.InnerLowerLeg => Lower(0, -1, B(Shank, -0.004, -0.08, -0.024, 0.02), B(Shank, -0.01, -0.17, -0.022, 0.02), B(Shank, -0.006, -0.26, -0.018, 0.016), B(Shank, 0, -0.33, -0.012, 0.012)),
            BodyArea.Belly => Trunk(1, 0, B(Torso, 0.05, 0.0, 0, 0.046), B(Torso, 0.052, 0.08, 0, 0.049), B(Torso, 0.058, 0.17, 0, 0.046)),
            BodyArea.LowBack => Trunk(-1, 0, B(Torso, -0.026, -0.005, 0, 0.042), B(Torso, -0.03, 0.07, 0, 0.042), B(Torso, -0.05, 0.16, 0, 0.036)),
            BodyArea.Flank => Trunk(0, 1, B(Torso, 0.012, 0.0, 0.088, 0.043), B(Torso, 0.014, 0.08, 0.082, 0.044), B(Torso, 0.014, 0.17, 0.098, 0.04)),
            BodyArea.UpperBack => Trunk(-1, 0, B(Torso, -0.056, 0.2, 0.045, 0.032), B(Torso, -0.06, 0.275, 0.062, 0.038), B(Torso, -0.034, 0.345, 0.09, 0.026)),
            BodyArea.Chest => Trunk(1, 0, B(Torso, 0.072, 0.27, 0.03, 0.03), B(Torso, 0.066, 0.285, 0.068, 0.036), B(Torso, 0.032, 0.325, 0.115, 0.026)),
            BodyArea.FrontOfShoulder => Arm("Sleeve", 1, 0, B(UpperArm, 0.017, -0.005, 0.004, 0.03), B(UpperArm, 0.018, -0.06, 0.002, 0.029), B(UpperArm, 0.012, -0.115, 0, 0.022)),
            BodyArea.OuterShoulder => Arm("Sleeve", 0, 1, B(UpperArm, 0, 0.0, 0.016, 0.032), B(UpperArm, 0.002, -0.06, 0.018, 0.03), B(UpperArm, 0.002, -0.12, 0.016, 0.022)),
            BodyArea.BackOfShoulder => Arm("Sleeve", -1, 0, B(UpperArm, -0.017, -0.005, 0.004, 0.03), B(UpperArm, -0.016, -0.06, 0.002, 0.029), B(UpperArm, -0.01, -0.115, 0, 0.022)),
            BodyArea.FrontOfUpperArm => Arm("UpperArm", 1, 0, B(UpperArm, 0.02, -0.1, 0, 0.022), B(UpperArm, 0.018, -0.17, 0, 0.024), B(UpperArm, 0.016, -0.25, -0.003, 0.016)),
            BodyArea.BackOfUpperArm => Arm("UpperArm", -1, 0, B(UpperArm, -0.02, -0.09, 0, 0.024), B(UpperArm, -0.015, -0.165, 0, 0.024), B(UpperArm, -0.01, -0.25, -0.003, 0.016)),
            BodyArea.PalmSideOfForearm => Fore(1, B(Ulna, 0.01, -0.035, 0.012, 0.02), B(Ulna, 0.006, -0.09, 0.017, 0.021), B(Radius, 0.001, -0.2, 0.013, 0.012)),
            BodyArea.BackOfForearm => Fore(-1, B(Ulna, -0.016, -0.035, 0.01, 0.018), B(Ulna, -0.017, -0.09, 0.017, 0.02), B(Radius, -0.017, -0.2, 0.013, 0.012)),
            BodyArea.FrontOfNeck => Nape(1, 0, B(Torso, 0.018, 0.4, 0, 0.026), B(SegmentKind.Head, 0.026, 0.05, 0, 0.026)),
            BodyArea.BackOfNeck => Nape(-1, 0, B(Torso, -0.052, 0.335, 0, 0.02), B(Torso, -0.034, 0.395, 0, 0.026), B(SegmentKind.Head, -0.02, 0.05, 0, 0.025)),
            BodyArea.SideOfNeck => Nape(0, 1, B(Torso, -0.012, 0.372, 0.085, 0.022), B(Torso, -0.008, 0.405, 0.045, 0.024), B(SegmentKind.Head, 0.002, 0.05, 0.026, 0.021)),
        };

        Ball B(SegmentKind kind, double x, double y, double z, double r) => f.Ball(kind, side, x, y, z, r);
        Vec3 Facing(SegmentKind kind, double x, double z) => (f.At(kind, side, x, 0, z) - f.At(kind, side, 0, 0, 0)).Normalized();
        AreaShape Pelvic(double x, double z, params Ball[] balls) => new("pelvis", s + "Shorts", Facing(Pelvis, x, z), balls);
        AreaShape Leg(string part, SegmentKind kind, double x, double z, params Ball[] balls) => new(s + part, s + "Shorts", Facing(kind, x, z), balls);
        AreaShape Lower(double x, double z, params Ball[] balls) => new(s + "Shank", s + "Shank", Facing(Shank, x, z), balls);
        AreaShape Trunk(double x, double z, params Ball[] balls) => new("shirt", "shirt", Facing(Torso, x, z), balls);
        AreaShape Arm(string part, double x, double z, params Ball[] balls) => new(s + part, s + "Sleeve", Facing(UpperArm, x, z), balls);
        AreaShape Fore(double x, params Ball[] balls) => new(s + "Forearm", s + "Forearm", Facing(Radius, x, 0), balls);
        AreaShape Nape(double x, double z, params Ball[] balls) => new("neck", "shirt", Facing(Torso, x, z), balls);
    }
}
