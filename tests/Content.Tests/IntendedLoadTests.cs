using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content.Tests;

/// <summary>What an exercise is said to load is what the statics find, for a woman of 40 years, 1.65 m and 65 kg.</summary>
public sealed class IntendedLoadTests(ITestOutputHelper output)
{
    /// <summary>Intent, ladder and reading grade of every form, as exercise check prints them.</summary>
    [Fact]
    public void What_every_exercise_is_meant_for_is_what_is_found_or_is_accepted_with_a_reason()
    {
        var review = LibraryReview.Of(Shipped.Library);
        Assert.Equal(Shipped.Library.Exercises.Count, review.Exercises.Length);
        foreach (var one in review.Exercises.Where(e => !e.Figures.Exercise.Accepted.IsEmpty))
            output.WriteLine($"{one.Figures.Exercise.Id}: {string.Join(" ", one.Figures.Exercise.Accepted.Select(a => $"{a.About}: {a.Reason}"))}");
        Assert.True(!review.Faults.Any(), string.Join(Environment.NewLine, review.Faults));
    }

    [Fact]
    public void A_wrong_intent_a_spare_acceptance_and_a_ladder_out_of_order_are_seen()
    {
        var figures = ExerciseFigures.Of(
            Shipped.Exercise("clam") with { Loads = [JointAction.KneeExtension, JointAction.HipAbduction] },
            Reference.Loads, Reference.Reach, Side.Right);
        Assert.Equal("kneeExtension", Assert.Single(IntentCheck.Of(figures)).About);
        Assert.StartsWith("Meant to load kneeExtension, it asks ", IntentCheck.Of(figures)[0].What, StringComparison.Ordinal);
        Assert.Empty(IntentCheck.Of(figures with { Exercise = figures.Exercise with { Loads = [JointAction.HipAbduction] } }));
        Assert.Equal("soleus", Assert.Single(IntentCheck.Of(figures with
        {
            Exercise = figures.Exercise with { Purpose = Purpose.Stretch, Loads = [], Groups = [MuscleGroup.Soleus] },
        })).About);
    }

    private static CaseReading Reference { get; } = CaseReading.Of(Shipped.Library.Basis, new CaseFacts(LibraryReview.Person, null, [], null));

    [Fact]
    public void A_heavier_cuff_asks_more_of_the_knee_extensors()
    {
        var light = Compute("seated-knee-extension", 1).Of(JointAction.KneeExtension, Side.Right)!;
        var heavy = Compute("seated-knee-extension", 4).Of(JointAction.KneeExtension, Side.Right)!;

        // Three kilograms more at the ankle, about 0.38 m below the knee's axis with the leg level: 3 * 9.81 * 0.38 = 11 N m.
        Assert.InRange(heavy.Demand - light.Demand, 9.5, 12.5);
        Assert.True(heavy.Middle > light.Middle);
    }

    [Fact]
    public void One_leg_asks_at_least_twice_the_hip_extension_share_of_two() =>
        Assert.True(
            Compute("single-leg-bridge", 0).Of(JointAction.HipExtension, Side.Right)!.Middle
            > 2 * Compute("bridge", 0).Of(JointAction.HipExtension, Side.Right)!.Middle);

    [Fact]
    public void The_step_down_asks_more_of_one_knee_than_standing_up_on_two() =>
        Assert.True(
            Compute("lateral-step-down", 0).Of(JointAction.KneeExtension, Side.Right)!.Middle
            > Compute("sit-to-stand", 0).Of(JointAction.KneeExtension, Side.Right)!.Middle);

    [Fact]
    public void The_straight_leg_lift_asks_more_of_the_hip_abductors_than_the_clam() =>
        Assert.True(
            Compute("side-lying-leg-raise", 0).Of(JointAction.HipAbduction, Side.Right)!.Middle
            > Compute("clam", 0).Of(JointAction.HipAbduction, Side.Right)!.Middle);

    [Fact]
    public void The_loop_of_the_side_step_asks_the_abductors_for_its_pull_times_its_lever()
    {
        var movement = Shipped.Exercise("band-side-step").Movement;
        var person = Shipped.Library.Body.PersonOf(Shipped.Woman);
        double Abduction(Movement of) => MomentArm.Body.Loading.Of(person, of, Side.Right, 0).Of(JointAction.HipAbduction, Side.Right)!.Demand;

        // At the end pose the loop is stretched by some 40 to 70 % and pulls with 30 to 45 N, about 0.3 m below the bent hip's axis.
        Assert.InRange(Abduction(movement) - Abduction(movement with { Pulls = [] }), 4, 20);
    }

    private static MovementLoad Compute(string id, double addedKg)
    {
        var load = MomentArm.Body.Loading.Of(Shipped.Library.Body.PersonOf(Shipped.Woman), Shipped.Exercise(id).Movement, Side.Right, addedKg);
        Assert.True(load.Computed, $"{id}: {string.Join(" ", load.Problems)}");
        Assert.Empty(load.Problems);
        return load;
    }
}
