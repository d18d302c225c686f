using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;
using MomentArm.Web.Pages.Designer;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.Designer;

public sealed class FormEditsTests
{
    private static readonly string Folder = Path.Combine(House.Root, "content");
    private static readonly ContentLibrary Content = ContentLibrary.Read(Folder);
    private static readonly SurfacePoints Points = Content.Body.Points;

    [Fact]
    public void A_pose_between_lies_halfway_and_start_and_end_keep_their_names()
    {
        var file = NewForm.Neutral().Exercise;
        file = file with { Poses = [file.Poses[0], file.Poses[1] with { Working = new LimbFile { KneeFlexionDeg = 60 }, PitchHintDeg = 20 }] };
        var (added, at) = PoseEdits.Added(file, 0);
        Assert.Equal(1, at);
        Assert.Equal(["start", "middle", "end"], added.Poses.Select(p => p.Name));
        Assert.Equal((30, 10), (added.Poses[1].Working.KneeFlexionDeg, added.Poses[1].PitchHintDeg));
        var (more, second) = PoseEdits.Added(added, 2);
        Assert.Equal((2, 45), (second, more.Poses[2].Working.KneeFlexionDeg));
        Assert.Equal(["start", "middle", "middle 2", "end"], more.Poses.Select(p => p.Name));
        Assert.Equal(["start", "middle", "middle 2", "end"], PoseEdits.Moved(more, 0, 1).Poses.Select(p => p.Name));
        Assert.Equal(30, PoseEdits.Moved(more, 0, 1).Poses[0].Working.KneeFlexionDeg);
        Assert.Equal(["start", "end"], PoseEdits.Without(added, 0).Poses.Select(p => p.Name));
        Assert.Same(file, PoseEdits.Moved(file, 0, -1));
    }

    [Fact]
    public void Every_kind_of_pull_is_whole_from_the_start_and_when_it_is_made_another()
    {
        foreach (var kind in Enum.GetValues<PullKind>())
        {
            Assert.Empty(Faults(FormEdits.WithPulls(Bare(), [FormEdits.NewPull(kind)])));
            foreach (var from in Enum.GetValues<PullKind>())
                Assert.Empty(Faults(FormEdits.WithPulls(Bare(), [FormEdits.As(FormEdits.NewPull(from), kind, Points)])));
        }
    }

    [Fact]
    public void A_band_is_drawn_and_needed_while_it_pulls_and_its_picture_follows_it()
    {
        var loop = FormEdits.NewPull(PullKind.Loop);
        var with = FormEdits.WithPulls(Bare(), [loop]);
        Assert.Equal([new PropFile(PropKind.LoopBand, "kneeOuter")], with.Props);
        Assert.Equal([Equipment.LoopBand], with.Equipment);
        var moved = FormEdits.WithPulls(with, [loop with { At = "ankleOuter", Toward = "ankleInner" }]);
        Assert.Equal("ankleOuter", Assert.Single(moved.Props).At);
        var gone = FormEdits.WithPulls(moved, []);
        Assert.Empty(gone.Props);
        Assert.Empty(gone.Equipment);
    }

    [Fact]
    public void A_band_on_the_moving_arm_raises_what_the_shoulder_is_asked()
    {
        // A band from the palm down to the same side's foot pulls against lifting the arm.
        var form = NewForm.Neutral();
        var lifted = form.Exercise.Poses[1] with { Working = new LimbFile { ShoulderFlexionDeg = 70 } };
        form = form with { Exercise = form.Exercise with { Loads = [JointAction.ShoulderFlexion], Poses = [form.Exercise.Poses[0], lifted] } };
        var banded = form with { Exercise = FormEdits.WithPulls(form.Exercise, [FormEdits.NewPull(PullKind.Link)]) };
        double Share(OwnFormFile of) => DesignFigures.Of(of, 1, Content, new ReferenceLoads(Content), Content.Body.Build(new Physique()))
            .Load!.Shares.Single(s => s.Action == JointAction.ShoulderFlexion && s.Side == Side.Right).Middle;
        Assert.True(Share(banded) > 1.2 * Share(form), $"{Share(form)} {Share(banded)}");
    }

    [Fact]
    public void A_weight_brings_what_is_drawn_and_takes_it_along()
    {
        var with = FormEdits.WithWeight(Bare(), cuff: true);
        Assert.Equal((PropKind.CuffWeight, "ankle"), (with.Props[0].Kind, with.Props[0].At));
        Assert.Empty(Faults(with));
        var moved = FormEdits.WithWeight(with, 0, with.AddedLoads[0] with { At = "kneeFront", MassKg = 3 });
        Assert.Equal("kneeFront", moved.Props[0].At);
        var gone = FormEdits.WithWeight(moved, 0, null);
        Assert.Empty(gone.Props);
        Assert.Empty(gone.AddedLoads);
        Assert.Empty(gone.Equipment);
    }

    [Fact]
    public void Every_thing_has_a_place_that_the_check_allows_and_can_be_drawn()
    {
        foreach (var kind in Enum.GetValues<PropKind>())
        {
            var file = Bare() with { Props = [FormEdits.NewProp(Bare(), kind)] };
            Assert.Empty(Faults(file));
            var figures = DesignFigures.Of(NewForm.Neutral() with { Exercise = file }, 0, Content, new ReferenceLoads(Content), Content.Body.Build(new Physique()));
            Assert.NotNull(figures.Picture);
        }
    }

    [Fact]
    public void Every_place_of_the_body_can_be_chosen_by_a_name_of_its_own()
    {
        var names = BodyPlaces.Choices(Points, groups: true).SelectMany(p => p.Names).ToArray();
        Assert.Equal(Points.Points.Keys.Union(Points.Groups.Keys).Order(StringComparer.Ordinal), names.Order(StringComparer.Ordinal));
        Assert.All(BodyPlaces.Choices(Points, groups: false).SelectMany(p => p.Names), name => Assert.Single(Points.Resolve(name)));
        var single = BodyPlaces.Choices(Points, groups: false).SelectMany(p => p.Names).Select(BodyWords.Place).ToArray();
        Assert.Equal(single.Length, single.Distinct().Count());
        Assert.Null(BodyPlaces.LimbFor(Points, "headBack", Limb.Other));
        Assert.Equal(Limb.Working, BodyPlaces.LimbFor(Points, "palm", null));
    }

    private static ExerciseFile Bare() => NewForm.Neutral().Exercise with { BeyondModel = ["x"] };

    private static IReadOnlyList<ContentFault> Faults(ExerciseFile file) => OwnForm.ExerciseOf(file, Content).Faults;
}
