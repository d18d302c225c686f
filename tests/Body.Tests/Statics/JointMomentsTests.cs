using CsCheck;

namespace MomentArm.Body.Tests.Statics;

/// <summary>What must hold for every body, pose and force.</summary>
public class JointMomentsTests
{
    [Fact]
    public void Cross_products_and_virtual_work_give_the_same_moments() => RandomBodies.Case.Sample(
        c =>
        {
            var byWork = new double[c.Model.Coordinates.Length];
            JointMoments.RequiredByVirtualWork(c.State, c.Forces, byWork);
            AssertEqual(TestBody.Moments(c.State, c.Forces), byWork, Tolerances.TwoRoutes);
        },
        iter: 2000);

    [Fact]
    public void Moments_without_forces_are_the_slope_of_height_energy_over_each_angle() => RandomBodies.Case.Sample(
        c =>
        {
            const double step = 1e-5;
            var state = new BodyState(c.Model);
            double EnergyWith(int k, double change)
            {
                var pose = c.Pose.Copy();
                pose.Angles[k] += change;
                state.Update(pose);
                var energy = 0.0;
                for (var i = 0; i < c.Model.Segments.Length; i++)
                {
                    var segment = c.Model.Segments[i];
                    energy += segment.MassKg * BodyModel.Gravity * (state.Point(i, segment.MassCenter).Y - c.Pose.PelvisPosition.Y);
                }

                return energy;
            }

            var slope = Enumerable.Range(0, c.Model.Coordinates.Length)
                .Select(k => (EnergyWith(k, step) - EnergyWith(k, -step)) / (2 * step))
                .ToArray();
            AssertEqual(slope, TestBody.Moments(c.State), Tolerances.Gradient);
        },
        iter: 300);

    [Fact]
    public void A_point_moves_as_its_velocity_says() => RandomBodies.Case.Sample(
        c =>
        {
            const double step = 1e-6;
            var state = new BodyState(c.Model);
            foreach (var force in c.Forces)
            {
                var local = c.State.Rotations[force.Segment].Transposed * (force.Point - c.State.Origins[force.Segment]);
                for (var k = 0; k < c.Model.Coordinates.Length; k++)
                {
                    Vec3 PointWith(double change)
                    {
                        var pose = c.Pose.Copy();
                        pose.Angles[k] += change;
                        state.Update(pose);
                        return state.Point(force.Segment, local);
                    }

                    var measured = (1 / (2 * step)) * (PointWith(step) - PointWith(-step));
                    Assert.Equal(0, (measured - c.State.PointVelocity(k, force.Segment, force.Point)).Length, 1e-8);
                }
            }
        },
        iter: 100);

    [Fact]
    public void A_mirrored_pose_under_mirrored_forces_needs_mirrored_moments() => RandomBodies.Case.Sample(
        c =>
        {
            var mirrored = TestBody.Posed(c.Model, c.Pose.Mirrored(c.Model));
            var forces = c.Forces.Select(f => new PointForce(OtherSide(c.Model, f.Segment), f.Point.Mirrored, f.Force.Mirrored)).ToArray();
            var here = TestBody.Moments(c.State, c.Forces);
            var there = TestBody.Moments(mirrored, forces);
            for (var k = 0; k < here.Length; k++)
            {
                var coordinate = c.Model.Coordinates[k];
                var signedBySide = coordinate.Side is null && coordinate.Motion
                    is Motion.TrunkBending or Motion.TrunkRotation or Motion.NeckBending or Motion.NeckRotation;
                var index = coordinate.Side is { } side ? c.Model.IndexOf(coordinate.Motion, side.Other()) : k;
                Assert.Equal(here[k], signedBySide ? -there[index] : there[index], Tolerances.TwoRoutes);
            }
        },
        iter: 1000);

    [Fact]
    public void Turning_the_whole_room_about_the_vertical_changes_no_moment() =>
        Gen.Select(RandomBodies.Case, Gen.Double[-3, 3]).Sample(
            (c, angle) =>
            {
                var turn = Mat3.Rotation(Vec3.UnitY, angle);
                var pose = c.Pose.Copy();
                pose.PelvisRotation = turn * pose.PelvisRotation;
                pose.PelvisPosition = turn * pose.PelvisPosition;
                var forces = c.Forces.Select(f => f with { Point = turn * f.Point, Force = turn * f.Force }).ToArray();
                AssertEqual(
                    TestBody.Moments(c.State, c.Forces), TestBody.Moments(TestBody.Posed(c.Model, pose), forces), Tolerances.TwoRoutes);
            },
            iter: 1000);

    [Fact]
    public void Twice_the_body_mass_needs_twice_the_moments() =>
        Gen.Select(Gen.Double[1.3, 2.1], Gen.Double[35, 160]).Sample(
            (stature, mass) =>
            {
                var light = TestBody.Content.Build(new Physique(Sex.Female, 40, stature, mass));
                var heavy = TestBody.Content.Build(new Physique(Sex.Female, 40, stature, 2 * mass));
                var pose = RandomBodies.Pose(light).Single();
                AssertEqual(
                    [.. TestBody.Moments(TestBody.Posed(light, pose)).Select(m => 2 * m)],
                    TestBody.Moments(TestBody.Posed(heavy, pose)),
                    Tolerances.TwoRoutes);
            },
            iter: 100);

    [Fact]
    public void Twice_the_stature_at_the_same_mass_needs_twice_the_moments()
    {
        // Every length doubles, so every lever doubles.
        var small = TestBody.Content.Build(new Physique(Sex.Male, 40, 1.1, 60));
        var tall = TestBody.Content.Build(new Physique(Sex.Male, 40, 2.2, 60));
        RandomBodies.Pose(small).Sample(
            pose => AssertEqual(
                [.. TestBody.Moments(TestBody.Posed(small, pose)).Select(m => 2 * m)],
                TestBody.Moments(TestBody.Posed(tall, pose)),
                Tolerances.TwoRoutes),
            iter: 200);
    }

    [Fact]
    public void A_weight_hung_where_it_adds_to_a_moment_never_lowers_it() =>
        Gen.Select(RandomBodies.Case, Gen.Int[0, 22], Gen.Double[0, 20]).Sample(
            (c, pick, kilograms) =>
            {
                var segment = pick % c.Model.Segments.Length;
                var point = c.State.Point(segment, c.Model.Segments[segment].MassCenter);
                var before = TestBody.Moments(c.State, c.Forces);
                var after = TestBody.Moments(
                    c.State, [.. c.Forces, new PointForce(segment, point, new Vec3(0, -kilograms * BodyModel.Gravity, 0))]);
                for (var k = 0; k < before.Length; k++)
                {
                    // It opposes the muscles when the motion they make lifts it.
                    var lift = c.State.PointVelocity(k, segment, point).Y;
                    if (Math.Sign(lift) == Math.Sign(before[k]))
                        Assert.True(Math.Abs(after[k]) >= Math.Abs(before[k]) - Tolerances.TwoRoutes);
                }
            },
            iter: 1000);

    [Fact]
    public void What_the_surroundings_must_supply_balances_weight_and_forces() => RandomBodies.Case.Sample(
        c =>
        {
            var (force, moment) = JointMoments.Required(c.State, c.Forces, new double[c.Model.Coordinates.Length]);
            var weight = c.Model.Segments.Sum(s => s.MassKg) * BodyModel.Gravity;
            var sum = new Vec3(0, -weight, 0);
            var turning = (c.State.MassCenter() - c.State.Origins[0]).Cross(sum);
            foreach (var f in c.Forces)
            {
                sum += f.Force;
                turning += (f.Point - c.State.Origins[0]).Cross(f.Force);
            }

            Assert.Equal(0, (force + sum).Length, Tolerances.TwoRoutes);
            Assert.Equal(0, (moment + turning).Length, Tolerances.TwoRoutes);
        },
        iter: 1000);

    [Fact]
    public void A_span_of_the_wrong_length_is_refused()
    {
        var state = new BodyState(TestBody.Man);
        Assert.Throws<ArgumentException>(() => JointMoments.Required(state, [], new double[3]));
        Assert.Throws<ArgumentException>(() => JointMoments.RequiredByVirtualWork(state, [], new double[3]));
    }

    [Fact]
    public void The_moments_of_a_pose_are_computed_without_allocating()
    {
        var state = new BodyState(TestBody.Man);
        var pose = new BodyPose(TestBody.Man);
        var moments = new double[TestBody.Man.Coordinates.Length];
        var forces = new[] { new PointForce(3, new Vec3(0.1, 0.2, 0.3), new Vec3(0, -50, 0)) };
        void Work()
        {
            for (var i = 0; i < 200; i++)
            {
                pose.Angles[i % pose.Angles.Length] += 0.01;
                state.Update(pose);
                JointMoments.Required(state, forces, moments);
                JointMoments.RequiredByVirtualWork(state, forces, moments);
            }
        }

        Work();
        var before = GC.GetAllocatedBytesForCurrentThread();
        Work();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static int OtherSide(BodyModel model, int segment) =>
        model.Segments[segment].Side is { } side ? model.IndexOf(model.Segments[segment].Kind, side.Other()) : segment;

    private static void AssertEqual(double[] expected, double[] actual, double tolerance)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var k = 0; k < expected.Length; k++)
            Assert.True(Math.Abs(expected[k] - actual[k]) <= tolerance, FormattableString.Invariant($"coordinate {k}: {expected[k]:R} and {actual[k]:R} differ by {expected[k] - actual[k]:G3}"));
    }
}
