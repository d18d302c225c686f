using static MomentArm.Body.Tests.SettlingFrames;

namespace MomentArm.Body.Tests.Movements;

public class FrameCheckTests
{
    private static PosedFrame Good { get; } = Upright(LimbAngles.Neutral, BothFeet);

    private static FrameFault Only(PosedFrame frame)
    {
        var fault = Assert.Single(FrameCheck.Faults(frame, TestBody.Content.Points));
        var error = Assert.Throws<ArgumentException>(() => Settle(frame));
        Assert.Contains(fault.What, error.Message, StringComparison.Ordinal);
        return fault;
    }

    private static void AssertFault(PosedFrame frame, string place, params string[] told)
    {
        var fault = Only(frame);
        Assert.Equal(place, fault.Place);
        Assert.All(told, part => Assert.Contains(part, fault.What + " " + fault.Mend, StringComparison.Ordinal));
    }

    [Fact]
    public void A_frame_without_faults_has_none() => Assert.Empty(FrameCheck.Faults(Good, TestBody.Content.Points));

    [Theory]
    [InlineData(200)]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void An_angle_no_joint_has_is_refused_with_range_and_unit(double degrees) => AssertFault(
        Good with { Other = new LimbAngles { KneeFlexion = Degrees(degrees) } }, "other.kneeFlexionDeg", "lies outside -10 to 155.", "degrees", "Correct");

    [Fact]
    public void The_trunk_and_the_lean_are_checked_too()
    {
        AssertFault(Good with { Axial = new AxialAngles { TrunkFlexion = Degrees(111) } }, "axial.trunkFlexionDeg", "111 degrees lies outside -45 to 110");
        AssertFault(Good with { PitchHint = Degrees(-121) }, "pitchHintDeg", "-121 degrees");
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.6)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_height_that_no_surface_has_is_refused(double height) => AssertFault(
        Good with { Contacts = [On("foot", Limb.Working, SurfaceKind.Step, height)] }, "contacts[0].heightM", " m lies outside 0 to 1.5.");

    [Theory]
    [InlineData(46)]
    [InlineData(-46)]
    [InlineData(double.NaN)]
    public void A_board_steeper_than_45_degrees_is_refused(double tilt) => AssertFault(
        Good with { Contacts = [On("foot", Limb.Other), Board("foot", Limb.Working, tilt)] }, "contacts[1].tiltDeg", "degrees lies outside -45 to 45.", "toes down positive");

    [Fact]
    public void Only_boards_tilt_and_only_walls_have_a_place()
    {
        AssertFault(Good with { Contacts = [On("foot", Limb.Working) with { Tilt = 0.1 }] }, "contacts[0].tiltDeg", "A floor has no tilt", "board");
        AssertFault(Good with { Contacts = [On("foot", Limb.Working) with { Wall = WallPlace.Behind }] }, "contacts[0].wall", "A floor is no wall");
    }

    [Fact]
    public void A_wall_that_would_be_the_floor_is_refused_and_the_places_it_can_have_are_named()
    {
        AssertFault(
            Lying(Orientation.Supine, LimbAngles.Neutral, LimbAngles.Neutral, On("pelvisBack", Limb.Working), Wall("heelBack", Limb.Working, WallPlace.Behind)),
            "contacts[1].wall", "A wall behind someone lying on the back would be the floor", "atFeet");
        AssertFault(Good with { Contacts = [Wall("palm", Limb.Working, WallPlace.AtHead)] }, "contacts[0].wall", "upright", "inFront");
    }

    [Fact]
    public void An_unknown_point_and_a_point_without_its_limb_are_told()
    {
        AssertFault(Good with { Contacts = [On("wing", Limb.Working)] }, "contacts[0].point", "\"wing\"", "surface-points.json");
        AssertFault(Good with { Contacts = [On("heel", null)] }, "contacts[0].limb", "both sides", "working or other");
        AssertFault(Good with { Ties = [new Tie(TieKind.Hold, "palm", null, "heel", Limb.Working)] }, "ties[0].fromLimb", "both sides");
        AssertFault(Good with { Ties = [new Tie(TieKind.Hold, "palm", Limb.Working, "fin", Limb.Working)] }, "ties[0].to", "\"fin\"");
    }

    [Theory]
    [InlineData(0.01)]
    [InlineData(3.1)]
    [InlineData(double.NaN)]
    public void A_strap_of_no_usable_length_is_refused(double length) => AssertFault(
        Good with { Ties = [new Tie(TieKind.Strap, "palm", Limb.Working, "forefootSole", Limb.Working, length)] }, "ties[0].lengthM", " m lies outside 0.02 to 3.");

    [Fact]
    public void A_hold_has_no_length_and_a_part_cannot_be_tied_to_itself_or_by_a_point_in_two_parts()
    {
        AssertFault(Good with { Ties = [new Tie(TieKind.Hold, "palm", Limb.Working, "heel", Limb.Working, 0.5)] }, "ties[0].lengthM", "no length");
        AssertFault(Good with { Ties = [new Tie(TieKind.Hold, "palm", Limb.Working, "knuckles", Limb.Working)] }, "ties[0].to", "to itself");
        AssertFault(Good with { Ties = [new Tie(TieKind.Strap, "upperBack", Limb.Working, "chestFront", Limb.Other)] }, "ties[0].to", "to itself");
        AssertFault(Good with { Ties = [new Tie(TieKind.Hold, "palm", Limb.Working, "shin", Limb.Other)] }, "ties[0].to", "more than one part");
    }

    [Fact]
    public void All_faults_are_told_at_once()
    {
        var frame = Good with
        {
            Working = new LimbAngles { HipFlexion = double.NaN, ElbowFlexion = 7 },
            Contacts = [On("wing", Limb.Working, SurfaceKind.Step, -1), Board("foot", Limb.Other, 60)],
            Ties = [new Tie(TieKind.Strap, "palm", Limb.Working, "palm", Limb.Working, 9)],
        };
        var faults = FrameCheck.Faults(frame, TestBody.Content.Points);
        Assert.Equal(
            ["working.hipFlexionDeg", "working.elbowFlexionDeg", "contacts[0].point", "contacts[0].heightM", "contacts[1].tiltDeg", "ties[0].lengthM", "ties[0].to"],
            faults.Select(f => f.Place));
        var error = Assert.Throws<ArgumentException>(() => Settle(frame, Side.Left));
        Assert.All(faults, fault => Assert.Contains(fault.ToString(), error.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void The_ends_of_the_ranges_themselves_are_allowed() => Assert.Empty(FrameCheck.Faults(
        Good with { Working = new LimbAngles { KneeFlexion = Degrees(155), HipFlexion = Degrees(-40) }, Contacts = [Board("foot", Limb.Working, 45, 1.5)] },
        TestBody.Content.Points));
}
