namespace MomentArm.Body;

/// <summary>The longest length of one muscle of a person, as an 80 % interval.</summary>
/// <param name="LowM">Lower end, metres.</param>
/// <param name="MiddleM">Best estimate: the path length in the test pose at the reading, metres.</param>
/// <param name="HighM">Upper end, metres.</param>
/// <param name="NeutralM">Path length in the neutral pose, where reach is 0; metres.</param>
/// <param name="LeastSpanM">
/// A span from neutral to limit is never counted smaller than this, metres: a limit near the neutral length, or short of it, then still
/// has 100 % where it was measured, and 0 % lies this far before it.
/// </param>
/// <param name="Basis">What it rests on.</param>
/// <param name="Test">Name of the test; null for the end of the usual range.</param>
/// <param name="Extrapolated">Whether the test pose lies beyond the trusted range of the path.</param>
public readonly record struct LengthLimit(
    double LowM, double MiddleM, double HighM, double NeutralM, double LeastSpanM, LimitBasis Basis, string? Test, bool Extrapolated)
{
    /// <summary>Reach of a length: 0 at the neutral length, 1 at the limit, even between and beyond.</summary>
    /// <param name="lengthM">Path length, metres.</param>
    /// <returns>Reach as an interval, fractions; not held inside 0 to 1.</returns>
    public Reach Of(double lengthM) => Reach.Ordered(At(lengthM, LowM), At(lengthM, MiddleM), At(lengthM, HighM));

    /// <summary>Reach of a length against one value of the limit.</summary>
    internal double At(double lengthM, double limitM) => 1 + (lengthM - limitM) / Span(limitM);

    /// <summary>What 100 % is counted over for one value of the limit, metres, above 0.</summary>
    internal double Span(double limitM) => Math.Max(limitM - NeutralM, LeastSpanM);
}
