using CsCheck;
using MomentArm.Body.Tests.Muscles;
using static MomentArm.Body.Tests.Reaches.LengthTests;

namespace MomentArm.Body.Tests.Reaches;

public class LengthLimitsTests
{
    private static readonly MuscleSet Set = MusclesOf.Man;

    public static TheoryData<string> Shipped { get; } = ["raise", "extension", "ober", "shortOber"];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void In_the_test_pose_itself_every_muscle_of_the_group_has_a_reach_of_100_percent(string which)
    {
        var (test, pose) = Case(which);
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            var limits = LengthLimits.For(Set, [test with { Side = side }]);
            var muscles = Posed(Set, pose, side);
            foreach (var line in limits.MembersOf(test.Group, side))
            {
                Assert.Equal(1, limits.Reach(line, muscles).Middle, Tolerances.Relative);
                Assert.Equal((test.Name, LimitBasis.Tested), (limits.Of(line)!.Value.Test, limits.Of(line)!.Value.Basis));
            }

            var group = limits.Reach(test.Group, side, muscles);
            Assert.Equal(1, group.Middle, Tolerances.Relative);
            Assert.True(group.Low < 1 && group.High > 1);
        }
    }

    [Fact]
    public void Reach_is_0_at_the_neutral_length_and_its_figures_are_those_of_hand_work()
    {
        // Limit 0.30 m, neutral 0.20 m: 0.25 m is half of the way; a limit of 0.28 m gives 5/8, one of 0.32 m gives 5/12.
        var limit = new LengthLimit(0.28, 0.30, 0.32, 0.20, 0.02, LimitBasis.Tested, "test", false);
        Assert.Equal(0, limit.Of(0.20).Middle, Tolerances.Relative);
        var half = limit.Of(0.25);
        Assert.Equal(0.5, half.Middle, Tolerances.Relative);
        Assert.Equal(0.625, half.High, Tolerances.Relative);
        Assert.Equal(5.0 / 12, half.Low, Tolerances.Relative);

        // A shortened muscle is under 0, and the ends of its interval trade places.
        var slack = limit.Of(0.15);
        Assert.Equal(-0.5, slack.Middle, Tolerances.Relative);
        Assert.Equal(-0.625, slack.Low, Tolerances.Relative);
        Assert.Equal(-5.0 / 12, slack.High, Tolerances.Relative);

        // A limit at the neutral length itself: the least span keeps the number finite, and 100 % stays where it was measured.
        var none = new LengthLimit(0.20, 0.20, 0.20, 0.20, 0.02, LimitBasis.Tested, "test", false);
        Assert.Equal(1, none.Of(0.20).Middle, Tolerances.Relative);
        Assert.Equal(1.5, none.Of(0.21).Middle, 1e-9);
    }

    [Fact]
    public void Standing_has_0_percent_and_over_100_where_the_test_ended_before_it()
    {
        var standing = new MuscleState(Set);
        var limits = LengthLimits.For(Set, [LegRaise(70), Ober(-10, semDeg: 2)]);
        Assert.Equal(0, limits.Reach(MuscleGroup.Hamstrings, Side.Right, standing).Middle, 1e-9);
        Assert.True(limits.Reach(MuscleGroup.LateralHip, Side.Right, standing).Low > 1);
        Assert.Equal(0, limits.Reach(MuscleGroup.HipFlexors, Side.Right, standing).Middle, 1e-9);
    }

    [Fact]
    public void A_leg_raise_of_70_degrees_limits_the_semimembranosus_to_the_length_of_its_published_line()
    {
        // Independent route: the length of the path with the hip flexed 70 and the knee straight, from MuscleState alone.
        var expected = MusclesOf.One("semimembranosus", [70, 0, 0, 0], PathUse.Trusted, Set).LengthMm;
        var limits = LengthLimits.For(Set, [LegRaise(70)]);
        Assert.Equal(expected, limits.Of(Set.IndexOf("semimembranosus", Side.Right))!.Value.MiddleM * 1000, 1e-9);

        // 2.6 degrees x 1.2816 with an arm of 50-60 mm are about 3 mm either way.
        var limit = limits.Of(Set.IndexOf("semimembranosus", Side.Right))!.Value;
        Assert.InRange((limit.HighM - limit.LowM) * 1000 / 2, 2.2, 4);
    }

    [Fact]
    public void A_tighter_person_has_more_reach_in_the_same_pose_and_reach_rises_with_the_angle()
    {
        double Reach(double test, double hip) => LengthLimits.For(Set, [LegRaise(test)])
            .Reach(MuscleGroup.Hamstrings, Side.Right, Posed(Set, new LimbAngles { HipFlexion = hip * Degree })).Middle;
        for (var hip = 5; hip < 90; hip += 5)
        {
            Assert.True(Reach(70, hip + 5) > Reach(70, hip));
            Assert.True(Reach(50, hip) > Reach(60, hip));
        }

        Assert.True(Reach(50, 60) > 1);
        Assert.True(Reach(70, 60) < 1);
    }

    [Fact]
    public void The_interval_holds_the_middle_and_widens_with_the_error_of_the_test()
    {
        Gen.Select(Gen.Double[20, 110], Gen.Double[0, 10], Gen.Double[-20, 120], Gen.Double[0, 120]).Sample(
            (reading, sem, hip, knee) =>
            {
                var muscles = Posed(Set, new LimbAngles { HipFlexion = hip * Degree, KneeFlexion = knee * Degree });
                var reach = LengthLimits.For(Set, [LegRaise(reading, semDeg: sem)]).Reach(MuscleGroup.Hamstrings, Side.Right, muscles);
                var wider = LengthLimits.For(Set, [LegRaise(reading, semDeg: sem + 2)]).Reach(MuscleGroup.Hamstrings, Side.Right, muscles);
                Assert.True(double.IsFinite(reach.Low) && double.IsFinite(reach.High));
                Assert.True(reach.Low <= reach.Middle && reach.Middle <= reach.High);
                Assert.True(wider.High - wider.Low >= reach.High - reach.Low);

                // Near the neutral length the limit hardly matters; away from it a worse test shows.
                if (Math.Abs(reach.Middle) > 0.1)
                    Assert.True(wider.High - wider.Low > reach.High - reach.Low);
            },
            iter: 100);
    }

    [Fact]
    public void A_test_of_one_side_never_limits_the_other_unless_it_is_marked_for_both()
    {
        var one = LengthLimits.For(Set, [LegRaise(40, Side.Left)]);
        Assert.Equal(LimitBasis.Tested, one.BasisOf(MuscleGroup.Hamstrings, Side.Left));
        Assert.Equal(LimitBasis.UsualRange, one.BasisOf(MuscleGroup.Hamstrings, Side.Right));
        Assert.Empty(one.TestsOf(MuscleGroup.Hamstrings, Side.Right));

        var marked = LengthLimits.For(Set, [LegRaise(40, Side.Left) with { ForBothSides = true }]);
        Assert.Equal(LimitBasis.OtherSide, marked.BasisOf(MuscleGroup.Hamstrings, Side.Right));
        var (left, right) = (Set.IndexOf("semimembranosus", Side.Left), Set.IndexOf("semimembranosus", Side.Right));
        Assert.Equal(marked.Of(left)!.Value.MiddleM, marked.Of(right)!.Value.MiddleM, Tolerances.Position);
        Assert.True(marked.Of(right)!.Value.HighM - marked.Of(right)!.Value.LowM > marked.Of(left)!.Value.HighM - marked.Of(left)!.Value.LowM);

        var both = LengthLimits.For(Set, [LegRaise(40, Side.Left) with { ForBothSides = true }, LegRaise(60)]);
        Assert.Equal(LimitBasis.Tested, both.BasisOf(MuscleGroup.Hamstrings, Side.Right));
    }

    [Fact]
    public void A_test_beats_a_norm_and_among_tests_the_longest_counts_in_any_order()
    {
        var norm = LegRaise(90) with { Basis = LimitBasis.Norm };
        foreach (var tests in new[] { new[] { norm, LegRaise(50), KneeExtension(20) }, [KneeExtension(20), LegRaise(50), norm] })
        {
            var limits = LengthLimits.For(Set, tests);
            Assert.Equal(["Active knee extension"], limits.TestsOf(MuscleGroup.Hamstrings, Side.Right));
        }

        Assert.Equal(LimitBasis.Norm, LengthLimits.For(Set, [norm]).BasisOf(MuscleGroup.Hamstrings, Side.Right));
    }

    [Fact]
    public void Without_a_test_the_usual_end_of_range_is_the_limit_with_a_wider_interval()
    {
        var untested = LengthLimits.For(Set, []);
        var tested = LengthLimits.For(Set, [LegRaise(88)]);
        var line = Set.IndexOf("semimembranosus", Side.Right);
        var (usual, own) = (untested.Of(line)!.Value, tested.Of(line)!.Value);
        Assert.Equal((LimitBasis.UsualRange, (string?)null), (usual.Basis, usual.Test));
        Assert.True(usual.HighM - usual.LowM > 1.5 * (own.HighM - own.LowM));

        // Every usual pose stays at or under 100 %: soleus at 20 degrees of dorsiflexion, vasti at 140 of knee bend.
        Assert.InRange(untested.Reach(MuscleGroup.Soleus, Side.Right, Posed(Set, new LimbAngles { AnkleDorsiflexion = 20 * Degree })).Middle, 0.85, 1 + 1e-9);
        Assert.Equal(1, untested.Reach(MuscleGroup.Vasti, Side.Right, Posed(Set, new LimbAngles { KneeFlexion = 140 * Degree })).Middle, 1e-9);
    }

    [Fact]
    public void The_reach_of_a_group_is_its_mean_lengthening_over_that_at_the_limit()
    {
        // By the lengths of the three lines and their published forces (1288, 410 and 896 N), without LengthLimits.
        (string Id, double Force)[] lines = [("semimembranosus", 1288), ("semitendinosus", 410), ("biceps-femoris-long", 896)];
        double Mean(double hip, double knee) => lines.Sum(l => l.Force * MusclesOf.One(l.Id, [hip, 0, 0, -knee], PathUse.Trusted, Set).ChangeMm);
        var reach = LengthLimits.For(Set, [LegRaise(75)])
            .Reach(MuscleGroup.Hamstrings, Side.Right, Posed(Set, new LimbAngles { HipFlexion = 60 * Degree, KneeFlexion = 25 * Degree }));
        Assert.Equal(Mean(60, 25) / Mean(75, 0), reach.Middle, 1e-9);
    }

    [Fact]
    public void Weights_of_a_group_follow_the_published_forces_and_leave_the_band_out()
    {
        var limits = LengthLimits.For(Set, []);
        foreach (var group in Enum.GetValues<MuscleGroup>())
        {
            var sum = 0.0;
            foreach (var line in limits.MembersOf(group, Side.Left))
            {
                sum += limits.WeightOf(line);
                Assert.Equal((group, Side.Left, false), (Set.Muscles[line].LengthGroup, Set.Muscles[line].Side, Set.Muscles[line].IsBand));
            }

            Assert.Equal(1, sum, Tolerances.Relative);
        }

        // Delp 1990, public edition: 1288 N of 1288 + 410 + 896.
        Assert.Equal(1288.0 / 2594, limits.WeightOf(Set.IndexOf("semimembranosus", Side.Right)), 1e-9);
        var band = Set.IndexOf("iliotibial-band-tensor", Side.Right);
        Assert.Null(limits.Of(band));
        Assert.Throws<ArgumentException>(() => limits.Reach(band, new MuscleState(Set)));
    }

    [Theory]
    [InlineData(double.NaN, 2)]
    [InlineData(double.PositiveInfinity, 2)]
    [InlineData(136, 2)]
    [InlineData(-1, 2)]
    [InlineData(70, double.NaN)]
    [InlineData(70, -1)]
    [InlineData(70, 46)]
    public void A_reading_or_an_error_that_cannot_be_is_refused_with_limits_and_unit(double degrees, double sem)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => LengthLimits.For(Set, [LegRaise(degrees, semDeg: sem)]));
        Assert.Contains("degrees", error.Message, StringComparison.Ordinal);
        Assert.Contains("Straight-leg raise", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_at_the_very_ends_of_what_can_be_true_are_taken()
    {
        foreach (var degrees in new[] { 0.0, 135 })
            Assert.Equal(LimitBasis.Tested, LengthLimits.For(Set, [LegRaise(degrees)]).BasisOf(MuscleGroup.Hamstrings, Side.Right));
    }

    [Fact]
    public void A_test_of_the_wrong_group_or_basis_is_refused_in_words()
    {
        var wrong = Assert.Throws<ArgumentException>(() => LengthLimits.For(Set, [LegRaise(70) with { Group = MuscleGroup.Soleus }]));
        Assert.Contains("does not cross", wrong.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => LengthLimits.For(Set, [LegRaise(70) with { Basis = LimitBasis.UsualRange }]));
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthLimits.For(Set, [LegRaise(70) with { Group = (MuscleGroup)99 }]));
    }

    [Fact]
    public void Reach_of_all_groups_allocates_nothing()
    {
        var limits = LengthLimits.For(Set, [LegRaise(70), Ober(20)]);
        var muscles = Posed(Set, new LimbAngles { HipFlexion = 0.5 });
        var groups = Enum.GetValues<MuscleGroup>();
        var sum = All();
        for (var i = 0; i < 100; i++)
            sum += All();
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 200; i++)
            sum += All();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(double.IsFinite(sum));

        double All()
        {
            var total = 0.0;
            foreach (var group in groups)
                total += limits.Reach(group, Side.Right, muscles).Middle + limits.ChangeM(group, Side.Left, muscles);
            return total;
        }
    }

    [Fact]
    public void Any_body_any_readings_any_pose_give_finite_ordered_numbers() => RandomBodies.Case
        .Select(Gen.Select(Gen.Double[0, 135], Gen.Double[-15, 90], Gen.Double[-45, 70], Gen.Double[0, 12]))
        .Sample(
            drawn =>
            {
                var (posed, (raise, extension, ober, sem)) = drawn;
                var set = MusclesOf.Built(posed.Model);
                var limits = LengthLimits.For(set, [LegRaise(raise, Side.Left, sem), KneeExtension(extension, semDeg: sem), Ober(ober, semDeg: sem)]);
                var muscles = MusclesOf.State(set, posed.Pose, PathUse.Trusted);
                foreach (var group in Enum.GetValues<MuscleGroup>())
                {
                    foreach (var side in new[] { Side.Left, Side.Right })
                    {
                        var reach = limits.Reach(group, side, muscles);
                        Assert.True(double.IsFinite(reach.Low) && double.IsFinite(reach.High) && reach.Low <= reach.Middle && reach.Middle <= reach.High);
                    }
                }
            },
            iter: 60);

    [Fact]
    public void Any_pose_of_one_person_gives_finite_ordered_numbers_for_lines_and_groups()
    {
        var limits = LengthLimits.For(Set, [LegRaise(0), KneeExtension(90, Side.Left), Ober(-45), Ober(70, Side.Left)]);
        RandomBodies.Pose(Set.Model).Sample(
            pose =>
            {
                var muscles = MusclesOf.State(Set, pose, PathUse.Trusted);
                for (var line = 0; line < Set.Muscles.Length; line++)
                    Assert.True(limits.Of(line) is not { } limit || Ordered(limit.Of(muscles.Lengths[line])));
                foreach (var group in Enum.GetValues<MuscleGroup>())
                    Assert.True(Ordered(limits.Reach(group, Side.Right, muscles)) && Ordered(limits.Reach(group, Side.Left, muscles)));
            },
            iter: 5000);

        static bool Ordered(Reach reach) =>
            double.IsFinite(reach.Low) && double.IsFinite(reach.High) && reach.Low <= reach.Middle && reach.Middle <= reach.High;
    }

    private static (LengthTest Test, LimbAngles Pose) Case(string which) => which switch
    {
        "raise" => (LegRaise(72), new LimbAngles { HipFlexion = 72 * Degree }),
        "extension" => (KneeExtension(35), new LimbAngles { HipFlexion = 90 * Degree, KneeFlexion = 35 * Degree }),
        "ober" => (Ober(18), new LimbAngles { HipAbduction = -18 * Degree }),

        // A test that ends before the neutral length: the thigh stays above horizontal.
        _ => (Ober(-10), new LimbAngles { HipAbduction = 10 * Degree }),
    };
}
