using System.Collections.Immutable;
using MomentArm.Body.Tests.Muscles;
using static MomentArm.Body.Tests.Reaches.LengthTests;

namespace MomentArm.Body.Tests.Reaches;

public class ReachingTests
{
    private static readonly MuscleSet Set = MusclesOf.Man;

    [Fact]
    public void A_leg_raise_to_the_tested_angle_peaks_at_its_end_with_100_percent()
    {
        var reach = Of(Raise(70), Side.Right, LegRaise(70), LegRaise(70, Side.Left));
        Assert.Equal(Body.Loading.PosesPerMovement, reach.Fractions.Length);
        var hamstrings = reach.Of(MuscleGroup.Hamstrings, Side.Right);
        Assert.Equal(1, hamstrings.Peak.Middle, Tolerances.Relative);
        Assert.Equal(reach.Fractions.Length - 1, hamstrings.PeakAt);
        Assert.Null(hamstrings.Verdict);
        Assert.True(hamstrings.Lengthens);
        for (var i = 1; i < hamstrings.Curve.Length; i++)
            Assert.True(hamstrings.Curve[i].Middle > hamstrings.Curve[i - 1].Middle);
        Assert.Equal(MuscleGroup.Hamstrings, reach.Lengthened.First().Group);
        Assert.False(reach.Of(MuscleGroup.HipFlexors, Side.Right).Lengthens);
        Assert.False(reach.Of(MuscleGroup.Hamstrings, Side.Left).Lengthens);
    }

    [Fact]
    public void The_change_of_length_is_in_metres_and_that_of_the_path()
    {
        var reach = Of(Raise(70), Side.Right);
        var one = reach.Muscles.Single(m => m.Id == "semimembranosus" && m.Side == Side.Right);
        Assert.Equal(MusclesOf.One("semimembranosus", [70, 0, 0, 0], PathUse.Trusted, Set).ChangeMm, one.ChangeM * 1000, 1e-9);
        Assert.InRange(one.ChangeM, 0.05, 0.09);
    }

    [Fact]
    public void A_raise_beyond_the_tested_angle_is_shown_over_100_percent_and_said()
    {
        var within = Of(Raise(71), Side.Right, LegRaise(70)).Of(MuscleGroup.Hamstrings, Side.Right);
        Assert.True(within.Peak.Middle > 1 && within.Peak.Low <= 1);
        Assert.Contains("error of the test", within.Verdict, StringComparison.Ordinal);
        var beyond = Of(Raise(85), Side.Right, LegRaise(70)).Of(MuscleGroup.Hamstrings, Side.Right);
        Assert.True(beyond.Peak.Low > 1);
        Assert.Equal("Cannot be held: reduce the angle.", beyond.Verdict);
        var pain = Of(Raise(85), Side.Right, LegRaise(70) with { Basis = LimitBasis.TestedPainLimited }).Of(MuscleGroup.Hamstrings, Side.Right);
        Assert.Contains("pain", pain.Verdict, StringComparison.Ordinal);
        var norm = Of(Raise(85), Side.Right, LegRaise(70) with { Basis = LimitBasis.Norm }).Of(MuscleGroup.Hamstrings, Side.Right);
        Assert.Contains("usual length", norm.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public void The_left_is_the_right_in_a_mirror()
    {
        var right = Of(Raise(80), Side.Right, LegRaise(70));
        var left = Of(Raise(80), Side.Left, LegRaise(70, Side.Left));
        foreach (var group in right.Groups)
        {
            var mirrored = left.Of(group.Group, group.Side.Other());
            Assert.Equal((group.PeakAt, group.Leading, group.Basis), (mirrored.PeakAt, mirrored.Leading, mirrored.Basis));
            for (var i = 0; i < group.Curve.Length; i++)
            {
                Assert.Equal(group.Curve[i].Middle, mirrored.Curve[i].Middle, 1e-9);
                Assert.Equal(group.Curve[i].Low, mirrored.Curve[i].Low, 1e-9);
                Assert.Equal(group.ChangeM[i], mirrored.ChangeM[i], Tolerances.Position * 100);
            }
        }
    }

    [Fact]
    public void Poses_settled_before_give_the_same_and_a_hold_has_one_pose()
    {
        var limits = LengthLimits.For(Set, [LegRaise(70)]);
        var settled = SettledMovement.Of(Set.Model, TestBody.Content.Points, Raise(60), Side.Right);
        var (a, b) = (Reaching.Of(settled, limits), Reaching.Of(TestBody.Content.Points, Raise(60), Side.Right, limits));
        Assert.Equal(a.Groups.Select(g => (g.Group, g.Side, g.Peak)), b.Groups.Select(g => (g.Group, g.Side, g.Peak)));
        var hold = Raise(60) with { Frames = [Raise(60).Frames[1]] };
        Assert.Equal([0.0], Reaching.Of(TestBody.Content.Points, hold, Side.Right, limits).Fractions);
        Assert.Throws<ArgumentException>(() => Reaching.Of(settled with { Frames = [], Fractions = [] }, limits));
        Assert.Throws<ArgumentException>(() => Reaching.Of(settled, LengthLimits.For(MusclesOf.Built(TestBody.Woman), [])));
    }

    [Fact]
    public void A_pose_that_touches_nothing_settles_as_it_is()
    {
        // A leg below the pelvis without any contact: nothing to settle on, though its heel lies under the floor.
        var settled = Body.Settling.Settle(Set.Model, TestBody.Content.Points, Frame(new LimbAngles { HipFlexion = -20 * Degree }), Side.Right);
        Assert.Empty(settled.Contacts);
        Assert.Empty(settled.Changes);
        Assert.Equal(-20 * Degree, settled.Pose.Angles[Set.Model.IndexOf(Motion.HipFlexion, Side.Right)], Tolerances.Relative);
    }

    [Fact]
    public void Ranking_puts_the_farther_raise_first_for_the_group_and_for_the_muscle()
    {
        (string, MovementReach)[] movements = [.. new[] { 40, 80, 60 }.Select(a => ($"raise-{a}", Of(Raise(a), Side.Right, LegRaise(70))))];
        string[] expected = ["raise-80", "raise-60", "raise-40"];
        var ranked = ReachRanking.Of(movements, MuscleGroup.Hamstrings, Side.Right);
        Assert.Equal(expected, ranked.Select(r => r.Id));
        Assert.Equal("Cannot be held: reduce the angle.", ranked[0].Verdict);
        Assert.Equal(expected, ReachRanking.Of(movements, "biceps-femoris-long", Side.Right).Select(r => r.Id));
        Assert.Throws<ArgumentException>(() => ReachRanking.Of(movements, "tibialis-anterior", Side.Right));
        Assert.Throws<ArgumentException>(() => ReachRanking.Of(movements, "nothing", Side.Right));
    }

    [Fact]
    public void Published_orders_of_stretches_hold_as_orders_of_reach()
    {
        // Umehara et al. 2015, Clin Biomech 30:1056: tensor fasciae latae longer with the knee at 90 than at 0, adducted and extended.
        // Calf by common teaching: the gastrocnemius wants a straight knee.
        var limits = LengthLimits.For(Set, [Ober(20)]);
        double Reach(string id, LimbAngles pose) => limits.Reach(Set.IndexOf(id, Side.Right), Posed(Set, pose)).Middle;
        var adducted = new LimbAngles { HipAbduction = -20 * Degree, HipFlexion = -15 * Degree };
        Assert.True(Reach("tensor-fasciae-latae", adducted with { KneeFlexion = 90 * Degree }) > Reach("tensor-fasciae-latae", adducted));
        var up = new LimbAngles { AnkleDorsiflexion = 15 * Degree };
        Assert.True(Reach("gastrocnemius-medial", up) > Reach("gastrocnemius-medial", up with { KneeFlexion = 45 * Degree }));
    }

    private static MovementReach Of(Movement movement, Side working, params LengthTest[] tests) =>
        Reaching.Of(TestBody.Content.Points, movement, working, LengthLimits.For(Set, tests));

    /// <summary>A straight leg raised on the back; no contact, so nothing gives way.</summary>
    private static Movement Raise(double degrees) => new()
    {
        Frames = [Frame(LimbAngles.Neutral), Frame(new LimbAngles { HipFlexion = degrees * Degree })],
        Props = [],
        Loads = [],
        View = ViewKind.Side,
    };
}
