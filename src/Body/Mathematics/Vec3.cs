using System.Runtime.CompilerServices;

namespace MomentArm.Body;

/// <summary>A vector or point with three components; the frame is stated where it is used (x forward, y up, z to the right).</summary>
/// <param name="X">First component.</param>
/// <param name="Y">Second component.</param>
/// <param name="Z">Third component.</param>
public readonly record struct Vec3(double X, double Y, double Z)
{
    /// <summary>The zero vector.</summary>
    public static Vec3 Zero => default;

    /// <summary>Unit vector along x.</summary>
    public static Vec3 UnitX => new(1, 0, 0);

    /// <summary>Unit vector along y.</summary>
    public static Vec3 UnitY => new(0, 1, 0);

    /// <summary>Unit vector along z.</summary>
    public static Vec3 UnitZ => new(0, 0, 1);

    /// <summary>Length of the vector.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>The vector mirrored in the plane between left and right (z negated).</summary>
    public Vec3 Mirrored => new(X, Y, -Z);

    /// <summary>Sum.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vec3 operator +(Vec3 a, Vec3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vec3 operator -(Vec3 a, Vec3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Opposite.</summary>
    public static Vec3 operator -(Vec3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>Multiple.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vec3 operator *(double s, Vec3 a) => new(s * a.X, s * a.Y, s * a.Z);

    /// <summary>Inner product.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Dot(Vec3 b) => X * b.X + Y * b.Y + Z * b.Z;

    /// <summary>Outer product, right-handed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vec3 Cross(Vec3 b) => new(Y * b.Z - Z * b.Y, Z * b.X - X * b.Z, X * b.Y - Y * b.X);

    /// <summary>The vector scaled to length 1.</summary>
    /// <exception cref="InvalidOperationException">The vector has no length.</exception>
    public Vec3 Normalized()
    {
        var length = Length;
        if (!(length > 0))
            throw new InvalidOperationException("A vector without length has no direction.");
        return (1 / length) * this;
    }

    /// <summary>The components. Written out: the text a record makes by itself would print the mirrored vector, of which again the mirrored one, without end.</summary>
    /// <returns>Such as "(0.1, 0, -2)".</returns>
    public override string ToString() => FormattableString.Invariant($"({X:R}, {Y:R}, {Z:R})");

    /// <summary>The point a fraction of the way to another.</summary>
    /// <param name="to">The other point.</param>
    /// <param name="fraction">0 gives this point, 1 the other.</param>
    /// <returns>The point between.</returns>
    public Vec3 Toward(Vec3 to, double fraction) => this + fraction * (to - this);
}
