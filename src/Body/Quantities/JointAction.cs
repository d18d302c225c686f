namespace MomentArm.Body;

/// <summary>A direction in which muscles turn a joint: what a strength test tests and an exercise asks.</summary>
public enum JointAction
{
    /// <summary>Thigh forward.</summary>
    HipFlexion,

    /// <summary>Thigh backward.</summary>
    HipExtension,

    /// <summary>Thigh outward; in standing it keeps the pelvis level.</summary>
    HipAbduction,

    /// <summary>Thigh inward.</summary>
    HipAdduction,

    /// <summary>Thigh turned inward.</summary>
    HipInternalRotation,

    /// <summary>Thigh turned outward.</summary>
    HipExternalRotation,

    /// <summary>Knee bent.</summary>
    KneeFlexion,

    /// <summary>Knee straightened.</summary>
    KneeExtension,

    /// <summary>Foot up.</summary>
    AnkleDorsiflexion,

    /// <summary>Foot down.</summary>
    AnklePlantarflexion,

    /// <summary>Trunk forward on the pelvis.</summary>
    TrunkFlexion,

    /// <summary>Trunk backward on the pelvis.</summary>
    TrunkExtension,

    /// <summary>Trunk bent toward the named side.</summary>
    TrunkSideBend,

    /// <summary>Upper arm forward and up.</summary>
    ShoulderFlexion,

    /// <summary>Upper arm backward.</summary>
    ShoulderExtension,

    /// <summary>Upper arm outward and up.</summary>
    ShoulderAbduction,

    /// <summary>Upper arm inward.</summary>
    ShoulderAdduction,

    /// <summary>Elbow bent.</summary>
    ElbowFlexion,

    /// <summary>Elbow straightened.</summary>
    ElbowExtension,

    /// <summary>Trunk turned toward the named side.</summary>
    TrunkRotation,

    /// <summary>Head forward.</summary>
    NeckFlexion,

    /// <summary>Head backward.</summary>
    NeckExtension,

    /// <summary>Head bent toward the named side.</summary>
    NeckSideBend,

    /// <summary>Head turned toward the named side.</summary>
    NeckRotation,

    /// <summary>Upper arm turned inward.</summary>
    ShoulderInternalRotation,

    /// <summary>Upper arm turned outward.</summary>
    ShoulderExternalRotation,

    /// <summary>Palm turned down.</summary>
    ForearmPronation,

    /// <summary>Palm turned up.</summary>
    ForearmSupination,

    /// <summary>Hand bent toward the palm.</summary>
    WristFlexion,

    /// <summary>Hand bent toward its back.</summary>
    WristExtension,

    /// <summary>Hand bent toward the little finger.</summary>
    WristUlnarDeviation,

    /// <summary>Hand bent toward the thumb.</summary>
    WristRadialDeviation,

    /// <summary>Sole turned inward.</summary>
    AnkleInversion,

    /// <summary>Sole turned outward.</summary>
    AnkleEversion,
}
