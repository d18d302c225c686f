using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

/// <summary>Arrows lie where they are seen, point where the body goes, and say when it goes nowhere.</summary>
public sealed class ArrowsTests
{
    private static SceneShape[] Arrows(string name, Side side = Side.Right) =>
        [.. Pictures.Combined(TestBody.Model, TestBody.Points, SampleMovements.All[name], side, PictureOptions.Usual).Scene.Shapes.Where(s => s.Role == ShapeRole.Arrow)];

    private static PicturePoint At(string name, Func<PlacedFigure, Vec3> place)
    {
        var studio = new Studio(TestBody.Model, TestBody.Points, SampleMovements.All[name], Side.Right, PictureOptions.Usual);
        return studio.Camera.Project(place(studio.Figure(1)));
    }

    [Fact]
    public void A_turn_of_the_head_is_a_bow_over_it()
    {
        var line = Arrows("head turns").Single(s => s.Name == "arrow").Line;

        // Seen from in front, the head turns to the right side, which lies to the picture's left.
        Assert.True(line[^1].X < line[0].X - 10);
        var sag = line[line.Length / 2].Y - (line[0].Y + line[^1].Y) / 2;
        Assert.True(sag > 1, "the near side of the bow hangs lower");
        Assert.True(Arrows("head turns", Side.Left).Single(s => s.Name == "arrow").Line is var left && left[^1].X > left[0].X + 10);
    }

    [Fact]
    public void A_turn_of_the_forearm_is_a_bow_round_the_hand()
    {
        var line = Arrows("forearm turns").Single(s => s.Name == "arrow").Line;
        var chord = ArrowLine.Distance(line[0], line[^1]);
        Assert.True(ArrowLine.Length(line) > 1.02 * chord, "it is bent");
        Assert.True(chord > 8);
    }

    [Fact]
    public void A_nod_has_an_arrow_beside_the_face()
    {
        var line = Arrows("head nods lying").Single(s => s.Name == "arrow").Line;
        Assert.True(line[^1].X > line[0].X, "toward the feet");
    }

    [Fact]
    public void A_curl_of_the_trunk_has_an_arrow_of_the_head()
    {
        var line = Arrows("curl of the trunk").Single(s => s.Name == "arrow").Line;
        Assert.True(line[^1].Y < line[0].Y - 8, "up");
    }

    [Fact]
    public void Arm_and_leg_have_an_arrow_each_where_the_trunk_is_meant_to_keep_still() =>
        Assert.Equal(2, Arrows("arm and leg reach, trunk still").Count(s => s.Name == "arrow"));

    [Fact]
    public void A_push_against_the_own_hand_is_an_arrow_against_a_bar()
    {
        var shapes = Arrows("head pushes into the hand");
        var (line, bar) = (shapes.Single(s => s.Name == "arrow").Line, shapes.Single(s => s.Name == "arrowBar").Line);
        Assert.True(line[^1].X < line[0].X, "toward the right side, seen from in front");
        Assert.True(bar.Average(p => p.X) < line[^1].X, "the bar stands before the tip");
        Assert.True(Math.Abs(bar[0].X - bar[1].X) < 2 && Math.Abs(bar[0].Y - bar[1].Y) > 8, "across it");
    }

    [Theory]
    [InlineData("buttocks tightened")]
    [InlineData("ball pressed in the hand")]
    public void A_squeeze_is_two_arrows_toward_each_other(string name)
    {
        var lines = Arrows(name).Where(s => s.Name == "arrow").Select(s => s.Line).ToArray();
        Assert.Equal(2, lines.Length);
        var apart = ArrowLine.Distance(lines[0][0], lines[1][0]);
        Assert.True(ArrowLine.Distance(lines[0][^1], lines[1][^1]) < apart - 6);
    }

    [Fact]
    public void A_knee_that_presses_down_has_an_arrow_onto_it()
    {
        var line = Arrows("knee presses down").Single(s => s.Name == "arrow").Line;
        Assert.True(line[^1].Y > line[0].Y + 5);
        Assert.InRange(line[^1].X - line[0].X, -1, 1);
    }

    [Fact]
    public void A_loop_that_does_not_give_way_is_pressed_outward_on_both_sides()
    {
        var lying = SampleMovements.All["knee presses down"];
        var movement = lying with
        {
            View = ViewKind.Front, Aims = [JointAction.HipAbduction], Frames = [lying.Frames[0], lying.Frames[0]],
            Props = [.. lying.Props, new Prop(PropKind.LoopBand, "kneeOuter", null, 0)],
            Pulls = [new LoopPull(new BodyPlace("kneeOuter", Limb.Working, "kneeInner", 0.5), 0.06, new BandDose { F100N = 150, RestLengthM = 0.5 })],
        };
        var lines = Pictures.Combined(TestBody.Model, TestBody.Points, movement, Side.Right, PictureOptions.Usual)
            .Scene.Shapes.Where(s => s.Name == "arrow").Select(s => s.Line).ToArray();
        Assert.Equal(2, lines.Length);
        Assert.True(ArrowLine.Distance(lines[0][^1], lines[1][^1]) > ArrowLine.Distance(lines[0][0], lines[1][0]) + 10);
    }

    [Fact]
    public void Small_motions_of_the_foot_have_an_arrow_in_the_close_up()
    {
        Assert.True(Arrows("arch rises").Single(s => s.Name == "arrow").Line is var rise && rise[^1].Y < rise[0].Y);
        Assert.True(Arrows("big toe lifts").Single(s => s.Name == "arrow").Line is var lift && lift[^1].Y < lift[0].Y);
    }

    [Fact]
    public void Arrows_grow_with_the_frame()
    {
        var (small, tall) = (Arrows("arch rises").Single(s => s.Name == "arrow"), Arrows("head turns").Single(s => s.Name == "arrow"));
        Assert.True(tall.LineWidth > 1.5 * small.LineWidth);
    }

    [Fact]
    public void A_hand_that_bears_is_no_reason_for_an_arrow()
    {
        var movement = SampleMovements.All["hands-and-knees leg lift"];
        var line = Pictures.Combined(TestBody.Model, TestBody.Points, movement with { Focus = MovementFocus.Shoulder }, Side.Right, PictureOptions.Usual)
            .Scene.Shapes.First(s => s.Name == "arrow").Line;
        var hand = At("hands-and-knees leg lift", f => f.At(SegmentKind.Hand, Side.Right, 0, -0.06, 0));
        var foot = At("hands-and-knees leg lift", f => f.At(SegmentKind.Foot, Side.Right, 0.06, 0.03, 0));
        Assert.True(hand.X > foot.X, "the head is to the right");
        Assert.True(line[^1].X < line.Max(p => p.X) + 1);
    }

    [Fact]
    public void A_short_course_gets_a_tail_on_its_own_circle()
    {
        PicturePoint[] course = [.. Enumerable.Range(0, 5).Select(i => new PicturePoint(20 * Math.Cos(i * 0.05), 20 * Math.Sin(i * 0.05)))];
        var longer = ArrowLine.LongEnough(course, 15, 5);
        Assert.Equal(15, ArrowLine.Length(longer), 0.1);
        Assert.All(longer, p => Assert.Equal(20, Math.Sqrt(p.X * p.X + p.Y * p.Y), 0.01));
        Assert.Equal(0, ArrowLine.Distance(course[^1], longer[^1]), 6);
    }

    [Fact]
    public void A_course_is_evened_unless_it_winds()
    {
        PicturePoint[] crooked = [new(0, 0), new(10, 3), new(20, 2), new(30, 4), new(40, 0)];
        var even = ArrowLine.Even(crooked);
        Assert.Equal((crooked[0], crooked[^1]), (even[0], even[^1]));
        var turns = Enumerable.Range(1, even.Count - 2).Select(i =>
            (even[i].X - even[i - 1].X) * (even[i + 1].Y - even[i].Y) - (even[i].Y - even[i - 1].Y) * (even[i + 1].X - even[i].X)).ToArray();
        Assert.True(turns.All(t => t >= -1e-9) || turns.All(t => t <= 1e-9), "it bends one way");
        PicturePoint[] winding = [new(0, 0), new(0, 30), new(20, 30), new(20, 0)];
        Assert.Same(winding, ArrowLine.Even(winding));
    }
}
