using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Program;

/// <summary>The ranges of a dose, and the sentence for a number outside them.</summary>
public static class DoseFaults
{
    /// <summary>What can't be right about a program; null when nothing is wrong.</summary>
    public static string? Of(HomeProgram program, Func<string, Exercise?> exercise)
    {
        ArgumentNullException.ThrowIfNull(program);
        ArgumentNullException.ThrowIfNull(exercise);
        if (program.DaysPerWeek is < 1 or > 7)
            return "Days a week go from 1 to 7.";
        if (program.PainCeiling is < 0 or > 10)
            return "The pain ceiling goes from 0 to 10.";
        if (program.Agreed.Minutes is < 1 or > 120)
            return "Minutes a session go from 1 to 120.";
        foreach (var item in program.Items)
        {
            if (exercise(item.ExerciseId) is not { } known)
                return $"The library no longer has \"{item.ExerciseId}\". Remove it.";
            if (Of(item.Dose) is { } fault)
                return $"{known.Name}: {fault}";
        }

        return null;
    }

    /// <summary>What can't be right about a dose.</summary>
    public static string? Of(Dose dose)
    {
        ArgumentNullException.ThrowIfNull(dose);
        return dose switch
        {
            { Sets: < 1 or > 10 } => "sets go from 1 to 10.",
            { Repetitions: < 1 or > 200 } => "repetitions go from 1 to 200.",
            { RepetitionsTo: { } to } when to <= dose.Repetitions || to > 200 => "the upper repetitions must be more than the lower, 200 at most.",
            { TimesPerDay: < 1 or > 10 } => "times a day go from 1 to 10.",
            { RestSeconds: < 0 or > 600 } => "rest goes from 0 to 600 s.",
            { Effort: < 0 or > 10 } => "effort goes from 0 to 10.",
            _ when !Within(dose.OutSeconds, 0.5, 30) || !Within(dose.BackSeconds, 0.5, 30) => "out and back take 0.5 to 30 s.",
            _ when !Within(dose.HoldSeconds, 0, 600) => "a hold takes 0 to 600 s.",
            { WeightKg: { } kilograms } when !Within(kilograms, 0, 240) => "a weight goes from 0 to 240 kg.",
            _ => null,
        };
    }

    private static bool Within(double value, double low, double high) => value >= low && value <= high;
}
