using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content.Tests;

/// <summary>Doses that name a trial are the trial's; what the trade is used to holds; and stretches and lifts rank as published.</summary>
public sealed class TrialDoseTests
{
    /// <summary>
    /// First step of each slot of the hip arm: McKay 2020, J Orthop Surg Res, doi 10.1186/s13018-020-01713-7, Table 2 (read): knee side plank
    /// 30 s x 2; side-lying abduction 10 x 2; band side walk 15 x 2; hip hike 10 x 3; all 3 days a week. Mellor 2016, Table 3 (read): static abduction
    /// lying 3-5 x 5-15 s. Alfredson 1998 (memory): 3 x 15, twice a day, 7 days. Holmgren 2012 (read in a summary): 3 x 15, twice a day.
    /// </summary>
    [Theory]
    [InlineData("side-plank-knees", "mckay-2020", 1, 2, 30, 1, 3)]
    [InlineData("side-lying-leg-raise", "mckay-2020", 2, 10, 0, 1, 3)]
    [InlineData("band-side-step", "mckay-2020", 2, 15, 0, 1, 3)]
    [InlineData("hip-hike", "mckay-2020", 3, 10, 1, 1, 3)]
    [InlineData("supine-abduction-press", "mellor-2016", 1, 5, 10, 2, 7)]
    [InlineData("single-heel-raise-step", "alfredson-1998", 3, 15, 1, 2, 7)]
    [InlineData("side-lying-external-rotation", "holmgren-2012", 3, 15, 1, 2, 7)]
    public void A_dose_that_names_a_trial_is_the_trial_s(string id, string source, int sets, int repetitions, double hold, int timesPerDay, int days)
    {
        var exercise = Shipped.Exercise(id);
        Assert.Equal(source, exercise.DoseSource);
        Assert.Equal(
            (sets, repetitions, hold, timesPerDay, days),
            (exercise.Dose.Sets, exercise.Dose.Repetitions, exercise.Dose.HoldSeconds, exercise.Dose.TimesPerDay, exercise.Dose.DaysPerWeek));
    }

    /// <summary>What is usual in the trade (common practice, no source): stretches held 20 to 30 s, three times or more; strengthening 3 to 30 repetitions.</summary>
    [Fact]
    public void Doses_lie_where_the_trade_has_them()
    {
        foreach (var exercise in Shipped.Library.Exercises)
        {
            var dose = exercise.Dose;
            if (exercise.Purpose == Purpose.Stretch)
            {
                Assert.InRange(dose.HoldSeconds, 10, 60);
                Assert.True(dose.Sets * dose.Repetitions * dose.HoldSeconds >= 30, exercise.Id);
            }

            if (exercise.Purpose == Purpose.Strengthen)
                Assert.InRange(dose.Sets * (dose.HoldSeconds >= 15 ? 15 : dose.Repetitions), 3, 60);
            Assert.InRange(SessionTime.Seconds(new ProgramItem { ExerciseId = exercise.Id, Dose = dose, WorkingSide = Side.Right }, exercise), 20, 3700);
        }
    }

    /// <summary>
    /// Side-steps with the loop at the ankles, ten steps each way, three times, feet never together, one step each way in a short room; the hip hike stands on
    /// the sore side; the one-leg bridge keeps the hips level; the side lift goes a little backward, foot forward (common practice, no source).
    /// </summary>
    [Fact]
    public void What_the_trade_teaches_is_in_poses_and_words()
    {
        var steps = Shipped.Exercise("band-side-step-ankles");
        Assert.Equal((3, 10), (steps.Dose.Sets, steps.Dose.Repetitions));
        Assert.Contains(steps.Movement.Pulls, p => p.At.At.StartsWith("ankle", StringComparison.Ordinal));
        var words = Shipped.Library.Words("en", steps.Id);
        Assert.Contains("before your feet come together", words.AllText, StringComparison.Ordinal);
        Assert.NotNull(words.ShortSpace);
        Assert.Contains(Shipped.Exercise("hip-hike").Movement.Frames[0].Contacts, c => c.Limb == Limb.Working && c.Surface == SurfaceKind.Step);
        Assert.Contains("hip bones level", Shipped.Library.Words("en", "single-leg-bridge").AllText, StringComparison.Ordinal);
        Assert.All(Shipped.Exercise("side-lying-leg-raise").Movement.Frames, f => Assert.True(f.Working.HipFlexion < 0 && f.Working.HipInternalRotation == 0));
    }

    /// <summary>
    /// More of the hip abductors: side plank over side-lying lift over clam (Distefano 2009, Ekstrom 2007, activity, see reference rows in docs/models/body-activation.md).
    /// One leg over two in bridge and heel raise (mechanics). Sitting calf raise least of the heel raises (Baxter 2021).
    /// </summary>
    [Theory]
    [InlineData(JointAction.HipAbduction, "side-plank", "side-lying-leg-raise", "clam")]
    [InlineData(JointAction.HipExtension, "single-leg-bridge", "bridge")]
    [InlineData(JointAction.AnklePlantarflexion, "single-heel-raise", "double-heel-raise", "seated-heel-raise")]
    [InlineData(JointAction.TrunkFlexion, "front-plank", "knee-plank")]
    public void Lifts_rank_as_published(JointAction action, params string[] ids)
    {
        var shares = ids.Select(id => Reference.Loads.Of(Shipped.Exercise(id), Side.Right, Shipped.Exercise(id).Dose.WeightKg ?? 0).Of(action, Side.Right)?.Middle ?? 0).ToArray();
        for (var i = 1; i < shares.Length; i++)
            Assert.True(shares[i - 1] > shares[i], FormattableString.Invariant($"{ids[i - 1]} {shares[i - 1]:0.00} is not above {ids[i]} {shares[i]:0.00}"));
    }

    /// <summary>Knee straight lengthens gastrocnemius, knee bent does not (anatomy: it crosses the knee); soleus the other way round at more bend.</summary>
    [Fact]
    public void The_straight_knee_stretches_the_long_calf_and_the_bent_knee_the_short_one()
    {
        double Reach(string id, MuscleGroup group) => Reference.Reach.Of(Shipped.Exercise(id), Side.Right).Of(group, Side.Right).Peak.Middle;
        Assert.True(Reach("wall-calf-stretch", MuscleGroup.Gastrocnemius) > Reach("wall-soleus-stretch", MuscleGroup.Gastrocnemius));
        Assert.True(Reach("wall-soleus-stretch", MuscleGroup.Soleus) > Reach("wall-calf-stretch", MuscleGroup.Soleus));
    }

    private static CaseReading Reference { get; } = CaseReading.Of(Shipped.Library.Basis, new CaseFacts(LibraryReview.Person, null, [], null));
}
