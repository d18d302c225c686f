namespace MomentArm.Prescribing;

/// <summary>What makes a rung of a ladder harder than the one below it.</summary>
public enum RungChange
{
    /// <summary>A longer lever.</summary>
    Lever,

    /// <summary>Less support.</summary>
    Support,

    /// <summary>More range.</summary>
    Range,

    /// <summary>Added weight.</summary>
    Weight,

    /// <summary>A band.</summary>
    Band,

    /// <summary>One limb for two.</summary>
    OneForTwo,

    /// <summary>A less steady or a higher surface.</summary>
    Surface,

    /// <summary>More speed.</summary>
    Speed,

    /// <summary>Another position of the body.</summary>
    Position,
}
