using System.Globalization;
using System.Text;

namespace MomentArm.Prescribing;

/// <summary>A dose in words. Numbers are written with a point and no digit grouping.</summary>
public static class DoseText
{
    /// <summary>For the clinician: compact and complete, such as "3 x 10, 2-2-3 s, rest 60 s, 4 days a week".</summary>
    /// <param name="dose">The dose.</param>
    /// <returns>One line.</returns>
    public static string ForClinician(Dose dose)
    {
        ArgumentNullException.ThrowIfNull(dose);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{dose.Sets} \u00d7 {Count(dose)}");
        if (dose.Repetitions == 1 && dose.RepetitionsTo is null && dose.HoldSeconds > 0)
            text.Append(CultureInfo.InvariantCulture, $" hold {dose.HoldSeconds:0.#} s");
        else
            text.Append(CultureInfo.InvariantCulture, $", out {dose.OutSeconds:0.#} s{Held(dose)}, back {dose.BackSeconds:0.#} s");
        if (dose.WeightKg is > 0)
            text.Append(CultureInfo.InvariantCulture, $", {dose.WeightKg:0.##} kg");
        text.Append(CultureInfo.InvariantCulture, $", rest {dose.RestSeconds} s");
        if (dose.TimesPerDay > 1)
            text.Append(CultureInfo.InvariantCulture, $", {dose.TimesPerDay} times a day");
        text.Append(CultureInfo.InvariantCulture, $", {dose.DaysPerWeek} {(dose.DaysPerWeek == 1 ? "day" : "days")} a week");
        if (dose.Effort is { } effort)
            text.Append(CultureInfo.InvariantCulture, $", effort {effort} of 10");
        return text.ToString();
    }

    /// <summary>For the patient: short sentences, such as "10 lifts, 3 times. Rest 1 minute between."</summary>
    /// <param name="dose">The dose.</param>
    /// <param name="repetitionWord">What one repetition is called.</param>
    /// <returns>Sentences.</returns>
    public static string ForPatient(Dose dose, string repetitionWord)
    {
        ArgumentNullException.ThrowIfNull(dose);
        var text = new StringBuilder();
        if (dose.Repetitions == 1 && dose.RepetitionsTo is null && dose.HoldSeconds >= 10)
        {
            text.Append(CultureInfo.InvariantCulture, $"Hold {Seconds(dose.HoldSeconds)}. Do this {Times(dose.Sets)}.");
        }
        else
        {
            var many = dose.Repetitions == 1 && dose.RepetitionsTo is null ? repetitionWord : Plural(repetitionWord);
            text.Append(CultureInfo.InvariantCulture, $"{Count(dose)} {many}, {Times(dose.Sets)}.");
            if (dose.HoldSeconds > 0)
                text.Append(CultureInfo.InvariantCulture, $" Hold each for {Seconds(dose.HoldSeconds)}.");
        }

        if (dose.WeightKg is > 0)
            text.Append(CultureInfo.InvariantCulture, $" Use {dose.WeightKg:0.##} kg.");
        if (dose.RestSeconds > 0 && dose.Sets > 1)
            text.Append(CultureInfo.InvariantCulture, $" Rest {Seconds(dose.RestSeconds)} between.");
        if (dose.TimesPerDay > 1)
            text.Append(CultureInfo.InvariantCulture, $" Do it {Times(dose.TimesPerDay)} a day.");
        return text.ToString();
    }

    private static string Held(Dose dose) =>
        dose.HoldSeconds > 0 ? string.Create(CultureInfo.InvariantCulture, $", hold {dose.HoldSeconds:0.#} s") : "";

    private static string Count(Dose dose) => dose.RepetitionsTo is { } to
        ? string.Create(CultureInfo.InvariantCulture, $"{dose.Repetitions}\u2013{to}")
        : dose.Repetitions.ToString(CultureInfo.InvariantCulture);

    private static string Times(int count) => count switch
    {
        1 => "once",
        2 => "2 times",
        _ => string.Create(CultureInfo.InvariantCulture, $"{count} times"),
    };

    private static string Seconds(double seconds)
    {
        if (seconds >= 60 && seconds % 60 == 0)
        {
            var minutes = seconds / 60;
            return minutes == 1 ? "1 minute" : string.Create(CultureInfo.InvariantCulture, $"{minutes:0} minutes");
        }

        return seconds == 1 ? "1 second" : string.Create(CultureInfo.InvariantCulture, $"{seconds:0.#} seconds");
    }

    private static string Plural(string word) =>
        word.EndsWith("ch", StringComparison.Ordinal) || word.EndsWith("sh", StringComparison.Ordinal) || word.EndsWith('s') || word.EndsWith('x')
            ? word + "es"
            : word + "s";
}
