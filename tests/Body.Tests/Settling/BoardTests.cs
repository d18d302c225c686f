using static MomentArm.Body.Tests.SettlingFrames;

namespace MomentArm.Body.Tests;

public class BoardTests
{
    private static PosedFrame OnBoard(double tilt) => Upright(
        new LimbAngles { AnkleDorsiflexion = Degrees(-tilt) }, Board("foot", Limb.Working, tilt), Board("foot", Limb.Other, tilt));

    [Theory]
    [InlineData(25)]
    [InlineData(-15)]
    [InlineData(0)]
    public void Feet_lie_flat_on_a_tilted_board_toes_down_for_a_positive_tilt(double tilt)
    {
        var settled = Settle(OnBoard(tilt));
        Assert.InRange(settled.LargestGapM, 0, Settling.Meets);
        var (heel, ball) = (settled.Contacts[0].Point, settled.Contacts[1].Point);
        Assert.Equal(0.1, heel.Y, Settling.Meets);
        var down = Math.Atan2(heel.Y - ball.Y, ball.X - heel.X);
        Assert.Equal(tilt, down * 180 / Math.PI, 0.6);
    }

    [Fact]
    public void The_normal_leans_forward_when_the_toes_point_down()
    {
        foreach (var contact in Settle(OnBoard(20)).Contacts)
        {
            Assert.Equal(Math.Sin(Degrees(20)), contact.Normal.X, 1e-12);
            Assert.Equal(Math.Cos(Degrees(20)), contact.Normal.Y, 1e-12);
            Assert.Equal(0, contact.Normal.Z, 1e-12);
        }
    }

    [Fact]
    public void Two_feet_on_one_board_stand_in_one_plane()
    {
        var settled = Settle(OnBoard(25));
        var first = settled.Contacts[0];
        Assert.All(settled.Contacts, c => Assert.Equal(0, (c.Point - first.Point).Dot(c.Normal), 2 * Settling.Meets));
    }

    /// <summary>A body on a slope holds while the tangent of the slope is below the friction (textbook statics): 26.6 degrees for 0.5.</summary>
    [Theory]
    [InlineData(25, true)]
    [InlineData(29, false)]
    public void A_board_is_held_while_its_slope_is_below_the_friction_of_the_soles(double tilt, bool holds)
    {
        var reason = Settling.Refusal(Woman, Settle(OnBoard(tilt)));
        if (holds)
        {
            Assert.Null(reason);
            return;
        }

        Assert.NotNull(reason);
        Assert.StartsWith("Slips off: foot", reason, StringComparison.Ordinal);
        Assert.Contains("29 degrees", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bench_is_met_at_its_height()
    {
        var sitting = new LimbAngles { HipFlexion = Degrees(88), KneeFlexion = Degrees(90) };
        var settled = Settle(Upright(
            sitting, On("sitBone", Limb.Working, SurfaceKind.Bench, 0.42), On("sitBone", Limb.Other, SurfaceKind.Bench, 0.42), On("foot", Limb.Working), On("foot", Limb.Other)));
        Assert.InRange(settled.LargestGapM, 0, Settling.Meets);
        Assert.All(settled.Contacts, c => Assert.Equal(Vec3.UnitY, c.Normal));
        Assert.Equal(0.42, settled.Contacts[0].Point.Y, Settling.Meets);
    }
}
