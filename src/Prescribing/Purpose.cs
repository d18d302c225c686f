namespace MomentArm.Prescribing;

/// <summary>What an exercise is for. The order is that of a session.</summary>
public enum Purpose
{
    /// <summary>Pressure on soft tissue with a roller or ball.</summary>
    Release,

    /// <summary>Move a joint or a nerve through its range, without holding.</summary>
    Mobilize,

    /// <summary>Lengthen a muscle group.</summary>
    Stretch,

    /// <summary>Find a muscle and switch it on: light holds.</summary>
    Activate,

    /// <summary>Make a muscle group stronger.</summary>
    Strengthen,

    /// <summary>Make a muscle group last longer.</summary>
    Endure,

    /// <summary>Balance and a clean path.</summary>
    Control,

    /// <summary>Force in little time: hops and landings.</summary>
    Power,

    /// <summary>A task of daily life or sport.</summary>
    Functional,

    /// <summary>Heart and breath.</summary>
    Aerobic,
}

/// <summary>What follows from a purpose.</summary>
public static class Purposes
{
    /// <summary>Whether an exercise is chosen for the load it puts on muscles, so that its load share is judged.</summary>
    /// <param name="purpose">The purpose.</param>
    /// <returns>True for activate, strengthen, endure, control, power and functional.</returns>
    public static bool Loads(this Purpose purpose) => purpose is Purpose.Activate or Purpose.Strengthen or Purpose.Endure
        or Purpose.Control or Purpose.Power or Purpose.Functional;
}
