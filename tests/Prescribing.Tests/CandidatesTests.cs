using System.Collections.Immutable;
using CsCheck;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Prescribing.Tests;

/// <summary>Exercises offered for findings.</summary>
public class CandidatesTests
{
    private static readonly Exercise[] Library =
    [
        Samples.Exercise("clam", loads: [JointAction.HipAbduction, JointAction.HipExternalRotation], equipment: [Equipment.LoopBand]),
        Samples.Exercise("raise", loads: [JointAction.HipAbduction]),
        Samples.Exercise("bridge", position: BodyPosition.Supine, loads: [JointAction.HipExtension, JointAction.HipAbduction]),
        Samples.Exercise("outer-thigh-stretch", Purpose.Stretch, BodyPosition.Standing, groups: [MuscleGroup.LateralHip]),
        Samples.Exercise("outer-thigh-roll", Purpose.Release, groups: [MuscleGroup.LateralHip], equipment: [Equipment.Roller]),
        Samples.Exercise("step-down", Purpose.Functional, BodyPosition.Standing, loads: [JointAction.KneeExtension, JointAction.HipAbduction]),
        Samples.Exercise("calf-stretch", Purpose.Stretch, BodyPosition.Standing, groups: [MuscleGroup.Gastrocnemius]),
    ];

    private static readonly Finding Weak = Samples.Finding("weak", ImpairmentKind.Weak, 0.9, JointAction.HipAbduction, side: Side.Left);
    private static readonly Finding Short = Samples.Finding("short", ImpairmentKind.Short, 0.6, group: MuscleGroup.LateralHip, side: Side.Left);
    private static readonly Finding Stairs = Samples.Finding("stairs", ImpairmentKind.Activity, 0.5, side: null);

    /// <summary>The window is 50-80 %; the interval of a share is the fit's only input.</summary>
    [Theory]
    [InlineData(0.20, 0.30, 0.49, LoadFit.TooLight)]
    [InlineData(0.20, 0.30, 0.50, LoadFit.MaybeLight)]
    [InlineData(0.40, 0.49, 0.60, LoadFit.MaybeLight)]
    [InlineData(0.40, 0.50, 0.60, LoadFit.Inside)]
    [InlineData(0.30, 0.65, 1.20, LoadFit.Inside)]
    [InlineData(0.70, 0.80, 0.90, LoadFit.Inside)]
    [InlineData(0.70, 0.81, 0.95, LoadFit.MaybeHeavy)]
    [InlineData(0.80, 0.95, 1.10, LoadFit.MaybeHeavy)]
    [InlineData(0.81, 0.95, 1.10, LoadFit.TooHeavy)]
    public void The_fit_follows_from_where_the_interval_lies_to_the_window(double low, double middle, double high, LoadFit fit) =>
        Assert.Equal(fit, Candidates.FitOf(Samples.Share(low, middle, high), 0.5, 0.8));

    [Fact]
    public void Without_a_share_the_fit_is_not_judged() => Assert.Equal(LoadFit.NotJudged, Candidates.FitOf(null, 0.5, 0.8));

    [Fact]
    public void The_order_does_not_depend_on_the_order_of_exercises_or_findings() =>
        Gen.Select(Gen.Shuffle(Library), Gen.Shuffle(new[] { Weak, Short, Stairs })).Sample((exercises, findings) =>
        {
            var expected = Offer(Library, [Weak, Short, Stairs], Samples.NoLimits);
            var shuffled = Offer(exercises, findings, Samples.NoLimits);
            Assert.Equal(expected.Select(c => c.Exercise.Id), shuffled.Select(c => c.Exercise.Id));
            Assert.Equal(expected.Select(c => c.Relevance), shuffled.Select(c => c.Relevance));
            Assert.Equal(expected.Select(c => string.Join("|", c.Reasons)), shuffled.Select(c => string.Join("|", c.Reasons)));
        });

    [Fact]
    public void Nothing_is_hidden_and_what_stands_against_an_exercise_is_shown_and_ranks_last()
    {
        var limits = Samples.NoLimits with { Owned = [Equipment.Mat], Avoid = [BodyPosition.Supine] };
        var offered = Offer(Library, [Weak, Short, Stairs], limits);
        Assert.Equal(Library.Length, offered.Length);
        Assert.Equal(["Needs a loop band."], offered.Single(c => c.Exercise.Id == "clam").Obstacles);
        Assert.Equal(["Needs a roller."], offered.Single(c => c.Exercise.Id == "outer-thigh-roll").Obstacles);
        Assert.Equal(["Position to avoid: on the back."], offered.Single(c => c.Exercise.Id == "bridge").Obstacles);
        Assert.All(offered.TakeLast(3), c => Assert.NotEmpty(c.Obstacles));
        Assert.All(offered.SkipLast(3), c => Assert.Empty(c.Obstacles));
    }

    [Fact]
    public void What_was_not_asked_is_not_held_against_an_exercise() =>
        Assert.All(Offer(Library, [Weak], Samples.NoLimits), c => Assert.Empty(c.Obstacles));

    [Fact]
    public void An_exercise_takes_the_side_of_its_finding_and_else_the_fallback()
    {
        var offered = Offer(Library, [Weak, Stairs], Samples.NoLimits);
        Assert.Equal(Side.Left, offered.Single(c => c.Exercise.Id == "raise").Side);
        Assert.Equal(Side.Right, offered.Single(c => c.Exercise.Id == "calf-stretch").Side);
    }

    [Fact]
    public void Relevance_is_the_weight_of_what_is_met_less_for_second_and_third_aims()
    {
        var offered = Offer(Library, [Weak, Short, Stairs], Samples.NoLimits).ToDictionary(c => c.Exercise.Id);
        Assert.Equal(0.9, offered["raise"].Relevance, 1e-12);
        Assert.Equal(0.9 / 2, offered["bridge"].Relevance, 1e-12);
        Assert.Equal(0.9 / 2 + 0.3 * 0.5, offered["step-down"].Relevance, 1e-12);
        Assert.Equal(0.6, offered["outer-thigh-stretch"].Relevance, 1e-12);
        Assert.Equal(0.6 / 2, offered["outer-thigh-roll"].Relevance, 1e-12);
        Assert.Equal(0, offered["calf-stretch"].Relevance);
        Assert.Equal(["weak", "stairs"], offered["step-down"].Findings);
        Assert.Equal("For: Headline weak.", offered["step-down"].Reasons[0]);
    }

    [Fact]
    public void A_stiff_joint_is_met_by_the_stretch_of_the_group_that_holds_it_back()
    {
        var stiff = Samples.Finding("stiff", ImpairmentKind.Stiff, 1, JointAction.AnkleDorsiflexion);
        var first = Offer(Library, [stiff], Samples.NoLimits)[0];
        Assert.Equal("calf-stretch", first.Exercise.Id);
        Assert.Equal(1, first.Relevance);
    }

    [Fact]
    public void Of_equally_relevant_exercises_the_one_inside_the_window_comes_first()
    {
        var shares = new Dictionary<string, LoadShare>
        {
            ["heavy"] = Samples.Share(0.9, 1.0, 1.2),
            ["inside"] = Samples.Share(0.5, 0.6, 0.7),
            ["light"] = Samples.Share(0.1, 0.2, 0.3),
            ["beyond"] = Samples.Share(1.1, 1.2, 1.4),
        };
        var offered = Candidates.For(
            shares.Keys.Select(id => Samples.Exercise(id, loads: [JointAction.HipAbduction])),
            (exercise, _) => Samples.Load(shares[exercise.Id]),
            [Samples.Finding("weak", ImpairmentKind.Weak, 0.9, JointAction.HipAbduction)],
            Samples.NoLimits, Side.Right);
        Assert.Equal(["inside", "light", "beyond", "heavy"], offered.Select(c => c.Exercise.Id));
        Assert.Equal("Load share 60 % (50-70) lies in the window 50-80 %.", offered[0].Reasons[1]);
        Assert.Equal("Too light: 20 % (10-30), below the window 50-80 %.", offered[1].Reasons[1]);
        Assert.Equal("Beyond capacity: 120 % (110-140).", offered[2].Reasons[1]);
        Assert.Equal("Too heavy now: 100 % (90-120), above the window 50-80 %.", offered[3].Reasons[1]);
    }

    [Fact]
    public void A_stretch_is_not_judged_by_load_and_a_load_that_was_not_computed_says_why()
    {
        var offered = Candidates.For(
            [Samples.Exercise("stretch", Purpose.Stretch, loads: [JointAction.HipAbduction]), Samples.Exercise("fall", loads: [JointAction.HipAbduction])],
            (exercise, _) => exercise.Id == "fall"
                ? new MovementLoad([], ["Falls backward."], false)
                : Samples.Load(Samples.Share(0.5, 0.6, 0.7)),
            [], Samples.NoLimits, Side.Right).ToDictionary(c => c.Exercise.Id);
        Assert.Equal(LoadFit.NotJudged, offered["stretch"].Fit);
        Assert.Null(offered["stretch"].Main);
        Assert.Equal(["Load not computed. Falls backward."], offered["fall"].Reasons);
    }

    private static ImmutableArray<Candidate> Offer(IEnumerable<Exercise> exercises, IReadOnlyList<Finding> findings, Limits limits) =>
        Candidates.For(exercises, (_, side) => Samples.Load(Samples.Share(0.5, 0.6, 0.7, side: side)), findings, limits, Side.Right);
}
