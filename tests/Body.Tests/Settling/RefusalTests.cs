using static MomentArm.Body.Tests.SettlingFrames;

namespace MomentArm.Body.Tests;

/// <summary>What cannot be is refused in words that say what, where and how to mend.</summary>
public class RefusalTests
{
    [Fact]
    public void A_contact_out_of_reach_names_the_joint_that_is_at_its_end()
    {
        // The heel 30 cm lower than the other foot: both knees are straight, the hip drops, nothing more to give.
        var frame = Upright(LimbAngles.Neutral, On("foot", Limb.Other, SurfaceKind.Step, 0.5), On("foot", Limb.Working));
        var settled = Settle(frame with { Other = new LimbAngles { HipFlexion = Degrees(20), KneeFlexion = Degrees(20) } });
        Assert.NotEmpty(settled.Ends);
        var reason = Settling.Refusal(Woman, settled with { LargestGapM = 0.1, Contacts = [settled.Contacts[0] with { Gap = 0.1 }] });
        Assert.NotNull(reason);
        Assert.Contains("cannot reach the step: it stays 10.0 cm above.", reason, StringComparison.Ordinal);
        Assert.Contains(" ends at ", reason, StringComparison.Ordinal);
        Assert.Contains("degrees", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Ends_are_said_as_clinicians_say_them()
    {
        Assert.Equal("right knee extension ends at 0 degrees", new JointEnd(Motion.KneeExtension, Side.Right, 0, true).ToString());
        Assert.Equal("left knee flexion ends at 140 degrees", new JointEnd(Motion.KneeExtension, Side.Left, Degrees(-140), false).ToString());
        Assert.Equal("trunk bending to the left ends at 25 degrees", new JointEnd(Motion.TrunkBending, null, Degrees(25), true).Mirrored.ToString());
    }

    [Fact]
    public void A_point_said_to_touch_two_heights_at_once_is_a_contradiction()
    {
        var frame = Upright(LimbAngles.Neutral, On("foot", Limb.Working), On("foot", Limb.Other), On("heel", Limb.Working, SurfaceKind.Step, 0.2));
        var reason = Settling.Refusal(Woman, Settle(frame));
        Assert.NotNull(reason);
        Assert.Contains("heel of the working limb is said to touch the floor and the step at 0.2 m at once", reason, StringComparison.Ordinal);
        Assert.Contains("Leave one of the two contacts out", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_point_between_two_facing_walls_is_a_contradiction_and_one_in_a_corner_is_not()
    {
        SurfaceContact[] between = [.. BothFeet, Wall("palm", Limb.Working, WallPlace.InFront, false), Wall("palm", Limb.Working, WallPlace.Behind, false)];
        Assert.Contains("at once", Settling.Contradiction(Settle(Upright(LimbAngles.Neutral, between))), StringComparison.Ordinal);
        SurfaceContact[] corner = [.. BothFeet, Wall("palm", Limb.Working, WallPlace.BesideWorking, false), On("palm", Limb.Working, SurfaceKind.Bench, 0.9)];
        Assert.Null(Settling.Contradiction(Settle(Upright(LimbAngles.Neutral, corner))));
        Assert.Null(Settling.Contradiction(Settle(Upright(LimbAngles.Neutral, [.. BothFeet, On("heel", Limb.Working)]))));
    }

    [Fact]
    public void A_wall_that_the_whole_back_cannot_meet_is_refused_as_a_gap_to_the_wall()
    {
        // Head and heels at one wall with the trunk held bent forward by 60 degrees, and the feet told to stay: too much to ask of 60 degrees of trunk.
        var frame = Upright(
            new LimbAngles { KneeFlexion = Degrees(10) },
            [.. BothFeet, Wall("belly", null, WallPlace.InFront, false), Wall("sacrum", null, WallPlace.InFront, false)]);
        var reason = Settling.Missing(Settle(frame));
        Assert.NotNull(reason);
        Assert.Contains("cannot reach the wall", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_farthest_off_is_named_first()
    {
        var tie = new Tie(TieKind.Strap, "palm", Limb.Working, "forefootSole", Limb.Working, 2.5);
        var settled = Settle(Upright(LimbAngles.Neutral, [.. BothFeet, On("palm", Limb.Other, SurfaceKind.Bench, 0)]) with { Ties = [tie] });
        Assert.Contains("The strap from palm", Settling.Refusal(Woman, settled), StringComparison.Ordinal);
        var contact = settled with { Ties = [], Contacts = [settled.Contacts[0] with { Gap = -0.07 }] };
        Assert.Contains("it stays 7.0 cm below", Settling.Refusal(Woman, contact), StringComparison.Ordinal);
    }

    [Fact]
    public void A_body_on_nothing_that_bears_is_told_so()
    {
        var reason = Settling.Refusal(Woman, Settle(Upright(LimbAngles.Neutral, On("foot", Limb.Working, bears: false))));
        Assert.Contains("Nothing bears the weight", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wall_alone_cannot_carry_a_body()
    {
        var reason = Settling.Refusal(Woman, Settle(Upright(LimbAngles.Neutral, [Wall("upperBack", Limb.Working), Wall("upperBack", Limb.Other)])));
        Assert.NotNull(reason);
    }
}
