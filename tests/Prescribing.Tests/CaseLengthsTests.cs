using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Exam;

namespace MomentArm.Prescribing.Tests;

/// <summary>Length tests and norms of a case become limits of length.</summary>
public class CaseLengthsTests
{
    private const double Degree = Math.PI / 180;
    private static readonly ContentLibrary Library = ContentLibrary.Read(Folder());
    private static readonly Physique Woman = new(Sex.Female, 41, 1.67, 66);

    [Fact]
    public void A_tested_side_is_limited_by_its_test_and_the_other_by_the_norm_marked_as_such()
    {
        var limits = Read(Reading("straight-leg-raise", Side.Left, 60)).Reach.Limits;
        Assert.Equal(LimitBasis.Tested, limits.BasisOf(MuscleGroup.Hamstrings, Side.Left));
        Assert.Equal(["Straight-leg raise"], limits.TestsOf(MuscleGroup.Hamstrings, Side.Left));
        Assert.Equal(LimitBasis.Norm, limits.BasisOf(MuscleGroup.Hamstrings, Side.Right));
        Assert.Equal(["Straight-leg raise, published mean, not verified"], limits.TestsOf(MuscleGroup.Hamstrings, Side.Right));
        Assert.Equal(["Modified Ober, published mean"], limits.TestsOf(MuscleGroup.LateralHip, Side.Right));
        Assert.Equal(LimitBasis.UsualRange, limits.BasisOf(MuscleGroup.Soleus, Side.Right));

        // A leg raised to the reading has 100 %; the interval is 1.2816 x 2.6 degrees (Neto 2015) on the tested side.
        var reach = HamstringsAt(limits, 60, Side.Left);
        Assert.Equal(1, reach.Middle, 1e-9);
        Assert.Equal(1, HamstringsAt(limits, 60 + 1.2816 * 2.6, Side.Left).Low, 2e-3);
    }

    [Fact]
    public void A_norm_is_that_of_the_persons_sex()
    {
        // Youdas et al. 2005, from memory: women 76.3, men 68.5 degrees of straight-leg raise.
        foreach (var (sex, degrees) in new[] { (Sex.Female, 76.3), (Sex.Male, 68.5) })
        {
            var limits = CaseReading.Of(Library.Basis, new CaseFacts(Woman with { Sex = sex }, null, [], null)).Reach.Limits;
            Assert.Equal(1, HamstringsAt(limits, degrees, Side.Right).Middle, 1e-9);
        }

        // Without a sex the mean of both, with a wider interval than either.
        var either = CaseReading.Of(Library.Basis, new CaseFacts(new Physique(), null, [], null)).Reach.Limits;
        Assert.Equal(1, HamstringsAt(either, (76.3 + 68.5) / 2, Side.Right).Middle, 1e-9);
    }

    [Fact]
    public void The_latest_reading_of_a_test_counts_and_pain_marks_it()
    {
        var first = new CaseVisit(1, new DateOnly(2026, 1, 5), [Reading("straight-leg-raise", Side.Left, 50)], []);
        var second = new CaseVisit(2, new DateOnly(2026, 2, 5), [Reading("straight-leg-raise", Side.Left, 45) with { PainDuring = 6 }], []);
        var limits = CaseReading.Of(Library.Basis, new CaseFacts(Woman, Side.Left, [second, first], null)).Reach.Limits;
        Assert.Equal(LimitBasis.TestedPainLimited, limits.BasisOf(MuscleGroup.Hamstrings, Side.Left));
        Assert.Equal(1, HamstringsAt(limits, 45, Side.Left).Middle, 1e-9);
    }

    [Fact]
    public void A_reading_that_cannot_be_true_is_left_out_and_said()
    {
        var reading = Read(Reading("straight-leg-raise", Side.Left, 150));
        Assert.Equal(LimitBasis.Norm, reading.Reach.Limits.BasisOf(MuscleGroup.Hamstrings, Side.Left));
        Assert.Contains(reading.Notes, n => n.Contains("Straight-leg raise, left: 150° cannot be true", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_shipped_length_test_is_replayed_with_100_percent_at_its_reading()
    {
        foreach (var measure in Library.Exam.Measures.Where(m => m.Kind == MeasureKind.MuscleLength))
        {
            var reach = Read(Reading(measure.Id, Side.Left, 25)).Reach;
            var (index, sign) = measure.Length!.Measured.On(reach.Limits.Set.Model, Side.Left);
            var pose = ClinicalPose.Of(reach.Limits.Set.Model, measure.Length.Pose, Side.Left);
            pose.Angles[index] = sign * 25 * Degree;
            Assert.Equal(1, Reach(reach.Limits, pose, measure.Group!.Value, Side.Left).Middle, 1e-9);
        }
    }

    [Fact]
    public void A_measured_range_of_motion_ends_the_room_of_a_stretch()
    {
        var free = Read().Reach.Farther(Library.Exercise("hamstring-strap-stretch")!, Side.Left, MuscleGroup.Hamstrings, Side.Left, 1);
        Assert.Equal("more hip flexion", free[0].Words);
        var stiff = Read(Reading("hip-flexion-range", Side.Left, 70)).Reach
            .Farther(Library.Exercise("hamstring-strap-stretch")!, Side.Left, MuscleGroup.Hamstrings, Side.Left, 1);
        Assert.DoesNotContain(stiff, s => s.Motion == Motion.HipFlexion);
    }

    [Fact]
    public void Exercises_said_to_lengthen_a_group_are_the_first_ranked_or_lengthen_it_on_the_working_side()
    {
        var reach = Read().Reach;
        Assert.Contains("hip-flexor-half-kneeling", reach.Rank(Library.Exercises, MuscleGroup.HipFlexors, Side.Left).Take(5).Select(r => r.Id));
        foreach (var exercise in Library.Exercises.Where(e => e.Purpose == Purpose.Stretch && e.Groups.Length > 0 && e.Accepted.All(a => !a.About.Equals(e.Groups[0].ToString(), StringComparison.OrdinalIgnoreCase))))
            Assert.True(reach.Of(exercise, Side.Left).Of(exercise.Groups[0], Side.Left).Lengthens, exercise.Id);
    }

    private static CaseReading Read(params Measurement[] measurements) => CaseReading.Of(
        Library.Basis, new CaseFacts(Woman, Side.Left, [new CaseVisit(1, new DateOnly(2026, 1, 5), [.. measurements], [])], null));

    private static Measurement Reading(string id, Side side, double degrees) =>
        new() { MeasureId = id, Side = side, Trials = [degrees * Degree] };

    private static Reach HamstringsAt(LengthLimits limits, double hipDegrees, Side side)
    {
        var pose = new BodyPose(limits.Set.Model);
        pose.Angles[limits.Set.Model.IndexOf(Motion.HipFlexion, side)] = hipDegrees * Degree;
        return Reach(limits, pose, MuscleGroup.Hamstrings, side);
    }

    private static Reach Reach(LengthLimits limits, BodyPose pose, MuscleGroup group, Side side)
    {
        var state = new BodyState(limits.Set.Model);
        state.Update(pose);
        var muscles = new MuscleState(limits.Set);
        muscles.Update(state, pose);
        return limits.Reach(group, side, muscles);
    }

    private static string Folder()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "MomentArm.slnx")))
                return Path.Combine(at.FullName, "content");
        }

        throw new InvalidOperationException("No folder above holds MomentArm.slnx.");
    }
}
