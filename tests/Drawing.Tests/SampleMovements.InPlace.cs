using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

/// <summary>Movements of head, trunk, hand and foot that are small, turn in place, or go nowhere.</summary>
internal static partial class SampleMovements
{
    private static SurfaceContact[] Seated =>
    [
        On("sitBone", Limb.Working, SurfaceKind.Seat, 0.45), On("sitBone", Limb.Other, SurfaceKind.Seat, 0.45), .. BothFeet,
    ];

    private static SurfaceContact[] OnBack =>
    [
        On("pelvisBack", Limb.Working), On("pelvisBack", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other),
    ];

    private static Dictionary<string, Movement> InPlace() => new()
    {
        ["head turns"] = Sitting(ViewKind.Front, MovementFocus.Neck, A(), A(nt: 55)),
        ["head nods lying"] = Lying(MovementFocus.Neck, A(), A(nf: 14)),
        ["head pushes into the hand"] = HeadPush(),
        ["curl of the trunk"] = Lying(MovementFocus.Trunk, A(tf: -6), A(tf: 20, nf: 8)),
        ["arm and leg reach, trunk still"] = ArmAndLeg(),
        ["forearm turns"] = ForearmTurns(),
        ["ball pressed in the hand"] = BallPressed(),
        ["buttocks tightened"] = ButtocksTightened(),
        ["knee presses down"] = KneePressesDown(),
        ["arch rises"] = BareFootMoves(L(hf: 90, kf: 90) with { SubtalarEversion = Rad(5) }, L(hf: 90, kf: 90)),
        ["big toe lifts"] = BareFootMoves(L(hf: 90, kf: 90), L(hf: 90, kf: 90, tx: 35)),
        ["heel raise on a step"] = HeelRaiseOnStep(),
        ["loop round the feet"] = LoopRoundFeet(),
        ["ankles held down"] = AnklesHeldDown(),
    };

    private static Movement Sitting(ViewKind view, MovementFocus focus, AxialAngles from, AxialAngles to)
    {
        var still = L(hf: 90, kf: 90, sa: 6, ef: 40);
        return M(
            view, [new(PropKind.Chair, "sitBone", null, 0.45)],
            F("start", Orientation.Upright, still, still, from, Seated),
            F("end", Orientation.Upright, still, still, to, Seated)) with { Focus = focus };
    }

    private static Movement Lying(MovementFocus focus, AxialAngles from, AxialAngles to)
    {
        var still = L(hf: 50, kf: 105, ad: -30, sf: -6, sa: 16, fp: 150);
        SurfaceContact[] on = [On("pelvisBack", Limb.Working), On("pelvisBack", Limb.Other), .. BothFeet];
        return M(ViewKind.Side, [Mat], F("start", Orientation.Supine, still, still, from, on), F("end", Orientation.Supine, still, still, to, on)) with { Focus = focus };
    }

    private static Movement HeadPush()
    {
        var hand = new BodyPlace("palm", Limb.Working);
        return Sitting(ViewKind.Front, MovementFocus.Neck, A(), A()) with
        {
            Pulls = [new HelpPull(new BodyPlace("headSide", Limb.Working), 30, BodyDirection.TowardOther, null, hand)],
        };
    }

    private static Movement ArmAndLeg()
    {
        SurfaceContact[] on = [On("pelvisBack", Limb.Working), On("pelvisBack", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other)];
        return M(
            ViewKind.Side, [Mat],
            F("start", Orientation.Supine, L(hf: 90, kf: 90, sf: 90), L(hf: 90, kf: 90, sf: 90), A(), on),
            F("end", Orientation.Supine, L(hf: 12, kf: 8, sf: 90), L(hf: 90, kf: 90, sf: 165), A(), on)) with { Focus = MovementFocus.Trunk };
    }

    private static Movement ForearmTurns()
    {
        PosedFrame At(double fp) => F("x", Orientation.Upright, L(hf: 90, kf: 90, sf: 20, ef: 85, fp: fp), L(hf: 90, kf: 90, ef: 20), A(), Seated);
        return M(ViewKind.Oblique, [new(PropKind.HandWeight, "palm", Limb.Working, 0)], At(20), At(160)) with { Focus = MovementFocus.Forearm, CloseUp = "palm" };
    }

    private static Movement BallPressed()
    {
        PosedFrame At(double wf) => F("x", Orientation.Upright, L(sf: 15, sa: 8, ef: 90, fp: 20, wf: wf), L(sa: 8, ef: 8), A(), BothFeet);
        return M(ViewKind.Oblique, [new(PropKind.SmallBall, "palm", Limb.Working, 0)], At(0), At(4)) with { Focus = MovementFocus.Forearm, CloseUp = "palm" };
    }

    private static Movement ButtocksTightened()
    {
        SurfaceContact[] on = [On("chestFront", Limb.Working), On("chestFront", Limb.Other), On("pelvisFront", Limb.Working), On("pelvisFront", Limb.Other)];
        PosedFrame At(double hr) => F("x", Orientation.Prone, L(hr: hr, ad: -40, sf: 150, sa: 35, ef: 120), L(hr: hr, ad: -40, sf: 150, sa: 35, ef: 120), A(), on);
        return M(ViewKind.Side, [Mat], At(-3), At(-5)) with { Focus = MovementFocus.Leg, Aims = [JointAction.HipExtension] };
    }

    private static Movement KneePressesDown()
    {
        SurfaceContact[] on = [.. OnBack, On("kneeBack", Limb.Working, SurfaceKind.Pillow, 0.05), On("heelBack", Limb.Other)];
        PosedFrame At(double kf) => F("x", Orientation.Supine, L(hf: 8, kf: kf, sf: -6, sa: 18), L(sf: -6, sa: 18), A(), on);
        return M(ViewKind.Side, [Mat, new(PropKind.Towel, "kneeBack", Limb.Working, 0.05)], At(14), At(2)) with
        {
            Focus = MovementFocus.Leg, Aims = [JointAction.KneeExtension],
        };
    }

    private static Movement BareFootMoves(LimbAngles from, LimbAngles to)
    {
        var other = L(hf: 90, kf: 90, ef: 40);
        PosedFrame At(LimbAngles w) => F("x", Orientation.Upright, w with { ElbowFlexion = Rad(40) }, other, A(), Seated);
        return M(ViewKind.Oblique, [new(PropKind.Chair, "sitBone", null, 0.45)], At(from), At(to)) with { Focus = MovementFocus.Leg, CloseUp = "forefootSole" };
    }

    private static Movement HeelRaiseOnStep()
    {
        SurfaceContact[] on = [On("forefootSole", Limb.Working, SurfaceKind.Step, 0.15)];
        PosedFrame At(double ad, double tx) => F("x", Orientation.Upright, L(ad: ad, tx: tx, sf: 60, ef: 30), L(kf: 60, sf: 60, ef: 30), A(), on);
        return M(ViewKind.Side, [new(PropKind.Step, "forefootSole", Limb.Working, 0.15)], At(10, 0), At(-30, 30)) with { Focus = MovementFocus.Leg };
    }

    private static Movement LoopRoundFeet()
    {
        PosedFrame At(double hf) => F("x", Orientation.Upright, L(hf: hf, kf: hf, sa: 12), L(sa: 12), A(), [On("foot", Limb.Other)]);
        return M(ViewKind.Side, [new(PropKind.LoopBand, "ankleOuter", null, 0)], At(5), At(70)) with
        {
            Pulls = [new LoopPull(new BodyPlace("instep", Limb.Working, "forefootSole", 0.5), 0.04, Light)],
        };
    }

    private static Movement AnklesHeldDown()
    {
        SurfaceContact[] on = [On("knee", Limb.Working), On("knee", Limb.Other), On("toeTop", Limb.Working), On("toeTop", Limb.Other)];
        PosedFrame At(double kf) => F("x", Orientation.Upright, L(kf: kf, ad: -40, sf: 40, ef: 90), L(kf: kf, ad: -40, sf: 40, ef: 90), A(), on, 90 - kf);
        return M(ViewKind.Side, [Mat], At(90), At(70)) with
        {
            Focus = MovementFocus.Leg,
            Pulls =
            [
                new HelpPull(new BodyPlace("heelBack", Limb.Working), 250, BodyDirection.Down), new HelpPull(new BodyPlace("heelBack", Limb.Other), 250, BodyDirection.Down),
            ],
        };
    }
}
