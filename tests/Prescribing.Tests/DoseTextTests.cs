namespace MomentArm.Prescribing.Tests;

/// <summary>Doses in words, to the letter.</summary>
public class DoseTextTests
{
    public static TheoryData<Dose, string, string, string> Doses => new()
    {
        {
            Samples.ThreeTens, "lift",
            "10 lifts, 3 times. Hold each for 2 seconds. Rest 1 minute between.",
            "3 \u00d7 10, out 2 s, hold 2 s, back 3 s, rest 60 s, 3 days a week"
        },
        {
            new Dose { Sets = 3, Repetitions = 1, HoldSeconds = 30, RestSeconds = 30, DaysPerWeek = 7 }, "stretch",
            "Hold 30 seconds. Do this 3 times. Rest 30 seconds between.",
            "3 \u00d7 1 hold 30 s, rest 30 s, 7 days a week"
        },
        {
            new Dose { Sets = 1, Repetitions = 1, HoldSeconds = 120, RestSeconds = 0, DaysPerWeek = 7, TimesPerDay = 2 }, "stretch",
            "Hold 2 minutes. Do this once. Do it 2 times a day.",
            "1 \u00d7 1 hold 120 s, rest 0 s, 2 times a day, 7 days a week"
        },
        {
            new Dose { Sets = 2, Repetitions = 10, RepetitionsTo = 15, WeightKg = 1.5, RestSeconds = 90, DaysPerWeek = 1, Effort = 7 }, "push",
            "10\u201315 pushes, 2 times. Use 1.5 kg. Rest 90 seconds between.",
            "2 \u00d7 10\u201315, out 2 s, back 3 s, 1.5 kg, rest 90 s, 1 day a week, effort 7 of 10"
        },
        {
            new Dose { Sets = 1, Repetitions = 1, HoldSeconds = 1, DaysPerWeek = 2 }, "step",
            "1 step, once. Hold each for 1 second.",
            "1 \u00d7 1 hold 1 s, rest 60 s, 2 days a week"
        },
        {
            new Dose { Sets = 3, Repetitions = 12, OutSeconds = 1.5, BackSeconds = 2.5, WeightKg = 2, RestSeconds = 120, DaysPerWeek = 4, TimesPerDay = 3 }, "press",
            "12 presses, 3 times. Use 2 kg. Rest 2 minutes between. Do it 3 times a day.",
            "3 \u00d7 12, out 1.5 s, back 2.5 s, 2 kg, rest 120 s, 3 times a day, 4 days a week"
        },
    };

    [Theory]
    [MemberData(nameof(Doses))]
    public void A_dose_reads_as_written(Dose dose, string word, string patient, string clinician)
    {
        Assert.Equal(patient, DoseText.ForPatient(dose, word));
        Assert.Equal(clinician, DoseText.ForClinician(dose));
    }

    [Fact]
    public void A_range_of_long_holds_keeps_its_range()
    {
        // Once this read "Hold 30 seconds. Do this once." and lost the two to four.
        var dose = new Dose { Sets = 1, Repetitions = 1, RepetitionsTo = 4, HoldSeconds = 30, RestSeconds = 0, DaysPerWeek = 7 };
        Assert.Equal("1\u20134 stretches, once. Hold each for 30 seconds.", DoseText.ForPatient(dose, "stretch"));
        Assert.Equal("1 \u00d7 1\u20134, out 2 s, hold 30 s, back 3 s, rest 0 s, 7 days a week", DoseText.ForClinician(dose));
    }

    [Theory]
    [InlineData("reach", "reaches")]
    [InlineData("push", "pushes")]
    [InlineData("press", "presses")]
    [InlineData("squat", "squats")]
    [InlineData("bridge", "bridges")]
    public void Words_for_repetitions_take_their_plural(string word, string plural) =>
        Assert.StartsWith($"10 {plural},", DoseText.ForPatient(Samples.ThreeTens, word), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Doses))]
    public void Patient_sentences_are_short_and_their_words_are_short(Dose dose, string word, string patient, string clinician)
    {
        // Sixth-grade reading: at most ten words in a sentence, no word over eight letters.
        Assert.NotEmpty(clinician);
        foreach (var sentence in DoseText.ForPatient(dose, word).Split(". "))
        {
            var words = sentence.TrimEnd('.').Split(' ');
            Assert.True(words.Length <= 10, patient);
            Assert.All(words, w => Assert.True(w.Trim(',').Length <= 8, w));
        }
    }

    [Fact]
    public void Numbers_are_written_alike_whatever_the_culture_of_the_machine()
    {
        var before = System.Globalization.CultureInfo.CurrentCulture;
        try
        {
            System.Globalization.CultureInfo.CurrentCulture = new System.Globalization.CultureInfo("de-DE");
            Assert.Contains("Use 1.25 kg.", DoseText.ForPatient(Samples.ThreeTens with { WeightKg = 1.25 }, "lift"), StringComparison.Ordinal);
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }
}
