using CsCheck;

namespace MomentArm.Body.Tests.Statics;

/// <summary>Upward forces at the contacts.</summary>
public class VerticalSupportTests
{
    /// <summary>Contacts to the millimetre: some coincide or lie in a row, none are a hair apart.</summary>
    private static readonly Gen<Vec3> Point = Gen.Select(
        Gen.Int[-600, 600], Gen.Int[0, 500], Gen.Int[-600, 600], (x, y, z) => new Vec3(x / 1000.0, y / 1000.0, z / 1000.0));

    /// <summary>Contacts, and a mass centre over them: a mean of the contacts with random shares.</summary>
    private static readonly Gen<(Vec3[] Points, Vec3 MassCenter, double Weight)> Standing =
        Gen.Int[1, 10].SelectMany(count => Gen.Select(
            Point.Array[count], Gen.Double[0, 1].Array[count], Gen.Double[200, 2000],
            (points, shares, weight) =>
            {
                var total = shares.Sum() + 1e-9;
                var center = Vec3.Zero;
                for (var i = 0; i < count; i++)
                    center += ((shares[i] + 1e-9 / count) / total) * points[i];
                return (points, center with { Y = 1 }, weight);
            }));

    [Fact]
    public void Forces_hold_the_weight_balance_both_tipping_moments_and_never_pull() => Standing.Sample(
        c =>
        {
            var support = VerticalSupport.Solve(c.Points, [], c.MassCenter, c.Weight, Vec3.UnitX);
            Assert.True(support.Stands, support.Reason);
            AssertBalanced(c.Points, c.MassCenter, c.Weight, support);
        },
        iter: 20000);

    [Fact]
    public void A_weight_almost_over_one_of_three_contacts_is_still_held_whole()
    {
        // Once the forces added up to 1407.7 N here: Newton's steps jumped to and fro.
        Vec3[] points = [new(0.019713508161959492, 0, 0), new(0, 0, -0.36363636363636365), new(0, 0, -0.30539325065597567)];
        var center = new Vec3(0.0197135069397221, 1, -2.0739916114250324E-08);
        AssertBalanced(points, center, 1406, VerticalSupport.Solve(points, [], center, 1406, Vec3.UnitX));
    }

    [Fact]
    public void Contacts_in_one_row_share_as_a_beam_on_them_does()
    {
        // Two supports 1 m apart, weight 0.25 m from the first: three quarters on the first.
        Vec3[] points = [new(0, 0, 0), new(0, 0, 1)];
        var support = VerticalSupport.Solve(points, [], new Vec3(0, 1, 0.25), 800, Vec3.UnitX);
        Assert.Equal(600, support.Forces[0], 0.01);
        Assert.Equal(200, support.Forces[1], 0.01);
    }

    [Fact]
    public void Three_contacts_carry_what_the_lever_rule_says()
    {
        // A right-angled triangle with legs of 1 m; weight at (0.2, 0.3): shares 0.5, 0.2, 0.3.
        Vec3[] points = [new(0, 0, 0), new(1, 0, 0), new(0, 0, 1)];
        var support = VerticalSupport.Solve(points, [], new Vec3(0.2, 1, 0.3), 1000, Vec3.UnitX);
        Assert.Equal(500, support.Forces[0], 0.01);
        Assert.Equal(200, support.Forces[1], 0.01);
        Assert.Equal(300, support.Forces[2], 0.01);
    }

    [Fact]
    public void Four_even_contacts_under_a_centered_weight_carry_a_quarter_each()
    {
        Vec3[] points = [new(-1, 0, -1), new(1, 0, -1), new(-1, 0, 1), new(1, 0, 1)];
        var support = VerticalSupport.Solve(points, [], new Vec3(0, 1, 0), 400, Vec3.UnitX);
        Assert.All(support.Forces, f => Assert.Equal(100, f, 0.01));
    }

    [Fact]
    public void Of_all_ways_to_hold_the_weight_the_evenest_is_taken() => Gen.Select(Standing, Gen.Double[0, 1]).Sample(
        (c, t) =>
        {
            // Any other non-negative balanced split has no smaller sum of squares: move along null directions of 4 contacts.
            if (c.Points.Length != 4)
                return;
            var forces = VerticalSupport.Solve(c.Points, [], c.MassCenter, c.Weight, Vec3.UnitX).Forces;
            var n = NullDirection(c.Points);
            var step = 0.01 * c.Weight * (t - 0.5);
            var moved = forces.Select((f, i) => f + step * n[i]).ToArray();
            if (moved.All(f => f >= 0))
                Assert.True(moved.Sum(f => f * f) >= forces.Sum(f => f * f) - 1e-6 * c.Weight * c.Weight);
        },
        iter: 5000);

    [Theory]
    [InlineData(0.30, 0, 1, 0, "forward")]
    [InlineData(-0.30, 0, 1, 0, "backward")]
    [InlineData(0, 0.30, 1, 0, "sideways")]
    [InlineData(0, -0.30, 1, 0, "sideways")]
    [InlineData(0, 0.30, 0, 1, "forward")]
    [InlineData(0.30, 0, 0, 1, "sideways")]
    public void A_body_whose_mass_center_is_outside_falls_and_the_word_says_where(double x, double z, double forwardX, double forwardZ, string word)
    {
        var support = VerticalSupport.Solve(SmallSquare, [], new Vec3(x, 1, z), 700, new Vec3(forwardX, 0, forwardZ));
        Assert.False(support.Stands);
        Assert.Empty(support.Forces);
        Assert.Equal($"Falls {word}: the mass center is 20 cm outside the contacts. It needs a hand, another contact, or a change of pose.", support.Reason);
    }

    [Theory]
    [InlineData(0.30, 0, "forward")]
    [InlineData(-0.30, 0, "backward")]
    [InlineData(0, 0.30, "sideways")]
    public void Someone_bent_far_forward_who_tips_straight_ahead_falls_forward(double x, double z, string word)
    {
        // The pelvis pitched by 70 degrees: its forward axis points mostly down. Once this fell "sideways".
        var forward = Mat3.Rotation(Vec3.UnitZ, TestBody.Radians(-70)) * Vec3.UnitX;
        var support = VerticalSupport.Solve(SmallSquare, [], new Vec3(x, 1, z), 700, forward);
        Assert.StartsWith($"Falls {word}:", support.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Someone_lying_on_the_back_tips_over_without_a_direction()
    {
        var support = VerticalSupport.Solve(SmallSquare, [], new Vec3(0.30, 1, 0), 700, Vec3.UnitY);
        Assert.StartsWith("Tips over: the mass center is 20 cm outside the contacts.", support.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hair_outside_still_stands_because_poses_are_typed_to_the_degree()
    {
        Assert.True(VerticalSupport.Solve(SmallSquare, [], new Vec3(0.119, 1, 0), 700, Vec3.UnitX).Stands);
        Assert.False(VerticalSupport.Solve(SmallSquare, [], new Vec3(0.121, 1, 0), 700, Vec3.UnitX).Stands);
    }

    [Fact]
    public void Nothing_under_the_body_is_said_to_be_nothing()
    {
        var support = VerticalSupport.Solve([], [], new Vec3(0, 1, 0), 700, Vec3.UnitX);
        Assert.False(support.Stands);
        Assert.Equal("Nothing bears the weight: name a contact that does.", support.Reason);
    }

    private static Vec3[] SmallSquare => [new(-0.1, 0, -0.1), new(0.1, 0, -0.1), new(-0.1, 0, 0.1), new(0.1, 0, 0.1)];

    private static void AssertBalanced(Vec3[] points, Vec3 massCenter, double weight, Support support)
    {
        Assert.Equal(points.Length, support.Forces.Length);
        Assert.All(support.Forces, f => Assert.True(f >= 0));
        double up = 0, x = 0, z = 0;
        for (var i = 0; i < points.Length; i++)
        {
            up += support.Forces[i];
            x += support.Forces[i] * (points[i].X - massCenter.X);
            z += support.Forces[i] * (points[i].Z - massCenter.Z);
        }

        // The target is drawn a millionth toward the middle of the contacts, so moments miss by up to a millionth of weight times metre.
        Assert.Equal(weight, up, 1e-6 * weight);
        Assert.Equal(0, x, 3e-6 * weight);
        Assert.Equal(0, z, 3e-6 * weight);
    }

    /// <summary>A change of four forces that keeps sum and both moments: the signed areas of the triangles of the other three.</summary>
    private static double[] NullDirection(Vec3[] p)
    {
        static double Area(Vec3 a, Vec3 b, Vec3 c) => (b.X - a.X) * (c.Z - a.Z) - (b.Z - a.Z) * (c.X - a.X);
        return [Area(p[1], p[2], p[3]), -Area(p[0], p[2], p[3]), Area(p[0], p[1], p[3]), -Area(p[0], p[1], p[2])];
    }
}
