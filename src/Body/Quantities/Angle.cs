namespace MomentArm.Body;

/// <summary>An angle; its sign is stated where it is used. Range -10 to 10 rad; a value outside, or NaN, is refused.</summary>
public readonly record struct Angle : IComparable<Angle>
{
    private Angle(double value) => Radians = Quantity.Within(value, -10, 10, "rad");

    /// <summary>The value in radians.</summary>
    public double Radians { get; }

    /// <summary>Makes the quantity from a number of radians.</summary>
    /// <param name="value">A finite number from -10 to 10.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN, infinite or out of range.</exception>
    public static Angle FromRadians(double value) => new(value);

    /// <summary>The value in degrees, for files and screens only.</summary>
    public double Degrees => Radians * (180 / Math.PI);

    /// <summary>Makes the angle from degrees.</summary>
    /// <param name="degrees">A finite number of degrees within the range.</param>
    /// <returns>The angle.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN, infinite or out of range.</exception>
    public static Angle FromDegrees(double degrees) => new(degrees * (Math.PI / 180));

    /// <summary>Orders by size.</summary>
    /// <param name="other">The quantity compared with.</param>
    /// <returns>Negative, zero or positive as usual.</returns>
    public int CompareTo(Angle other) => Radians.CompareTo(other.Radians);

    /// <summary>Whether the left is less than the right.</summary>
    public static bool operator <(Angle left, Angle right) => left.Radians < right.Radians;

    /// <summary>Whether the left is more than the right.</summary>
    public static bool operator >(Angle left, Angle right) => left.Radians > right.Radians;

    /// <summary>Whether the left is at most the right.</summary>
    public static bool operator <=(Angle left, Angle right) => left.Radians <= right.Radians;

    /// <summary>Whether the left is at least the right.</summary>
    public static bool operator >=(Angle left, Angle right) => left.Radians >= right.Radians;
}
