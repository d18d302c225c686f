using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

public sealed class ShouldersTests
{
    private static SceneShape[] Draw(double raised, ViewKind view)
    {
        var raise = SampleMovements.All["raise a weight to the side"];
        var frame = raise.Frames[0];
        LimbAngles Up(LimbAngles arm) => arm with { ShoulderAbduction = raised };
        var movement = raise with { Props = [], View = view, Frames = [frame with { Working = Up(frame.Working), Other = Up(frame.Other) }] };
        return [.. Pictures.Still(TestBody.Model, TestBody.Points, movement, Side.Right, 0, PictureOptions.Usual).Scene.Shapes];
    }

    [Fact]
    public void A_raised_arm_flows_into_the_side_of_the_chest()
    {
        int Seams(double raised) => Draw(raised, ViewKind.Front).Count(shape => shape.Name == "seam" && shape.Tone is Tone.Shirt);
        Assert.Equal(Seams(0.2) + 2, Seams(2.6));
    }

    [Fact]
    public void A_farther_sleeve_is_in_the_shade_only_where_it_is_behind_the_shirt()
    {
        foreach (var view in (ViewKind[])[ViewKind.Side, ViewKind.Oblique])
        {
            foreach (var raised in (double[])[0.2, 1.5, 2.6])
            {
                var shapes = Draw(raised, view);
                var shirt = Array.FindIndex(shapes, shape => shape.Name == "shirt");
                var sleeve = Array.FindIndex(shapes, shape => shape.Name == "leftSleeve");
                Assert.Equal(sleeve < shirt ? Tone.FarShirt : Tone.Shirt, shapes[sleeve].Tone);
            }
        }
    }

    [Fact]
    public void The_treated_arm_comes_out_of_a_sleeve_of_the_shirt()
    {
        var shapes = Pictures.Combined(
            TestBody.Model, TestBody.Points, SampleMovements.All["raise a weight to the side"], Side.Right, PictureOptions.Usual).Scene.Shapes;
        Assert.Equal(Tone.Working, shapes.Single(s => s.Name == "rightUpperArm").Tone);
        Assert.Equal(Tone.Shirt, shapes.Single(s => s.Name == "rightSleeve").Tone);
    }
}
