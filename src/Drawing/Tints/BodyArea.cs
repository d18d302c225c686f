using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>An area of the drawn body that can be tinted: where a person would point, not the outline of one muscle. Our own choice of areas.</summary>
public enum BodyArea
{
    /// <summary>Front of the hip, from the waist to the top of the thigh.</summary>
    FrontOfHip,

    /// <summary>Buttock.</summary>
    Buttock,

    /// <summary>Outer hip, from the rim of the pelvis to the bone at the side.</summary>
    OuterHip,

    /// <summary>Front of the thigh.</summary>
    FrontOfThigh,

    /// <summary>Back of the thigh.</summary>
    BackOfThigh,

    /// <summary>Inner side of the thigh.</summary>
    InnerThigh,

    /// <summary>Calf.</summary>
    Calf,

    /// <summary>Front of the lower leg.</summary>
    Shin,

    /// <summary>Outer side of the lower leg.</summary>
    OuterLowerLeg,

    /// <summary>Inner side of the lower leg.</summary>
    InnerLowerLeg,

    /// <summary>Belly.</summary>
    Belly,

    /// <summary>Side of the trunk.</summary>
    Flank,

    /// <summary>Low back, both sides of the spine.</summary>
    LowBack,

    /// <summary>Upper back, round the shoulder blade.</summary>
    UpperBack,

    /// <summary>Chest.</summary>
    Chest,

    /// <summary>Front of the shoulder.</summary>
    FrontOfShoulder,

    /// <summary>Outer side of the shoulder.</summary>
    OuterShoulder,

    /// <summary>Back of the shoulder.</summary>
    BackOfShoulder,

    /// <summary>Front of the upper arm.</summary>
    FrontOfUpperArm,

    /// <summary>Back of the upper arm.</summary>
    BackOfUpperArm,

    /// <summary>Forearm on the side of the palm.</summary>
    PalmSideOfForearm,

    /// <summary>Forearm on the side of the back of the hand.</summary>
    BackOfForearm,

    /// <summary>Front of the neck.</summary>
    FrontOfNeck,

    /// <summary>Back of the neck.</summary>
    BackOfNeck,

    /// <summary>Side of the neck.</summary>
    SideOfNeck,
}

/// <summary>Which area stands for a joint action or a muscle group.</summary>
public static class BodyAreas
{
    /// <summary>Where the muscles lie that give most of an action (our choice, one area each).</summary>
    /// <param name="action">The action.</param>
    /// <returns>The area.</returns>
    public static BodyArea Of(JointAction action) => action switch
    {
        JointAction.HipFlexion => BodyArea.FrontOfHip,
        JointAction.HipExtension or JointAction.HipExternalRotation => BodyArea.Buttock,
        JointAction.HipAbduction or JointAction.HipInternalRotation => BodyArea.OuterHip,
        JointAction.HipAdduction => BodyArea.InnerThigh,
        JointAction.KneeFlexion => BodyArea.BackOfThigh,
        JointAction.KneeExtension => BodyArea.FrontOfThigh,
        JointAction.AnkleDorsiflexion => BodyArea.Shin,
        JointAction.AnklePlantarflexion => BodyArea.Calf,
        JointAction.AnkleInversion => BodyArea.InnerLowerLeg,
        JointAction.AnkleEversion => BodyArea.OuterLowerLeg,
        JointAction.TrunkFlexion => BodyArea.Belly,
        JointAction.TrunkExtension => BodyArea.LowBack,
        JointAction.TrunkSideBend or JointAction.TrunkRotation => BodyArea.Flank,
        JointAction.NeckFlexion => BodyArea.FrontOfNeck,
        JointAction.NeckExtension => BodyArea.BackOfNeck,
        JointAction.NeckSideBend or JointAction.NeckRotation => BodyArea.SideOfNeck,
        JointAction.ShoulderFlexion => BodyArea.FrontOfShoulder,
        JointAction.ShoulderAbduction => BodyArea.OuterShoulder,
        JointAction.ShoulderExtension => BodyArea.UpperBack,
        JointAction.ShoulderExternalRotation => BodyArea.BackOfShoulder,
        JointAction.ShoulderAdduction or JointAction.ShoulderInternalRotation => BodyArea.Chest,
        JointAction.ElbowFlexion => BodyArea.FrontOfUpperArm,
        JointAction.ElbowExtension => BodyArea.BackOfUpperArm,
        JointAction.ForearmPronation or JointAction.WristFlexion or JointAction.WristUlnarDeviation => BodyArea.PalmSideOfForearm,
        JointAction.ForearmSupination or JointAction.WristExtension or JointAction.WristRadialDeviation => BodyArea.BackOfForearm,
    };

    /// <summary>Where a muscle group lies.</summary>
    /// <param name="group">The group.</param>
    /// <returns>The area.</returns>
    public static BodyArea Of(MuscleGroup group) => group switch
    {
        MuscleGroup.Hamstrings => BodyArea.BackOfThigh,
        MuscleGroup.HipFlexors => BodyArea.FrontOfHip,
        MuscleGroup.RectusFemoris or MuscleGroup.Vasti => BodyArea.FrontOfThigh,
        MuscleGroup.LateralHip => BodyArea.OuterHip,
        MuscleGroup.Adductors => BodyArea.InnerThigh,
        MuscleGroup.GluteusMaximus or MuscleGroup.DeepRotators => BodyArea.Buttock,
        MuscleGroup.Gastrocnemius or MuscleGroup.Soleus => BodyArea.Calf,
    };
}
