using MomentArm.Body.Tests.Movements;
using static MomentArm.Body.Tests.SettlingFrames;

namespace MomentArm.Body.Tests;

public class TieTests
{
    private static Tie Hold(string from, Limb fromLimb, string to, Limb? toLimb) => new(TieKind.Hold, from, fromLimb, to, toLimb);

    private static Tie Strap(double? length, Limb hand = Limb.Working) => new(TieKind.Strap, "palm", hand, "forefootSole", Limb.Working, length);

    private static PosedFrame StrapStretch(double hip, params Tie[] ties)
    {
        var arm = new LimbAngles { ShoulderFlexion = Degrees(10), ElbowFlexion = Degrees(80) };
        return Lying(Orientation.Supine, arm with { HipFlexion = Degrees(hip) }, arm, OnTheBack) with { Ties = [.. ties] };
    }

    [Fact]
    public void Hands_clasp_the_shin_by_bending_the_arms()
    {
        var settled = Settle(KneeToChest(Hold("palm", Limb.Working, "shinFront", Limb.Working), Hold("palm", Limb.Other, "shinFront", Limb.Working)));
        Assert.Null(Settling.Refusal(Woman, settled));
        Assert.All(settled.Ties, t => Assert.InRange(t.Gap, 0, 2 * Settling.Meets));
        Assert.Equal(0, (At(settled, "palm", Side.Left) - At(settled, "shinFront", Side.Right)).Length, 2 * Settling.Meets);
        Assert.Contains(settled.Changes, c => c.Motion is Motion.ShoulderFlexion or Motion.ShoulderAdduction or Motion.ElbowFlexion);
    }

    [Fact]
    public void A_hand_rests_on_the_own_thigh()
    {
        var sitting = new LimbAngles { HipFlexion = Degrees(85), KneeFlexion = Degrees(85), ShoulderFlexion = Degrees(25), ElbowFlexion = Degrees(35) };
        var frame = Upright(sitting, On("sitBone", Limb.Working, SurfaceKind.Seat, 0.42), On("sitBone", Limb.Other, SurfaceKind.Seat, 0.42), On("foot", Limb.Working), On("foot", Limb.Other))
            with { Ties = [Hold("palm", Limb.Working, "thighFront", Limb.Working), Hold("palm", Limb.Other, "thighFront", Limb.Other)] };
        var settled = Settle(frame);
        Assert.InRange(settled.LargestGapM, 0, Settling.Meets);
    }

    [Fact]
    public void Hands_clasp_each_other()
    {
        var arm = new LimbAngles { ShoulderFlexion = Degrees(60), ElbowFlexion = Degrees(60), ShoulderInternalRotation = Degrees(30) };
        var settled = Settle(Upright(arm, BothFeet) with { Ties = [Hold("palm", Limb.Working, "palm", Limb.Other)] });
        Assert.InRange(settled.LargestGapM, 0, Settling.Meets);

        // Both arms do alike: the hands meet in the middle plane.
        Assert.Equal(0, (At(settled, "palm", Side.Right) + At(settled, "palm", Side.Left)).Z / 2 - settled.Pose.PelvisPosition.Z, 1e-3);
    }

    [Fact]
    public void A_strap_of_free_length_changes_nothing_and_tells_how_far_it_is_let_out()
    {
        var without = Settle(StrapStretch(60));
        var with = Settle(StrapStretch(60, Strap(null)));
        Assert.Equal(without.Pose.Angles, with.Pose.Angles);
        var tie = Assert.Single(with.Ties);
        Assert.Equal((At(with, "palm", Side.Right) - At(with, "forefootSole", Side.Right)).Length, tie.LengthM, 1e-12);
        Assert.Equal(0, tie.Gap);
    }

    [Fact]
    public void A_strap_of_given_length_is_drawn_tight_at_that_length()
    {
        var free = Settle(StrapStretch(60, Strap(null))).Ties[0].LengthM;
        foreach (var length in new[] { free - 0.08, free + 0.05 })
        {
            var settled = Settle(StrapStretch(60, Strap(length), Strap(length, Limb.Other)));
            Assert.All(settled.Ties, t => Assert.Equal(length, t.LengthM, Settling.Meets));
            Assert.Null(Settling.Refusal(Woman, settled));
        }
    }

    [Fact]
    public void A_strap_far_too_short_is_refused_with_both_ends_and_what_is_lacking()
    {
        // Hand to the other heel, standing, the trunk held by feet and a wall: no five centimeters can be had.
        var frame = Upright(
            LimbAngles.Neutral,
            [.. BothFeet, Wall("upperBack", Limb.Working), Wall("upperBack", Limb.Other), Wall("pelvisBack", Limb.Working), Wall("pelvisBack", Limb.Other), On("headBack", null, SurfaceKind.Bench, 1.45)])
            with { Ties = [new Tie(TieKind.Strap, "palm", Limb.Working, "heelBack", Limb.Other, 0.05)] };
        var settled = Settle(frame);
        var reason = Settling.Untied(settled);
        Assert.NotNull(reason);
        Assert.Contains("The strap from palm of the working limb to heelBack of the other limb is ", reason, StringComparison.Ordinal);
        Assert.Contains("too short: at 5.0 cm it does not reach", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hand_that_cannot_reach_what_it_should_hold_is_refused()
    {
        var reason = Settling.Untied(Settle(Upright(LimbAngles.Neutral, BothFeet) with { Ties = [Hold("palm", Limb.Working, "headBack", null), Hold("palm", Limb.Working, "heelBack", Limb.Other)] }));
        Assert.NotNull(reason);
        Assert.Contains("palm of the working limb cannot hold", reason, StringComparison.Ordinal);
        Assert.Contains("cm stay between them", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strap_of_wrong_length_that_nothing_can_close_says_how_much()
    {
        var reason = Settling.Untied(Settle(StrapStretch(60, Strap(2.9))));
        Assert.NotNull(reason);
        Assert.Contains("too long: at 290.0 cm it hangs loose", reason, StringComparison.Ordinal);
        Assert.Contains("length of the strap", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_two_poses_a_strap_is_shortened_evenly_and_a_hold_of_one_alone_is_let_go()
    {
        var hold = Hold("palm", Limb.Other, "thighFront", Limb.Other);
        var movement = Frames.Of(StrapStretch(40, Strap(0.7), hold), StrapStretch(70, Strap(0.6)));
        var between = FrameBetween.At(movement, 0.25);
        Assert.Equal(Strap(0.7) with { LengthM = 0.675 }, Assert.Single(between.Ties) with { LengthM = Math.Round(between.Ties[0].LengthM!.Value, 12) });
    }

    [Fact]
    public void A_tie_alone_closes_without_any_surface()
    {
        var frame = KneeToChest(Hold("palm", Limb.Working, "shinFront", Limb.Working)) with { Contacts = [] };
        var settled = Settle(frame);
        Assert.InRange(settled.LargestGapM, 0, 2 * Settling.Meets);
        var lowest = TestBody.Content.Points.Points.Values.SelectMany(p => new[] { At(settled, p.Name, Side.Right), At(settled, p.Name, Side.Left) }).Min(p => p.Y);
        Assert.Equal(0, lowest, 1e-9);
    }
}
