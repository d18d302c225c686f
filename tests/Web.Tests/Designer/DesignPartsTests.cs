using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Drawing;
using MomentArm.Web.Pages.Designer;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.Designer;

public sealed class DesignPartsTests
{
    private static readonly string Folder = Path.Combine(House.Root, "content");
    private static readonly ContentLibrary Content = ContentLibrary.Read(Folder);
    private static readonly ReferenceLoads Reference = new(Content);
    private static readonly BodyModel Figure = Content.Body.Build(new Physique());

    [Fact]
    public void Every_angle_can_be_written_up_to_the_ends_that_the_check_allows_and_no_farther()
    {
        var form = NewForm.Neutral();
        foreach (var angle in JointAngle.All)
        {
            foreach (var (end, beyond) in new[] { (angle.Low, angle.Low - 1), (angle.High, angle.High + 1) })
            {
                Assert.DoesNotContain(Faults(angle.With(form.Exercise.Poses[0], end)), f => f.Path.StartsWith("poses[0].", StringComparison.Ordinal));
                Assert.Contains(Faults(angle.With(form.Exercise.Poses[0], beyond)), f => f.Path.StartsWith("poses[0].", StringComparison.Ordinal));
                Assert.Equal(end, angle.Get(angle.Set(form.Exercise.Poses[0], beyond)));
            }
        }

        IReadOnlyList<ContentFault> Faults(PoseFile pose) =>
            OwnForm.ExerciseOf(form.Exercise with { BeyondModel = ["x"], Poses = [pose, form.Exercise.Poses[1]] }, Content).Faults;
    }

    [Fact]
    public void A_pull_brings_the_grip_where_it_is_pulled()
    {
        // Lying on the back or side, the legs hang from a pelvis that lies still: what is pulled follows.
        var form = ShippedForms.Read(Content, Folder, "side-lying-leg-raise")!;
        var handle = PoseHandle.All.Single(h => h.Key == "working-hip");
        var (before, at) = Seen(form, handle);
        var pulled = handle.Pull(form.Exercise.Poses[0], before, Figure, 0, -4);
        var (_, now) = Seen(form with { Exercise = form.Exercise with { Poses = [pulled, form.Exercise.Poses[1]] } }, handle);
        Assert.InRange(at.Y - now.Y, 2, 6);
        Assert.NotEqual(form.Exercise.Poses[0], pulled);
    }

    [Fact]
    public void Mirrored_twice_a_pose_is_as_it_was()
    {
        var pose = ShippedForms.Read(Content, Folder, "clam")!.Exercise.Poses[1];
        var mirrored = PoseMirror.Of(pose);
        Assert.Equal(Orientation.SideLyingOnWorking, mirrored.Orientation);
        Assert.Equal(pose.Working, mirrored.Other);
        var back = PoseMirror.Of(mirrored);
        Assert.Equal((pose.Working, pose.Other, pose.Axial, pose.Orientation), (back.Working, back.Other, back.Axial, back.Orientation));
        Assert.Equal(pose.Contacts, back.Contacts);
    }

    [Fact]
    public void Changes_are_taken_back_and_done_again_and_a_pull_is_one_step()
    {
        var first = NewForm.Neutral();
        var design = new Design(first);
        OwnFormFile Named(string name) => first with { Exercise = first.Exercise with { Name = name } };
        foreach (var name in new[] { "a", "ab", "abc" })
            design.Take(Named(name), "name");
        design.Rest();
        design.Take(Named("abcd"), "name");
        design.Undo();
        Assert.Equal("abc", design.Form.Exercise.Name);
        design.Undo();
        Assert.Same(first, design.Form);
        Assert.False(design.CanUndo);
        design.Redo();
        design.Redo();
        Assert.Equal(("abcd", false), (design.Form.Exercise.Name, design.CanRedo));
    }

    [Fact]
    public void An_id_is_made_of_the_name_and_is_never_taken()
    {
        Assert.Equal("own-wall-lean-2", NewForm.IdFor("Wall lean!", ["own-wall-lean"]));
        Assert.Equal("own-form", NewForm.IdFor("¿?", []));
    }

    [Fact]
    public void A_neutral_stance_stands_and_says_what_is_missing()
    {
        var figures = DesignFigures.Of(NewForm.Neutral(), 0, Content, Reference, Figure);
        Assert.All(figures.Verdicts, v => Assert.Null(v.Refusal));
        Assert.NotNull(figures.Picture);
        foreach (var path in new[] { "name", "loads", "title", "cautions" })
            Assert.Contains(figures.Faults, f => f.Path == path);
    }

    private static (PosedPicture Picture, PicturePoint At) Seen(OwnFormFile form, PoseHandle handle)
    {
        var exercise = OwnForm.ExerciseOf(form.Exercise, Content).Exercise!;
        var picture = PosedPicture.Of(Figure, Content.Body.Points, exercise.Movement, Side.Right, 0, PictureOptions.Usual);
        var state = new BodyState(Figure);
        state.Update(picture.Placed.Pose);
        return (picture, picture.Camera.Project(handle.Place(state)));
    }
}
