using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Library;

/// <summary>How long a dose keeps the muscles working, in words with its factors.</summary>
public static class DoseTime
{
    /// <summary>The time under tension of an exercise as it is usually dosed; the rests are not in it.</summary>
    public static string Words(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var dose = exercise.Dose;
        var each = dose.OutSeconds + dose.HoldSeconds + dose.BackSeconds;
        var least = dose.Sets * dose.SetSeconds;
        var most = dose.Sets * (dose.RepetitionsTo ?? dose.Repetitions) * each;
        var count = Say.Number(dose.Repetitions) + (dose.RepetitionsTo is { } to ? "–" + Say.Number(to) : "");
        var sets = dose.Sets == 1 ? "1 set" : $"{dose.Sets} sets";
        var repetitions = count == "1" ? "1 repetition" : $"{count} repetitions";
        var held = dose.HoldSeconds > 0 ? $" + {Say.Number(dose.HoldSeconds)} s held" : "";
        var total = Say.Number(least, 0) + (most > least ? "–" + Say.Number(most, 0) : "");
        var side = exercise.Movement.Bilateral ? "" : " for each side that works";
        return $"Time under tension at the usual dose: {sets} × {repetitions} × ({Say.Number(dose.OutSeconds)} s out{held} + {Say.Number(dose.BackSeconds)} s back) = {total} s{side}, rests left out.";
    }
}
