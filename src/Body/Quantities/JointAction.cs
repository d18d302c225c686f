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
}
