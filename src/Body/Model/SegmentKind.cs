namespace MomentArm.Body;

/// <summary>The rigid parts of the body model; limb parts exist on both sides.</summary>
public enum SegmentKind
{
    /// <summary>Pelvis, the root of the tree.</summary>
    Pelvis,

    /// <summary>Thigh bone.</summary>
    Thigh,

    /// <summary>Shin bones.</summary>
    Shank,

    /// <summary>Ankle bone.</summary>
    Talus,

    /// <summary>Heel and midfoot.</summary>
    Foot,

    /// <summary>Toes.</summary>
    Toes,

    /// <summary>Trunk over the lumbosacral joint.</summary>
    Torso,

    /// <summary>Head and neck.</summary>
    Head,

    /// <summary>Upper arm.</summary>
    UpperArm,

    /// <summary>Ulna.</summary>
    Ulna,

    /// <summary>Radius.</summary>
    Radius,

    /// <summary>Hand.</summary>
    Hand,
}
