using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

/// <summary>Movements with each thing that is used, held or leaned on.</summary>
internal static partial class SampleMovements
{
    private static BandDose Light => new() { F100N = 25, PreStretch = 0.2 };

    private static SurfaceContact[] BothFeet => [On("foot", Limb.Working), On("foot", Limb.Other)];

    private static Movement HipThrust()
    {
        SurfaceContact[] on =
        [
            .. BothFeet, On("upperBack", Limb.Working, SurfaceKind.Bench, 0.4), On("upperBack", Limb.Other, SurfaceKind.Bench, 0.4),
        ];
        LimbAngles Leg(double hf, double kf) => L(hf: hf, kf: kf, sf: 10, sa: 25, ef: 70);
        return M(
            ViewKind.Side, [new(PropKind.Bench, null, null, 0.4)],
            F("start", Orientation.Supine, Leg(65, 90), Leg(65, 90), A(nf: 20), on),
            F("end", Orientation.Supine, Leg(2, 92), Leg(2, 92), A(nf: 30), on));
    }

    private static Movement HangingLeg()
    {
        SurfaceContact[] on =
        [
            On("pelvisBack", Limb.Working, SurfaceKind.Bench, 0.6), On("pelvisBack", Limb.Other, SurfaceKind.Bench, 0.6),
            On("upperBack", Limb.Working, SurfaceKind.Bench, 0.6), On("upperBack", Limb.Other, SurfaceKind.Bench, 0.6),
        ];
        PosedFrame At(double hf) => F("x", Orientation.Supine, L(hf: hf, kf: 70, sf: 40, ef: 60), L(hf: 115, kf: 125, sf: 40, ef: 60), A(nf: 10), on);
        return M(ViewKind.Side, [new(PropKind.Bench, null, null, 0.6), new(PropKind.Pillow, "headBack", null, 0.08)], At(20), At(-15));
    }

    private static Movement ArmSwing()
    {
        SurfaceContact[] on = [.. BothFeet, On("palm", Limb.Other, SurfaceKind.Bench, 0.74)];
        PosedFrame At(double sf) => F("x", Orientation.Upright, L(hf: 65, kf: 10, sf: sf), L(hf: 65, kf: 10, sf: 85, wf: -60, fp: 160), A(), on, 60);
        return M(ViewKind.Side, [new(PropKind.Table, null, null, 0)], At(50), At(95));
    }

    private static Movement AtTable()
    {
        SurfaceContact[] on =
        [
            On("sitBone", Limb.Working, SurfaceKind.Seat, 0.46), On("sitBone", Limb.Other, SurfaceKind.Seat, 0.46), .. BothFeet,
            On("forearmBelow", Limb.Working, SurfaceKind.Bench, 0.72),
        ];
        PosedFrame At(double wf) => F("x", Orientation.Upright, L(hf: 90, kf: 90, sf: 35, sa: 10, ef: 55, fp: 170, wf: wf), L(hf: 90, kf: 90, sf: 20, sr: 30, ef: 70), A(), on);
        return M(ViewKind.Oblique, [new(PropKind.Chair, "sitBone", null, 0.46), new(PropKind.Table, null, null, 0)], At(20), At(-40));
    }

    private static Movement BoardSquat()
    {
        SurfaceContact[] on =
        [
            .. BothFeet.Select(c => c with { Surface = SurfaceKind.Board, HeightM = 0.12, Tilt = Rad(20) }),
        ];
        LimbAngles Leg(double bend) => L(hf: bend, kf: bend, ad: -20 + bend / 4, sf: 80, fp: 150);
        return M(
            ViewKind.Side, [new(PropKind.Board, null, null, 0.12)],
            F("start", Orientation.Upright, Leg(0), Leg(0), A(), on),
            F("end", Orientation.Upright, Leg(70), Leg(70), A(), on, 15));
    }

    private static Movement BallSqueeze()
    {
        SurfaceContact[] on = [.. BothFeet, On("pelvisBack", Limb.Working), On("pelvisBack", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other)];
        LimbAngles Leg(double ha) => L(hf: 50, kf: 90, ha: ha, ad: -20, sf: -6, sa: 20, fp: 150);
        return M(
            ViewKind.Oblique, [Mat, new(PropKind.Ball, "kneeInner", Limb.Working, 0)],
            F("start", Orientation.Supine, Leg(8), Leg(8), A(), on),
            F("end", Orientation.Supine, Leg(5), Leg(5), A(), on));
    }

    private static Movement BackToWall(Prop prop, string at)
    {
        SurfaceContact[] on = [On(at, Limb.Working, SurfaceKind.Wall), On(at, Limb.Other, SurfaceKind.Wall), .. BothFeet];
        PosedFrame At(double bend) => F("x", Orientation.Upright, L(hf: bend, kf: bend, sa: 12, ef: 20), L(hf: bend, kf: bend, sa: 12, ef: 20), A(), on);
        return M(ViewKind.Side, [prop, new(PropKind.Wall, null, null, 0)], At(10), At(65));
    }

    private static Movement BallAtWall() => BackToWall(new(PropKind.Ball, "lowerBack", null, 0), "lowerBack");

    private static Movement RollerAtWall() => BackToWall(new(PropKind.Roller, "upperBack", null, 0.15), "upperBack");

    private static Movement SoleOnBall()
    {
        SurfaceContact[] sits =
        [
            On("sitBone", Limb.Working, SurfaceKind.Seat, 0.46), On("sitBone", Limb.Other, SurfaceKind.Seat, 0.46), On("foot", Limb.Other),
        ];
        PosedFrame At(double kf, string point) => F(
            "x", Orientation.Upright, L(hf: 92, kf: kf, ad: 5, sf: 20, ef: 60), L(hf: 90, kf: 90, sf: 20, ef: 60), A(),
            [.. sits, On(point, Limb.Working, SurfaceKind.Roller, 0.065)]);
        return M(
            ViewKind.Side, [new(PropKind.Chair, "sitBone", null, 0.46), new(PropKind.SmallBall, "forefootSole", Limb.Working, 0)],
            At(80, "forefootSole"), At(65, "heel"));
    }

    private static Movement BallInHand()
    {
        PosedFrame At(double wf) => F("x", Orientation.Upright, L(sf: 15, sa: 8, ef: 90, fp: 20, wf: wf), L(sa: 8, ef: 8), A(), BothFeet);
        return M(ViewKind.Oblique, [new(PropKind.SmallBall, "palm", Limb.Working, 0)], At(-10), At(25));
    }

    private static Movement BandAtDoor()
    {
        PosedFrame At(double sr) => F("x", Orientation.Upright, L(sa: 6, sr: sr, ef: 90), L(sa: 8, ef: 8), A(), BothFeet);
        var band = new AnchorPull(
            new BodyPlace("palm", Limb.Working), new RoomAnchor(BodyDirection.TowardWorking, 0.7, 1.05), Light);
        return M(ViewKind.Front, [new(PropKind.Band, null, null, 0)], At(-40), At(45)) with { Pulls = [band] };
    }

    private static Movement BandLink()
    {
        PosedFrame At(double hf) => F("x", Orientation.Upright, L(hf: hf, kf: 15 + hf / 2, sa: 12, ef: 60), L(sa: 12, ef: 60), A(), [On("foot", Limb.Other)]);
        var band = new LinkPull(
            new BodyPlace("ankleOuter", Limb.Working, "ankleInner", 0.5), new BodyPlace("ankleOuter", Limb.Other, "ankleInner", 0.5), Light);
        return M(ViewKind.Side, [new(PropKind.Band, null, null, 0)], At(10), At(55)) with { Pulls = [band] };
    }

    private static Movement BandApart()
    {
        PosedFrame At(double sa) => F("x", Orientation.Upright, L(sf: 85, sa: sa, ef: 5, fp: 160), L(sf: 85, sa: sa, ef: 5, fp: 160), A(), BothFeet);
        return M(ViewKind.Oblique, [new(PropKind.Band, null, null, 0)], At(0), At(60));
    }

    private static Movement BandAtFoot()
    {
        SurfaceContact[] on =
        [
            On("sitBone", Limb.Working), On("sitBone", Limb.Other), On("calfBack", Limb.Working), On("calfBack", Limb.Other),
        ];
        PosedFrame At(double ad) => F("x", Orientation.Upright, L(hf: 85, kf: 3, ad: ad, sf: 25, ef: 60), L(hf: 85, kf: 3, sf: 25, ef: 60), A(), on, -5);
        return M(ViewKind.Side, [Mat, new(PropKind.Band, "forefootSole", Limb.Working, 0)], At(5), At(-40));
    }

    private static Movement TowelWrung()
    {
        PosedFrame At(double wf) => F(
            "x", Orientation.Upright, L(sf: 45, sa: -5, sr: 10, ef: 65, fp: 170, wf: wf), L(sf: 45, sa: -5, sr: 10, ef: 65, fp: 170, wf: -wf), A(), BothFeet);
        return M(ViewKind.Oblique, [new(PropKind.Towel, null, null, 0)], At(30), At(-40));
    }

    private static Movement KneeOnTowel()
    {
        SurfaceContact[] on =
        [
            On("pelvisBack", Limb.Working), On("pelvisBack", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other),
        ];
        PosedFrame At(double kf) => F("x", Orientation.Supine, L(hf: 14, kf: kf, sf: -4, sa: 16, fp: 150), L(hf: 55, kf: 100, ad: -10, sf: -4, sa: 16, fp: 150), A(), on);
        return M(ViewKind.Side, [Mat, new(PropKind.Towel, "kneeBack", Limb.Working, 0)], At(28), At(12));
    }

    private static Movement StickRaised()
    {
        SurfaceContact[] on = [.. BothFeet, On("pelvisBack", Limb.Working), On("pelvisBack", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other)];
        PosedFrame At(double sf) => F("x", Orientation.Supine, L(hf: 50, kf: 90, ad: -20, sf: sf, ef: 8, fp: 160), L(hf: 50, kf: 90, ad: -20, sf: sf, ef: 8, fp: 160), A(), on);
        return M(ViewKind.Side, [Mat, new(PropKind.Stick, null, null, 0)], At(40), At(150));
    }

    private static Movement StickAtBack()
    {
        PosedFrame At(double hf, double pitch) => F("x", Orientation.Upright, L(hf: hf, kf: hf / 4, ad: 4, sa: 10, ef: 20), L(hf: hf, kf: hf / 4, ad: 4, sa: 10, ef: 20), A(), BothFeet, pitch);
        return M(ViewKind.Side, [new(PropKind.Stick, "upperBack", null, 0)], At(0, 0), At(65, 50));
    }

    private static Movement Pedaling()
    {
        SurfaceContact[] on = [On("sitBone", Limb.Working, SurfaceKind.Seat, 0.85), On("sitBone", Limb.Other, SurfaceKind.Seat, 0.85)];
        LimbAngles High() => L(hf: 95, kf: 105, ad: 5, sf: 70, ef: 20, fp: 150);
        LimbAngles Low() => L(hf: 55, kf: 35, sf: 70, ef: 20, fp: 150);
        return M(
            ViewKind.Side, [new(PropKind.Bicycle, null, null, 0)],
            F("start", Orientation.Upright, High(), Low(), A(), on, 25),
            F("end", Orientation.Upright, Low(), High(), A(), on, 25));
    }

    private static Movement HeelOnChair()
    {
        SurfaceContact[] on = [On("foot", Limb.Other), On("heel", Limb.Working, SurfaceKind.Bench, 0.45)];
        PosedFrame At(double hf, double lean) => F("x", Orientation.Upright, L(hf: hf, kf: 3, sf: 20, ef: 30), L(hf: lean, sf: 20, ef: 30), A(), on, lean);
        return M(ViewKind.Side, [new(PropKind.Chair, "heel", Limb.Working, 0.45)], At(35, 0), At(65, 30));
    }

    private static Movement OnPillow()
    {
        PosedFrame At(double hf) => F(
            "x", Orientation.Upright, L(hf: 0, kf: 5, sa: 20, ef: 20), L(hf: hf, kf: hf * 1.3, sa: 20, ef: 20), A(), [On("foot", Limb.Working, SurfaceKind.Pillow, 0.08)]);
        return M(ViewKind.Oblique, [new(PropKind.Pillow, "foot", Limb.Working, 0.08)], At(15), At(60));
    }
}
