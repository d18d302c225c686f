namespace MomentArm.Exam;

/// <summary>One reading with what follows from it alone.</summary>
public sealed record SideReading
{
    /// <summary>The reading as taken.</summary>
    public required Measurement Measurement { get; init; }

    /// <summary>The trials combined by the rule of the measure, stored unit.</summary>
    public required double Value { get; init; }

    /// <summary>The value in its shown unit.</summary>
    public required string Shown { get; init; }

    /// <summary>Torque felt by the pad, N m; null without lever arm.</summary>
    public double? TorqueNm { get; init; }

    /// <summary>Measured torque per body mass, N m/kg; null without lever arm or mass.</summary>
    public double? TorquePerKg { get; init; }

    /// <summary>Measured torque as percent of body weight times height; null without lever arm, mass or stature.</summary>
    public double? PercentWeightHeight { get; init; }

    /// <summary>Measured torque plus the limb's own weight, N m: what the muscles did; null when gravity was not given.</summary>
    public double? TotalTorqueNm { get; init; }

    /// <summary>Whether pain during the test makes the value a lower bound of what the muscles can do.</summary>
    public required bool PainLimited { get; init; }
}
