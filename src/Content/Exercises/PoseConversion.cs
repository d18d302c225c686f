using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>Files speak degrees; the rooms speak radians.</summary>
internal static class PoseConversion
{
    internal static PosedFrame ToFrame(PoseFile pose) => new()
    {
        Name = pose.Name,
        Orientation = pose.Orientation,
        PitchHint = Radians(pose.PitchHintDeg),
        Working = ToLimb(pose.Working),
        Other = ToLimb(pose.Other),
        Axial = new AxialAngles
        {
            TrunkFlexion = Radians(pose.Axial.TrunkFlexionDeg),
            TrunkBendToWorking = Radians(pose.Axial.TrunkBendToWorkingDeg),
            TrunkTurnToWorking = Radians(pose.Axial.TrunkTurnToWorkingDeg),
            NeckFlexion = Radians(pose.Axial.NeckFlexionDeg),
            NeckBendToWorking = Radians(pose.Axial.NeckBendToWorkingDeg),
            NeckTurnToWorking = Radians(pose.Axial.NeckTurnToWorkingDeg),
        },
        Contacts =
        [
            .. pose.Contacts.Select(c => new SurfaceContact(c.Point, c.Limb, c.Surface, c.HeightM, c.BearsWeight)
            {
                Tilt = Radians(c.TiltDeg),
                Wall = c.Wall,
                ShareOfWeight = c.ShareOfWeightPercent / 100,
            }),
        ],
        Ties = [.. pose.Ties.Select(t => new Tie(t.Kind, t.From, t.FromLimb, t.To, t.ToLimb, t.LengthM))],
    };

    internal static LimbAngles ToLimb(LimbFile limb) => new()
    {
        HipFlexion = Radians(limb.HipFlexionDeg),
        HipAbduction = Radians(limb.HipAbductionDeg),
        HipInternalRotation = Radians(limb.HipInternalRotationDeg),
        KneeFlexion = Radians(limb.KneeFlexionDeg),
        AnkleDorsiflexion = Radians(limb.AnkleDorsiflexionDeg),
        SubtalarEversion = Radians(limb.SubtalarEversionDeg),
        ToeExtension = Radians(limb.ToeExtensionDeg),
        ShoulderFlexion = Radians(limb.ShoulderFlexionDeg),
        ShoulderAbduction = Radians(limb.ShoulderAbductionDeg),
        ShoulderInternalRotation = Radians(limb.ShoulderInternalRotationDeg),
        ElbowFlexion = Radians(limb.ElbowFlexionDeg),
        ForearmPronation = Radians(limb.ForearmPronationDeg),
        WristFlexion = Radians(limb.WristFlexionDeg),
    };

    internal static ImmutableArray<AddedLoad> ToLoads(IEnumerable<AddedLoadFile> loads) =>
        [.. loads.Select(l => new AddedLoad(l.Kind, l.At, l.Limb, l.MassKg) { Toward = l.Toward, Fraction = l.Fraction })];

    internal static Dose ToDose(DoseFile dose) => new()
    {
        Sets = dose.Sets,
        Repetitions = dose.Repetitions,
        RepetitionsTo = dose.RepetitionsTo,
        OutSeconds = dose.OutSeconds,
        HoldSeconds = dose.HoldSeconds,
        BackSeconds = dose.BackSeconds,
        RestSeconds = dose.RestSeconds,
        TimesPerDay = dose.TimesPerDay,
        DaysPerWeek = dose.DaysPerWeek,
        WeightKg = dose.WeightKg,
        Effort = dose.Effort,
    };

    // No quantity here: an absurd number must reach the check, which tells it together with all other faults.
    private static double Radians(double degrees) => degrees * (Math.PI / 180);
}
