namespace MomentArm.Body;

/// <summary>What a muscle mainly does: the groups whose load is shared and shown. Finer than <see cref="MuscleGroup"/>.</summary>
public enum MuscleFunction
{
    /// <summary>Thigh forward.</summary>
    HipFlexor,

    /// <summary>Thigh backward.</summary>
    HipExtensor,

    /// <summary>Thigh outward.</summary>
    HipAbductor,

    /// <summary>Thigh inward.</summary>
    HipAdductor,

    /// <summary>Thigh turned outward.</summary>
    HipExternalRotator,

    /// <summary>Knee bent, and hip straightened where the muscle crosses it.</summary>
    Hamstring,

    /// <summary>Knee straightened.</summary>
    KneeExtensor,

    /// <summary>Foot up.</summary>
    AnkleDorsiflexor,

    /// <summary>Foot down.</summary>
    AnklePlantarflexor,

    /// <summary>Sole turned inward.</summary>
    AnkleInvertor,

    /// <summary>Sole turned outward.</summary>
    AnkleEvertor,

    /// <summary>Toes down.</summary>
    ToeFlexor,

    /// <summary>Toes up.</summary>
    ToeExtensor,

    /// <summary>Trunk forward on the pelvis.</summary>
    TrunkFlexor,

    /// <summary>Trunk backward on the pelvis.</summary>
    TrunkExtensor,
}
