using CsCheck;

namespace MomentArm.Body.Tests.Capacities;

/// <summary>Several sources of one person's strength together.</summary>
public class CombinedEvidenceTests
{
    private const JointAction Abduction = JointAction.HipAbduction;

    private static Physique Someone { get; } = new(Sex.Female, 45, 1.68, 66);

    private static double PublishedAbduction { get; } = Of([], []).Published(Abduction, 0)!.Value;

    [Fact]
    public void Two_equal_tests_narrow_the_interval_by_the_root_of_two()
    {
        var one = At(Of([Force(0.8)], []));
        var two = At(Of([Force(0.8), Force(0.8)], []));
        Assert.Equal(one.Middle, two.Middle, 1e-9);
        Assert.Equal(LogWidth(one) / Math.Sqrt(2), LogWidth(two), 1e-9);
        Assert.Equal(CapacityBasis.Tested, two.Basis);
    }

    [Fact]
    public void Tests_that_differ_meet_in_the_middle_weighted_by_their_readers_errors()
    {
        // By hand: errors 0.12 and 0.08, weights 69.4 and 156.3: ln factor = (69.4 ln 0.6 + 156.3 ln 0.9) / 225.7 = -0.2300, factor 0.7945.
        var both = At(Of([Force(0.6), Force(0.9, ForceReader.FixedByStrap)], []));
        Assert.Equal(0.7945, both.Middle / PublishedAbduction, 0.0001);
    }

    [Fact]
    public void A_better_reader_gives_a_narrower_interval()
    {
        double Width(ForceReader reader) => LogWidth(At(Of([Force(0.8, reader)], [])));
        Assert.True(Width(ForceReader.HandHeld) > Width(ForceReader.ScaleOnStrap));
        Assert.True(Width(ForceReader.ScaleOnStrap) > Width(ForceReader.FixedByStrap));
        Assert.True(Width(ForceReader.FixedByStrap) > Width(ForceReader.FixedMachine));

        // Limits of agreement 33.6 % held by hand (Chamorro et al. 2017): 33.6 / (1.96 sqrt 2) = 12.1 %.
        Assert.Equal(2 * 1.2816 * 0.121, Width(ForceReader.HandHeld), 0.005);
    }

    [Fact]
    public void One_weak_source_does_not_jump_to_what_it_says()
    {
        var test = Repetitions(0.5 * 0.7, 15);
        var at = At(Of([], [test]));
        Assert.Equal(CapacityBasis.FromEndurance, at.Basis);
        Assert.InRange(at.Middle / PublishedAbduction, 0.55, 0.90);

        // It is narrower than the published figure alone and wider than a force test.
        Assert.True(LogWidth(at) < LogWidth(At(Of([], []))));
        Assert.True(LogWidth(at) > LogWidth(At(Of([Force(0.5)], []))));
    }

    [Fact]
    public void Repetitions_at_the_published_strength_leave_it_where_it_is() =>
        Assert.Equal(PublishedAbduction, At(Of([], [Repetitions(0.7, 15)])).Middle, 1e-9);

    [Fact]
    public void A_force_test_outweighs_repetitions_and_both_together_are_narrower_than_either()
    {
        var both = At(Of([Force(0.6)], [Repetitions(0.7, 15)]));
        Assert.Equal(CapacityBasis.Combined, both.Basis);
        Assert.InRange(both.Middle / PublishedAbduction, 0.60, 0.70);
        Assert.True(LogWidth(both) < LogWidth(At(Of([Force(0.6)], []))));
    }

    [Fact]
    public void What_pain_stopped_never_lowers_what_another_source_shows()
    {
        var alone = At(Of([Force(0.8)], []));
        var withPain = At(Of([Force(0.8), Force(0.4) with { PainLimited = true }], []));
        Assert.Equal(alone, withPain);
        Assert.Equal(CapacityBasis.Tested, withPain.Basis);
    }

    [Fact]
    public void What_pain_stopped_above_the_others_raises_the_estimate_and_is_marked()
    {
        var at = At(Of([Force(0.8), Force(1.1) with { PainLimited = true }], []));
        Assert.Equal(CapacityBasis.TestedPainLimited, at.Basis);
        Assert.Equal(1.1 * PublishedAbduction, at.Middle, 1e-9);
        var hold = EnduranceTest.OfHold(Abduction, Side.Right, PublishedAbduction, 0, 60, StatedEffort.ToTheEnd, painLimited: true);
        Assert.Equal(CapacityBasis.EndurancePainLimited, At(Of([], [hold])).Basis);
    }

    [Fact]
    public void What_pain_stopped_says_nothing_about_other_muscles()
    {
        var capacity = Of([Force(0.4) with { PainLimited = true }], []);
        var knee = capacity.At(JointAction.KneeExtension, Side.Right, 1)!.Value;
        Assert.Equal(CapacityBasis.PublishedOnly, knee.Basis);
        Assert.Equal(0.4 * PublishedAbduction, At(capacity).Middle, 1e-9);
    }

    [Fact]
    public void Repetitions_scale_the_untested_actions_too_and_never_wider_than_published()
    {
        var capacity = Of([], [Repetitions(0.4, 15)]);
        var knee = capacity.At(JointAction.KneeExtension, Side.Right, 1)!.Value;
        var alone = Of([], []).At(JointAction.KneeExtension, Side.Right, 1)!.Value;
        Assert.Equal(CapacityBasis.ScaledFromTested, knee.Basis);
        Assert.True(knee.Middle < alone.Middle);
        Assert.True(LogWidth(knee) <= LogWidth(alone) + 1e-12);
    }

    [Fact]
    public void A_stronger_test_never_lowers_a_capacity() =>
        Gen.Select(Gen.Double[0.2, 3], Gen.Double[1, 1.5], Gen.Double[1, 80], Gen.Double[0, 20], Gen.Int[0, 3]).Sample((factor, more, repetitions, extra, kind) =>
        {
            PatientCapacity With(double f, double r) => kind switch
            {
                0 => Of([Force(f)], []),
                1 => Of([Force(f), Force(0.9) with { PainLimited = true }], [Repetitions(0.5, r)]),
                2 => Of([], [Repetitions(f, r)]),
                _ => Of([], [Repetitions(f, 10), EnduranceTest.OfHold(Abduction, Side.Right, f * PublishedAbduction, 0, 3 * r, StatedEffort.ToTheEnd)]),
            };
            var (weak, strong) = (With(factor, repetitions), With(factor * more, repetitions + extra));
            foreach (var action in new[] { Abduction, JointAction.KneeFlexion })
            {
                var (low, high) = (weak.At(action, Side.Right, 0.5)!.Value, strong.At(action, Side.Right, 0.5)!.Value);
                Assert.True(high.Middle >= low.Middle * (1 - 1e-12), FormattableString.Invariant($"{action}: {high.Middle} after {low.Middle}"));
            }
        });

    [Theory]
    [InlineData(RepetitionTask.OneJoint)]
    [InlineData(RepetitionTask.LegPush)]
    [InlineData(RepetitionTask.ArmPush)]
    public void One_repetition_or_second_more_never_lowers_a_capacity_however_weak_or_strong_the_person(RepetitionTask task)
    {
        foreach (var part in new[] { 0.02, 0.1, 0.3, 1, 3, 10 })
        {
            var (lifted, held) = (0.0, 0.0);
            for (var count = 1.0; count <= 80; count += 0.5)
            {
                var demand = part * PublishedAbduction;
                var lift = At(Of([], [EnduranceTest.OfRepetitions(Abduction, Side.Right, demand, 0, count, StatedEffort.FromRating(8), task)])).Middle;
                var hold = At(Of([], [EnduranceTest.OfHold(Abduction, Side.Right, demand, 0, 5 * count, StatedEffort.FromRating(8))])).Middle;
                Assert.True(lift >= lifted * (1 - 1e-12) && hold >= held * (1 - 1e-12), FormattableString.Invariant($"{part} {count}"));
                (lifted, held) = (lift, hold);
            }
        }
    }

    [Fact]
    public void Left_and_right_are_treated_alike_and_the_trunk_knows_no_side() =>
        Gen.Select(Gen.Double[0.3, 2], Gen.Double[2, 40]).Sample((factor, repetitions) =>
        {
            var right = Of([Force(factor)], [Repetitions(factor, repetitions)]);
            var left = Of([Force(factor) with { Side = Side.Left }], [Repetitions(factor, repetitions, Side.Left)]);
            foreach (var action in Enum.GetValues<JointAction>())
            {
                Assert.Equal(right.At(action, Side.Right, 0.3), left.At(action, Side.Left, 0.3));
                Assert.Equal(right.At(action, Side.Left, 0.3), left.At(action, Side.Right, 0.3));
            }

            var trunk = Of([new StrengthTest(JointAction.TrunkExtension, Side.Left, 90, 0, false)], []);
            Assert.Equal(trunk.At(JointAction.TrunkExtension, Side.Left, 0), trunk.At(JointAction.TrunkExtension, Side.Right, 0));
            Assert.Equal(90, trunk.At(JointAction.TrunkExtension, Side.Right, 0)!.Value.Middle, 1e-9);
        });

    [Fact]
    public void The_evidence_can_be_asked_for()
    {
        var capacity = Of([Force(0.6)], [Repetitions(0.7, 15)]);
        var evidence = capacity.EvidenceFor(Abduction, Side.Right);
        Assert.Equal([CapacityEvidenceKind.Force, CapacityEvidenceKind.Repetitions], evidence.Select(e => e.Kind));
        Assert.Equal(0.6, evidence[0].Factor, 1e-12);
        Assert.Equal(1, evidence[1].Factor, 1e-9);
        Assert.Empty(capacity.EvidenceFor(Abduction, Side.Left));
    }

    [Fact]
    public void Whatever_is_known_every_capacity_is_an_ordered_positive_interval() =>
        Gen.Select(
            Gen.Select(Gen.Double[0, 120], Gen.Double[0.8, 2.4], Gen.Double[15, 350], Gen.Int[0, 31]),
            Gen.Select(Gen.Int[0, 33], Gen.Double[0.01, 2000], Gen.Double[-4, 4], Gen.Bool).Array[0, 4],
            Gen.Select(Gen.Int[0, 33], Gen.Double[0.01, 2000], Gen.Double[1, 200], Gen.Double[5, 10]).Array[0, 4],
            Gen.Double[-10, 10]).Sample((person, tests, tasks, angle) =>
        {
            var (age, stature, mass, known) = person;
            var physique = new Physique(
                (known & 1) != 0 ? null : (known & 16) != 0 ? Sex.Male : Sex.Female,
                (known & 2) != 0 ? null : age, (known & 4) != 0 ? null : stature, (known & 8) != 0 ? null : mass);
            var capacity = new PatientCapacity(
                TestBody.Content.Capacities, physique, TestBody.Content.Build(physique),
                tests.Select((t, i) => new StrengthTest((JointAction)t.Item1, (Side)(i % 2), t.Item2, t.Item3, t.Item4, (ForceReader)(i % 4))),
                tasks.Select((t, i) => i % 2 == 0
                    ? EnduranceTest.OfRepetitions((JointAction)t.Item1, Side.Left, t.Item2, 0.2, t.Item3, StatedEffort.FromRating(t.Item4), painLimited: i == 2)
                    : EnduranceTest.OfHold((JointAction)t.Item1, Side.Right, t.Item2, 0.2, 9 * t.Item3, StatedEffort.FromRating(t.Item4))));
            foreach (var action in Enum.GetValues<JointAction>())
            {
                var able = capacity.At(action, Side.Right, angle)!.Value;
                Assert.True(able.Low > 0 && able.Low < able.Middle && able.Middle < able.High && double.IsFinite(able.High));
            }
        });

    private static StrengthTest Force(double factor, ForceReader reader = ForceReader.HandHeld) =>
        new(Abduction, Side.Right, factor * PublishedAbduction, 0, false, reader);

    /// <summary>A task that asks a part of the published strength.</summary>
    private static EnduranceTest Repetitions(double partOfPublished, double repetitions, Side side = Side.Right) =>
        EnduranceTest.OfRepetitions(Abduction, side, partOfPublished * PublishedAbduction, 0, repetitions, StatedEffort.ToTheEnd);

    private static Capacity At(PatientCapacity capacity) => capacity.At(Abduction, Side.Right, 0)!.Value;

    private static double LogWidth(Capacity capacity) => Math.Log(capacity.High / capacity.Low);

    private static PatientCapacity Of(StrengthTest[] tests, EnduranceTest[] tasks) =>
        new(TestBody.Content.Capacities, Someone, TestBody.Content.Build(Someone), tests, tasks);
}
