using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

/// <summary>Things stand and lie where the body uses them.</summary>
public sealed class PropPlacesTests
{
    private static Studio StudioOf(Movement movement, Side side = Side.Right) =>
        new(TestBody.Model, TestBody.Points, movement, side, PictureOptions.Usual);

    private static (PlacedFigure Start, PlacedFigure End, Movement Movement) Of(string name)
    {
        var movement = SampleMovements.All[name];
        var studio = StudioOf(movement);
        return (studio.Figure(0), studio.Figure(1), movement);
    }

    private static List<string> Order(string name, Side side) =>
        [.. Pictures.Combined(TestBody.Model, TestBody.Points, SampleMovements.All[name], side, PictureOptions.Usual)
            .Scene.Shapes.Where(shape => shape.Role != ShapeRole.Ghost).Select(shape => shape.Name)];

    [Fact]
    public void A_couch_reaches_under_all_that_lies_and_ends_before_a_hanging_leg()
    {
        var (start, end, movement) = Of("leg hangs over the end of a couch");
        var top = Furniture.BenchTop([start, end], movement.Props, movement.Props[0])!.Value;
        Assert.Equal(0.6, top.Most.Y, 6);
        foreach (var under in (Vec3[])[end.At(SegmentKind.Head, null, 0, 0.2, 0), end.Surface("upperBack", Limb.Working), end.Surface("pelvisBack", Limb.Other)])
        {
            Assert.InRange(under.X, top.Least.X, top.Most.X);
            Assert.InRange(under.Z, top.Least.Z, top.Most.Z);
        }

        var (knee, foot) = (end.At(SegmentKind.Shank, Side.Right, 0, 0, 0), end.At(SegmentKind.Foot, Side.Right, 0, 0, 0));
        Assert.True(foot.Y < top.Most.Y - 0.2, "the leg hangs");
        Assert.False(knee.X > top.Least.X + 0.06 && knee.X < top.Most.X - 0.06, "the knee is not within the couch");
    }

    [Fact]
    public void A_bench_under_the_shoulders_leaves_room_for_the_hips()
    {
        var (start, end, movement) = Of("hips up, shoulders on a bench");
        var top = Furniture.BenchTop([start, end], movement.Props, movement.Props[0])!.Value;
        foreach (var figure in (PlacedFigure[])[start, end])
        {
            var hips = figure.Surface("pelvisBack", null);
            Assert.False(hips.X > top.Least.X && hips.X < top.Most.X);
        }
    }

    [Theory]
    [InlineData(Side.Right)]
    [InlineData(Side.Left)]
    public void A_table_between_viewer_and_body_hides_the_legs_and_bears_the_arms(Side side)
    {
        var order = Order("sitting at a table", side);
        var (first, last) = (order.IndexOf("table"), order.LastIndexOf("table"));
        foreach (var s in (string[])["right", "left"])
        {
            Assert.True(order.IndexOf(s + "Shank") < first);
            Assert.True(order.IndexOf(s + "Thigh") < first);
            Assert.True(order.IndexOf(s + "Forearm") > last);
        }
    }

    [Fact]
    public void A_board_passes_under_both_ends_of_the_foot()
    {
        var (start, _, movement) = Of("squat on a tilted board");
        var contacts = start.Placed.Contacts.Where(c => c.Contact.Surface == SurfaceKind.Board).ToArray();
        var slope = (contacts.MinBy(c => c.Point.X)!.Point.Y - contacts.MaxBy(c => c.Point.X)!.Point.Y)
            / (contacts.Max(c => c.Point.X) - contacts.Min(c => c.Point.X));
        Assert.Equal(Math.Tan(movement.Frames[0].Contacts[0].Tilt), slope, 2);
        Assert.NotEmpty(BoardParts.Of([start], Camera.For(ViewKind.Side, Orientation.Upright, Side.Right)));
    }

    private static Vec3 Middle(BodyPart part) => part.Layers[0].Hulls[0][0].Center;

    private static BodyPart Held(string name, string part, double fraction)
    {
        var movement = SampleMovements.All[name];
        var studio = StudioOf(movement);
        var setting = HeldSetting.Of(TestBody.Points, movement, Side.Right, studio.Figure(0), studio.Figure(1));
        return HeldThings.Of(studio.Figure(fraction), setting, studio.Camera.Toward).Single(p => p.Name == part);
    }

    [Fact]
    public void A_ball_between_the_knees_touches_both()
    {
        var (start, _, _) = Of("ball between the knees");
        var ball = Middle(Held("ball between the knees", "ball", 0));
        var (a, b) = (start.Surface("kneeInner", Limb.Working), start.Surface("kneeInner", Limb.Other));
        Assert.Equal((ball - a).Length, (ball - b).Length, 6);
        Assert.InRange((ball - a).Length, 0, (a - b).Length);
    }

    [Fact]
    public void A_ball_at_the_wall_lies_between_wall_and_back_and_the_wall_makes_room()
    {
        foreach (var (name, part) in new[] { ("ball between back and wall", "ball"), ("roller between back and wall", "roller") })
        {
            var (start, _, movement) = Of(name);
            var back = start.Surface(movement.Props[0].At!, null);
            var ball = Middle(Held(name, part, 0));
            Assert.InRange(back.X - ball.X, 0.05, 0.12);
        }
    }

    [Fact]
    public void A_ball_under_the_sole_rolls_from_its_first_place_to_its_last()
    {
        double[] x = [.. Enumerable.Range(0, 5).Select(i => Middle(Held("small ball under the sole", "smallBall", i / 4.0)).X)];
        var step = (x[^1] - x[0]) / 4;
        for (var i = 1; i < x.Length; i++)
            Assert.Equal(step, x[i] - x[i - 1], 6);
        Assert.Equal(0.0325, Middle(Held("small ball under the sole", "smallBall", 1)).Y, 6);
    }

    [Fact]
    public void A_band_runs_from_the_grip_to_its_door_which_stays()
    {
        var (start, end, movement) = Of("arm turns in against a band");
        var tied = PullSetting.From(TestBody.Points, movement, Side.Right, start.State, 0).Starts[0].Fixed!.Value;
        foreach (var (figure, fraction) in new[] { (start, 0.0), (end, 1.0) })
        {
            var band = Held("arm turns in against a band", "longBand", fraction).Layers[0].Hulls[0];
            Assert.Equal(0, (band[0].Center - HeldThings.Grip(figure, Side.Right)).Length, 6);
            Assert.Equal(0, (band[1].Center - tied).Length, 6);
            var mark = Held("arm turns in against a band", "door", fraction).Layers[^1].Hulls[0];
            Assert.Equal(0, (mark[0].Center.Toward(mark[1].Center, 0.5) - tied).Length, 6);
        }
    }

    [Fact]
    public void Bands_of_both_hands_to_points_near_each_other_share_a_door()
    {
        AnchorPull Row(Limb limb) => new(new BodyPlace("palm", limb), new RoomAnchor(BodyDirection.Forward, 1.2, 1.1), new BandDose { F100N = 25, PreStretch = 0.2 });
        var movement = SampleMovements.All["band pulled apart"] with { Pulls = [Row(Limb.Working), Row(Limb.Other)] };
        var names = Pictures.Combined(TestBody.Model, TestBody.Points, movement, Side.Left, PictureOptions.Usual).Scene.Shapes.Select(s => s.Name).ToArray();
        Assert.Equal(2, names.Count(n => n == "longBand"));
        Assert.Single(Runs(names, "door"));
    }

    [Fact]
    public void A_band_made_fast_low_has_a_post_instead_of_a_door()
    {
        var low = new AnchorPull(new BodyPlace("ankleOuter", Limb.Working), new RoomAnchor(BodyDirection.TowardOther, 0.9, 0.2), new BandDose { F100N = 25, PreStretch = 0.2 });
        var movement = SampleMovements.All["band from ankle to ankle"] with { Pulls = [low] };
        var names = Pictures.Combined(TestBody.Model, TestBody.Points, movement, Side.Right, PictureOptions.Usual).Scene.Shapes.Select(s => s.Name).ToArray();
        Assert.Contains("post", names);
        Assert.DoesNotContain("door", names);
    }

    [Fact]
    public void A_step_under_the_forefoot_leaves_the_heel_free()
    {
        foreach (var side in (Side[])[Side.Right, Side.Left])
        {
            var movement = SampleMovements.All["heel raise on a step"];
            var studio = StudioOf(movement, side);
            var (start, end) = (studio.Figure(0), studio.Figure(1));
            var step = Backdrop.StepTop([start, end], movement.Props[0]);
            Assert.True(start.Surface("heel", Limb.Working).X < step.Least.X - 0.03, "the heel hangs free");
            Assert.InRange(start.Surface("forefootSole", Limb.Working).X, step.Least.X, step.Most.X);
            Assert.InRange(start.At(SegmentKind.Toes, side, 0.05, 0, 0).X, step.Least.X, step.Most.X);
        }
    }

    [Fact]
    public void A_step_under_the_whole_foot_is_under_its_heel()
    {
        var (start, end, movement) = Of("step-down to the side");
        var step = Backdrop.StepTop([start, end], movement.Props.First(p => p.Kind == PropKind.Step));
        Assert.InRange(start.Surface("heel", Limb.Working).X, step.Least.X, step.Most.X);
    }

    [Fact]
    public void A_loop_lies_where_its_pull_says()
    {
        var (_, end, movement) = Of("loop round the feet");
        Assert.Equal("ankleOuter", movement.Props[0].At);
        var band = Held("loop round the feet", "band", 1).Layers[0].Hulls;
        var instep = end.Surface("instep", Limb.Working);
        Assert.InRange(band.SelectMany(h => h).Min(b => (b.Center - instep).Length), 0, 0.06);
    }

    [Fact]
    public void Ankles_that_are_held_down_have_a_strap_to_the_ground()
    {
        var strap = Held("ankles held down", "rightCuff", 1).Layers[0].Hulls.SelectMany(h => h).ToArray();
        Assert.InRange(strap.Min(b => b.Center.Y - b.Radius), -0.001, 0.001);
        Assert.True(strap.Max(b => b.Center.Y) > 0.05, "over the ankle");
    }

    private static IEnumerable<string> Runs(IEnumerable<string> names, string name)
    {
        var before = "";
        foreach (var now in names)
        {
            if (now == name && before != name)
                yield return now;
            before = now;
        }
    }

    [Theory]
    [InlineData("arm turns in against a band", new[] { Side.Right })]
    [InlineData("band from ankle to ankle", new Side[0])]
    [InlineData("band pulled apart", new[] { Side.Left, Side.Right })]
    [InlineData("foot pushes against a band", new[] { Side.Left, Side.Right })]
    [InlineData("towel wrung", new[] { Side.Left, Side.Right })]
    [InlineData("knee pressed on a towel", new Side[0])]
    [InlineData("stick raised lying", new[] { Side.Left, Side.Right })]
    [InlineData("pedaling", new[] { Side.Left, Side.Right })]
    public void Hands_close_round_what_they_hold(string name, Side[] hands)
    {
        var (start, end, movement) = Of(name);
        var setting = HeldSetting.Of(TestBody.Points, movement, Side.Right, start, end);
        Assert.Equal(hands, HeldThings.GrippingHands(end, setting).Order());
    }

    [Fact]
    public void A_small_ball_in_the_hand_is_cupped_by_that_hand_alone()
    {
        var (start, end, movement) = Of("small ball in the hand");
        var setting = HeldSetting.Of(TestBody.Points, movement, Side.Right, start, end);
        Assert.Equal(Grasp.Ball, HeldThings.GraspOf(end, setting, ImmutableHashSet<Side>.Empty, Side.Right));
        Assert.Equal(Grasp.Open, HeldThings.GraspOf(end, setting, ImmutableHashSet<Side>.Empty, Side.Left));
    }

    [Fact]
    public void The_crank_turns_about_an_axle_that_stays()
    {
        var (start, end, movement) = Of("pedaling");
        var setting = HeldSetting.Of(TestBody.Points, movement, Side.Right, start, end);
        double Arm(PlacedFigure figure, Limb limb)
        {
            var pedal = figure.Surface("forefootSole", limb) - setting.Axle;
            return Math.Sqrt(pedal.X * pedal.X + pedal.Y * pedal.Y);
        }

        double[] arms = [Arm(start, Limb.Working), Arm(start, Limb.Other), Arm(end, Limb.Working), Arm(end, Limb.Other)];
        Assert.InRange(arms.Max() - arms.Min(), 0, 0.03);
    }
}
