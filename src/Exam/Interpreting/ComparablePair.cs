namespace MomentArm.Exam;

/// <summary>Two readings brought to one unit, or the reason why they cannot be.</summary>
internal sealed record ComparablePair(double First, double Second, bool ByTorque, double? MeanLeverM, string? WhyNot)
{
    /// <summary>Lever arms that differ by no more than this count as the same pad place, metres. Our choice.</summary>
    public const double SameLeverM = 0.02;

    /// <summary>Brings two readings of one measure to one unit.</summary>
    public static ComparablePair Of(Measure measure, SideReading first, SideReading second)
    {
        if (measure.Kind != MeasureKind.Strength)
            return new ComparablePair(first.Value, second.Value, false, null, null);
        return (first.Measurement.LeverArmM, second.Measurement.LeverArmM) switch
        {
            (null, null) => new ComparablePair(first.Value, second.Value, false, null, null),
            ({ } a, { } b) when Math.Abs(a - b) <= SameLeverM + 1e-9 =>
                new ComparablePair(first.Value, second.Value, false, (a + b) / 2, null),
            ({ } a, { } b) => new ComparablePair(first.Value * a, second.Value * b, true, (a + b) / 2, null),
            _ => new ComparablePair(first.Value, second.Value, false, null, "one of the two has no lever arm"),
        };
    }

    /// <summary>Smallest difference beyond error in the unit of the pair; null when no error is published.</summary>
    public double? Detectable(MeasurementError? error)
    {
        if (error is null)
            return null;
        var inOwnUnit = error.Detectable(First, Second);
        return ByTorque && !error.IsRelative ? inOwnUnit * MeanLeverM : inOwnUnit;
    }
}
