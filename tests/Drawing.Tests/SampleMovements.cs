using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

/// <summary>Movements that ask something different of the drawing each; angles in degrees, turned into radians here.</summary>
internal static partial class SampleMovements
{
    internal static ImmutableDictionary<string, Movement> All { get; } = new Dictionary<string, Movement>
    {
        ["side-lying leg raise"] = SideLyingLegRaise(),
        ["clam"] = Clam(),
        ["bridge"] = Bridge(),
        ["one-leg bridge"] = OneLegBridge(),
        ["hands-and-knees leg lift"] = HandsAndKneesLegLift(),
        ["strap stretch on the back"] = StrapStretch(),
        ["half-kneeling stretch"] = HalfKneelingStretch(),
        ["outer-thigh rolling"] = OuterThighRolling(),
        ["standing leg raise to the side"] = StandingLegRaise(),
        ["sit to stand"] = SitToStand(),
        ["step-down to the side"] = StepDown(),
        ["band side-step"] = BandSideStep(),
        ["front-thigh stretch with strap"] = FrontThighStretch(),
        ["seated knee straightening"] = SeatedKnee(),
        ["slide down a wall"] = WallSlide(),
        ["raise a weight to the side"] = WeightRaise(),
        ["arm turns out, lying on the side"] = TurnOut(),
        ["hips up, shoulders on a bench"] = HipThrust(),
        ["leg hangs over the end of a couch"] = HangingLeg(),
        ["arm swings, other hand on a table"] = ArmSwing(),
        ["sitting at a table"] = AtTable(),
        ["squat on a tilted board"] = BoardSquat(),
        ["ball between the knees"] = BallSqueeze(),
        ["ball between back and wall"] = BallAtWall(),
        ["roller between back and wall"] = RollerAtWall(),
        ["small ball under the sole"] = SoleOnBall(),
        ["small ball in the hand"] = BallInHand(),
        ["arm turns in against a band"] = BandAtDoor(),
        ["band from ankle to ankle"] = BandLink(),
        ["band pulled apart"] = BandApart(),
        ["foot pushes against a band"] = BandAtFoot(),
        ["towel wrung"] = TowelWrung(),
        ["knee pressed on a towel"] = KneeOnTowel(),
        ["stick raised lying"] = StickRaised(),
        ["stick along the back"] = StickAtBack(),
        ["pedaling"] = Pedaling(),
        ["heel on a chair"] = HeelOnChair(),
        ["standing on a pillow"] = OnPillow(),
    }.Concat(InPlace()).ToImmutableDictionary();

    private static LimbAngles L(
        double hf = 0, double ha = 0, double hr = 0, double kf = 0, double ad = 0,
        double sf = 0, double sa = 0, double sr = 0, double ef = 0, double fp = 90, double wf = 0, double tx = 0) => new()
        {
            HipFlexion = Rad(hf),
            HipAbduction = Rad(ha),
            HipInternalRotation = Rad(hr),
            KneeFlexion = Rad(kf),
            AnkleDorsiflexion = Rad(ad),
            ToeExtension = Rad(tx),
            ShoulderFlexion = Rad(sf),
            ShoulderAbduction = Rad(sa),
            ShoulderInternalRotation = Rad(sr),
            ElbowFlexion = Rad(ef),
            ForearmPronation = Rad(fp),
            WristFlexion = Rad(wf),
        };

    private static AxialAngles A(double tf = 0, double tb = 0, double tt = 0, double nf = 0, double nb = 0, double nt = 0) => new()
    {
        TrunkFlexion = Rad(tf),
        TrunkBendToWorking = Rad(tb),
        TrunkTurnToWorking = Rad(tt),
        NeckFlexion = Rad(nf),
        NeckBendToWorking = Rad(nb),
        NeckTurnToWorking = Rad(nt),
    };

    private static double Rad(double degrees) => degrees * Math.PI / 180;

    private static SurfaceContact On(string point, Limb? limb, SurfaceKind surface = SurfaceKind.Floor, double height = 0) =>
        new(point, limb, surface, height, true);

    private static PosedFrame F(
        string name, Orientation orientation, LimbAngles w, LimbAngles o, AxialAngles axial, SurfaceContact[] contacts, double pitch = 0) => new()
        {
            Name = name,
            Orientation = orientation,
            PitchHint = Rad(pitch),
            Working = w,
            Other = o,
            Axial = axial,
            Contacts = [.. contacts],
        };

    private static Movement M(ViewKind view, Prop[] props, params PosedFrame[] frames) =>
        new() { Frames = [.. frames], Props = [.. props], Loads = [], View = view };

    private static Prop Mat => new(PropKind.Mat, null, null, 0);

    private static Movement SideLyingLegRaise()
    {
        SurfaceContact[] on = [On("trochanter", Limb.Other), On("shoulderOuter", Limb.Other), On("kneeOuter", Limb.Other)];
        PosedFrame At(double ha) => F(
            "x", Orientation.SideLyingOnOther,
            L(hf: -5, ha: ha, sf: 48, sa: -22, sr: 50, ef: 95, fp: 150),
            L(hf: 45, kf: 60, sf: 165, ef: 20, fp: 90),
            A(nb: -8), on);
        return M(ViewKind.Side, [Mat], At(0), At(30));
    }

    private static Movement Clam()
    {
        SurfaceContact[] on = [On("trochanter", Limb.Other), On("shoulderOuter", Limb.Other), On("kneeOuter", Limb.Other)];
        PosedFrame At(double ha, double hr) => F(
            "x", Orientation.SideLyingOnOther,
            L(hf: 45, kf: 90, ha: ha, hr: hr, sf: 48, sa: -22, sr: 50, ef: 95, fp: 150),
            L(hf: 45, kf: 90, sf: 165, ef: 20),
            A(nb: -8), on);
        return M(ViewKind.Back, [Mat], At(0, 0), At(20, -30));
    }

    private static Movement Bridge()
    {
        var arm = L(sf: -6, sa: 14, fp: 150);
        LimbAngles Leg(double hf, double kf, double ad) => arm with { HipFlexion = Rad(hf), KneeFlexion = Rad(kf), AnkleDorsiflexion = Rad(ad) };
        return M(
            ViewKind.Side, [Mat],
            F("start", Orientation.Supine, Leg(60, 125, -25), Leg(60, 125, -25), A(),
                [On("foot", Limb.Working), On("foot", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other)]),
            F("end", Orientation.Supine, Leg(0, 105, -15) with { ShoulderFlexion = Rad(-32) }, Leg(0, 105, -15) with { ShoulderFlexion = Rad(-32) }, A(nf: 28),
                [On("foot", Limb.Working), On("foot", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other)]));
    }

    private static Movement OneLegBridge()
    {
        var arm = L(sf: -6, sa: 14, fp: 150);
        SurfaceContact[] on = [On("foot", Limb.Working), On("upperBack", Limb.Working), On("upperBack", Limb.Other)];
        return M(
            ViewKind.Side, [Mat],
            F("start", Orientation.Supine, arm with { HipFlexion = Rad(60), KneeFlexion = Rad(130), AnkleDorsiflexion = Rad(-20) },
                arm with { HipFlexion = Rad(60), KneeFlexion = Rad(50) }, A(), on),
            F("end", Orientation.Supine, arm with { KneeFlexion = Rad(110), AnkleDorsiflexion = Rad(-10), ShoulderFlexion = Rad(-32) },
                arm with { KneeFlexion = Rad(20), ShoulderFlexion = Rad(-32) }, A(nf: 28), on));
    }

    private static Movement HandsAndKneesLegLift()
    {
        SurfaceContact[] on = [On("kneeFront", Limb.Other), On("hand", Limb.Working), On("hand", Limb.Other)];
        var arm = L(hf: 90, kf: 90, sf: 88, wf: -80, fp: 170, ad: -35);
        return M(
            ViewKind.Side, [Mat],
            F("start", Orientation.Prone, arm, arm, A(nf: -12), on),
            F("end", Orientation.Prone, arm with { HipFlexion = 0 }, arm, A(nf: -12), on));
    }

    private static Movement StrapStretch()
    {
        SurfaceContact[] on =
        [
            On("pelvisBack", Limb.Working), On("pelvisBack", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other),
        ];
        PosedFrame At(double hf, double sf, double ef) => F(
            "x", Orientation.Supine,
            L(hf: hf, sf: sf, ef: ef, sr: 10),
            L(sf: sf, ef: ef, sr: 10),
            A(nf: 8), on);
        return M(ViewKind.Side, [Mat, new(PropKind.Strap, "ballInner", Limb.Working, 0)], At(45, 40, 45), At(75, 46, 60));
    }

    private static Movement HalfKneelingStretch()
    {
        return M(
            ViewKind.Side, [Mat],
            F("start", Orientation.Upright, L(hf: 0, kf: 90, ad: -25, sf: 12, sa: 18, sr: 30, ef: 75), L(hf: 90, kf: 90, sf: 12, sa: 18, sr: 30, ef: 75), A(),
                [On("foot", Limb.Other), On("kneeFront", Limb.Working)]),
            F("end", Orientation.Upright, L(hf: -15, kf: 75, ad: -35, sf: 12, sa: 18, sr: 30, ef: 75), L(hf: 90, kf: 105, ad: 15, sf: 12, sa: 18, sr: 30, ef: 75), A(),
                [On("foot", Limb.Other), On("kneeFront", Limb.Working)]));
    }

    private static Movement OuterThighRolling()
    {
        PosedFrame At(string point) => F(
            "x", Orientation.SideLyingOnWorking,
            L(kf: 10, sa: 78, ef: 90, fp: 160),
            L(hf: 65, ha: -8, hr: -50, kf: 80, ad: 0, sf: 35, sa: 5, sr: 35, ef: 80, fp: 120),
            A(tb: -16, nb: 8), [On(point, Limb.Working, SurfaceKind.Roller, 0.15), On("elbow", Limb.Working)]);
        return M(ViewKind.Back, [Mat, new(PropKind.Roller, "thighOuter", Limb.Working, 0.15)], At("thighOuter"), At("kneeOuter"));
    }

    private static Movement StandingLegRaise()
    {
        PosedFrame At(double ha, double hf) => F(
            "x", Orientation.Upright,
            L(ha: ha, hf: hf, sa: 12, sf: 5, sr: 40, ef: 85, fp: 90),
            L(hf: 5, kf: 10, ad: 5, sf: 55, sa: 20, ef: 40, fp: 150),
            A(), [On("foot", Limb.Other)]);
        return M(
            ViewKind.Front,
            [new(PropKind.LoopBand, "ankle", null, 0), new(PropKind.Chair, "palm", Limb.Other, 0)],
            At(0, 0), At(30, -5));
    }

    private static Movement SitToStand()
    {
        LimbAngles Arm(LimbAngles leg, double sf, double ef) =>
            leg with { ShoulderFlexion = Rad(sf), ElbowFlexion = Rad(ef), ShoulderAbduction = Rad(-6), ShoulderInternalRotation = Rad(10) };
        var down = Arm(L(hf: 115, kf: 95, ad: 15), 70, 20);
        var up = Arm(L(), 10, 15);
        return M(
            ViewKind.Side,
            [new(PropKind.Chair, "sitBone", null, 0.45)],
            F("start", Orientation.Upright, down, down, A(nf: -15), [On("foot", Limb.Working), On("foot", Limb.Other), On("sitBone", Limb.Working, SurfaceKind.Seat, 0.45)], 35),
            F("end", Orientation.Upright, up, up, A(), [On("foot", Limb.Working), On("foot", Limb.Other)]));
    }

    private static Movement StepDown()
    {
        return M(
            ViewKind.Oblique,
            [new(PropKind.Step, "foot", Limb.Working, 0.15)],
            F("start", Orientation.Upright, L(sa: 14, sr: 40, ef: 80), L(sa: 14, sr: 40, ef: 80), A(), [On("foot", Limb.Working, SurfaceKind.Step, 0.15)]),
            F("end", Orientation.Upright, L(hf: 40, kf: 55, ad: 25, sa: 14, sr: 40, ef: 80), L(hf: 18, kf: 5, ad: 5, sa: 14, sr: 40, ef: 80), A(),
                [On("foot", Limb.Working, SurfaceKind.Step, 0.15)], 10));
    }

    private static Movement BandSideStep()
    {
        var arms = L(hf: 40, kf: 40, ad: 20, sa: 16, sf: 10, sr: 45, ef: 95);
        SurfaceContact[] on = [On("foot", Limb.Other), On("foot", Limb.Working)];
        return M(
            ViewKind.Front,
            [new(PropKind.LoopBand, "kneeOuter", null, 0)],
            F("start", Orientation.Upright, arms with { HipAbduction = Rad(5) }, arms with { HipAbduction = Rad(5) }, A(), on, 20),
            F("end", Orientation.Upright, arms with { HipAbduction = Rad(25) }, arms with { HipAbduction = Rad(5) }, A(), on, 20));
    }

    private static Movement FrontThighStretch()
    {
        SurfaceContact[] on = [On("chestFront", Limb.Working), On("chestFront", Limb.Other), On("pelvisFront", Limb.Working), On("pelvisFront", Limb.Other)];
        PosedFrame At(double hf, double kf, double sf) => F(
            "x", Orientation.Prone,
            L(hf: hf, kf: kf, sf: sf, sa: 20, ef: 15),
            L(ad: -40, sf: 150, sa: 35, ef: 95, fp: 150, sr: 40),
            A(nf: -5, nt: 0), on);
        return M(ViewKind.Side, [Mat, new(PropKind.Strap, "ballInner", Limb.Working, 0)], At(0, 90, -20), At(-5, 125, -35));
    }

    private static Movement SeatedKnee()
    {
        var still = L(hf: 90, kf: 90, sf: -22, sa: 14, ef: 38, fp: 150, wf: -50);
        SurfaceContact[] on = [On("sitBone", Limb.Working, SurfaceKind.Seat, 0.47), On("sitBone", Limb.Other, SurfaceKind.Seat, 0.47), On("thighBack", Limb.Other, SurfaceKind.Seat, 0.47)];
        return M(
            ViewKind.Side,
            [new(PropKind.Chair, "sitBone", null, 0.47), new(PropKind.CuffWeight, "ankle", Limb.Working, 0)],
            F("start", Orientation.Upright, still, still, A(), on),
            F("end", Orientation.Upright, still with { KneeFlexion = 0, AnkleDorsiflexion = Rad(5) }, still, A(), on));
    }

    private static Movement WallSlide()
    {
        LimbAngles Leg(double bend) => L(hf: bend, kf: bend, sf: 10, sa: 14, sr: 20, ef: 20);
        PosedFrame At(double bend) => F(
            "x", Orientation.Upright, Leg(bend), Leg(bend), A(),
            [On("upperBack", Limb.Working, SurfaceKind.Wall), On("upperBack", Limb.Other, SurfaceKind.Wall), On("foot", Limb.Working), On("foot", Limb.Other)]);
        return M(ViewKind.Side, [new(PropKind.Wall, null, null, 0)], At(20), At(70));
    }

    private static Movement WeightRaise()
    {
        PosedFrame At(double sa) => F(
            "x", Orientation.Upright, L(sa: sa, sf: 10, ef: 8, fp: 170), L(sa: 8, ef: 8), A(), [On("foot", Limb.Working), On("foot", Limb.Other)]);
        return M(ViewKind.Front, [new(PropKind.HandWeight, null, Limb.Working, 0)], At(10), At(85));
    }

    private static Movement TurnOut()
    {
        SurfaceContact[] on = [On("trochanter", Limb.Other), On("shoulderOuter", Limb.Other), On("kneeOuter", Limb.Other)];
        PosedFrame At(double sr) => F(
            "x", Orientation.SideLyingOnOther, L(hf: 40, kf: 60, sr: sr, ef: 90, fp: 90, sa: 4), L(hf: 40, kf: 60, sf: 100, sr: 40, ef: 95), A(), on);
        return M(
            ViewKind.Side,
            [Mat, new(PropKind.Pillow, "headSide", Limb.Other, 0.12), new(PropKind.HandWeight, null, Limb.Working, 0)], At(45), At(-45));
    }
}
