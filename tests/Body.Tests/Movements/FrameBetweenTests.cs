namespace MomentArm.Body.Tests.Movements;

/// <summary>Frames between the poses an author gave.</summary>
public class FrameBetweenTests
{
    [Fact]
    public void Ends_are_the_author_s_own_frames_and_angles_between_go_evenly()
    {
        var (start, end) = (Frames.SideLyingRaise(0), Frames.SideLyingRaise(30));
        var movement = Frames.Of(start, end);
        Assert.Same(start, FrameBetween.At(movement, 0));
        Assert.Same(end, FrameBetween.At(movement, 1));
        Assert.Same(start, FrameBetween.At(movement, -5));
        Assert.Same(end, FrameBetween.At(movement, 7));
        Assert.Equal(TestBody.Radians(7.5), FrameBetween.At(movement, 0.25).Working.HipAbduction, Tolerances.Position);
    }

    [Fact]
    public void A_middle_frame_is_met_half_way_and_a_single_frame_is_a_hold()
    {
        var middle = Frames.SideLyingRaise(10);
        var movement = Frames.Of(Frames.SideLyingRaise(0), middle, Frames.SideLyingRaise(40));
        Assert.Same(middle, FrameBetween.At(movement, 0.5));
        Assert.Equal(TestBody.Radians(25), FrameBetween.At(movement, 0.75).Working.HipAbduction, Tolerances.Position);
        Assert.Same(middle, FrameBetween.At(Frames.Of(middle), 0.7));
    }

    [Fact]
    public void Between_two_poses_only_their_common_contacts_touch()
    {
        var foot = new SurfaceContact("foot", Limb.Working, SurfaceKind.Floor, 0, true);
        var seat = new SurfaceContact("sitBone", Limb.Working, SurfaceKind.Seat, 0.45, true);
        var between = FrameBetween.At(Frames.Of(Frames.Standing(foot, seat), Frames.Standing(foot)), 0.5);
        Assert.Equal([foot], between.Contacts);
    }

    [Fact]
    public void A_roller_under_which_the_body_slides_is_touched_all_the_way()
    {
        var hand = new SurfaceContact("palm", Limb.Other, SurfaceKind.Floor, 0, true);
        var upper = new SurfaceContact("thighOuterUpper", Limb.Working, SurfaceKind.Roller, 0.12, true);
        var lower = upper with { Point = "thighOuterLower" };
        var movement = Frames.Of(Frames.Standing(hand, upper), Frames.Standing(hand, lower));
        Assert.Equal([hand, upper], FrameBetween.At(movement, 0.3).Contacts);
        Assert.Equal([hand, lower], FrameBetween.At(movement, 0.7).Contacts);
    }
}
