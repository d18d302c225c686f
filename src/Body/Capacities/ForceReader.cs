namespace MomentArm.Body;

/// <summary>What read the force of a strength test; the error of the test depends on it.</summary>
public enum ForceReader
{
    /// <summary>A reader held in the tester's hand.</summary>
    HandHeld,

    /// <summary>A hand or luggage scale hooked to a strap that does not give.</summary>
    ScaleOnStrap,

    /// <summary>A reader held in place by a belt, strap or frame.</summary>
    FixedByStrap,

    /// <summary>A fixed machine.</summary>
    FixedMachine,
}
