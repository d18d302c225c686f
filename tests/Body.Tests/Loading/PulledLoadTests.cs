using MomentArm.Body.Tests.Movements;

namespace MomentArm.Body.Tests.Loading;

/// <summary>Load shares of movements on which bands, ropes and helping hands pull.</summary>
public class PulledLoadTests
{
    private static readonly PatientCapacity Capacity = new(TestBody.Content.Capacities, new Physique(Sex.Male, 30, 1.741, 73.0), TestBody.Man, []);

    private static readonly BodyPlace Ankle = new("ankle", Limb.Working);

    [Fact]
    public void A_band_between_the_ankles_asks_the_abductors_for_its_pull_times_its_arm_more()
    {
        var held = Frames.Of(Frames.SideLyingRaise(30));
        var more = Demand(held with { Pulls = [Band(40)] }) - Demand(held);

        // By hand: the line between the ankles passes the lifted hip at |hip x line|; 0.87 m from hip to ankle would be the most.
        var state = TestBody.Posed(TestBody.Man, Settling.Settle(TestBody.Man, TestBody.Content.Points, held.Frames[0], Side.Right).Pose);
        Vec3 At(Limb limb)
        {
            var (segment, local) = new BodyPlace("ankle", limb).On(TestBody.Man, TestBody.Content.Points, Side.Right);
            return state.Point(segment, local);
        }

        var line = At(Limb.Other) - At(Limb.Working);
        var pull = ElasticBand.FromF100(40, 0.4).At(line.Length).ForceN;
        var lever = (At(Limb.Working) - state.Origins[TestBody.Man.IndexOf(SegmentKind.Thigh, Side.Right)]).Cross(line.Normalized()).Length;
        Assert.Equal(pull * lever, more, 0.02 * pull * lever);
    }

    [Fact]
    public void A_stronger_band_never_asks_less()
    {
        var before = 0.0;
        foreach (var f100 in new[] { 5, 10, 20, 40, 80 })
        {
            var demand = Demand(Raise(Band(f100)));
            Assert.True(demand > before);
            before = demand;
        }
    }

    [Fact]
    public void Helping_hands_take_load_off_by_their_force_times_their_lever()
    {
        var held = Frames.Of(Frames.SideLyingRaise(0));
        var helped = held with { Pulls = [new HelpPull(Ankle, 20, BodyDirection.Up)] };
        var state = TestBody.Posed(TestBody.Man, Settling.Settle(TestBody.Man, TestBody.Content.Points, held.Frames[0], Side.Right).Pose);
        var (segment, local) = Ankle.On(TestBody.Man, TestBody.Content.Points, Side.Right);
        var away = state.Point(segment, local) - state.Origins[TestBody.Man.IndexOf(SegmentKind.Thigh, Side.Right)];
        var lever = new Vec3(away.X, 0, away.Z).Length;
        Assert.Equal(20 * lever, Demand(held) - Demand(helped), 0.03 * 20 * lever);
    }

    [Fact]
    public void Pulls_on_the_left_ask_the_left_what_pulls_on_the_right_ask_the_right()
    {
        Pull[] pulls = [Band(40), new HelpPull(Ankle, 20, BodyDirection.Up), new AnchorPull(Ankle, new RoomAnchor(BodyDirection.Up, 0, 1.5), Dose(15, 0.8))];
        var right = Load(Raise(pulls));
        var left = Load(Raise(pulls), Side.Left);
        Assert.True(right.Computed, string.Join(" ", right.Problems));
        Assert.Equal(right.Shares.Length, left.Shares.Length);
        foreach (var share in right.Shares)
            Assert.Equal(share.Demand, left.Of(share.Action, share.Side.Other())!.Demand, 1e-4);
    }

    [Fact]
    public void A_band_that_would_tear_on_the_way_leaves_no_numbers_but_a_reason()
    {
        var load = Load(Raise(new LinkPull(Ankle, Ankle with { Limb = Limb.Other }, Dose(20, 0.15))));
        Assert.False(load.Computed);
        Assert.Empty(load.Shares);
        Assert.Contains("more than 200 %", load.Problems[0], StringComparison.Ordinal);
        Assert.Contains("beyond 250 %", load.Problems[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_rope_stronger_than_the_weight_of_the_body_is_refused()
    {
        var load = Load(Frames.Of(Frames.SideLyingRaise(10)) with { Pulls = [new HelpPull(Ankle, 900, BodyDirection.Up)] });
        Assert.False(load.Computed);
        Assert.NotEmpty(load.Problems);
    }

    private static Movement Raise(params Pull[] pulls) => Frames.Of(Frames.SideLyingRaise(10), Frames.SideLyingRaise(30)) with { Pulls = [.. pulls] };

    private static LinkPull Band(double f100) => new(Ankle, Ankle with { Limb = Limb.Other }, Dose(f100, 0.4));

    private static BandDose Dose(double f100, double rest) => new() { F100N = f100, RestLengthM = rest };

    private static double Demand(Movement movement)
    {
        var load = Load(movement);
        Assert.True(load.Computed, string.Join(" ", load.Problems));
        return load.Of(JointAction.HipAbduction, Side.Right)!.Demand;
    }

    private static MovementLoad Load(Movement movement, Side working = Side.Right) =>
        MomentArm.Body.Loading.Of(TestBody.Content.PersonOf(new Physique(Sex.Male, 30, 1.741, 73.0)), movement, working, 0);
}
