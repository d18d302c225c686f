namespace MomentArm.Body;

/// <summary>The part of the body that an exercise or a measure is kept under.</summary>
public enum BodyRegion
{
    /// <summary>Hip.</summary>
    Hip,

    /// <summary>Knee.</summary>
    Knee,

    /// <summary>Ankle and foot.</summary>
    AnkleFoot,

    /// <summary>Trunk.</summary>
    Trunk,

    /// <summary>Shoulder.</summary>
    Shoulder,

    /// <summary>Elbow and wrist.</summary>
    ElbowWrist,

    /// <summary>Neck.</summary>
    Neck,

    /// <summary>The whole body: walking, running, carrying.</summary>
    WholeBody,
}
