using MomentArm.Body.Tests.Movements;
using Solver = MomentArm.Body.Inverse;

namespace MomentArm.Body.Tests.Inverse;

/// <summary>Inverse questions about load and their answers in words.</summary>
public class InverseTests
{
    private static readonly PatientCapacity Capacity = new(TestBody.Content.Capacities, new Physique(Sex.Male, 30, 1.741, 73.0), TestBody.Man, []);

    private static readonly LoadQuestion Question = new()
    {
        Knob = new Knob(KnobKind.Weight),
        Action = JointAction.HipAbduction,
        Side = Side.Right,
        WishedShare = 0.65,
    };

    [Fact]
    public void An_answer_is_told_with_value_share_and_interval()
    {
        var answer = Solver.Solve(Question, kg => Share(0.42 + 0.1 * kg));
        Assert.Equal("2.3 kg gives 65 % (interval 52-84 %).", answer.Words);
        Assert.Equal(2.3, answer.Value!.Value, 1e-9);
        Assert.Equal(0.65, answer.Share!.Middle, 1e-9);
        Assert.Empty(answer.Notes);
        Assert.Equal(2.3, Assert.IsType<RootFound>(answer.Root).X, 0.002);
    }

    [Fact]
    public void The_share_told_is_that_of_the_rounded_value_not_of_the_wish()
    {
        var answer = Solver.Solve(Question, kg => Share(0.40 + 1.2 * kg));
        Assert.Equal("0.2 kg gives 64 % (interval 51-83 %).", answer.Words);
        Assert.Equal(0.64, answer.Share!.Middle, 1e-9);
    }

    [Fact]
    public void What_is_not_reachable_is_told_with_the_best_there_is()
    {
        Assert.Equal("Not reachable: at most 43 % at 20 kg.", Solver.Solve(Question, kg => Share(0.03 + 0.02 * kg)).Words);
        Assert.Equal("Not reachable: at least 70 % at 0 kg.", Solver.Solve(Question, kg => Share(0.70 + 0.02 * kg)).Words);
        Assert.Equal("Not reachable: at most 64.96 % at 20 kg.", Solver.Solve(Question, kg => Share(0.6496 * kg / 20)).Words);
        Assert.Equal("Not reachable: at 3.1 kg it leaps from 40 % to 80 %.", Solver.Solve(Question, kg => Share(kg < 3.1 ? 0.4 : 0.8)).Words);
    }

    [Fact]
    public void What_cannot_be_computed_is_told_with_the_reason()
    {
        var answer = Solver.Solve(Question, _ => new MovementLoad([], ["Falls forward."], false));
        Assert.Equal("Not computed from 0 kg to 20 kg: Falls forward.", answer.Words);
        Assert.Equal(new RootNotComputed("Falls forward."), answer.Root);
        Assert.Null(answer.Value);
        Assert.StartsWith("Not computed from 0 kg to 20 kg: no share", Solver.Solve(Question, _ => (LoadShare?)null).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Part_of_a_range_that_cannot_be_computed_is_told_beside_what_is_not_reachable()
    {
        var answer = Solver.Solve(Question, kg => kg > 10 ? new MovementLoad([], ["A warning.", "Falls forward."], false) : new MovementLoad([Share(0.04 * kg)], [], true));
        Assert.Equal("Not reachable: at most 40 % at 10 kg.", answer.Words);
        Assert.Equal("Part of the range could not be computed: Falls forward.", Assert.Single(answer.Notes));
    }

    [Fact]
    public void Problems_at_the_answer_come_with_it_and_a_share_too_small_to_list_counts_as_none()
    {
        var answer = Solver.Solve(Question, kg => new MovementLoad(kg < 1 ? [] : [Share(0.2 * kg)], kg < 3 ? [] : ["Doubtful."], true));
        Assert.StartsWith("3.2 kg gives 64 %", answer.Words, StringComparison.Ordinal);
        Assert.Equal("Doubtful.", Assert.Single(answer.Notes));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.5)]
    [InlineData(3.5)]
    [InlineData(double.NaN)]
    public void A_wish_that_cannot_be_is_refused(double wish) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Solver.Solve(Question with { WishedShare = wish }, _ => Share(0.5)));

    [Fact]
    public void The_cuff_found_for_a_side_lying_raise_gives_that_share_when_it_is_loaded()
    {
        var movement = Frames.Of(Frames.SideLyingRaise(0), Frames.SideLyingRaise(30)) with
        {
            Loads = [new AddedLoad(LoadKind.Weight, "ankle", Limb.Working, 0)],
        };
        var answer = Solver.Solve(Question, kg => Load(Knobs.Apply(movement, Question.Knob, kg)));
        var found = Assert.IsType<RootFound>(answer.Root);
        Assert.Equal(0.65, Load(movement with { Loads = [movement.Loads[0] with { MassKg = found.X }] }).Of(JointAction.HipAbduction, Side.Right)!.Middle, 1e-4);

        // By hand: the share rises by cuff * 9.81 * lever / capacity; 0.37 of it is the leg.
        var bare = Load(movement).Of(JointAction.HipAbduction, Side.Right)!;
        var lever = TestBody.Man.StatureM * 0.49;
        Assert.Equal((0.65 - bare.Middle) * bare.Capacity.Middle / (9.81 * lever), found.X, 0.3);
    }

    [Fact]
    public void A_band_between_the_ankles_can_be_chosen_by_grade_by_rest_length_or_by_stretch_at_the_start()
    {
        // Lying on the side, the band between the ankles adds to the weight of the lifted leg.
        var movement = Frames.Of(Frames.SideLyingRaise(20), Frames.SideLyingRaise(30)) with
        {
            Pulls = [new LinkPull(new BodyPlace("ankle", Limb.Working), new BodyPlace("ankle", Limb.Other), new BandDose { F100N = 60, RestLengthM = 0.35 })],
        };
        foreach (var kind in new[] { KnobKind.BandF100, KnobKind.BandRestLength, KnobKind.BandPreStretch })
        {
            var question = Question with { Knob = new Knob(kind), WishedShare = 0.55 };
            var answer = Solver.Solve(question, x => Load(Knobs.Apply(movement, question.Knob, x)));
            Assert.True(answer.Root is RootFound, answer.Words);
            var found = (RootFound)answer.Root;
            Assert.Equal(0.55, Load(Knobs.Apply(movement, question.Knob, found.X)).Of(JointAction.HipAbduction, Side.Right)!.Middle, 1e-4);
            Assert.Equal(0.55, answer.Share!.Middle, 0.03);
            Assert.Contains(question.Knob.Told(answer.Value!.Value)[1..], answer.Words, StringComparison.Ordinal);
        }
    }

    private static MovementLoad Load(Movement movement) => MomentArm.Body.Loading.Of(TestBody.Content.PersonOf(new Physique(Sex.Male, 30, 1.741, 73.0)), movement, Side.Right, 0);

    private static LoadShare Share(double middle) =>
        new(JointAction.HipAbduction, Side.Right, 0.8 * middle, middle, 1.29 * middle, 100 * middle, Capacity.At(JointAction.HipAbduction, Side.Right, 0)!.Value, 1);
}
