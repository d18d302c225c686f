using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

/// <summary>One accent, on the part that the movement is for.</summary>
public sealed class FocusTests
{
    [Theory]
    [InlineData(MovementFocus.Leg, new[] { "rightShank", "rightThigh" })]
    [InlineData(MovementFocus.Trunk, new[] { "shirt" })]
    [InlineData(MovementFocus.Neck, new[] { "neck", "shirt" })]
    [InlineData(MovementFocus.Shoulder, new[] { "rightForearm", "rightSleeve", "rightUpperArm" })]
    [InlineData(MovementFocus.Arm, new[] { "rightForearm", "rightUpperArm" })]
    [InlineData(MovementFocus.Forearm, new[] { "rightForearm" })]
    public void The_part_that_a_movement_is_for_carries_the_accent_alone(MovementFocus focus, string[] parts)
    {
        foreach (var name in (string[])["sit to stand", "bridge", "raise a weight to the side"])
        {
            var movement = SampleMovements.All[name] with { Focus = focus };
            var shapes = Pictures.Combined(TestBody.Model, TestBody.Points, movement, Side.Right, PictureOptions.Usual).Scene.Shapes;
            Assert.Equal(parts, shapes.Where(s => s.Tone is Tone.Working or Tone.FarWorking && s.Name != "seam").Select(s => s.Name).Distinct().Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void A_choice_of_the_picture_goes_before_that_of_the_movement()
    {
        var movement = SampleMovements.All["bridge"] with { Focus = MovementFocus.Trunk };
        var shapes = Pictures.Still(TestBody.Model, TestBody.Points, movement, Side.Right, 1, PictureOptions.Usual with { Accent = MovementFocus.Leg }).Scene.Shapes;
        Assert.Contains(shapes, s => s is { Name: "rightThigh", Tone: Tone.Working });
        Assert.DoesNotContain(shapes, s => s is { Name: "shirt", Tone: Tone.Working });
    }

    [Fact]
    public void The_back_rounds_when_the_trunk_bends()
    {
        double Back(double flexion)
        {
            var movement = SampleMovements.All["curl of the trunk"];
            var frame = movement.Frames[0] with { Axial = new AxialAngles { TrunkFlexion = flexion } };
            var figure = new PlacedFigure(TestBody.Model, TestBody.Points, frame, Side.Right);
            var shirt = TrunkParts.Of(figure, Vec3.UnitZ, HairStyle.Short, MovementFocus.Trunk).Single(p => p.Name == "shirt");
            var (origin, back) = (figure.At(SegmentKind.Torso, null, 0, 0.13, 0), figure.At(SegmentKind.Torso, null, -1, 0.13, 0));
            var away = (back - origin).Normalized();
            return shirt.Layers[0].Hulls.SelectMany(h => h).Where(b => Math.Abs((b.Center - origin).Dot((figure.At(SegmentKind.Torso, null, 0, 1, 0) - figure.At(SegmentKind.Torso, null, 0, 0, 0)).Normalized())) < 0.02)
                .Max(b => (b.Center - origin).Dot(away) + b.Radius);
        }

        Assert.True(Back(0.4) > Back(0) + 0.015);
    }
}
