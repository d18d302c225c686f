using MomentArm.Body.Tests.Movements;

namespace MomentArm.Body.Tests.Loading;

/// <summary>Load shares of whole movements.</summary>
public class LoadingTests
{
    [Fact]
    public void A_side_lying_leg_raise_asks_healthy_abductors_for_35_to_39_percent()
    {
        // Source: leg-weight moment of de Leva 1996 against the torque of Fredericson 2000; agrees with about 40 % activity of
        // gluteus medius without weight in a model study (Ashtiani et al. 2019, doi:10.5812/zjrms.68977, abstract).
        var share = Share(Load(0), JointAction.HipAbduction);
        Assert.InRange(share.Middle, 0.35, 0.39);
        Assert.Equal(CapacityBasis.PublishedOnly, share.Capacity.Basis);
        Assert.Equal(share.Demand / share.Capacity.Middle, share.Middle, Tolerances.Relative);
        Assert.Equal(share.Demand / share.Capacity.High, share.Low, Tolerances.Relative);
        Assert.Equal(share.Demand / share.Capacity.Low, share.High, Tolerances.Relative);
    }

    [Fact]
    public void A_cuff_at_the_ankle_adds_its_weight_times_its_distance_from_the_hip()
    {
        var (none, two) = (Share(Load(0), JointAction.HipAbduction), Share(Load(2), JointAction.HipAbduction));
        var state = new BodyState(TestBody.Man);
        var (segment, local) = TestBody.Content.Points.Points["ankle"].On(TestBody.Man, Side.Right);
        var hip = state.Origins[TestBody.Man.IndexOf(SegmentKind.Thigh, Side.Right)];
        var lever = (state.Point(segment, local) - hip).Length;
        Assert.Equal(2 * 9.81 * lever, two.Demand - none.Demand, 0.03 * 2 * 9.81 * lever);
    }

    [Fact]
    public void More_weight_that_opposes_never_lowers_a_load_share()
    {
        var before = 0.0;
        foreach (var kilograms in Enumerable.Range(0, 21).Select(i => i * 0.5))
        {
            var share = Share(Load(kilograms), JointAction.HipAbduction).Middle;
            Assert.True(share >= before);
            before = share;
        }

        Assert.True(before > 1, "a demand above capacity is shown, not clipped");
    }

    [Fact]
    public void Working_the_left_side_asks_the_left_what_working_the_right_asks_the_right()
    {
        var right = Load(1, Side.Right);
        var left = Load(1, Side.Left);
        Assert.Equal(right.Shares.Length, left.Shares.Length);
        foreach (var share in right.Shares)
            Assert.Equal(share.Demand, left.Of(share.Action, share.Side.Other())!.Demand, 1e-4);
    }

    [Fact]
    public void A_pose_that_cannot_stand_has_no_shares_but_a_reason()
    {
        var leaning = Frames.Standing(new SurfaceContact("heel", Limb.Working, SurfaceKind.Floor, 0, true)) with
        {
            Axial = new AxialAngles { TrunkFlexion = TestBody.Radians(60) },
        };
        var load = Load(Frames.Of(leaning));
        Assert.False(load.Computed);
        Assert.Empty(load.Shares);
        Assert.StartsWith("Falls forward: the mass center is ", Assert.Single(load.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void A_contact_that_misses_makes_the_numbers_doubtful_and_says_so()
    {
        // On a bar stool the feet of most people hang in the air.
        var frame = Frames.Seated(90) with
        {
            Contacts =
            [
                .. Frames.Both("sitBone", SurfaceKind.Seat, 0.75), .. Frames.Both("thighBack", SurfaceKind.Seat, 0.75),
                new SurfaceContact("foot", Limb.Other, SurfaceKind.Floor, 0, false),
            ],
        };
        var load = Load(Frames.Of(frame));
        Assert.True(load.Computed, string.Join(" ", load.Problems));
        Assert.Contains(load.Problems, p => p.Contains("cannot reach the floor", StringComparison.Ordinal) && p.EndsWith("doubtful.", StringComparison.Ordinal));
    }

    [Fact]
    public void Standing_still_asks_little_and_one_leg_asks_much_more_of_the_abductors()
    {
        var two = Load(Frames.Of(Frames.Standing([.. Frames.Both("foot", SurfaceKind.Floor, 0)])));
        Assert.All(two.Shares, share => Assert.True(share.Middle < 0.35, share.ToString()));
        var one = Frames.Standing(new SurfaceContact("foot", Limb.Working, SurfaceKind.Floor, 0, true)) with
        {
            Working = new LimbAngles { HipAbduction = TestBody.Radians(-6), SubtalarEversion = TestBody.Radians(8) },
        };
        var load = Load(Frames.Of(one));
        Assert.True(load.Computed, string.Join(" ", load.Problems));
        Assert.True(Share(load, JointAction.HipAbduction).Middle > 0.35);
    }

    [Fact]
    public void What_has_no_side_is_told_once_and_a_bend_or_turn_for_the_side_it_goes_to()
    {
        var load = Load(3);
        Assert.Contains(load.Shares, s => s.Action == JointAction.TrunkSideBend);
        foreach (var action in load.Shares.Where(s => !s.Action.HasSides()).GroupBy(s => s.Action))
            Assert.Single(action);
        foreach (var share in load.Shares)
            Assert.Equal(share, load.Of(share.Action, share.Side));
    }

    [Fact]
    public void Shares_come_largest_first()
    {
        var shares = Load(3).Shares;
        Assert.Equal(shares.OrderByDescending(s => s.Middle).Select(s => s.Action), shares.Select(s => s.Action));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(241)]
    [InlineData(double.NaN)]
    public void An_added_mass_that_cannot_be_is_refused(double kilograms) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Load(kilograms));

    private static LoadShare Share(MovementLoad load, JointAction action) => load.Of(action, Side.Right)!;

    private static MovementLoad Load(double cuffKg, Side working = Side.Right) => Load(
        Frames.Of(Frames.SideLyingRaise(0), Frames.SideLyingRaise(30)) with
        {
            Loads = [new AddedLoad(LoadKind.Weight, "ankle", Limb.Working, 0)],
        },
        working, cuffKg);

    private static MovementLoad Load(Movement movement, Side working = Side.Right, double addedKg = 0) =>
        MomentArm.Body.Loading.Of(TestBody.Content.PersonOf(new Physique(Sex.Male, 30, 1.741, 73.0)), movement, working, addedKg);
}
