namespace MomentArm.Body;

/// <summary>The longest length of one muscle of a person, as an 80 % interval.</summary>
/// <param name="LowM">Lower end, metres.</param>
/// <param name="MiddleM">Best estimate: the path length in the test pose at the reading, metres.</param>
/// <param name="HighM">Upper end, metres.</param>
/// <param name="ShortestM">Shortest path over the usual joint ranges, where reach is 0; metres.</param>
/// <param name="LeastSpanM">Reach never counts a span between shortest and limit smaller than this, metres.</param>
/// <param name="Basis">What it rests on.</param>
/// <param name="Test">Name of the test; null for the end of the usual range.</param>
/// <param name="Extrapolated">Whether the test pose lies beyond the trusted range of the path.</param>
public readonly record struct LengthLimit(
    double LowM, double MiddleM, double HighM, double ShortestM, double LeastSpanM, LimitBasis Basis, string? Test, bool Extrapolated)
{
    /// <summary>
    /// Reach of a length: 0 at the shortest path, 1 at the limit, even between and beyond. A longer limit gives less reach, so the
    /// ends of the interval trade places.
    /// </summary>
    /// <param name="lengthM">Path length, metres.</param>
    /// <returns>Reach as an interval, fractions; not held inside 0 to 1.</returns>
    public Reach Of(double lengthM)
    {
        var middle = At(lengthM, MiddleM);
        var (a, b) = (At(lengthM, LowM), At(lengthM, HighM));
        return new Reach(Math.Min(middle, Math.Min(a, b)), middle, Math.Max(middle, Math.Max(a, b)));
    }

    private double At(double lengthM, double limitM) => 1 + (lengthM - limitM) / Math.Max(limitM - ShortestM, LeastSpanM);
}
