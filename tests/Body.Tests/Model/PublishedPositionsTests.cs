namespace MomentArm.Body.Tests.Model;

/// <summary>
/// Positions and knee slides of the published generic model at its own size.
/// Source: Delp et al. 1990 (doi:10.1109/10.102791) as distributed in the public generic gait model 2392, computed twice
/// by independent programs (see docs/models/body.md, section 1).
/// </summary>
public class PublishedPositionsTests
{
    private const double HundredthMillimetre = 1e-5;

    [Theory]
    [InlineData(SegmentKind.Thigh, -0.0707, -0.0661, 0.0835)]
    [InlineData(SegmentKind.Shank, -0.0752, -0.4619, 0.0835)]
    [InlineData(SegmentKind.Talus, -0.0752, -0.8919, 0.0835)]
    [InlineData(SegmentKind.Foot, -0.1240, -0.9339, 0.0914)]
    [InlineData(SegmentKind.Toes, 0.0548, -0.9359, 0.0925)]
    [InlineData(SegmentKind.UpperArm, -0.0975, 0.4530, 0.1700)]
    [InlineData(SegmentKind.Hand, -0.0999, -0.0821, 0.2001)]
    public void Neutral_joint_centers_are_where_the_published_model_has_them(SegmentKind kind, double x, double y, double z)
    {
        var model = BodyModelBuilder.Unscaled(TestBody.Content.Skeleton);
        var state = new BodyState(model);
        var right = state.Origins[model.IndexOf(kind, Side.Right)];
        var left = state.Origins[model.IndexOf(kind, Side.Left)];

        // Printed to a tenth of a millimetre.
        Assert.Equal(0, (right - new Vec3(x, y, z)).Length, 1e-4);
        Assert.Equal(0, (left - right.Mirrored).Length, 1e-15);
    }

    [Theory]
    [InlineData(0, -4.50, -395.82)]
    [InlineData(30, 0.76, -399.00)]
    [InlineData(60, 4.10, -405.50)]
    [InlineData(90, 3.26, -413.99)]
    [InlineData(120, -3.20, -422.60)]
    public void The_knee_slides_as_published(double flexionDeg, double xMm, double yMm)
    {
        var model = BodyModelBuilder.Unscaled(TestBody.Content.Skeleton);
        var pose = new BodyPose(model);
        pose.Angles[model.IndexOf(Motion.KneeExtension, Side.Right)] = -Angle.FromDegrees(flexionDeg).Radians;
        var state = new BodyState(model);
        state.Update(pose);
        var slide = state.Origins[model.IndexOf(SegmentKind.Shank, Side.Right)] - state.Origins[model.IndexOf(SegmentKind.Thigh, Side.Right)];
        Assert.Equal(xMm / 1000, slide.X, HundredthMillimetre);
        Assert.Equal(yMm / 1000, slide.Y, HundredthMillimetre);
    }
}
