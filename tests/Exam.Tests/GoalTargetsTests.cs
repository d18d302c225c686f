using MomentArm.Body;

namespace MomentArm.Exam.Tests;

public sealed class GoalTargetsTests
{
    [Fact]
    public void Pain_gets_the_change_that_matters_from_where_the_person_starts_and_at_least_the_error()
    {
        // Baseline-dependent rule, pain-change-2021: 2 points from 5 to 7; from 3 one point, but the error printed is 1.77.
        Assert.Equal(4, Assert.Single(Targets("pain worst 6")).Value, 9);
        var low = Assert.Single(Targets("pain worst 3"));
        Assert.Equal(3 - 1.77, low.Value, 9);
        Assert.Contains("beyond error", low.Reason, StringComparison.Ordinal);
        Assert.Equal("pain-change-2021", low.Source);
    }

    [Fact]
    public void Strength_aims_at_nine_tenths_of_the_other_side_at_the_same_lever_arm()
    {
        // Usual pass mark 90 % (dingenen-2019). 149 N at 40 cm are 59.6 N m, at 36 cm 165.6 N; nine tenths of that are 149 N.
        Assert.Equal(0.9 * 149, Targets("hip abd L 118 at 36 cm, R 149 at 36 cm", Side.Left).First().Value, 9);
        Assert.Equal(0.9 * 149 * 0.40 / 0.36, Targets("hip abd L 118 at 36 cm, R 149 at 40 cm", Side.Left).First().Value, 9);
    }

    [Fact]
    public void The_better_side_gets_no_target_under_what_it_has() =>
        Assert.Empty(Targets("hip abd L 118 at 36 cm, R 149 at 36 cm", Side.Right).Where(t => t.Source is null));

    [Fact]
    public void Nothing_measured_gives_nothing() => Assert.Empty(Targets("slr L 72", Side.Right));

    private static System.Collections.Immutable.ImmutableArray<GoalTarget> Targets(string line, Side? side = null)
    {
        var typed = TypedEntry.Parse(line, Shipped.Exam.Measures);
        Assert.Empty(typed.Faults);
        return GoalTargets.For(
            Interpreter.Interpret(new InterpretationInput
            {
                Measure = Shipped.Measure(typed.Measurements[0].MeasureId),
                Now = typed.Measurements,
                Person = new Physique(Sex.Female, 34, 1.68, 64),
                Norms = Shipped.Exam.Norms,
            }),
            side);
    }
}
