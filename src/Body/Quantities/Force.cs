namespace MomentArm.Body;

/// <summary>The size of a force. Range -20000 to 20000 N; a value outside, or NaN, is refused.</summary>
public readonly record struct Force : IComparable<Force>
{
    private Force(double value) => Newtons = Quantity.Within(value, -20000, 20000, "N");

    /// <summary>The value in newtons.</summary>
    public double Newtons { get; }

    /// <summary>Makes the quantity from a number of newtons.</summary>
    /// <param name="value">A finite number from -20000 to 20000.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN, infinite or out of range.</exception>
    public static Force FromNewtons(double value) => new(value);

    /// <summary>Makes the force from kilograms-force (standard gravity 9.80665 m/s2).</summary>
    /// <param name="value">A finite number of kilograms-force.</param>
    /// <returns>The force.</returns>
    public static Force FromKilogramsForce(double value) => new(value * 9.80665);

    /// <summary>Makes the force from pounds-force (4.4482216152605 N each, exact by definition of the pound).</summary>
    /// <param name="value">A finite number of pounds-force.</param>
    /// <returns>The force.</returns>
    public static Force FromPoundsForce(double value) => new(value * 4.4482216152605);

    /// <summary>Orders by size.</summary>
    /// <param name="other">The quantity compared with.</param>
    /// <returns>Negative, zero or positive as usual.</returns>
    public int CompareTo(Force other) => Newtons.CompareTo(other.Newtons);

    /// <summary>Whether the left is less than the right.</summary>
    public static bool operator <(Force left, Force right) => left.Newtons < right.Newtons;

    /// <summary>Whether the left is more than the right.</summary>
    public static bool operator >(Force left, Force right) => left.Newtons > right.Newtons;

    /// <summary>Whether the left is at most the right.</summary>
    public static bool operator <=(Force left, Force right) => left.Newtons <= right.Newtons;

    /// <summary>Whether the left is at least the right.</summary>
    public static bool operator >=(Force left, Force right) => left.Newtons >= right.Newtons;
}
