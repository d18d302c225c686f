using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

/// <summary>Pictures close round a hand or a foot.</summary>
public sealed class CloseUpTests
{
    [Fact]
    public void An_upright_neck_is_seen_close_unless_the_whole_is_asked_for()
    {
        Picture Draw(PictureOptions options) =>
            Pictures.Combined(TestBody.Model, TestBody.Points, SampleMovements.All["head turns"], Side.Right, options);
        var (near, whole) = (Draw(PictureOptions.Usual), Draw(PictureOptions.Usual with { Whole = true }));
        Assert.True(near.Scene.Height < 0.7 * whole.Scene.Height);
        Assert.Contains(near.Scene.Shapes, s => s.Name == "head");
        Assert.DoesNotContain(near.Scene.Shapes, s => s.Name.EndsWith("Shoe", StringComparison.Ordinal));
        Assert.Contains(whole.Scene.Shapes, s => s.Name.EndsWith("Shoe", StringComparison.Ordinal));
    }

    [Fact]
    public void A_picture_to_point_at_shows_the_whole_body_and_knows_its_places()
    {
        var movement = SampleMovements.All["big toe lifts"];
        var posed = PosedPicture.Of(TestBody.Model, TestBody.Points, movement, Side.Right, 0, PictureOptions.Usual);
        var toe = posed.At(posed.Placed.Contacts.First(c => c.Contact.Point == "foot" && c.Contact.Limb == Limb.Working).Point);
        Assert.InRange(toe.X, 0, posed.Picture.Width);
        var shoe = Frame.Bounds(posed.Picture.Scene.Shapes.Where(s => s.Name == "rightShoe"));
        Assert.InRange(toe.X, shoe.Left, shoe.Left + shoe.Width);
        Assert.InRange(toe.Y, shoe.Top, shoe.Top + shoe.Height);
    }

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
