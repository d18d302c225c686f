using CsCheck;

namespace MomentArm.Body.Tests.Mathematics;

/// <summary>Vectors and rotations.</summary>
public class VectorTests
{
    private static readonly Gen<Vec3> Any = Gen.Select(
        Gen.Double[-2, 2], Gen.Double[-2, 2], Gen.Double[-2, 2], (x, y, z) => new Vec3(x, y, z));

    private static readonly Gen<Mat3> Turn = Gen.Select(
        Any.Where(v => v.Length > 0.01), Gen.Double[-4, 4], (axis, angle) => Mat3.Rotation(axis.Normalized(), angle));

    [Fact]
    public void Printing_a_vector_or_a_rotation_ends()
    {
        Assert.Equal("(0.1, 0, -2)", new Vec3(0.1, 0, -2).ToString());
        Assert.Equal("(1, 0, 0; 0, 1, 0; 0, 0, 1)", Mat3.Identity.ToString());
    }

    [Fact]
    public void A_rotation_keeps_lengths_and_angles_and_its_transpose_undoes_it() => Gen.Select(Turn, Any, Any).Sample((r, a, b) =>
    {
        Assert.Equal(a.Dot(b), (r * a).Dot(r * b), Tolerances.Position * 10);
        Assert.Equal(0, (r.Transposed * (r * a) - a).Length, Tolerances.Position * 10);
        Assert.Equal(0, (r * a.Cross(b) - (r * a).Cross(r * b)).Length, Tolerances.Position * 100);
    });

    [Fact]
    public void A_quarter_turn_about_z_brings_forward_to_up() =>
        Assert.Equal(0, (Mat3.Rotation(Vec3.UnitZ, Math.PI / 2) * Vec3.UnitX - Vec3.UnitY).Length, Tolerances.Position);

    [Fact]
    public void A_mirrored_rotation_turns_the_mirrored_vector_to_the_mirrored_place() => Gen.Select(Turn, Any).Sample((r, v) =>
        Assert.Equal(0, (r.Mirrored * v.Mirrored - (r * v).Mirrored).Length, Tolerances.Position));

    [Fact]
    public void A_vector_without_length_has_no_direction() =>
        Assert.Throws<InvalidOperationException>(() => Vec3.Zero.Normalized());
}
