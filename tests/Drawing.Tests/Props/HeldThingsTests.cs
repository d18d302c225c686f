using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

public sealed class HeldThingsTests
{
    private static readonly Prop StrapOnWorking = new(PropKind.Strap, "ballInner", Limb.Working, 0);

    private static HashSet<Side> Hands(params Limb[] tied)
    {
        var frame = SampleMovements.All["strap stretch on the back"].Frames[0] with
        {
            Ties = [.. tied.Select(hand => new Tie(TieKind.Strap, "palm", hand, "forefootSole", Limb.Working))],
        };
        var figure = new PlacedFigure(TestBody.Model, TestBody.Points, frame, Side.Right);
        return HeldThings.GrippingHands(figure, new HeldSetting([StrapOnWorking], [], [], figure, figure));
    }

    [Fact]
    public void The_hands_that_a_pose_ties_to_the_strap_hold_it()
    {
        Assert.Equal([Side.Left], Hands(Limb.Other));
        Assert.Equal([Side.Right], Hands(Limb.Working));
        Assert.Equal(2, Hands(Limb.Working, Limb.Other).Count);
    }

    [Fact]
    public void Without_a_tie_some_hand_holds_it() => Assert.NotEmpty(Hands());
}
