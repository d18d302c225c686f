namespace MomentArm.Body;

/// <summary>
/// Lengthening as a fraction of a person's limit; 1 = 100 % = the length in the measured end position, 0 = the length in the neutral
/// pose, negative when shorter. Over 1 is shown as it is: such a pose cannot be held. See docs/models/body.md.
/// </summary>
/// <param name="Low">Lower end of the 80 % interval, from the error of the limit.</param>
/// <param name="Middle">Best estimate.</param>
/// <param name="High">Upper end.</param>
public readonly record struct Reach(double Low, double Middle, double High)
{
    /// <summary>
    /// The reach whose interval spans the three. A longer limit gives less reach to a lengthened muscle and more to a shortened one, so
    /// either end may be the lower.
    /// </summary>
    internal static Reach Ordered(double one, double middle, double other) =>
        new(Math.Min(middle, Math.Min(one, other)), middle, Math.Max(middle, Math.Max(one, other)));
}
