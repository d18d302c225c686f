namespace MomentArm.Body;

/// <summary>A moment of force about a joint; its sign is stated where it is used. Range -5000 to 5000 N m; a value outside, or NaN, is refused.</summary>
public readonly record struct Torque : IComparable<Torque>
{
    private Torque(double value) => NewtonMetres = Quantity.Within(value, -5000, 5000, "N m");

    /// <summary>The value in newton metres.</summary>
    public double NewtonMetres { get; }

    /// <summary>Makes the quantity from a number of newton metres.</summary>
    /// <param name="value">A finite number from -5000 to 5000.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is NaN, infinite or out of range.</exception>
    public static Torque FromNewtonMetres(double value) => new(value);

    /// <summary>Orders by size.</summary>
    /// <param name="other">The quantity compared with.</param>
    /// <returns>Negative, zero or positive as usual.</returns>
    public int CompareTo(Torque other) => NewtonMetres.CompareTo(other.NewtonMetres);

    /// <summary>Whether the left is less than the right.</summary>
    public static bool operator <(Torque left, Torque right) => left.NewtonMetres < right.NewtonMetres;

    /// <summary>Whether the left is more than the right.</summary>
    public static bool operator >(Torque left, Torque right) => left.NewtonMetres > right.NewtonMetres;

    /// <summary>Whether the left is at most the right.</summary>
    public static bool operator <=(Torque left, Torque right) => left.NewtonMetres <= right.NewtonMetres;

    /// <summary>Whether the left is at least the right.</summary>
    public static bool operator >=(Torque left, Torque right) => left.NewtonMetres >= right.NewtonMetres;
}
