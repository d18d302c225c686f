namespace MomentArm.Body.Tests.OutsideEngine;

/// <summary>
/// The whole body against a general physics engine (package and version stand in the fixtures; Apache-2.0): two people, sixteen
/// poses, both sides. When figures of content/body change on purpose, run tools/outside-engine again and read the difference.
/// </summary>
public class OutsideEngineTests(ITestOutputHelper output)
{
    /// <summary>Person and pose.</summary>
    public static TheoryData<string, string> All
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (var (person, fixture) in new[] { ("woman", EngineFixture.Woman), ("man", EngineFixture.Man) })
            {
                foreach (var pose in fixture.Poses)
                    all.Add(person, pose.Name);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_segment_lies_where_the_engine_puts_it(string person, string pose)
    {
        var c = EngineCase.Of(person, pose);
        var worst = new Worst(output, "segments, m and axes");
        var back = c.Pose.PelvisRotation.Transposed;
        foreach (var (theirs, ours) in c.Segments)
        {
            worst.See(c.Expected.OriginsM[theirs], c.State.Origins[ours]);
            worst.See(c.Expected.OriginsInPelvisM[theirs], back * (c.State.Origins[ours] - c.State.Origins[0]));
            var m = c.State.Rotations[ours];
            worst.See(c.Expected.Rotations[theirs], [m.M11, m.M12, m.M13, m.M21, m.M22, m.M23, m.M31, m.M32, m.M33]);
        }

        worst.Within(Tolerances.OutsideEngine);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Gravity_asks_every_joint_for_the_engines_torque(string person, string pose)
    {
        var c = EngineCase.Of(person, pose);
        Compare(c, [], c.Expected.MomentsNm, c.Expected.RootForceN, c.Expected.RootMomentNm);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Pushes_on_the_body_ask_every_joint_for_the_engines_torque(string person, string pose)
    {
        var c = EngineCase.Of(person, pose);
        var pushes = c.Pushes;
        Assert.NotEmpty(pushes);
        for (var i = 0; i < pushes.Length; i++)
            new Worst(output, "pushed point, m").See(c.Expected.Pushes[i].PointM, pushes[i].Point).Within(Tolerances.OutsideEngine);
        Compare(c, pushes, c.Expected.PushedMomentsNm, c.Expected.PushedRootForceN, c.Expected.PushedRootMomentNm);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_line_has_the_engines_length_and_arms(string person, string pose)
    {
        var c = EngineCase.Of(person, pose);
        var muscles = new MuscleState(c.Muscles, PathUse.AsPublished);
        muscles.Update(c.State, c.Pose);
        CompareLines(c, muscles, _ => true);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Lines_within_their_trusted_ranges_have_the_engines_length_and_arms(string person, string pose)
    {
        var c = EngineCase.Of(person, pose);
        var muscles = new MuscleState(c.Muscles);
        muscles.Update(c.State, c.Pose);
        CompareLines(c, muscles, line => !muscles.Extrapolated[line] && !c.Muscles.HasObstacle(line));
    }

    [Theory]
    [InlineData("woman")]
    [InlineData("man")]
    public void The_engine_posed_the_whole_body_and_every_line(string person)
    {
        var fixture = person == "woman" ? EngineFixture.Woman : EngineFixture.Man;
        var c = EngineCase.Of(person, "standing");
        Assert.True(fixture.Poses.Length >= 12);
        Assert.Equal(Enumerable.Range(0, c.Model.Segments.Length), c.Segments.Select(s => s.Ours).Order());
        Assert.Equal(Enumerable.Range(0, c.Model.Coordinates.Length), c.Coordinates.Select(k => k.Ours).Order());
        Assert.Equal(Enumerable.Range(0, c.Muscles.Muscles.Length), c.Lines.Select(l => l.Ours).Order());
        Assert.All(EngineCase.Of(person, "twisted, every joint turned").Pose.Angles, angle => Assert.NotEqual(0, angle));
        Assert.All([fixture.Engine, fixture.Package, fixture.Script], version => Assert.Matches(@"\d+\.\d+\.\d+$", version));
    }

    [Fact]
    public void The_comparison_sees_a_knee_without_its_slide_and_a_leg_half_a_gram_heavier()
    {
        var c = EngineCase.Of("man", "squat");
        var hinged = new BodyModel(
            [.. c.Model.Segments.Select(s => s.SlideX is null
                ? s
                : s with { SlideX = null, SlideY = null, Offset = s.Offset + s.SlideScale * new Vec3(s.SlideX.At(0).Value, s.SlideY!.At(0).Value, 0) })],
            c.Model.Coordinates, c.Model.MassKg, c.Model.StatureM, []);
        var heavier = new BodyModel(
            [.. c.Model.Segments.Select(s => s.Kind == SegmentKind.Shank ? s with { MassKg = s.MassKg + 0.0005 } : s)],
            c.Model.Coordinates, c.Model.MassKg, c.Model.StatureM, []);
        foreach (var model in new[] { hinged, heavier })
        {
            var moments = TestBody.Moments(TestBody.Posed(model, c.Pose));
            var difference = c.Coordinates.Max(k => Math.Abs(moments[k.Ours] - c.Expected.MomentsNm[k.Theirs]));
            Assert.True(difference > 100 * Tolerances.OutsideEngine * c.Model.MassKg * BodyModel.Gravity);
        }
    }

    /// <summary>Torques relative to body weight times one meter, forces relative to body weight; both routes of ours.</summary>
    private void Compare(EngineCase c, PointForce[] pushes, double[] moments, double[] force, double[] moment)
    {
        var weight = c.Model.MassKg * BodyModel.Gravity;
        var swept = new double[moments.Length];
        var worked = new double[moments.Length];
        var root = JointMoments.Required(c.State, pushes, swept);
        JointMoments.RequiredByVirtualWork(c.State, pushes, worked);
        var worst = new Worst(output, "torques, weight x m");
        foreach (var (theirs, ours) in c.Coordinates)
        {
            worst.See(moments[theirs] / weight, swept[ours] / weight);
            worst.See(moments[theirs] / weight, worked[ours] / weight);
        }

        worst.See([.. force.Select(f => f / weight)], (1 / weight) * root.Force);
        worst.See([.. moment.Select(f => f / weight)], (1 / weight) * root.Moment);
        worst.Within(Tolerances.OutsideEngine);
    }

    private void CompareLines(EngineCase c, MuscleState muscles, Func<int, bool> compared)
    {
        var lengths = new Worst(output, "lengths, m");
        var arms = new Worst(output, "arms, m");
        var kneeArms = new Worst(output, "knee arms by differencing, m");
        foreach (var (theirs, ours) in c.Lines.Where(l => compared(l.Ours)))
        {
            lengths.See(c.Expected.LengthsM[theirs], muscles.Lengths[ours]);
            var engine = c.ArmsOf(theirs).ToArray();
            Assert.Equal(engine.Select(a => a.Coordinate).Order(), muscles.ArmCoordinatesOf(ours).ToArray().Order());
            foreach (var (coordinate, arm) in engine)
            {
                var worst = c.Model.Coordinates[coordinate].Motion == Motion.KneeExtension ? kneeArms : arms;
                worst.See(arm, muscles.Arm(ours, coordinate));
            }
        }

        Assert.True(lengths.Seen > 10 && arms.Seen > 10);
        lengths.Within(Tolerances.OutsideEngine);
        arms.Within(Tolerances.OutsideEngine);
        kneeArms.Within(Tolerances.OutsideEngineKnee);
    }

    /// <summary>The largest difference seen, told with the test.</summary>
    private sealed class Worst(ITestOutputHelper output, string what)
    {
        private double largest;

        internal int Seen { get; private set; }

        internal Worst See(double expected, double actual)
        {
            Seen++;

            // Math.Max keeps what is not a number, and that is within no tolerance.
            largest = Math.Max(largest, Math.Abs(expected - actual));
            return this;
        }

        internal Worst See(double[] expected, Vec3 actual) => See(expected, [actual.X, actual.Y, actual.Z]);

        internal Worst See(double[] expected, double[] actual)
        {
            Assert.Equal(expected.Length, actual.Length);
            for (var i = 0; i < expected.Length; i++)
                See(expected[i], actual[i]);
            return this;
        }

        internal void Within(double tolerance)
        {
            output.WriteLine(FormattableString.Invariant($"{what}: {Seen} numbers, largest difference {largest:G3}"));
            Assert.True(largest <= tolerance, FormattableString.Invariant(
                $"{what}: largest difference {largest:G3} over {tolerance:G3}. Figures of content/body changed? Run tools/outside-engine."));
        }
    }
}
