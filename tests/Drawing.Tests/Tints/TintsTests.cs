using System.Xml.Linq;
using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

public sealed class TintsTests
{
    public static TheoryData<BodyArea> Areas { get; } = [.. Enum.GetValues<BodyArea>()];

    private static Movement Standing(ViewKind view)
    {
        var raise = SampleMovements.All["raise a weight to the side"];
        return raise with { Props = [], Frames = [raise.Frames[0]], View = view };
    }

    private static Picture Draw(Movement movement, Side side, Palette palette, params Tint[] tints) => Pictures.Combined(
        TestBody.Model, TestBody.Points, movement, side, PictureOptions.Usual with { Palette = palette, Tints = [.. tints] });

    private static SceneShape[] Tinted(Picture picture) => [.. picture.Scene.Shapes.Where(shape => shape.Role == ShapeRole.Tint)];

    [Theory]
    [MemberData(nameof(Areas))]
    public void Each_area_is_filled_in_some_view_and_lies_on_the_flesh_that_carries_it(BodyArea area)
    {
        var filled = 0;
        foreach (var view in Enum.GetValues<ViewKind>())
        {
            var picture = Draw(Standing(view), Side.Right, Palette.Light, new Tint(area, Limb.Working, TintKind.Work));
            var tint = Assert.Single(Tinted(picture));
            Assert.Equal(Tone.TintWork, tint.Tone);
            var flesh = Frame.Bounds(picture.Scene.Shapes.Where(shape => shape.Role == ShapeRole.Body && shape.Name != "seam" && Carries(area, shape.Name)));
            var patch = Frame.Bounds([tint]);
            Assert.InRange(patch.Left, flesh.Left - 0.5, flesh.Left + flesh.Width);
            Assert.InRange(patch.Left + patch.Width, flesh.Left, flesh.Left + flesh.Width + 0.5);
            Assert.InRange(patch.Top, flesh.Top - 0.5, flesh.Top + flesh.Height);
            Assert.InRange(patch.Top + patch.Height, flesh.Top, flesh.Top + flesh.Height + 0.5);
            filled += tint.Loops.Length < 4 ? 1 : 0;
        }

        Assert.InRange(filled, 1, 4);
    }

    private static bool Carries(BodyArea area, string part)
    {
        bool Of(params string[] names) => names.Any(name => part == name || part == "right" + name);
        return area switch
        {
            <= BodyArea.OuterHip => Of("pelvis", "Shorts", "Thigh"),
            <= BodyArea.InnerThigh => Of("Shorts", "Thigh"),
            <= BodyArea.InnerLowerLeg => Of("Shank"),
            <= BodyArea.Chest => Of("shirt", "pelvis"),
            <= BodyArea.BackOfUpperArm => Of("Sleeve", "UpperArm", "shirt"),
            <= BodyArea.BackOfForearm => Of("Forearm"),
            _ => Of("neck", "shirt", "head"),
        };
    }

    [Fact]
    public void Front_and_back_lie_where_they_belong()
    {
        var picture = Draw(
            Standing(ViewKind.Side), Side.Right, Palette.Light,
            new Tint(BodyArea.FrontOfThigh, Limb.Working, TintKind.Work), new Tint(BodyArea.BackOfThigh, Limb.Working, TintKind.Stretch));
        var work = Frame.Bounds(Tinted(picture).Where(shape => shape.Tone == Tone.TintWork));
        var stretch = Frame.Bounds(Tinted(picture).Where(shape => shape.Tone == Tone.TintStretch));
        Assert.True(work.Left > stretch.Left + 2, "seen from the right, the front is on the right");
        Assert.True(work.Left + work.Width > stretch.Left + stretch.Width + 2);
    }

    [Fact]
    public void An_area_that_turns_away_shows_as_an_outline()
    {
        SceneShape Of(ViewKind view) => Assert.Single(Tinted(Draw(Standing(view), Side.Left, Palette.Light, new Tint(BodyArea.Calf, Limb.Working, TintKind.Work))));
        Assert.Single(Of(ViewKind.Back).Loops);
        Assert.Equal(8, Of(ViewKind.Front).Loops.Length);
    }

    [Fact]
    public void Without_a_limb_both_sides_are_tinted_and_the_midline_once()
    {
        Assert.Equal(2, Tinted(Draw(Standing(ViewKind.Front), Side.Right, Palette.Light, new Tint(BodyArea.FrontOfThigh, null, TintKind.Work))).Length);
        Assert.Single(Tinted(Draw(Standing(ViewKind.Front), Side.Right, Palette.Light, new Tint(BodyArea.Belly, null, TintKind.Work))));
    }

    [Fact]
    public void Of_two_tints_of_one_area_the_first_counts()
    {
        var picture = Draw(
            Standing(ViewKind.Front), Side.Right, Palette.Light,
            Tint.Stretch(MuscleGroup.RectusFemoris, Limb.Working, "a"), Tint.Work(JointAction.KneeExtension, Limb.Working, "b"));
        Assert.Equal(Tone.TintStretch, Assert.Single(Tinted(picture)).Tone);
        Assert.Equal("a", Assert.Single(picture.Scene.Shapes, shape => shape.Text is not null).Text);
    }

    [Fact]
    public void In_gray_work_is_striped_across_and_stretch_along()
    {
        foreach (var kind in (TintKind[])[TintKind.Work, TintKind.Stretch])
        {
            var picture = Draw(Standing(ViewKind.Front), Side.Right, Palette.Gray, new Tint(BodyArea.FrontOfThigh, Limb.Working, kind));
            var marks = Assert.Single(Tinted(picture), shape => shape.Tone == Tone.TintMark);
            Assert.All(marks.Loops, loop =>
            {
                var (x, y) = (loop.Max(a => a.Center.X) - loop.Min(a => a.Center.X), loop.Max(a => a.Center.Y) - loop.Min(a => a.Center.Y));
                Assert.True(kind == TintKind.Work ? x > 2 * y : y > 2 * x);
            });
        }

        Assert.DoesNotContain(
            Tinted(Draw(Standing(ViewKind.Front), Side.Right, Palette.Light, new Tint(BodyArea.FrontOfThigh, null, TintKind.Work))),
            shape => shape.Tone == Tone.TintMark);
    }

    [Theory]
    [InlineData("strap stretch on the back")]
    [InlineData("sit to stand")]
    [InlineData("raise a weight to the side")]
    public void Names_keep_apart_and_inside_and_the_left_is_the_right_in_a_mirror(string name)
    {
        Tint[] tints =
        [
            Tint.Work(JointAction.KneeExtension, Limb.Working, "front of thigh"), Tint.Stretch(MuscleGroup.Hamstrings, null, "back of thigh"),
            Tint.Work(JointAction.ShoulderAbduction, Limb.Working, "shoulder"), Tint.Work(JointAction.TrunkFlexion, null, "belly"),
        ];
        var (right, left) = (Draw(SampleMovements.All[name], Side.Right, Palette.Light, tints), Draw(SampleMovements.All[name], Side.Left, Palette.Light, tints));
        Assert.Equal(SvgWriter.Inner(right.Scene.Shapes.Select(shape => shape.Flipped(right.Width)), Palette.Light), left.Inner);

        Frame[] words = [.. right.Scene.Shapes.Where(s => s.Text is not null).Select(s => LabelLayout.BoundsOf(s.Text!, s.TextSize, s.Line[0], s.TextSide))];
        Assert.Equal(tints.Length, words.Length);
        Assert.All(words, box =>
        {
            Assert.InRange(box.Left, 0, right.Width - box.Width);
            Assert.InRange(box.Top, 0, right.Height - box.Height);
        });
        for (var i = 0; i < words.Length; i++)
        {
            for (var j = i + 1; j < words.Length; j++)
            {
                var (a, b) = (words[i], words[j]);
                Assert.False(a.Left < b.Left + b.Width && b.Left < a.Left + a.Width && a.Top < b.Top + b.Height && b.Top < a.Top + a.Height);
            }
        }
    }

    [Fact]
    public void A_name_is_escaped_and_frames_that_move_carry_none()
    {
        var options = PictureOptions.Usual with { Tints = [Tint.Work(JointAction.HipAbduction, Limb.Working, "hip <&>")] };
        var movement = SampleMovements.All["side-lying leg raise"];
        var picture = Pictures.Still(TestBody.Model, TestBody.Points, movement, Side.Right, 1, options);
        Assert.Equal("hip <&>", XElement.Parse(picture.Inner).Elements("text").Single().Value);
        var moving = Pictures.Moving(TestBody.Model, TestBody.Points, movement, Side.Right, options, 3);
        Assert.All(moving.Frames, frame =>
        {
            Assert.Contains("fig-tint-work", frame, StringComparison.Ordinal);
            Assert.DoesNotContain("<text", frame, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void What_a_group_lengthens_is_where_its_action_works()
    {
        Assert.Equal(BodyAreas.Of(JointAction.KneeFlexion), BodyAreas.Of(MuscleGroup.Hamstrings));
        Assert.Equal(BodyAreas.Of(JointAction.HipFlexion), BodyAreas.Of(MuscleGroup.HipFlexors));
        Assert.Equal(BodyAreas.Of(JointAction.AnklePlantarflexion), BodyAreas.Of(MuscleGroup.Soleus));
        Assert.Equal(BodyAreas.Of(JointAction.HipAdduction), BodyAreas.Of(MuscleGroup.Adductors));
        Assert.Equal(BodyAreas.Of(JointAction.HipExtension), BodyAreas.Of(MuscleGroup.GluteusMaximus));
        Assert.All(Enum.GetValues<JointAction>(), action => Assert.True(Enum.IsDefined(BodyAreas.Of(action))));
        Assert.All(Enum.GetValues<MuscleGroup>(), group => Assert.True(Enum.IsDefined(BodyAreas.Of(group))));
    }
}
