namespace MomentArm.Body;

/// <summary>
/// A joint coordinate of the model in the model's own sign (radians). Limb motions exist on both sides with the same
/// anatomical meaning. Midline bending and turning are signed by the person's right and left.
/// </summary>
public enum Motion
{
    /// <summary>Flexion positive, extension negative.</summary>
    HipFlexion,

    /// <summary>Adduction positive, abduction negative.</summary>
    HipAdduction,

    /// <summary>Internal rotation positive, external negative.</summary>
    HipRotation,

    /// <summary>Extension positive: flexion of the knee is negative here.</summary>
    KneeExtension,

    /// <summary>Dorsiflexion positive, plantarflexion negative.</summary>
    AnkleDorsiflexion,

    /// <summary>Inversion positive, eversion negative.</summary>
    SubtalarInversion,

    /// <summary>Toe extension positive, flexion negative.</summary>
    ToeExtension,

    /// <summary>Trunk extension positive, flexion negative.</summary>
    TrunkExtension,

    /// <summary>Bend to the person's right positive.</summary>
    TrunkBending,

    /// <summary>Turn to the person's left positive.</summary>
    TrunkRotation,

    /// <summary>Neck extension positive, flexion negative.</summary>
    NeckExtension,

    /// <summary>Bend to the person's right positive.</summary>
    NeckBending,

    /// <summary>Turn to the person's left positive.</summary>
    NeckRotation,

    /// <summary>Flexion positive, extension negative.</summary>
    ShoulderFlexion,

    /// <summary>Adduction positive, abduction negative.</summary>
    ShoulderAdduction,

    /// <summary>Internal rotation positive, external negative.</summary>
    ShoulderRotation,

    /// <summary>Flexion positive.</summary>
    ElbowFlexion,

    /// <summary>Pronation positive, 0 = full supination.</summary>
    ForearmPronation,

    /// <summary>Flexion positive, extension negative.</summary>
    WristFlexion,

    /// <summary>Ulnar deviation positive, radial negative.</summary>
    WristDeviation,
}
