namespace MomentArm.Body;

/// <summary>
/// Lengthening as a fraction of a person's limit; 1 = 100 % = the length in the measured end position, 0 = the shortest path over
/// the usual joint ranges. Over 1 is shown as it is: such a pose cannot be held. See docs/models/body.md.
/// </summary>
/// <param name="Low">Lower end of the 80 % interval, from the error of the limit.</param>
/// <param name="Middle">Best estimate.</param>
/// <param name="High">Upper end.</param>
public readonly record struct Reach(double Low, double Middle, double High)
{
    /// <summary>The sum of two reaches that share one error.</summary>
    internal Reach Plus(double weight, Reach other) =>
        new(Low + weight * other.Low, Middle + weight * other.Middle, High + weight * other.High);
}
