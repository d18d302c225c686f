using CsCheck;

namespace MomentArm.Body.Tests.Muscles;

/// <summary>What must hold of lengths and arms for any body and any pose.</summary>
public class MuscleStateTests
{
    private const double Step = 1e-6;

    [Fact]
    public void An_arm_is_minus_the_slope_of_length_while_the_points_of_the_path_stay() => RandomBodies.Case.Sample(
        c =>
        {
            var set = MusclesOf.Built(c.Model);
            var muscles = MusclesOf.State(set, c.Pose, PathUse.AsPublished);
            double[] arms = [.. muscles.Arms];
            var state = new BodyState(c.Model);
            for (var k = 0; k < c.Model.Coordinates.Length; k++)
            {
                // Four points: exact to the fourth order, since nearly coinciding points bend the length sharply.
                var (more, less) = (Lengths(muscles, state, c.Pose, k, Step), Lengths(muscles, state, c.Pose, k, -Step));
                var (most, least) = (Lengths(muscles, state, c.Pose, k, 2 * Step), Lengths(muscles, state, c.Pose, k, -2 * Step));
                for (var m = 0; m < more.Length; m++)
                {
                    var at = muscles.ArmCoordinatesOf(m).IndexOf(k);
                    var arm = at < 0 ? 0 : arms[set.Muscles[m].FirstArm + at];
                    Assert.Equal((most[m] - least[m] - 8 * (more[m] - less[m])) / (12 * Step), arm, 2e-8);
                }
            }
        },
        iter: 60);

    [Fact]
    public void The_mirrored_pose_gives_the_other_side_the_same_lengths_and_arms() => RandomBodies.Case.Sample(
        c =>
        {
            var set = MusclesOf.Built(c.Model);
            var one = MusclesOf.State(set, c.Pose, PathUse.Trusted);
            var other = MusclesOf.State(set, c.Pose.Mirrored(c.Model), PathUse.Trusted);
            for (var m = 0; m < set.Muscles.Length; m++)
            {
                var mirror = set.Mirror(m);
                Assert.Equal(set.Muscles[m].Id, set.Muscles[mirror].Id);
                Assert.Equal(one.Lengths[m], other.Lengths[mirror], Tolerances.Position);
                Assert.Equal(one.Extrapolated[m], other.Extrapolated[mirror]);
                for (var a = 0; a < set.Muscles[m].ArmCount; a++)
                {
                    var motion = c.Model.Coordinates[one.ArmCoordinatesOf(m)[a]].Motion;
                    var sign = motion is Motion.TrunkBending or Motion.TrunkRotation ? -1 : 1;
                    Assert.Equal(one.ArmsOf(m)[a], sign * other.ArmsOf(mirror)[a], Tolerances.Position);
                }
            }
        },
        iter: 100);

    [Fact]
    public void Turning_and_moving_the_whole_body_changes_nothing() => RandomBodies.Case.Sample(
        c =>
        {
            var set = MusclesOf.Built(c.Model);
            var still = c.Pose.Copy();
            still.PelvisRotation = Mat3.Identity;
            still.PelvisPosition = Vec3.Zero;
            var here = MusclesOf.State(set, c.Pose, PathUse.Trusted);
            var there = MusclesOf.State(set, still, PathUse.Trusted);
            for (var m = 0; m < set.Muscles.Length; m++)
                Assert.Equal(here.Lengths[m], there.Lengths[m], Tolerances.Position);
            for (var a = 0; a < here.Arms.Length; a++)
                Assert.Equal(here.Arms[a], there.Arms[a], Tolerances.Position);
        },
        iter: 60);

    [Theory]
    [InlineData(0.7)]
    [InlineData(1.3)]
    public void A_body_larger_in_all_segments_has_lengths_arms_and_ranges_larger_alike(double factor)
    {
        var model = MusclesOf.Published.Model;
        var larger = MusclesOf.Built(new BodyModel(
            [.. model.Segments.Select(s => s with { Offset = factor * s.Offset, Scale = factor, SlideScale = factor })],
            model.Coordinates, 0, 0, []));
        RandomBodies.Pose(model).Sample(
            pose =>
            {
                var (one, other) = (MusclesOf.State(MusclesOf.Published, pose, PathUse.Trusted), MusclesOf.State(larger, pose, PathUse.Trusted));
                for (var m = 0; m < one.Lengths.Length; m++)
                {
                    Assert.Equal(factor * one.Lengths[m], other.Lengths[m], Tolerances.Position);
                    Assert.Equal(one.Lengthening(m).PercentOfRange, other.Lengthening(m).PercentOfRange, 1e-9);
                    Assert.Equal(one.Lengthening(m).ChangeInFibers, other.Lengthening(m).ChangeInFibers, 1e-9);
                }

                for (var a = 0; a < one.Arms.Length; a++)
                    Assert.Equal(factor * one.Arms[a], other.Arms[a], Tolerances.Position);
            },
            iter: 30);
    }

    [Fact]
    public void Fibers_stand_at_the_published_fraction_of_their_best_length_in_every_body() => RandomBodies.Body.Sample(
        model =>
        {
            var set = MusclesOf.Built(model);
            for (var m = 0; m < set.Muscles.Length; m++)
            {
                var (own, published) = (set.Muscles[m], MusclesOf.Published.Muscles[m]);
                Assert.Equal(
                    (published.NeutralLengthM - published.TendonSlackM) / published.OptimalFiberM,
                    (own.NeutralLengthM - own.TendonSlackM) / own.OptimalFiberM,
                    1e-9);
                Assert.Equal(published.ForceN, own.ForceN);
            }
        },
        iter: 30);

    [Fact]
    public void An_update_allocates_nothing_inside_the_trusted_angles_and_beyond()
    {
        var muscles = new MuscleState(MusclesOf.Man);
        var state = new BodyState(MusclesOf.Man.Model);
        var inside = MusclesOf.Posed(MusclesOf.Man.Model, [40, 5, 5, -60, 5, 2, 3]);
        var beyond = MusclesOf.Posed(MusclesOf.Man.Model, [110, 5, 5, -130, 5, 2, 3]);
        for (var i = 0; i < 200; i++)
            Both();
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 200; i++)
            Both();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);

        void Both()
        {
            state.Update(inside);
            muscles.Update(state, inside);
            state.Update(beyond);
            muscles.Update(state, beyond);
        }
    }

    [Theory]
    [InlineData(PathUse.Trusted)]
    [InlineData(PathUse.AsPublished)]
    public void Two_hundred_thousand_wild_poses_give_finite_numbers(PathUse use)
    {
        var muscles = new MuscleState(MusclesOf.Man, use);
        var state = new BodyState(MusclesOf.Man.Model);
        var pose = new BodyPose(MusclesOf.Man.Model);
        var random = new Random(20260102);
        for (var n = 0; n < 200_000; n++)
        {
            for (var k = 0; k < pose.Angles.Length; k++)
                pose.Angles[k] = (random.NextDouble() - 0.5) * 8;
            state.Update(pose);
            muscles.Update(state, pose);
            var sum = 0.0;
            foreach (var length in muscles.Lengths)
                sum += Math.Abs(length);
            foreach (var arm in muscles.Arms)
                sum += Math.Abs(arm);
            if (!double.IsFinite(sum) || sum > 1e3)
                Assert.Fail(FormattableString.Invariant($"pose {n}: {sum}"));
        }
    }

    [Fact]
    public void A_number_that_is_none_or_another_body_is_refused()
    {
        var set = MusclesOf.Man;
        var muscles = new MuscleState(set);
        var state = new BodyState(set.Model);
        foreach (var bad in new[] { double.NaN, double.PositiveInfinity })
        {
            var pose = new BodyPose(set.Model);
            pose.Angles[set.Model.IndexOf(Motion.KneeExtension, Side.Left)] = bad;
            Assert.Throws<ArgumentException>(() => muscles.Update(state, pose));
        }

        Assert.Throws<ArgumentException>(() => muscles.Update(new BodyState(TestBody.Woman), new BodyPose(TestBody.Woman)));
        Assert.Throws<ArgumentException>(() => set.IndexOf("no-such-muscle", Side.Left));
    }

    [Theory]
    [InlineData("iliacus", 0, 45, 0.56)]
    [InlineData("gastrocnemius-medial", 3, -45, 0.36)]
    public void A_point_that_goes_leaves_the_published_step_of_length(string id, int angle, double atDeg, double stepMm)
    {
        // Found by sweeping the published paths; printed to 0.01 mm.
        var before = new double[10];
        var after = new double[10];
        before[angle] = atDeg - 1e-6 * Math.Sign(atDeg);
        after[angle] = atDeg + 1e-6 * Math.Sign(atDeg);
        var step = Math.Abs(MusclesOf.Right(id, after).LengthMm - MusclesOf.Right(id, before).LengthMm);
        Assert.Equal(stepMm, step, 0.00501);
    }

    private static double[] Lengths(MuscleState muscles, BodyState state, BodyPose pose, int coordinate, double by)
    {
        var moved = pose.Copy();
        moved.Angles[coordinate] += by;
        state.Update(moved);
        muscles.UpdateKeepingPoints(state, moved);
        return [.. muscles.Lengths];
    }
}
