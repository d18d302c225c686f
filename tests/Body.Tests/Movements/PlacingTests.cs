using CsCheck;

namespace MomentArm.Body.Tests.Movements;

/// <summary>Bodies laid on their surfaces.</summary>
public class PlacingTests
{
    [Fact]
    public void Both_flat_feet_of_someone_standing_stay_flat_on_the_floor()
    {
        var placed = Place(Frames.Standing([.. Frames.Both("foot", SurfaceKind.Floor, 0)]), Side.Right);
        Assert.Equal(6, placed.Contacts.Length);
        Assert.All(placed.Contacts, c => Assert.Equal(0, c.Point.Y, Tolerances.Contact));
        Assert.True(placed.LargestGapM < Tolerances.Contact);
    }

    [Fact]
    public void A_forgotten_ankle_angle_is_mended_by_tipping_the_body_over_its_flat_foot()
    {
        var contacts = new SurfaceContact("foot", Limb.Working, SurfaceKind.Floor, 0, true);
        var frame = Frames.Standing(contacts) with { Working = new LimbAngles { AnkleDorsiflexion = TestBody.Radians(12) } };
        var placed = Place(frame, Side.Left);
        Assert.All(placed.Contacts, c => Assert.Equal(0, c.Point.Y, Tolerances.Contact));

        // The shank, and all above it, leans forward by about the ankle's angle (its axis is oblique).
        var up = placed.Pose.PelvisRotation * Vec3.UnitY;
        Assert.Equal(12, Math.Atan2(up.X, up.Y) * 180 / Math.PI, 0.8);
    }

    [Fact]
    public void A_foot_on_a_step_lies_at_the_height_of_the_step()
    {
        var placed = Place(Frames.Standing(new SurfaceContact("foot", Limb.Working, SurfaceKind.Step, 0.15, true)), Side.Right);
        Assert.All(placed.Contacts, c => Assert.Equal(0.15, c.Point.Y, Tolerances.Contact));
    }

    [Fact]
    public void A_bridge_rests_on_shoulders_and_heels_with_the_pelvis_in_the_air()
    {
        var leg = new LimbAngles { HipFlexion = TestBody.Radians(5), KneeFlexion = TestBody.Radians(80), AnkleDorsiflexion = TestBody.Radians(0) };
        var frame = Frames.Standing([.. Frames.Both("heel", SurfaceKind.Floor, 0), .. Frames.Both("upperBack", SurfaceKind.Floor, 0)]) with
        {
            Orientation = Orientation.Supine,
            Working = leg,
            Other = leg,
        };
        var placed = Place(frame, Side.Right);
        Assert.True(placed.LargestGapM < Tolerances.Contact);
        var state = TestBody.Posed(TestBody.Man, placed.Pose);
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            var (segment, local) = TestBody.Content.Points.Points["pelvisBack"].On(TestBody.Man, side);
            Assert.True(state.Point(segment, local).Y > 0.10);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    public void Someone_lying_straight_on_the_side_is_not_rolled_over(double abductionDeg)
    {
        // The contacts lie nearly in one row; once the body rolled by some 80 degrees to hide a centimetre of misfit.
        var placed = Place(Frames.SideLyingRaise(abductionDeg), Side.Right);
        var rightward = placed.Pose.PelvisRotation * Vec3.UnitZ;
        Assert.True(rightward.Y > Math.Cos(TestBody.Radians(15)), $"The upper side points to {rightward}.");
    }

    [Fact]
    public void The_first_contact_is_the_anchor_and_stays_where_it_is_through_a_movement()
    {
        foreach (var abduction in new[] { 0, 15, 30 })
        {
            var anchor = Place(Frames.SideLyingRaise(abduction), Side.Right).Contacts[0].Point;
            Assert.Equal(0, anchor.X, Tolerances.Position);
            Assert.Equal(0, anchor.Z, Tolerances.Position);
        }
    }

    [Fact]
    public void Contacts_that_cannot_all_meet_are_told_by_their_gap()
    {
        // One straight leg cannot have its heel on the floor and its ball on a 20 cm step while the other foot is flat.
        var placed = Place(
            Frames.Standing(
                new SurfaceContact("foot", Limb.Other, SurfaceKind.Floor, 0, true),
                new SurfaceContact("heel", Limb.Working, SurfaceKind.Floor, 0, true),
                new SurfaceContact("ballInner", Limb.Working, SurfaceKind.Step, 0.20, true)),
            Side.Right);
        var worst = placed.Contacts.Max(c => Math.Abs(c.Point.Y - c.Contact.HeightM));
        Assert.Equal(worst, placed.LargestGapM, Tolerances.Position);
        Assert.True(placed.LargestGapM > 0.03);
    }

    [Fact]
    public void A_wall_asks_nothing_of_height()
    {
        var placed = Place(
            Frames.Standing(
                [.. Frames.Both("foot", SurfaceKind.Floor, 0), new SurfaceContact("palm", Limb.Working, SurfaceKind.Wall, 0, false)]),
            Side.Right);
        Assert.True(placed.LargestGapM < Tolerances.Contact);
    }

    [Fact]
    public void Working_the_left_side_is_the_mirror_image_of_working_the_right() =>
        Gen.Select(Gen.Double[-0.4, 0.9].Array[24], Gen.Int[0, 4]).Sample(
            (a, orientation) =>
            {
                var frame = new PosedFrame
                {
                    Name = "any",
                    Orientation = (Orientation)orientation,
                    PitchHint = a[23],
                    Working = AnyLimb(a, 0),
                    Other = AnyLimb(a, 8),
                    Axial = new AxialAngles
                    {
                        TrunkFlexion = a[16], TrunkBendToWorking = a[17], TrunkTurnToWorking = a[18],
                        NeckFlexion = a[19], NeckBendToWorking = a[20], NeckTurnToWorking = a[21],
                    },
                    Contacts =
                    [
                        new SurfaceContact("heel", Limb.Working, SurfaceKind.Floor, 0, true),
                        new SurfaceContact("palm", Limb.Other, SurfaceKind.Seat, 0.3, true),
                        new SurfaceContact("headBack", null, SurfaceKind.Floor, 0, true),
                        .. Frames.Both("upperBack", SurfaceKind.Floor, 0),
                    ],
                };
                var right = Place(frame, Side.Right);
                var left = Place(frame, Side.Left);
                for (var i = 0; i < right.Contacts.Length; i++)
                    Assert.Equal(0, (left.Contacts[i].Point - right.Contacts[i].Point.Mirrored).Length, 1e-6);
                Assert.Equal(right.Pose.Mirrored(TestBody.Man).Angles, left.Pose.Angles);
            },
            iter: 300);

    [Fact]
    public void A_point_no_body_has_is_refused_by_name()
    {
        var error = Assert.Throws<ArgumentException>(
            () => Place(Frames.Standing(new SurfaceContact("wing", Limb.Working, SurfaceKind.Floor, 0, true)), Side.Right));
        Assert.Contains("\"wing\"", error.Message, StringComparison.Ordinal);
    }

    private static PlacedBody Place(PosedFrame frame, Side working) =>
        Placing.Place(TestBody.Man, TestBody.Content.Points, frame, working);

    private static LimbAngles AnyLimb(double[] a, int from) => new()
    {
        HipFlexion = a[from], HipAbduction = a[from + 1], HipInternalRotation = a[from + 2], KneeFlexion = a[from + 3],
        AnkleDorsiflexion = a[from + 4], SubtalarEversion = a[from + 5], ShoulderFlexion = a[from + 6], ElbowFlexion = a[from + 7],
    };
}
