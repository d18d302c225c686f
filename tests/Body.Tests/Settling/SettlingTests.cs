using System.Collections.Immutable;
using CsCheck;

namespace MomentArm.Body.Tests;

public class SettlingTests
{
    private static readonly BodyModel Woman = TestBody.Content.Build(new Physique(Sex.Female, 40, 1.65, 65));

    private static double Degrees(double degrees) => degrees * Math.PI / 180;

    private static SurfaceContact On(string point, Limb? limb, SurfaceKind surface = SurfaceKind.Floor, double height = 0) =>
        new(point, limb, surface, height, true);

    private static PosedFrame Standing(double hip, double knee, double ankle) => new()
    {
        Name = "squat",
        Orientation = Orientation.Upright,
        Working = new LimbAngles { HipFlexion = Degrees(hip), KneeFlexion = Degrees(knee), AnkleDorsiflexion = Degrees(ankle) },
        Other = new LimbAngles { HipFlexion = Degrees(hip), KneeFlexion = Degrees(knee), AnkleDorsiflexion = Degrees(ankle) },
        Axial = AxialAngles.Neutral,
        Contacts = [On("foot", Limb.Working), On("foot", Limb.Other)],
    };

    private static PlacedBody Settle(PosedFrame frame, Side side = Side.Right, BodyModel? model = null) =>
        Settling.Settle(model ?? Woman, TestBody.Content.Points, frame, side);

    /// <summary>A bridge by catalog angles that do not quite close: shoulders and both feet on the floor.</summary>
    private static PosedFrame Bridge(double knee) => new()
    {
        Name = "bridge",
        Orientation = Orientation.Supine,
        Working = new LimbAngles { KneeFlexion = Degrees(knee), AnkleDorsiflexion = Degrees(-15) },
        Other = new LimbAngles { KneeFlexion = Degrees(knee), AnkleDorsiflexion = Degrees(-15) },
        Axial = AxialAngles.Neutral,
        Contacts = [On("upperBack", Limb.Working), On("upperBack", Limb.Other), On("foot", Limb.Working), On("foot", Limb.Other)],
    };

    [Fact]
    public void A_pose_that_meets_already_is_left_alone()
    {
        var settled = Settle(Standing(0, 0, 0));
        Assert.Empty(settled.Changes);
        Assert.True(settled.LargestGapM <= Settling.Meets);
    }

    [Fact]
    public void In_a_squat_the_oblique_ankles_give_way_by_a_few_degrees_so_that_the_soles_lie_flat()
    {
        // The ankle and subtalar axes are oblique: bending the ankle alone tips the sole sideways (docs/models/body.md).
        var settled = Settle(Standing(40, 45, 20));
        Assert.True(settled.LargestGapM <= Settling.Meets);
        Assert.Contains(settled.Changes, c => c.Motion == Motion.SubtalarInversion);
        Assert.All(settled.Changes, c => Assert.True(c.Size < Degrees(5)));
    }

    [Fact]
    public void A_bridge_closes_with_feet_flat_and_says_which_joints_gave_way()
    {
        var rigid = Placing.Place(Woman, TestBody.Content.Points, Bridge(90), Side.Right);
        var settled = Settle(Bridge(90));
        Assert.True(rigid.LargestGapM > 0.005, "The catalog angles should not close by themselves.");
        Assert.True(settled.LargestGapM < Settling.Meets, $"Gap left: {settled.LargestGapM} m.");
        Assert.NotEmpty(settled.Changes);
        Assert.All(settled.Changes, c => Assert.InRange(c.Size, Settling.Told, Degrees(30)));
        Assert.Null(Settling.Refusal(Woman, settled));
    }

    [Fact]
    public void Both_sides_give_way_alike_in_a_pose_alike_on_both_sides()
    {
        var settled = Settle(Bridge(105));
        foreach (var motion in new[] { Motion.HipFlexion, Motion.KneeExtension, Motion.AnkleDorsiflexion })
        {
            var right = settled.Pose.Angles[Woman.IndexOf(motion, Side.Right)];
            var left = settled.Pose.Angles[Woman.IndexOf(motion, Side.Left)];
            Assert.Equal(right, left, 1e-9);
        }
    }

    [Fact]
    public void Settling_for_the_left_is_the_mirror_image_of_settling_for_the_right()
    {
        var frame = Standing(50, 60, 20) with
        {
            Other = new LimbAngles { HipFlexion = Degrees(70), KneeFlexion = Degrees(75), AnkleDorsiflexion = Degrees(15) },
            Contacts = [On("foot", Limb.Working), On("foot", Limb.Other, SurfaceKind.Step, 0.12)],
        };
        var right = Settle(frame).Pose.Mirrored(Woman);
        var left = Settle(frame, Side.Left).Pose;
        for (var k = 0; k < left.Angles.Length; k++)
            Assert.Equal(right.Angles[k], left.Angles[k], 1e-9);
    }

    [Fact]
    public void What_cannot_reach_is_refused_with_the_point_the_surface_and_the_distance()
    {
        var frame = Standing(0, 0, 0) with
        {
            Contacts = [On("foot", Limb.Working), On("foot", Limb.Other), On("palm", Limb.Working)],
        };
        var settled = Settle(frame);

        // Standing straight with the trunk as stiff as it is written, the hand can come down only by bending: it is told what was bent, or that it can't be.
        var reason = Settling.Refusal(Woman, settled);
        Assert.True(reason is not null || settled.Changes.Any(c => c.Size > Degrees(30)), "A hand on the floor cannot be had for nothing.");
    }

    [Fact]
    public void A_shelf_over_the_head_is_refused_in_words()
    {
        var frame = Standing(0, 0, 0) with
        {
            Contacts = [On("foot", Limb.Working), On("foot", Limb.Other), On("sitBone", Limb.Working, SurfaceKind.Seat, 1.4)],
        };
        var reason = Settling.Refusal(Woman, Settle(frame));
        Assert.NotNull(reason);
        Assert.Contains("cannot reach", reason, StringComparison.Ordinal);
        Assert.Contains("cm", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_body_that_would_fall_is_refused_with_the_direction()
    {
        // Both feet flat, leaning far back from the ankles: plantarflexed with straight legs.
        var reason = Settling.Refusal(Woman, Settle(Standing(0, 0, -25)));
        Assert.NotNull(reason);
        Assert.Contains("backward", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Joints_stay_in_their_usual_range_or_where_the_author_put_them()
    {
        Gen.Double[0, 60].Select(Gen.Double[0, 80], Gen.Double[-20, 25], Gen.Double[0.05, 0.3]).Sample((hip, knee, ankle, step) =>
        {
            var frame = Standing(hip, knee, ankle) with
            {
                Contacts = [On("foot", Limb.Working), On("foot", Limb.Other, SurfaceKind.Step, step)],
            };
            var before = ClinicalPose.Of(Woman, frame, Side.Right);
            var settled = Settle(frame);
            for (var k = 0; k < settled.Pose.Angles.Length; k++)
            {
                var coordinate = Woman.Coordinates[k];
                var least = Math.Min(coordinate.NormalLeast, before.Angles[k]);
                var most = Math.Max(coordinate.NormalMost, before.Angles[k]);
                Assert.InRange(settled.Pose.Angles[k], least - Degrees(1), most + Degrees(1));
            }

            Assert.All(settled.Pose.Angles, angle => Assert.True(double.IsFinite(angle)));
        }, iter: 300);
    }

    [Fact]
    public void The_first_contact_anchors_the_body_and_feet_lie_flat()
    {
        var settled = Settle(Bridge(112));
        Assert.Equal(0, settled.Contacts[0].Point.X, 1e-9);
        Assert.Equal(0, settled.Contacts[0].Point.Z, 1e-9);
        Assert.All(settled.Contacts.Where(c => c.Contact.Point == "foot"), c => Assert.Equal(0, c.Point.Y, 1e-3));
    }
}
