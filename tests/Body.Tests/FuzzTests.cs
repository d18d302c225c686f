using System.Globalization;
using CsCheck;

namespace MomentArm.Body.Tests;

/// <summary>
/// Any body in any pose under any forces gives finite numbers that agree by both routes. How many poses is <see cref="Poses"/>;
/// MOMENTARM_FUZZ in the environment raises it, to a million for example.
/// </summary>
public sealed class FuzzTests(ITestOutputHelper output)
{
    /// <summary>Poses tried in an everyday run.</summary>
    private const long EverydayPoses = 2_000;

    /// <summary>Any joint angle, a whole turn either way: no author gives these, settling and searching may pass through them.</summary>
    private const double WholeTurn = 2 * Math.PI;

    private static readonly Lazy<(BodyModel Model, MuscleSet Muscles)[]> Bodies = new(() =>
    [
        .. (from sex in new Sex?[] { Sex.Female, Sex.Male, null }
            from size in new[] { (0.8, 15.0), (1.3, 350.0), (1.55, 40.0), (1.7, 70.0), (1.95, 120.0), (2.4, 60.0) }
            select TestBody.Content.Build(new Physique(sex, 40, size.Item1, size.Item2)))
            .Select(model => (model, TestBody.Content.MusclesOf(model))),
    ]);

    private static long Poses =>
        long.TryParse(Environment.GetEnvironmentVariable("MOMENTARM_FUZZ"), NumberStyles.None, CultureInfo.InvariantCulture, out var poses) && poses > 0
            ? poses
            : EverydayPoses;

    [Fact]
    public void Usual_poses_give_finite_numbers_by_both_routes() =>
        Try(RandomBodies.Pose);

    [Fact]
    public void Poses_far_beyond_any_joint_give_finite_numbers_by_both_routes() =>
        Try(model => Gen.Select(RandomBodies.Pose(model), Gen.Double[-WholeTurn, WholeTurn].Array[model.Coordinates.Length], (pose, angles) =>
        {
            angles.CopyTo(pose.Angles, 0);
            return pose;
        }));

    [Fact]
    public void Angles_at_the_very_ends_of_ranges_and_at_switches_of_paths_give_finite_numbers()
    {
        // Zero, quarter turns, ends of the usual ranges, and a hair to either side of them.
        Try(model => Gen.Int[0, 5].Array[model.Coordinates.Length].Select(Gen.Int[-1, 1].Array[model.Coordinates.Length], (picks, hairs) =>
        {
            var pose = new BodyPose(model);
            for (var k = 0; k < picks.Length; k++)
            {
                var coordinate = model.Coordinates[k];
                double[] corners = [0, coordinate.NormalLeast, coordinate.NormalMost, Math.PI / 4, -Math.PI / 4, Math.PI / 2];
                pose.Angles[k] = corners[picks[k]] + hairs[k] * double.Epsilon + hairs[k] * 1e-15;
            }

            return pose;
        }));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void An_angle_that_is_no_number_is_refused_before_it_can_spread(double angle)
    {
        var (model, muscles) = Bodies.Value[0];
        for (var k = 0; k < model.Coordinates.Length; k++)
        {
            var pose = new BodyPose(model);
            pose.Angles[k] = angle;
            Assert.Throws<ArgumentException>(() => new MuscleState(muscles).Update(new BodyState(model), pose));
        }
    }

    private void Try(Func<BodyModel, Gen<BodyPose>> poses)
    {
        var tried = 0L;
        Gen.Int[0, Bodies.Value.Length - 1]
            .SelectMany(i => Gen.Select(poses(Bodies.Value[i].Model), Gen.Double[-2000, 2000].Array[3], Gen.Int[0, Bodies.Value[i].Model.Segments.Length - 1], (pose, force, segment) =>
                (Body: i, Pose: pose, Force: new Vec3(force[0], force[1], force[2]), Segment: segment)))
            .Sample(
                c =>
                {
                    Interlocked.Increment(ref tried);
                    var (model, muscles) = Bodies.Value[c.Body];
                    return Holds(model, muscles, c.Pose, c.Force, c.Segment);
                },
                iter: Poses,
                print: c => FormattableString.Invariant(
                    $"body {c.Body}, angles [{string.Join(", ", c.Pose.Angles)}], pelvis {c.Pose.PelvisRotation}, force {c.Force} on {c.Segment}"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{tried} poses tried."));
        Assert.True(tried >= Poses);
    }

    private static bool Holds(BodyModel model, MuscleSet muscles, BodyPose pose, Vec3 force, int segment)
    {
        var state = TestBody.Posed(model, pose);
        foreach (var origin in state.Origins)
        {
            if (!Finite(origin))
                return false;
        }

        var forces = new[] { new PointForce(segment, state.Point(segment, new Vec3(0.1, -0.2, 0.05)), force) };
        var sweep = new double[model.Coordinates.Length];
        var work = new double[sweep.Length];
        var (restForce, restMoment) = JointMoments.Required(state, forces, sweep);
        JointMoments.RequiredByVirtualWork(state, forces, work);
        if (!Finite(restForce) || !Finite(restMoment))
            return false;
        for (var k = 0; k < sweep.Length; k++)
        {
            if (!(Math.Abs(sweep[k] - work[k]) <= 10 * Tolerances.TwoRoutes * (1 + Math.Abs(work[k]))))
                return false;
        }

        return Holds(new MuscleState(muscles), state, pose) && Holds(new MuscleState(muscles, PathUse.AsPublished), state, pose);
    }

    /// <summary>Every path is there, longer than nothing, and no arm is longer than the leg.</summary>
    private static bool Holds(MuscleState state, BodyState body, BodyPose pose)
    {
        state.Update(body, pose);
        foreach (var length in state.Lengths)
        {
            if (!double.IsFinite(length))
                return false;
        }

        foreach (var arm in state.Arms)
        {
            if (!(Math.Abs(arm) < 2))
                return false;
        }

        for (var m = 0; m < state.Lengths.Length; m++)
        {
            var lengthening = state.Lengthening(m);
            if (!double.IsFinite(lengthening.ChangeM) || !double.IsFinite(lengthening.PercentOfRange) || !double.IsFinite(lengthening.ChangeInFibers))
                return false;
        }

        return true;
    }

    private static bool Finite(Vec3 v) => double.IsFinite(v.X) && double.IsFinite(v.Y) && double.IsFinite(v.Z);
}
