using System.Collections.Immutable;

namespace MomentArm.Prescribing;

/// <summary>What was agreed with the patient about time, things and positions; kept with the program it led to.</summary>
public sealed record AgreedLimits
{
    /// <summary>Minutes a session, 1 to 120; null when not asked.</summary>
    public int? Minutes { get; init; }

    /// <summary>What the patient has at home; null when not asked (then nothing is held against an exercise).</summary>
    public ImmutableArray<Equipment>? Owned { get; init; }

    /// <summary>Positions the patient can't take.</summary>
    public ImmutableArray<BodyPosition> Avoid { get; init; } = [];
}
