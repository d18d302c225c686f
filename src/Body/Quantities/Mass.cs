namespace MomentArm.Body;

/// <summary>A mass. Range 0 to 1000 kg; a value outside, or NaN, is refused.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double value) => Kilograms = Quantity.Within(value, 0, 1000, "kg");

    /// <summary>The value in kilograms.</summary>
    public double Kilograms { get; }

    /// <summary>Makes the quantity from a number of kilograms.</summary>
    /// <param name="value">A finite number from 0 to 1000.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN, infinite or out of range.</exception>
    public static Mass FromKilograms(double value) => new(value);

    /// <summary>Orders by size.</summary>
    /// <param name="other">The quantity compared with.</param>
    /// <returns>Negative, zero or positive as usual.</returns>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    /// <summary>Whether the left is less than the right.</summary>
    public static bool operator <(Mass left, Mass right) => left.Kilograms < right.Kilograms;

    /// <summary>Whether the left is more than the right.</summary>
    public static bool operator >(Mass left, Mass right) => left.Kilograms > right.Kilograms;

    /// <summary>Whether the left is at most the right.</summary>
    public static bool operator <=(Mass left, Mass right) => left.Kilograms <= right.Kilograms;

    /// <summary>Whether the left is at least the right.</summary>
    public static bool operator >=(Mass left, Mass right) => left.Kilograms >= right.Kilograms;
}
