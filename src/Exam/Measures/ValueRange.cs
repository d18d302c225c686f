namespace MomentArm.Exam;

/// <summary>A closed range of values in the stored unit.</summary>
/// <param name="Low">Lowest value.</param>
/// <param name="High">Highest value.</param>
public sealed record ValueRange(double Low, double High)
{
    /// <summary>Whether a value lies in the range, ends included. NaN never does.</summary>
    /// <param name="value">The value in the stored unit.</param>
    /// <returns>True inside.</returns>
    public bool Holds(double value) => value >= Low && value <= High;
}
