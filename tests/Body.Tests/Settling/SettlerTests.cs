using static MomentArm.Body.Tests.SettlingFrames;

namespace MomentArm.Body.Tests;

/// <summary>One work space for many frames: same results, whatever came before, near start or not.</summary>
public class SettlerTests
{
    /// <summary>Two starts end this near to each other, radians; steps end at 1e-6.</summary>
    private const double Alike = 2e-5;

    /// <summary>What a result itself takes: contacts, angles, changes. Bytes a frame.</summary>
    private const long MostBytes = 12_000;

    private static PosedFrame[] Squat() => [.. Enumerable.Range(0, 21).Select(i => Upright(
        new LimbAngles { HipFlexion = Degrees(3 * i), KneeFlexion = Degrees(4 * i), AnkleDorsiflexion = Degrees(1.3 * i) }, BothFeet))];

    private static PosedFrame[] Various() =>
    [
        WallSit(), .. Squat().Take(3), KneeToChest(new Tie(TieKind.Hold, "palm", Limb.Working, "shinFront", Limb.Working)),
        Upright(new LimbAngles { AnkleDorsiflexion = Degrees(-10) }, Board("foot", Limb.Working, 20), On("foot", Limb.Other, SurfaceKind.Step, 0.1)),
    ];

    [Fact]
    public void A_used_settler_gives_the_same_bits_as_a_fresh_one()
    {
        var settler = new Settler(Woman, TestBody.Content.Points);
        foreach (var frame in Various().Concat(Various().Reverse()))
        {
            var (used, fresh) = (settler.Settle(frame, Side.Right), Settle(frame));
            Assert.Equal(fresh.Pose.Angles, used.Pose.Angles);
            Assert.Equal(fresh.Pose.PelvisPosition, used.Pose.PelvisPosition);
            Assert.Equal(fresh.Pose.PelvisRotation, used.Pose.PelvisRotation);
            Assert.Equal(fresh.Changes, used.Changes);
        }
    }

    [Fact]
    public void The_left_is_the_mirror_of_the_right_to_the_last_bit_with_normals_ties_and_ends()
    {
        foreach (var frame in Various())
        {
            var (mirror, left) = (Settle(frame).Mirrored(Woman), Settle(frame, Side.Left));
            Assert.Equal(mirror.Pose.Angles, left.Pose.Angles);
            Assert.Equal(mirror.Contacts, left.Contacts);
            Assert.Equal(mirror.Ties, left.Ties);
            Assert.Equal(mirror.Ends, left.Ends);
            Assert.All(left.Contacts, c => Assert.Equal(1, c.Normal.Length, 1e-12));
        }
    }

    [Theory]
    [InlineData(Side.Right)]
    [InlineData(Side.Left)]
    public void A_start_from_the_neighbor_ends_at_the_same_pose(Side side)
    {
        var settler = new Settler(Woman, TestBody.Content.Points);
        PlacedBody? near = null;
        foreach (var frame in Squat())
        {
            near = settler.Settle(frame, side, near);
            var alone = settler.Settle(frame, side);
            for (var k = 0; k < alone.Pose.Angles.Length; k++)
                Assert.Equal(alone.Pose.Angles[k], near.Pose.Angles[k], Alike);
        }
    }

    [Fact]
    public void A_neighbor_far_off_does_no_harm()
    {
        var (far, frame) = (Settle(KneeToChest(new Tie(TieKind.Hold, "palm", Limb.Working, "heelBack", Limb.Other))), WallSit());
        var (from, alone) = (Settling.Settle(Woman, TestBody.Content.Points, frame, Side.Right, far), Settle(frame));
        for (var k = 0; k < alone.Pose.Angles.Length; k++)
            Assert.Equal(alone.Pose.Angles[k], from.Pose.Angles[k], 1e-3);
    }

    [Fact]
    public void A_frame_takes_little_more_memory_than_its_result()
    {
        var settler = new Settler(Woman, TestBody.Content.Points);
        var frames = Squat();
        PlacedBody? near = null;
        foreach (var frame in frames)
            near = settler.Settle(frame, Side.Right, near);
        var before = GC.GetAllocatedBytesForCurrentThread();
        foreach (var frame in frames)
            near = settler.Settle(frame, Side.Right, near);
        Assert.InRange((GC.GetAllocatedBytesForCurrentThread() - before) / frames.Length, 1, MostBytes);
    }
}
