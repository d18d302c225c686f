using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

/// <summary>Pictures close round a hand or a foot.</summary>
public sealed class CloseUpTests
{
    [Theory]
    [InlineData("palm")]
    [InlineData("forefootSole")]
    public void A_close_up_is_smaller_than_the_whole_keeps_its_aspect_and_mirrors(string point)
    {
        var whole = SampleMovements.All["sit to stand"];
        var close = whole with { CloseUp = point };
        Picture Draw(Movement movement, Side side) => Pictures.Still(TestBody.Model, TestBody.Points, movement, side, 0, PictureOptions.Usual);
        var (all, near) = (Draw(whole, Side.Right), Draw(close, Side.Right));
        Assert.True(near.Scene.Width < 0.8 * all.Scene.Width);
        Assert.Equal(1.6, near.Scene.Width / near.Scene.Height, 0.05);
        Assert.Subset(Names(all), Names(near));
        Assert.True(near.Scene.Shapes.Length < all.Scene.Shapes.Length, "what lies outside is left out");
        var left = Draw(close, Side.Left);
        Assert.Equal((near.Scene.Width, near.Scene.Height), (left.Scene.Width, left.Scene.Height));

        static HashSet<string> Names(Picture picture) => [.. picture.Scene.Shapes.Select(s => s.Name)];
    }
}
