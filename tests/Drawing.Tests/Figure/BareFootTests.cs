using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

/// <summary>Close-ups of the foot show arch and toes.</summary>
public sealed class BareFootTests
{
    private static PlacedFigure Figure(string name, double fraction) =>
        new Studio(TestBody.Model, TestBody.Points, SampleMovements.All[name], Side.Right, PictureOptions.Usual).Figure(fraction);

    private static Ball[] Tips(PlacedFigure f) =>
        [.. BareFoot.Of(f, Side.Right, "right", Vec3.UnitX).Layers[0].Hulls.TakeLast(5).Select(toe => toe[^1])];

    [Fact]
    public void Only_close_ups_of_a_foot_show_it_bare()
    {
        Assert.True(Figure("big toe lifts", 0).Barefoot);
        Assert.False(Figure("forearm turns", 0).Barefoot);
        Assert.False(Figure("bridge", 0).Barefoot);
    }

    [Fact]
    public void The_big_toe_lifts_while_the_small_ones_stay_down()
    {
        var (down, up) = (Tips(Figure("big toe lifts", 0)), Tips(Figure("big toe lifts", 1)));
        Assert.InRange(up[0].Center.Y - down[0].Center.Y, 0.01, 0.03);
        for (var i = 1; i < 5; i++)
            Assert.Equal(down[i].Center.Y, up[i].Center.Y, 0.004);
    }

    [Fact]
    public void The_big_toe_is_the_inner_one_and_the_longest()
    {
        var f = Figure("big toe lifts", 0);
        var tips = Tips(f);
        var ahead = (f.At(SegmentKind.Foot, Side.Right, 1, 0, 0) - f.At(SegmentKind.Foot, Side.Right, 0, 0, 0)).Normalized();
        var outward = (f.At(SegmentKind.Foot, Side.Right, 0, 0, 1) - f.At(SegmentKind.Foot, Side.Right, 0, 0, 0)).Normalized();
        for (var i = 1; i < 5; i++)
        {
            Assert.True(tips[i].Center.Dot(outward) > tips[i - 1].Center.Dot(outward));
            Assert.True(tips[i].Center.Dot(ahead) < tips[i - 1].Center.Dot(ahead) + 0.001);
            Assert.True(tips[i].Radius < tips[0].Radius);
        }
    }

    [Fact]
    public void The_arch_rises_as_the_foot_rolls_outward()
    {
        Assert.True(BareFoot.Arch(Figure("arch rises", 1), Side.Right) > BareFoot.Arch(Figure("arch rises", 0), Side.Right) + 0.012);
    }
}
