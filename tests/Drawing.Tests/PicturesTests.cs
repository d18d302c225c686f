using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using MomentArm.Body;

namespace MomentArm.Drawing.Tests;

public sealed class PicturesTests
{
    public static TheoryData<string> Movements { get; } = [.. SampleMovements.All.Keys.Order(StringComparer.Ordinal)];

    private static Picture Combined(string name, Side working, PictureOptions? options = null) =>
        Pictures.Combined(TestBody.Model, TestBody.Points, SampleMovements.All[name], working, options ?? PictureOptions.Usual);

    [Theory]
    [MemberData(nameof(Movements))]
    public void The_left_is_the_right_in_a_mirror(string name)
    {
        foreach (var fraction in (double[])[0, 0.5])
        {
            Picture At(Side side) => Pictures.Still(
                TestBody.Model, TestBody.Points, SampleMovements.All[name], side, fraction, PictureOptions.Usual);
            Mirrors(At(Side.Right), At(Side.Left));
        }

        Mirrors(Combined(name, Side.Right), Combined(name, Side.Left));
    }

    private static void Mirrors(Picture right, Picture left)
    {
        string Swap(string n) => n.StartsWith("right", StringComparison.Ordinal) ? "left" + n[5..]
            : n.StartsWith("left", StringComparison.Ordinal) ? "right" + n[4..] : n;

        Assert.Equal(right.ViewBox, left.ViewBox);
        Assert.NotEqual(right.Inner, left.Inner);
        Assert.Equal(right.Scene.Shapes.Select(shape => Swap(shape.Name)), left.Scene.Shapes.Select(shape => shape.Name));
        var mirrored = right.Scene.Shapes.Select(shape => shape.Flipped(right.Width));
        Assert.Equal(SvgWriter.Inner(mirrored, Palette.Light), left.Inner);
    }

    [Theory]
    [MemberData(nameof(Movements))]
    public void Everything_lies_inside_the_frame_or_crosses_that_of_a_close_up(string name)
    {
        var picture = Combined(name, Side.Left);
        if (SampleMovements.All[name] is { CloseUp: not null } or { Focus: MovementFocus.Neck, View: ViewKind.Front })
        {
            Assert.All(picture.Scene.Shapes, shape =>
            {
                var bounds = Frame.Bounds([shape]);
                Assert.True(bounds.Left < picture.Width + 1 && bounds.Left + bounds.Width > -1 && bounds.Top < picture.Height + 1 && bounds.Top + bounds.Height > -1);
            });
            return;
        }

        foreach (var shape in picture.Scene.Shapes)
        {
            var ends = shape.Loops.SelectMany(loop => loop).SelectMany(a => new[] { a.At(a.From), a.At(a.To), a.At((a.From + a.To) / 2) });
            foreach (var p in ends.Concat(shape.Line))
            {
                Assert.InRange(p.X, 0, picture.Width);
                Assert.InRange(p.Y, 0, picture.Height);
            }
        }

        Assert.InRange(picture.Width / picture.Height, 1.57, 1.63);
    }

    [Theory]
    [MemberData(nameof(Movements))]
    public void A_document_is_well_formed_and_free_of_styles(string name)
    {
        var document = XDocument.Parse(SvgWriter.Document(Combined(name, Side.Right), "Leg <raise>", "Lie & lift"));
        var root = document.Root!;
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.Equal("Leg <raise>", root.Elements().First().Value);
        Assert.Equal("Lie & lift", root.Elements().ElementAt(1).Value);
        Assert.DoesNotContain(root.DescendantsAndSelf(), e => e.Name.LocalName == "style" || e.Attribute("style") is not null || e.Attribute("id") is not null);
        Assert.DoesNotContain("NaN", document.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Movements))]
    public void Pictures_are_small(string name)
    {
        Assert.InRange(Combined(name, Side.Right).Inner.Length, 4_000, 16_000);
        var moving = Pictures.Moving(TestBody.Model, TestBody.Points, SampleMovements.All[name], Side.Right, PictureOptions.Usual);
        using var packed = new MemoryStream();
        using (var zip = new GZipStream(packed, CompressionLevel.Optimal, true))
            zip.Write(Encoding.UTF8.GetBytes(moving.Backdrop + string.Concat(moving.Frames)));
        Assert.InRange(packed.Length, 2_000, 40_000);
    }

    [Fact]
    public void Same_input_gives_the_same_text_in_any_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var first = Combined("clam", Side.Right).Inner;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(first, Combined("clam", Side.Right).Inner);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Every_tone_is_used_somewhere()
    {
        var used = SampleMovements.All.Keys.SelectMany(name => Combined(name, Side.Right).Scene.Shapes)
            .Concat(Pictures.Combined(
                TestBody.Model, TestBody.Points, SampleMovements.All["hands-and-knees leg lift"] with { View = ViewKind.Back }, Side.Right, PictureOptions.Usual)
                .Scene.Shapes)
            .Concat(Combined("clam", Side.Right, PictureOptions.Usual with
            {
                Palette = Palette.Gray,
                Tints = [Tint.Work(JointAction.HipExternalRotation, Limb.Working, "buttock"), Tint.Stretch(MuscleGroup.Hamstrings, Limb.Other)],
            }).Scene.Shapes)
            .Select(shape => shape.Tone)
            .ToHashSet();
        Assert.Equal([Tone.Paper], Enum.GetValues<Tone>().Except(used));
    }

    [Fact]
    public void From_the_side_the_near_leg_is_painted_over_the_far_one()
    {
        foreach (var (working, near, far) in new[] { (Side.Right, "right", "left"), (Side.Left, "left", "right") })
        {
            var names = Combined("sit to stand", working).Scene.Shapes.Where(s => s.Role == ShapeRole.Body).Select(s => s.Name).ToList();
            foreach (var part in (string[])["Thigh", "Shank", "Shorts"])
                Assert.True(names.IndexOf(near + part) > names.IndexOf(far + part), part);
            Assert.True(names.IndexOf("shirt") > names.IndexOf(far + "Sleeve"));
            Assert.True(names.IndexOf(near + "Sleeve") > names.IndexOf("shirt"));
        }
    }

    [Fact]
    public void The_working_limb_alone_carries_the_accent()
    {
        var shapes = Combined("bridge", Side.Left).Scene.Shapes;
        Assert.All(shapes.Where(s => s.Tone is Tone.Working), s => Assert.True(s.Name == "seam" || s.Name.StartsWith("left", StringComparison.Ordinal)));
        Assert.Contains(shapes, s => s.Name == "leftThigh" && s.Tone == Tone.Working);
        Assert.Contains(shapes, s => s.Name == "rightThigh" && s.Tone == Tone.FarOther);
    }

    [Fact]
    public void Every_kind_of_prop_is_drawn()
    {
        var drawn = SampleMovements.All.ToDictionary(m => m.Key, m => Combined(m.Key, Side.Right).Scene.Shapes.Select(s => s.Name).ToHashSet());
        foreach (var (name, movement) in SampleMovements.All)
        {
            foreach (var prop in movement.Props)
            {
                var wanted = prop.Kind switch
                {
                    PropKind.Mat => "floor",
                    PropKind.Chair => "chair",
                    PropKind.Step => "step",
                    PropKind.Wall => "wall",
                    PropKind.Roller => "roller",
                    PropKind.Strap => "strap",
                    PropKind.LoopBand => "band",
                    PropKind.CuffWeight => "rightCuff",
                    PropKind.HandWeight => "rightHandWeight",
                    PropKind.Pillow => "pillow",
                    PropKind.Bench => "bench",
                    PropKind.Table => "table",
                    PropKind.Board => "board",
                    PropKind.Ball => "ball",
                    PropKind.SmallBall => "smallBall",
                    PropKind.Band => "longBand",
                    PropKind.Towel => "towel",
                    PropKind.Stick => "stick",
                    PropKind.Bicycle => "bicycle",
                };
                Assert.Contains(wanted, drawn[name]);
            }
        }

        Assert.Equal(Enum.GetValues<PropKind>(), SampleMovements.All.Values.SelectMany(m => m.Props).Select(p => p.Kind).Distinct().Order());
    }

    [Fact]
    public void A_moving_arm_carries_the_accent_instead_of_the_leg()
    {
        var shapes = Combined("raise a weight to the side", Side.Left).Scene.Shapes;
        Assert.Contains(shapes, s => s.Name == "leftForearm" && s.Tone == Tone.Working);
        Assert.DoesNotContain(shapes, s => s.Name.EndsWith("Thigh", StringComparison.Ordinal) && s.Tone == Tone.Working);
    }

    [Fact]
    public void Only_what_moves_leaves_a_ghost()
    {
        var raise = Combined("side-lying leg raise", Side.Right).Scene.Shapes;
        Assert.Contains(raise, s => s.Tone == Tone.GhostWorking);
        Assert.Contains(raise, s => s.Role == ShapeRole.Arrow);

        var movement = SampleMovements.All["side-lying leg raise"];
        var hold = movement with { Frames = [movement.Frames[^1]] };
        var held = Pictures.Combined(TestBody.Model, TestBody.Points, hold, Side.Right, PictureOptions.Usual).Scene.Shapes;
        Assert.DoesNotContain(held, s => s.Role is ShapeRole.Ghost or ShapeRole.Arrow);

        var plain = Combined("side-lying leg raise", Side.Right, new PictureOptions { Ghost = false, Arrow = false }).Scene.Shapes;
        Assert.DoesNotContain(plain, s => s.Role is ShapeRole.Ghost or ShapeRole.Arrow);
    }

    [Fact]
    public void A_motion_too_small_to_see_has_neither_ghost_nor_arrow()
    {
        var movement = SampleMovements.All["side-lying leg raise"];
        var start = movement.Frames[0];
        var tiny = movement with { Frames = [start, start with { Working = start.Working with { HipAbduction = 0.02 } }] };
        var shapes = Pictures.Combined(TestBody.Model, TestBody.Points, tiny, Side.Right, PictureOptions.Usual).Scene.Shapes;
        Assert.DoesNotContain(shapes, s => s.Role is ShapeRole.Ghost or ShapeRole.Arrow);
    }

    [Fact]
    public void The_arrow_points_where_the_foot_goes()
    {
        var arrow = Combined("side-lying leg raise", Side.Right).Scene.Shapes.Single(s => s.Name == "arrow").Line;
        Assert.True(arrow[^1].Y < arrow[0].Y - 10, "the leg goes up");
        var side = Combined("standing leg raise to the side", Side.Right).Scene.Shapes.Single(s => s.Name == "arrow").Line;
        Assert.True(side[^1].X < side[0].X - 10, "seen from in front, the right leg goes to the picture's left");
    }

    [Fact]
    public void Moving_frames_begin_at_the_start_and_end_at_the_end()
    {
        var movement = SampleMovements.All["clam"];
        var moving = Pictures.Moving(TestBody.Model, TestBody.Points, movement, Side.Right, PictureOptions.Usual, 5);
        Assert.Equal(5, moving.Frames.Length);
        Assert.Equal(5, moving.Frames.Distinct().Count());
        Assert.All(moving.Frames, frame => XElement.Parse(frame));
        Assert.Contains("fig-mat", moving.Backdrop, StringComparison.Ordinal);

        var hold = movement with { Frames = [movement.Frames[0]] };
        Assert.Single(Pictures.Moving(TestBody.Model, TestBody.Points, hold, Side.Right, PictureOptions.Usual).Frames);
    }

    [Fact]
    public void A_body_whose_anchor_changes_glides_without_a_jump()
    {
        var movement = SampleMovements.All["outer-thigh rolling"];
        var heads = Enumerable.Range(0, 7)
            .Select(i => new Studio(TestBody.Model, TestBody.Points, movement, Side.Right, PictureOptions.Usual).Figure(i / 6.0))
            .Select(f => f.At(SegmentKind.Head, null, 0, 0.1, 0).X)
            .ToArray();
        var steps = heads.Zip(heads.Skip(1), (a, b) => b - a).ToArray();
        Assert.All(steps, step => Assert.InRange(step, -0.06, -0.005));
    }

    [Fact]
    public void A_picture_is_quick()
    {
        foreach (var name in SampleMovements.All.Keys)
            Combined(name, Side.Right);
        var quickest = SampleMovements.All.Keys.Min(name =>
        {
            var begin = Stopwatch.GetTimestamp();
            Combined(name, Side.Right);
            return Stopwatch.GetElapsedTime(begin).TotalMilliseconds;
        });
        Assert.InRange(quickest, 0, 10);
    }
}
