using MomentArm.Body;
using static MomentArm.Body.SegmentKind;

namespace MomentArm.Drawing;

/// <summary>Pelvis in shorts, shirt, neck, and the head with hair, ear, eye and nose.</summary>
internal static class TrunkParts
{
    /// <summary>How far the middle of the trunk rounds out per radian of bend, meters; our choice.</summary>
    private const double SpineM = 0.065;

    internal static IEnumerable<BodyPart> Of(PlacedFigure f, Vec3 toward, HairStyle hair, MovementFocus accent)
    {
        yield return new BodyPart("pelvis", new Layer(Tone.Shorts, PelvisHulls(f)));
        yield return new BodyPart("neck", new Layer(accent == MovementFocus.Neck ? Tone.Working : Tone.FarSkin, [Neck(f)]));
        yield return new BodyPart(
            "shirt",
            [new Layer(accent == MovementFocus.Trunk ? Tone.Working : Tone.Shirt, Shirt(f)), .. Nape(f, accent)]);
        yield return Head(f, toward, hair);
    }

    private static Ball[][] PelvisHulls(PlacedFigure f)
    {
        Ball[] waist = [.. f.Pair(Pelvis, -0.072, 0.085, 0.062, 0.074), .. f.Pair(Pelvis, -0.1, 0.085, 0.06, 0.072)];
        Ball[] hips = [.. f.Pair(Pelvis, -0.055, -0.015, 0.08, 0.078), .. f.Pair(Pelvis, -0.12, -0.045, 0.07, 0.082)];
        Ball[] crotch = f.Pair(Pelvis, -0.08, -0.095, 0.035, 0.066);
        return [[.. waist, .. hips], [.. hips, .. crotch]];
    }

    private static Ball[][] Shirt(PlacedFigure f)
    {
        // The spine of the model bends in one joint; the shirt rounds the back, or the belly, as the spine would.
        var bend = Math.Clamp(f.TrunkFlexion, -0.6, 0.6);
        var (front, back) = (SpineM * Math.Max(0, -bend), -SpineM * Math.Max(0, bend));
        Ball[] hem = [.. f.Pair(Torso, 0.028 + 0.5 * front, 0.0, 0.062, 0.079), .. f.Pair(Torso, 0.004 + 0.5 * back, 0.0, 0.062, 0.079)];
        Ball[] belly = [.. f.Pair(Torso, 0.03 + front, 0.1, 0.055, 0.077), .. f.Pair(Torso, 0.004 + back, 0.13, 0.055, 0.077)];
        Ball[] chest = [.. f.Pair(Torso, 0.025, 0.24, 0.072, 0.09), .. f.Pair(Torso, -0.012, 0.26, 0.075, 0.092)];
        Ball[] shoulders = [.. f.Pair(Torso, -0.004, 0.35, 0.125, 0.06), .. f.Pair(Torso, 0.02, 0.34, 0.09, 0.062)];
        Ball[] collar = f.Pair(Torso, -0.006, 0.4, 0.03, 0.052);
        return [[.. hem, .. belly], [.. belly, .. chest], [.. chest, .. shoulders], [.. shoulders, .. collar]];
    }

    private static Ball[] Neck(PlacedFigure f) =>
    [
        f.Ball(Torso, null, -0.002, 0.4, 0, 0.052),
        f.Ball(SegmentKind.Head, null, 0.004, 0.03, 0, 0.05),
        f.Ball(SegmentKind.Head, null, 0.006, 0.08, 0, 0.05),
    ];

    /// <summary>Where the muscles of the neck go on over the shoulders, for a neck that carries the accent.</summary>
    private static Layer[] Nape(PlacedFigure f, MovementFocus accent) => accent != MovementFocus.Neck ? [] :
    [
        new Layer(Tone.Working, [[.. f.Pair(Torso, -0.006, 0.43, 0.016, 0.044), .. f.Pair(Torso, -0.016, 0.392, 0.104, 0.02)]], false),
    ];

    private static BodyPart Head(PlacedFigure f, Vec3 toward, HairStyle style)
    {
        // Sideways is toward the treated side, so that left and right are drawn in the same order.
        Ball H(double x, double y, double z, double r) => f.Ball(SegmentKind.Head, f.Working, x, y, z, r);
        Vec3 Axis(double x, double y, double z) => f.At(SegmentKind.Head, f.Working, x, y, z) - f.At(SegmentKind.Head, f.Working, 0, 0, 0);

        Ball[] hair = [H(-0.016, 0.158, 0, 0.083), H(0.022, 0.172, 0, 0.0775), H(-0.04, 0.105, 0, 0.056)];
        Ball[] brow = [H(0.048, 0.142, 0.018, 0.052), H(0.048, 0.142, -0.018, 0.052)];
        Ball[] cheek = [H(0.035, 0.1, 0.018, 0.054), H(0.035, 0.1, -0.018, 0.054)];
        Ball[] jaw = [H(0.052, 0.055, 0.008, 0.037), H(0.052, 0.055, -0.008, 0.037), H(-0.002, 0.075, 0.02, 0.046), H(-0.002, 0.075, -0.02, 0.046)];
        Ball[] temple = [H(0.012, 0.118, 0.024, 0.05), H(0.012, 0.118, -0.024, 0.05)];
        Ball[] nose = [H(0.092, 0.128, 0, 0.011), H(0.104, 0.1, 0, 0.0115), H(0.085, 0.092, 0, 0.012)];
        var face = new Layer(Tone.Skin, [[.. brow, .. cheek, .. temple], [.. cheek, .. jaw, .. temple], nose], false);
        var outline = new Layer(Tone.Hair, style == HairStyle.Tied ? [hair, [H(-0.102, 0.2, 0, 0.036), H(-0.07, 0.18, 0, 0.03)]] : [hair]);

        // What turns away from the viewer is painted first: the face under the hair, or the hair under the face.
        var looks = Axis(1, 0, 0).Dot(toward) / Axis(1, 0, 0).Length;
        var skinEdge = face with { Gap = true };
        var layers = new List<Layer>();
        if (looks < -0.45)
            layers.AddRange([skinEdge, outline]);
        else
            layers.AddRange([skinEdge with { Tone = Tone.Hair }, outline, face]);
        if (looks > 0.35)
            layers.Add(new Layer(Tone.FarSkin, [[H(0.108, 0.112, 0, 0.006), H(0.11, 0.099, 0, 0.0095)]], false));
        foreach (var z in (double[])[1, -1])
        {
            var sideways = Axis(0, 0, z).Dot(toward) / Axis(0, 0, z).Length;
            if (sideways > 0.3)
            {
                layers.Add(new Layer(Tone.Feature, [[H(-0.012, 0.118, z * 0.07, 0.0185), H(-0.006, 0.096, z * 0.068, 0.0135)]], false));
                layers.Add(new Layer(Tone.Skin, [[H(-0.0105, 0.118, z * 0.071, 0.0145), H(-0.005, 0.0975, z * 0.069, 0.0095)]], false));
            }

            // An eye is seen from in front and from its own side.
            if (0.85 * looks + 0.53 * sideways > 0.12)
                layers.Add(new Layer(Tone.Hair, [[H(0.084, 0.137, z * 0.031, 0.0078), H(0.085, 0.127, z * 0.031, 0.0078)]], false));
        }

        return new BodyPart("head", [.. layers]);
    }
}
