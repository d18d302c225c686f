namespace MomentArm.Body;

/// <summary>The part of the body that a movement is for; pictures give it the accent. Which part an exercise is for is our choice, made from its region and its loads.</summary>
public enum MovementFocus
{
    /// <summary>The leg of the working side.</summary>
    Leg,

    /// <summary>The trunk.</summary>
    Trunk,

    /// <summary>The neck.</summary>
    Neck,

    /// <summary>Shoulder and arm of the working side.</summary>
    Shoulder,

    /// <summary>The arm of the working side, from above the elbow to the wrist.</summary>
    Arm,

    /// <summary>Forearm of the working side, for wrist and hand.</summary>
    Forearm,

    /// <summary>Nothing works: the body is shown for itself.</summary>
    None,
}
