using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Web.Pages.Designer;

/// <summary>Whose joint it is.</summary>
public enum PosePart
{
    /// <summary>The limb that works.</summary>
    Working,

    /// <summary>The limb of the other side.</summary>
    Other,

    /// <summary>Trunk and neck.</summary>
    Axial,
}

/// <summary>One joint angle of a pose as it is written: degrees, clinical sign.</summary>
/// <param name="Part">Whose joint.</param>
/// <param name="Joint">The joint: hip, knee, trunk.</param>
/// <param name="Name">The motion that is positive: flexion.</param>
/// <param name="Motion">The model's motion.</param>
/// <param name="Sign">1 where the model's sign is the same for a working right side, else -1.</param>
/// <param name="Low">Least angle that can be written, degrees.</param>
/// <param name="High">Largest.</param>
/// <param name="Get">Reads it.</param>
/// <param name="With">Writes it.</param>
public sealed record JointAngle(
    PosePart Part, string Joint, string Name, Motion Motion, int Sign, double Low, double High,
    Func<PoseFile, double> Get, Func<PoseFile, double, PoseFile> With)
{
    private static readonly ImmutableArray<OfLimb> Limb =
    [
        new("hip", "flexion", Motion.HipFlexion, 1, -40, 140, l => l.HipFlexionDeg, (l, d) => l with { HipFlexionDeg = d }),
        new("hip", "abduction", Motion.HipAdduction, -1, -45, 70, l => l.HipAbductionDeg, (l, d) => l with { HipAbductionDeg = d }),
        new("hip", "internal rotation", Motion.HipRotation, 1, -70, 60, l => l.HipInternalRotationDeg, (l, d) => l with { HipInternalRotationDeg = d }),
        new("knee", "flexion", Motion.KneeExtension, -1, -10, 155, l => l.KneeFlexionDeg, (l, d) => l with { KneeFlexionDeg = d }),
        new("ankle", "dorsiflexion", Motion.AnkleDorsiflexion, 1, -60, 45, l => l.AnkleDorsiflexionDeg, (l, d) => l with { AnkleDorsiflexionDeg = d }),
        new("ankle", "eversion", Motion.SubtalarInversion, -1, -35, 25, l => l.SubtalarEversionDeg, (l, d) => l with { SubtalarEversionDeg = d }),
        new("toes", "extension", Motion.ToeExtension, 1, -45, 80, l => l.ToeExtensionDeg, (l, d) => l with { ToeExtensionDeg = d }),
        new("shoulder", "flexion", Motion.ShoulderFlexion, 1, -70, 185, l => l.ShoulderFlexionDeg, (l, d) => l with { ShoulderFlexionDeg = d }),
        new("shoulder", "abduction", Motion.ShoulderAdduction, -1, -60, 185, l => l.ShoulderAbductionDeg, (l, d) => l with { ShoulderAbductionDeg = d }),
        new("shoulder", "internal rotation", Motion.ShoulderRotation, 1, -100, 100, l => l.ShoulderInternalRotationDeg, (l, d) => l with { ShoulderInternalRotationDeg = d }),
        new("elbow", "flexion", Motion.ElbowFlexion, 1, -10, 155, l => l.ElbowFlexionDeg, (l, d) => l with { ElbowFlexionDeg = d }),
        new("forearm", "pronation", Motion.ForearmPronation, 1, 0, 180, l => l.ForearmPronationDeg, (l, d) => l with { ForearmPronationDeg = d }),
        new("wrist", "flexion", Motion.WristFlexion, 1, -90, 90, l => l.WristFlexionDeg, (l, d) => l with { WristFlexionDeg = d }),
    ];

    private static readonly ImmutableArray<JointAngle> Axial =
    [
        OfAxial("trunk", "flexion", Motion.TrunkExtension, -1, -45, 110, a => a.TrunkFlexionDeg, (a, d) => a with { TrunkFlexionDeg = d }),
        OfAxial("trunk", "bend to the working side", Motion.TrunkBending, 1, -45, 45, a => a.TrunkBendToWorkingDeg, (a, d) => a with { TrunkBendToWorkingDeg = d }),
        OfAxial("trunk", "turn to the working side", Motion.TrunkRotation, -1, -60, 60, a => a.TrunkTurnToWorkingDeg, (a, d) => a with { TrunkTurnToWorkingDeg = d }),
        OfAxial("neck", "flexion", Motion.NeckExtension, -1, -70, 70, a => a.NeckFlexionDeg, (a, d) => a with { NeckFlexionDeg = d }),
        OfAxial("neck", "bend to the working side", Motion.NeckBending, 1, -50, 50, a => a.NeckBendToWorkingDeg, (a, d) => a with { NeckBendToWorkingDeg = d }),
        OfAxial("neck", "turn to the working side", Motion.NeckRotation, -1, -90, 90, a => a.NeckTurnToWorkingDeg, (a, d) => a with { NeckTurnToWorkingDeg = d }),
    ];

    /// <summary>Every angle of a pose: working limb, other limb, trunk and neck.</summary>
    public static ImmutableArray<JointAngle> All { get; } =
    [
        .. Limb.Select(l => new JointAngle(PosePart.Working, l.Joint, l.Name, l.Motion, l.Sign, l.Low, l.High, p => l.Get(p.Working), (p, d) => p with { Working = l.With(p.Working, d) })),
        .. Limb.Select(l => new JointAngle(PosePart.Other, l.Joint, l.Name, l.Motion, l.Sign, l.Low, l.High, p => l.Get(p.Other), (p, d) => p with { Other = l.With(p.Other, d) })),
        .. Axial,
    ];

    /// <summary>Short name in ids: working-hip-flexion.</summary>
    public string Key => $"{Part}-{Joint}-{Name}".ToLowerInvariant().Replace(' ', '-');

    /// <summary>The side of the model that it turns when the right side works; null in the midline.</summary>
    public Side? ModelSide => Part switch
    {
        PosePart.Working => Side.Right,
        PosePart.Other => Side.Left,
        PosePart.Axial => null,
    };

    /// <summary>Whose joint, in words for the screen.</summary>
    public static string Title(PosePart part) => part switch
    {
        PosePart.Working => "Working side",
        PosePart.Other => "Other side",
        PosePart.Axial => "Trunk and neck",
    };

    /// <summary>The pose with the angle set, kept inside what can be written.</summary>
    public PoseFile Set(PoseFile pose, double degrees) => With(pose, Math.Clamp(degrees, Low, High));

    private static JointAngle OfAxial(
        string joint, string name, Motion motion, int sign, double low, double high, Func<AxialFile, double> get, Func<AxialFile, double, AxialFile> with) =>
        new(PosePart.Axial, joint, name, motion, sign, low, high, p => get(p.Axial), (p, d) => p with { Axial = with(p.Axial, d) });

    private sealed record OfLimb(
        string Joint, string Name, Motion Motion, int Sign, double Low, double High, Func<LimbFile, double> Get, Func<LimbFile, double, LimbFile> With);
}
