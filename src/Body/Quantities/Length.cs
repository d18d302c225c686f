namespace MomentArm.Body;

/// <summary>A length. Range -100 to 100 m; a value outside, or NaN, is refused.</summary>
public readonly record struct Length : IComparable<Length>
{
    private Length(double value) => Metres = Quantity.Within(value, -100, 100, "m");

    /// <summary>The value in metres.</summary>
    public double Metres { get; }

    /// <summary>Makes the quantity from a number of metres.</summary>
    /// <param name="value">A finite number from -100 to 100.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN, infinite or out of range.</exception>
    public static Length FromMetres(double value) => new(value);

    /// <summary>Orders by size.</summary>
    /// <param name="other">The quantity compared with.</param>
    /// <returns>Negative, zero or positive as usual.</returns>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    /// <summary>Whether the left is less than the right.</summary>
    public static bool operator <(Length left, Length right) => left.Metres < right.Metres;

    /// <summary>Whether the left is more than the right.</summary>
    public static bool operator >(Length left, Length right) => left.Metres > right.Metres;

    /// <summary>Whether the left is at most the right.</summary>
    public static bool operator <=(Length left, Length right) => left.Metres <= right.Metres;

    /// <summary>Whether the left is at least the right.</summary>
    public static bool operator >=(Length left, Length right) => left.Metres >= right.Metres;
}
