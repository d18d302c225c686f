using CsCheck;

namespace MomentArm.Body.Tests.Poses;

/// <summary>Poses and what is computed for them.</summary>
public class BodyStateTests
{
    [Fact]
    public void Mirroring_a_pose_twice_returns_the_same_pose() => RandomBodies.Case.Sample(c =>
    {
        var twice = c.Pose.Mirrored(c.Model).Mirrored(c.Model);
        Assert.Equal(c.Pose.Angles, twice.Angles);
        Assert.Equal(c.Pose.PelvisPosition, twice.PelvisPosition);
        Assert.Equal(c.Pose.PelvisRotation, twice.PelvisRotation);
    });

    [Fact]
    public void A_mirrored_pose_puts_every_segment_in_the_mirrored_place() => RandomBodies.Case.Sample(c =>
    {
        var mirrored = TestBody.Posed(c.Model, c.Pose.Mirrored(c.Model));
        for (var i = 0; i < c.Model.Segments.Length; i++)
        {
            var segment = c.Model.Segments[i];
            var other = segment.Side is { } side ? c.Model.IndexOf(segment.Kind, side.Other()) : i;
            Assert.Equal(0, (mirrored.Origins[other] - c.State.Origins[i].Mirrored).Length, Tolerances.Position);
        }
    });

    [Fact]
    public void The_parts_weigh_what_the_person_weighs() => RandomBodies.Body.Sample(model =>
        Assert.Equal(model.MassKg, model.Segments.Sum(s => s.MassKg), 2e-4 * model.MassKg)); // the female table adds to 99.99 %

    [Theory]
    [InlineData(Sex.Male, 1.741, 0.4222, 0.4403)]
    [InlineData(Sex.Female, 1.735, 0.3685, 0.4386)]
    public void Thigh_and_shank_are_as_long_as_the_table_says(Sex sex, double stature, double thigh, double shank)
    {
        // Source: de Leva 1996 Table 4, lengths in millimetres at the sample's own stature.
        var model = TestBody.Content.Build(new Physique(sex, 30, stature, 70));
        var state = new BodyState(model);
        var hip = state.Origins[model.IndexOf(SegmentKind.Thigh, Side.Left)];
        var knee = state.Origins[model.IndexOf(SegmentKind.Shank, Side.Left)];
        var ankle = state.Origins[model.IndexOf(SegmentKind.Talus, Side.Left)];
        Assert.Equal(thigh, (knee - hip).Length, 0.001);
        Assert.Equal(shank, (ankle - knee).Length, 0.001);
    }

    [Fact]
    public void Standing_mass_center_lies_a_little_above_the_hips_in_the_midline()
    {
        // About 55-58 % of stature over the floor in standing adults (common textbook figure, from memory).
        foreach (var model in new[] { TestBody.Man, TestBody.Woman })
        {
            var state = new BodyState(model);
            var (foot, sole) = TestBody.Content.Points.Resolve("heel")[0].On(model, Side.Right);
            var height = state.MassCenter().Y - state.Point(foot, sole).Y;
            Assert.InRange(height / model.StatureM, 0.53, 0.60);
            Assert.Equal(0, state.MassCenter().Z, Tolerances.Position);
        }
    }

    [Fact]
    public void Updating_the_state_allocates_nothing()
    {
        var state = new BodyState(TestBody.Woman);
        var pose = new BodyPose(TestBody.Woman);
        for (var i = 0; i < 100; i++)
            state.Update(pose);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 100; i++)
        {
            pose.Angles[0] += 0.01;
            state.Update(pose);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Updating_changes_neither_pose_nor_body() => RandomBodies.Case.Sample(c =>
    {
        var copy = c.Pose.Copy();
        new BodyState(c.Model).Update(c.Pose);
        Assert.Equal(copy.Angles, c.Pose.Angles);
        Assert.Equal(copy.PelvisRotation, c.Pose.PelvisRotation);
    });

    [Fact]
    public void A_pose_of_another_body_is_refused()
    {
        var small = new BodyModel(
            [new Segment(SegmentKind.Pelvis, null, -1, Vec3.Zero, 0, 0, 1, Vec3.Zero, 1, null, null, 1)], [], 1, 1, []);
        Assert.Throws<ArgumentException>(() => new BodyState(TestBody.Man).Update(new BodyPose(small)));
        Assert.Throws<ArgumentException>(() => TestBody.Man.IndexOf(SegmentKind.Thigh, null));
        Assert.Throws<ArgumentException>(() => TestBody.Man.IndexOf(Motion.TrunkBending, Side.Left));
    }

    [Fact]
    public void Two_hundred_thousand_wild_poses_give_finite_numbers()
    {
        var model = TestBody.Man;
        var state = new BodyState(model);
        var pose = new BodyPose(model);
        var moments = new double[model.Coordinates.Length];
        var random = new Random(20260101);
        for (var n = 0; n < 200_000; n++)
        {
            for (var k = 0; k < pose.Angles.Length; k++)
                pose.Angles[k] = (random.NextDouble() - 0.5) * 20;
            pose.PelvisRotation = Mat3.Rotation(Vec3.UnitX, random.NextDouble() * 10) * Mat3.Rotation(Vec3.UnitZ, random.NextDouble() * 10);
            state.Update(pose);
            var (force, moment) = JointMoments.Required(state, [], moments);
            var sum = force.Length + moment.Length + state.MassCenter().Length;
            foreach (var m in moments)
                sum += Math.Abs(m);
            if (!double.IsFinite(sum) || sum > 1e5)
                Assert.Fail(FormattableString.Invariant($"pose {n}: {sum}"));
        }
    }
}
