using MomentArm.Body;
using static MomentArm.Body.SegmentKind;

namespace MomentArm.Drawing;

/// <summary>How a hand is closed.</summary>
internal enum Grasp
{
    /// <summary>Fingers straight.</summary>
    Open,

    /// <summary>Round something thin.</summary>
    Fist,

    /// <summary>Round a ball as big as a fist.</summary>
    Ball,
}

/// <summary>Tones of one arm.</summary>
/// <param name="Hand">Hand.</param>
/// <param name="Forearm">Forearm.</param>
/// <param name="Arm">Upper arm.</param>
/// <param name="Sleeve">Sleeve.</param>
/// <param name="OneShirt">Whether the sleeve goes on into the shirt; not where one of them carries the accent.</param>
internal readonly record struct ArmTones(Tone Hand, Tone Forearm, Tone Arm, Tone Sleeve, bool OneShirt);

/// <summary>Sleeve, arm and hand of one side.</summary>
internal static class ArmParts
{
    internal static IEnumerable<BodyPart> Of(PlacedFigure f, Side side, ArmTones tones, Grasp grasp)
    {
        var s = side == Side.Right ? "right" : "left";
        yield return new BodyPart(s + "Hand", new Layer(tones.Hand, Hand(f, side, grasp)));
        yield return new BodyPart(s + "Forearm", Layer.Along(tones.Forearm, Forearm(f, side)));
        yield return new BodyPart(s + "UpperArm", Layer.Along(tones.Arm, Arm(f, side)));
        yield return new BodyPart(s + "Sleeve", Layer.Along(tones.Sleeve, Sleeve(f, side)));
    }

    internal static IEnumerable<Patch> Patches(PlacedFigure f, Side side, ArmTones tones)
    {
        var s = side == Side.Right ? "right" : "left";
        Ball[] elbow =
        [
            f.Ball(UpperArm, side, 0.0045, -0.225, -0.002, 0.0388),
            f.Ball(UpperArm, side, 0.005, -0.28, -0.005, 0.0356),
            f.Ball(Ulna, side, -0.002, -0.006, 0.0055, 0.0346),
            f.Ball(Ulna, side, -0.0035, -0.055, 0.0125, 0.0361),
        ];
        Ball[] wrist =
        [
            f.Ball(Radius, side, -0.0083, -0.19, 0.0145, 0.0243),
            f.Ball(Radius, side, -0.0085, -0.225, 0.013, 0.0224),
            f.Ball(SegmentKind.Hand, side, 0, -0.008, 0, 0.0208),
            f.Ball(SegmentKind.Hand, side, 0, -0.035, 0, 0.0195),
        ];
        Ball[] shoulder =
        [
            f.Ball(UpperArm, side, 0, -0.006, 0, 0.0525),
            tones.OneShirt ? f.Ball(Torso, side, -0.002, 0.352, 0.115, 0.058) : f.Ball(Torso, side, -0.004, 0.366, 0.122, 0.042),
        ];
        // An accent that ends at elbow or wrist keeps its seam there.
        if (tones.Arm == tones.Forearm)
            yield return new Patch(s + "Forearm", s + "UpperArm", true, Layer.Along(tones.Arm, elbow) with { Gap = false });

        if (tones.OneShirt && Armpit(f, side) is { } armpit)
            yield return new Patch("shirt", s + "Sleeve", false, new Layer(tones.Sleeve, [armpit], false));

        if (tones.Hand == tones.Forearm)
            yield return new Patch(s + "Forearm", s + "Hand", true, Layer.Along(tones.Hand, wrist) with { Gap = false });
        yield return new Patch("shirt", s + "Sleeve", false, new Layer(tones.Sleeve, [shoulder], false));
    }

    /// <summary>Flesh from a raised arm down the side of the chest, growing as the arm goes up; null for an arm that hangs or reaches forward.</summary>
    private static Ball[]? Armpit(PlacedFigure f, Side side)
    {
        var arm = f.At(UpperArm, side, 0, -1, 0) - f.At(UpperArm, side, 0, 0, 0);
        var down = f.At(Torso, side, 0, -1, 0) - f.At(Torso, side, 0, 0, 0);
        var raised = Math.Clamp((-arm.Dot(down) / (arm.Length * down.Length) - 0.1) / 0.6, 0, 1);
        return raised <= 0 ? null :
        [
            f.Ball(UpperArm, side, 0.001, -0.02 - 0.075 * raised, 0, 0.049),
            f.Ball(Torso, side, -0.002, 0.34, 0.1, 0.058),
            f.Ball(Torso, side, 0, 0.3 - 0.1 * raised, 0.078, 0.078),
        ];
    }

    private static Ball[] Sleeve(PlacedFigure f, Side side) =>
    [
        f.Ball(UpperArm, side, 0, -0.004, 0, 0.0535),
        f.Ball(UpperArm, side, 0.002, -0.06, 0.001, 0.0525),
        f.Ball(UpperArm, side, 0.002, -0.145, 0.001, 0.049),
    ];

    private static Ball[] Arm(PlacedFigure f, Side side) =>
    [
        f.Ball(UpperArm, side, 0.002, -0.1, 0.002, 0.043),
        f.Ball(UpperArm, side, 0.004, -0.19, 0, 0.0405),
        f.Ball(UpperArm, side, 0.005, -0.283, -0.005, 0.0355),
    ];

    private static Ball[] Forearm(PlacedFigure f, Side side) =>
    [
        f.Ball(Ulna, side, -0.002, -0.004, 0.005, 0.0345),
        f.Ball(Ulna, side, -0.004, -0.065, 0.014, 0.0365),
        f.Ball(Ulna, side, -0.008, -0.14, 0.022, 0.0305),
        f.Ball(Radius, side, -0.0085, -0.225, 0.013, 0.0225),
    ];

    // Palm forward, thumb outward in the frame of the hand; a gripping hand curls its fingers toward the palm.
    private static Ball[][] Hand(PlacedFigure f, Side side, Grasp grasp)
    {
        Ball H(double x, double y, double z, double r) => f.Ball(SegmentKind.Hand, side, x, y, z, r);
        Ball[] palm = [H(0, -0.005, 0, 0.021), H(0, -0.05, 0.022, 0.0165), H(0, -0.075, 0.024, 0.015), H(0, -0.075, -0.024, 0.015), H(0, -0.04, -0.02, 0.017)];
        if (grasp == Grasp.Ball)
        {
            return
            [
                palm,
                [H(0.004, -0.08, 0.022, 0.0155), H(0.004, -0.08, -0.022, 0.0155), H(0.04, -0.118, 0.02, 0.0125), H(0.04, -0.116, -0.018, 0.0125)],
                [H(0.04, -0.118, 0.02, 0.0125), H(0.04, -0.116, -0.018, 0.0125), H(0.078, -0.104, 0.016, 0.0105), H(0.078, -0.102, -0.012, 0.0105)],
                [H(0.008, -0.03, 0.024, 0.0145), H(0.04, -0.028, 0.034, 0.012)],
                [H(0.04, -0.028, 0.034, 0.012), H(0.076, -0.042, 0.018, 0.0105)],
            ];
        }

        if (grasp == Grasp.Fist)
        {
            return
            [
                palm,
                [H(0.004, -0.08, 0.022, 0.0165), H(0.004, -0.08, -0.022, 0.0165), H(0.034, -0.078, 0.02, 0.014), H(0.034, -0.078, -0.018, 0.014)],
                [H(0.034, -0.078, 0.02, 0.014), H(0.034, -0.078, -0.018, 0.014), H(0.036, -0.052, 0.018, 0.013), H(0.036, -0.052, -0.014, 0.013)],
                [H(0.01, -0.03, 0.024, 0.014), H(0.04, -0.05, 0.03, 0.0115)],
                [H(0.04, -0.05, 0.03, 0.0115), H(0.05, -0.072, 0.014, 0.0105)],
            ];
        }

        return
        [
            palm,
            [H(0, -0.075, 0.024, 0.015), H(0, -0.075, -0.024, 0.015), H(0.006, -0.12, 0.021, 0.0125), H(0.006, -0.115, -0.02, 0.0115)],
            [H(0.006, -0.12, 0.021, 0.0125), H(0.006, -0.115, -0.02, 0.0115), H(0.014, -0.158, 0.01, 0.0105), H(0.014, -0.15, -0.012, 0.0105)],
            [H(0.004, -0.025, 0.02, 0.0145), H(0.012, -0.062, 0.044, 0.0115)],
            [H(0.012, -0.062, 0.044, 0.0115), H(0.016, -0.088, 0.046, 0.01)],
        ];
    }
}
