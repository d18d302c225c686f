using System.Runtime.CompilerServices;

namespace MomentArm.Body;

/// <summary>A 3x3 matrix by rows; used for rotations (columns are the turned axes).</summary>
public readonly record struct Mat3(
    double M11, double M12, double M13, double M21, double M22, double M23, double M31, double M32, double M33)
{
    /// <summary>No turn.</summary>
    public static Mat3 Identity => new(1, 0, 0, 0, 1, 0, 0, 0, 1);

    /// <summary>The transpose; for a rotation, its inverse.</summary>
    public Mat3 Transposed => new(M11, M21, M31, M12, M22, M32, M13, M23, M33);

    /// <summary>The rotation seen in the mirror between left and right: S R S with S = diag(1, 1, -1).</summary>
    public Mat3 Mirrored => new(M11, M12, -M13, M21, M22, -M23, -M31, -M32, M33);

    /// <summary>Right-handed rotation about a unit axis (Rodrigues).</summary>
    /// <param name="axis">Unit axis.</param>
    /// <param name="angle">Angle in radians.</param>
    /// <returns>The rotation.</returns>
    public static Mat3 Rotation(Vec3 axis, double angle)
    {
        var (s, c) = Math.SinCos(angle);
        var t = 1 - c;
        var (x, y, z) = axis;
        return new Mat3(
            t * x * x + c, t * x * y - s * z, t * x * z + s * y,
            t * x * y + s * z, t * y * y + c, t * y * z - s * x,
            t * x * z - s * y, t * y * z + s * x, t * z * z + c);
    }

    /// <summary>The elements by rows. Written out: the text a record makes by itself would print the transpose, of which again the transpose, without end.</summary>
    /// <returns>Such as "(1, 0, 0; 0, 1, 0; 0, 0, 1)".</returns>
    public override string ToString() => FormattableString.Invariant(
        $"({M11:R}, {M12:R}, {M13:R}; {M21:R}, {M22:R}, {M23:R}; {M31:R}, {M32:R}, {M33:R})");

    /// <summary>Matrix product.</summary>
    public static Mat3 operator *(in Mat3 a, in Mat3 b) => new(
        a.M11 * b.M11 + a.M12 * b.M21 + a.M13 * b.M31,
        a.M11 * b.M12 + a.M12 * b.M22 + a.M13 * b.M32,
        a.M11 * b.M13 + a.M12 * b.M23 + a.M13 * b.M33,
        a.M21 * b.M11 + a.M22 * b.M21 + a.M23 * b.M31,
        a.M21 * b.M12 + a.M22 * b.M22 + a.M23 * b.M32,
        a.M21 * b.M13 + a.M22 * b.M23 + a.M23 * b.M33,
        a.M31 * b.M11 + a.M32 * b.M21 + a.M33 * b.M31,
        a.M31 * b.M12 + a.M32 * b.M22 + a.M33 * b.M32,
        a.M31 * b.M13 + a.M32 * b.M23 + a.M33 * b.M33);

    /// <summary>Matrix times vector.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vec3 operator *(in Mat3 a, Vec3 v) => new(
        a.M11 * v.X + a.M12 * v.Y + a.M13 * v.Z,
        a.M21 * v.X + a.M22 * v.Y + a.M23 * v.Z,
        a.M31 * v.X + a.M32 * v.Y + a.M33 * v.Z);
}
