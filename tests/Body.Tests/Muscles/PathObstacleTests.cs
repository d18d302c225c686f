using CsCheck;
using Xunit;

namespace MomentArm.Body.Tests.Muscles;

/// <summary>Lines that run round the underside of the hip.</summary>
public sealed class PathObstacleTests
{
    private static readonly string[] Lines = ["gluteus-maximus-upper", "gluteus-maximus-middle", "gluteus-maximus-lower", "iliotibial-band-gluteus"];

    [Fact]
    public void Straight_standing_follows_the_published_lines()
    {
        var pose = MusclesOf.Posed(MusclesOf.Man.Model, [0, 0, 0, 0, 0, 0, 0, 0, 0, 0]);
        var (round, published) = (MusclesOf.State(MusclesOf.Man, pose, PathUse.Trusted), MusclesOf.State(MusclesOf.Man, pose, PathUse.AsPublished));
        foreach (var m in Lines.Select(id => MusclesOf.Man.IndexOf(id, Side.Right)))
        {
            Assert.Equal(published.Lengths[m], round.Lengths[m]);
            Assert.Equal(published.ArmsOf(m).ToArray(), round.ArmsOf(m).ToArray());
        }
    }

    /// <summary>The cylinder's radius (30 mm) and where its axis lies against the hip (9 mm behind, 16 mm below) bound the arm.</summary>
    [Theory]
    [InlineData("gluteus-maximus-upper", -45.3)]
    [InlineData("gluteus-maximus-middle", -45.4)]
    [InlineData("gluteus-maximus-lower", -43.0)]
    public void A_deeply_bent_hip_keeps_an_extension_arm(string id, double expectedMm)
    {
        // Worked apart from the code: tangents and arc in the plane across the axis, the arm by differencing the length over 0.02 degrees.
        var set = MusclesOf.Published;
        var state = MusclesOf.State(set, MusclesOf.Posed(set.Model, [90]), PathUse.Trusted);
        Assert.Equal(expectedMm, 1000 * state.Arm(set.IndexOf(id, Side.Right), set.Model.IndexOf(Motion.HipFlexion, Side.Right)), 0.1);
    }

    [Fact]
    public void The_way_round_is_never_shorter_than_the_straight_line_and_its_arms_are_its_derivatives()
    {
        var set = MusclesOf.Man;
        var hip = Gen.Double[-20, 90].Select(Gen.Double[-20, 40], Gen.Double[-40, 40]);
        hip.Sample(angles =>
        {
            var (flexion, adduction, rotation) = angles;
            BodyPose Pose(double f, double a, double r) => MusclesOf.Posed(set.Model, [f, a, r, -60, 0, 0, 0, 0, 0, 0]);
            var here = MusclesOf.State(set, Pose(flexion, adduction, rotation), PathUse.Trusted);
            var published = MusclesOf.State(set, Pose(flexion, adduction, rotation), PathUse.AsPublished);
            const double step = 0.002;
            foreach (var m in Lines.Select(id => set.IndexOf(id, Side.Right)))
            {
                Assert.True(here.Lengths[m] >= published.Lengths[m] - 1e-12);
                double Derivative(double f, double a, double r) =>
                    (MusclesOf.State(set, Pose(flexion + f, adduction + a, rotation + r), PathUse.Trusted).Lengths[m]
                        - MusclesOf.State(set, Pose(flexion - f, adduction - a, rotation - r), PathUse.Trusted).Lengths[m]) / (2 * step * Math.PI / 180);
                var coordinates = here.ArmCoordinatesOf(m);
                double[] differenced = [Derivative(step, 0, 0), Derivative(0, step, 0), Derivative(0, 0, step)];
                for (var k = 0; k < 3; k++)
                    Assert.Equal(-differenced[k], here.ArmsOf(m)[coordinates.IndexOf(set.Model.IndexOf(((Motion[])[Motion.HipFlexion, Motion.HipAdduction, Motion.HipRotation])[k], Side.Right))], 2e-5);
            }
        }, iter: 200);
    }

    [Fact]
    public void Left_and_right_mirror()
    {
        var pose = MusclesOf.Posed(MusclesOf.Man.Model, [70, -10, 15, -60, 0, 0, 0, 0, 0, 0]);
        var state = MusclesOf.State(MusclesOf.Man, pose, PathUse.Trusted);
        var mirrored = MusclesOf.State(MusclesOf.Man, pose.Mirrored(MusclesOf.Man.Model), PathUse.Trusted);
        foreach (var m in Lines.Select(id => MusclesOf.Man.IndexOf(id, Side.Right)))
            Assert.Equal(state.Lengths[m], mirrored.Lengths[MusclesOf.Man.Mirror(m)], 1e-12);
    }
}
