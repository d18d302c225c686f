using static MomentArm.Body.Tests.SettlingFrames;

namespace MomentArm.Body.Tests;

public class WallTests
{
    private static PlacedContact[] OnWall(PlacedBody body) => [.. body.Contacts.Where(c => c.Contact.Surface == SurfaceKind.Wall)];

    [Fact]
    public void Everything_that_touches_one_wall_lies_in_one_vertical_plane()
    {
        var settled = Settle(WallSit());
        var on = OnWall(settled);
        Assert.Equal(4, on.Length);
        Assert.All(on, c => Assert.Equal(Vec3.UnitX, c.Normal));
        Assert.All(on, c => Assert.InRange(Math.Abs(c.Gap), 0, Settling.Meets));
        Assert.InRange(on.Max(c => c.Point.X) - on.Min(c => c.Point.X), 0, 2 * Settling.Meets);
        Assert.InRange(settled.LargestGapM, 0, Settling.Meets);
    }

    [Fact]
    public void Before_settling_the_gaps_to_the_wall_are_told_as_they_are()
    {
        // Leaning forward by 20 degrees the back is off the wall by about the sine of that over the length between pelvis and shoulders.
        var frame = WallSit() with { Axial = new AxialAngles { TrunkFlexion = Degrees(20) } };
        var rigid = Placing.Place(Woman, TestBody.Content.Points, frame, Side.Right);
        var on = OnWall(rigid);
        var spread = on.Max(c => c.Point.X) - on.Min(c => c.Point.X);
        Assert.True(spread > 0.05);
        Assert.Equal(spread, on.Max(c => c.Gap) - on.Min(c => c.Gap), 1e-9);
        Assert.Equal(0, on.Sum(c => c.Gap), 1e-9);
    }

    [Fact]
    public void The_feet_stand_in_front_of_the_wall_as_far_as_the_legs_reach()
    {
        var settled = Settle(WallSit());
        var wall = OnWall(settled)[0];
        var heel = settled.Contacts.First(c => c.Contact.Point == "foot").Point;
        Assert.InRange((heel - wall.Point).Dot(wall.Normal), 0.25, 0.7);
    }

    [Theory]
    [InlineData("upperBack", 0.0, 0.0, WallPlace.Behind)]
    [InlineData("heelBack", 0.0, 0.0, WallPlace.Behind)]
    [InlineData("chestFront", 0.0, 0.0, WallPlace.InFront)]
    [InlineData("toeTip", 0.0, 0.0, WallPlace.InFront)]
    [InlineData("palm", 85.0, 0.0, WallPlace.InFront)]
    [InlineData("palm", 0.0, 80.0, WallPlace.BesideWorking)]
    [InlineData("trochanter", 0.0, 0.0, WallPlace.BesideWorking)]
    public void The_side_of_the_body_that_touches_tells_where_the_wall_stands(string point, double flexion, double abduction, WallPlace place)
    {
        var arm = new LimbAngles { ShoulderFlexion = Degrees(flexion), ShoulderAbduction = Degrees(abduction) };
        SurfaceContact[] feet = BothFeet;
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            var open = Settle(Upright(arm, [.. feet, Wall(point, Limb.Working, null, false)]), side);
            var named = Settle(Upright(arm, [.. feet, Wall(point, Limb.Working, place, false)]), side);
            Assert.Equal(OnWall(named)[0].Normal, OnWall(open)[0].Normal);
        }
    }

    [Fact]
    public void A_wall_left_open_is_the_one_that_another_contact_names()
    {
        var arm = new LimbAngles { ShoulderFlexion = Degrees(85) };
        var settled = Settle(Upright(arm, [.. BothFeet, Wall("palm", Limb.Other, null, false), Wall("palm", Limb.Working, WallPlace.InFront, false)]));
        Assert.All(OnWall(settled), c => Assert.Equal(-Vec3.UnitX, c.Normal));
    }

    [Fact]
    public void A_wall_at_the_feet_of_someone_on_the_back_faces_the_head()
    {
        var up = new LimbAngles { HipFlexion = Degrees(88) };
        SurfaceContact[] on =
        [
            On("pelvisBack", Limb.Working), On("pelvisBack", Limb.Other), On("upperBack", Limb.Working), On("upperBack", Limb.Other),
            Wall("heelBack", Limb.Working, null, false), Wall("heelBack", Limb.Other, null, false),
            Wall("calfBack", Limb.Working, null, false), Wall("calfBack", Limb.Other, null, false),
        ];
        var settled = Settle(Lying(Orientation.Supine, up, up, on));
        Assert.InRange(settled.LargestGapM, 0, Settling.Meets);
        Assert.All(OnWall(settled), c => Assert.Equal(-Vec3.UnitX, c.Normal));
        Assert.Null(Settling.Refusal(Woman, settled));
    }

    [Fact]
    public void Two_walls_in_a_corner_are_both_met()
    {
        var arm = new LimbAngles { ShoulderAbduction = Degrees(80) };
        var settled = Settle(Upright(
            arm,
            [
                .. BothFeet, Wall("upperBack", Limb.Working, WallPlace.Behind), Wall("upperBack", Limb.Other, WallPlace.Behind),
                Wall("pelvisBack", Limb.Working, WallPlace.Behind), Wall("palm", Limb.Working, WallPlace.BesideWorking, false),
                Wall("elbow", Limb.Working, WallPlace.BesideWorking, false),
            ]));
        Assert.All(settled.Contacts, c => Assert.Equal(1, c.Normal.Length, 1e-12));
        Assert.Contains(settled.Contacts, c => c.Normal == -Vec3.UnitZ);
        Assert.Contains(settled.Contacts, c => c.Normal == Vec3.UnitX);
    }

    [Fact]
    public void Nothing_goes_far_into_the_wall()
    {
        var settled = Settle(WallSit());
        var wall = OnWall(settled)[0];
        foreach (var point in TestBody.Content.Points.Points.Values)
        {
            foreach (var side in point.BothSides ? Enum.GetValues<Side>() : [Side.Right])
                Assert.True((At(settled, point.Name, side) - wall.Point).Dot(wall.Normal) > -0.012, $"{side} {point.Name} is in the wall.");
        }
    }

    [Fact]
    public void A_wall_sit_stands_by_the_push_of_the_wall_and_slips_with_the_feet_far_out()
    {
        Assert.Null(Settling.Refusal(Woman, Settle(WallSit())));

        // Legs straight, heels far out: the ladder's balance about the heels needs a floor friction above 0.5.
        var far = Upright(
            new LimbAngles { HipFlexion = Degrees(66), AnkleDorsiflexion = Degrees(-20) },
            [On("heel", Limb.Working), On("heel", Limb.Other), Wall("upperBack", Limb.Working), Wall("upperBack", Limb.Other), Wall("pelvisBack", Limb.Working), Wall("pelvisBack", Limb.Other)]);
        var reason = Settling.Refusal(Woman, Settle(far));
        Assert.NotNull(reason);
        Assert.StartsWith("Slips", reason, StringComparison.Ordinal);
    }

    /// <summary>
    /// Textbook ladder: rough floor (mu 0.5) and wall (mu 0.3), weight in its middle, slips below the angle whose tangent is
    /// (1 - mu_floor mu_wall) / (2 mu_floor) = 0.85, that is 40.4 degrees.
    /// </summary>
    [Theory]
    [InlineData(41, true)]
    [InlineData(39.8, false)]
    public void A_ladder_stands_down_to_the_angle_of_the_textbook(double angle, bool stands)
    {
        // About its middle, one long: the foot on the floor at +x, the top on a wall at -x that pushes toward +x.
        var (sin, cos) = Math.SinCos(Degrees(angle));
        var program = new SeparableProgram(3, 4, 12);
        program.Clear(3, 1e-6);
        program.RightSide[1] = 1;
        void Edge(double x, double y, double fx, double fy)
        {
            program.AddUnknown(1e-3, 0, 0, double.PositiveInfinity);
            program.AddEntry(0, fx);
            program.AddEntry(1, fy);
            program.AddEntry(2, x * fy - y * fx);
        }

        Edge(cos / 2, -sin / 2, 0.5, 1);
        Edge(cos / 2, -sin / 2, -0.5, 1);
        Edge(-cos / 2, sin / 2, 1, 0.3);
        Edge(-cos / 2, sin / 2, 1, -0.3);
        var solver = new DualNewtonSolver(program);
        solver.Solve(program);
        Assert.Equal(stands, Enumerable.Range(0, 3).Max(i => Math.Abs(solver.Miss(i))) < 1e-5);
    }

    [Fact]
    public void Without_its_wall_the_same_body_falls_backward()
    {
        var frame = WallSit();
        var reason = Settling.Refusal(Woman, Settle(frame with { Contacts = [.. frame.Contacts.Where(c => c.Surface == SurfaceKind.Floor)] }));
        Assert.Contains("Falls backward", reason, StringComparison.Ordinal);
    }
}
