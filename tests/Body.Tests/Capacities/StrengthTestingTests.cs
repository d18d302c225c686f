using MomentArm.Body.Tests.Movements;

namespace MomentArm.Body.Tests.Capacities;

/// <summary>Strength tests made into muscle torques.</summary>
public class StrengthTestingTests
{
    /// <summary>
    /// Worked example: 180 N at 0.40 m from the hip is 72.0 N m; in side-lying the muscles held the leg as well. With masses
    /// of Winter (from memory) a person of 70 kg holds 44.5 N m of leg, in all 116.5 N m.
    /// </summary>
    [Fact]
    public void Side_lying_abduction_adds_the_leg_that_was_held()
    {
        var model = TestBody.Content.Build(new Physique(Sex.Male, 30, 1.70, 70));
        var (test, gravity) = Simulate(model, Frames.SideLyingRaise(0), JointAction.HipAbduction, 180, 0.40);
        Assert.Equal(180 * 0.40 + gravity, test.MuscleTorque, Tolerances.TwoRoutes);

        // By hand from this body's own masses: the leg is level, so each weight acts at its distance along the leg.
        var state = new BodyState(model);
        var hip = state.Origins[model.IndexOf(SegmentKind.Thigh, Side.Right)];
        var byHand = 0.0;
        foreach (var kind in new[] { SegmentKind.Thigh, SegmentKind.Shank, SegmentKind.Foot })
        {
            var index = model.IndexOf(kind, Side.Right);
            byHand += model.Segments[index].MassKg * 9.81 * (hip.Y - state.Point(index, model.Segments[index].MassCenter).Y);
        }

        // The body settles a little tilted on shoulder, hip and knee, which shortens the level distance.
        Assert.Equal(byHand, gravity, 0.03 * byHand);
        Assert.InRange(gravity, 36, 46);
    }

    [Theory]
    [InlineData(90)]
    [InlineData(60)]
    [InlineData(30)]
    [InlineData(5)]
    public void Seated_knee_extension_adds_shank_and_foot_that_were_held(double kneeFlexionDeg)
    {
        var model = TestBody.Woman;
        var frame = Frames.Seated(kneeFlexionDeg);
        var (test, gravity) = Simulate(model, frame, JointAction.KneeExtension, 250, 0.33);
        Assert.Equal(250 * 0.33 + gravity, test.MuscleTorque, Tolerances.TwoRoutes);
        Assert.Equal(TestBody.Radians(kneeFlexionDeg), test.ClinicalAngle, Tolerances.Position);

        // By hand: weight times level distance from the knee, and what the knee's own slide lifts per radian.
        var state = TestBody.Posed(model, Placing.Place(model, TestBody.Content.Points, frame, Side.Right).Pose);
        var knee = model.IndexOf(SegmentKind.Shank, Side.Right);
        var slide = state.Slides[model.IndexOf(Motion.KneeExtension, Side.Right)].Y;
        var byHand = 0.0;
        foreach (var index in new[] { knee, model.IndexOf(SegmentKind.Foot, Side.Right) })
        {
            var segment = model.Segments[index];
            byHand += segment.MassKg * 9.81 * (state.Point(index, segment.MassCenter).X - state.Origins[knee].X + slide);
        }

        Assert.Equal(byHand, gravity, 1e-9);
    }

    [Fact]
    public void The_same_muscle_at_twice_the_lever_arm_shows_half_the_force_and_the_same_torque()
    {
        // Worked example: comparing newtons alone would show a false loss of half.
        var near = Simulate(TestBody.Man, Frames.SideLyingRaise(0), JointAction.HipAbduction, 180, 0.40).Test;
        var far = Simulate(TestBody.Man, Frames.SideLyingRaise(0), JointAction.HipAbduction, 90, 0.80).Test;
        Assert.Equal(near.MuscleTorque, far.MuscleTorque, Tolerances.TwoRoutes);
    }

    [Fact]
    public void Left_and_right_tests_of_the_same_force_give_the_same_torque()
    {
        var points = TestBody.Content.Points;
        var right = StrengthTesting.Simulate(
            TestBody.Man, points, Frames.SideLyingRaise(10), JointAction.HipAbduction, Side.Right, 150, 0.4, false);
        var left = StrengthTesting.Simulate(
            TestBody.Man, points, Frames.SideLyingRaise(10), JointAction.HipAbduction, Side.Left, 150, 0.4, true);
        Assert.Equal(right.Test.MuscleTorque, left.Test.MuscleTorque, 1e-6);
        Assert.True(left.Test.PainLimited);
    }

    [Theory]
    [InlineData(0, 0.4)]
    [InlineData(3500, 0.4)]
    [InlineData(200, 0)]
    [InlineData(400, 4)]
    [InlineData(double.NaN, 0.4)]
    public void A_force_or_lever_arm_that_cannot_be_is_refused(double force, double lever) =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Simulate(TestBody.Man, Frames.SideLyingRaise(0), JointAction.HipAbduction, force, lever));

    private static (StrengthTest Test, double GravityTorque) Simulate(
        BodyModel model, PosedFrame frame, JointAction action, double force, double lever) =>
        StrengthTesting.Simulate(model, TestBody.Content.Points, frame, action, Side.Right, force, lever, false);
}
