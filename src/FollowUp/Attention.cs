using System.Collections.Immutable;

namespace MomentArm.FollowUp;

/// <summary>A reason to look at a patient today.</summary>
/// <param name="Urgent">Whether it should not wait for the next visit.</param>
/// <param name="Sentence">The reason in a sentence.</param>
public sealed record AttentionReason(bool Urgent, string Sentence);

/// <summary>Finds who needs attention and why. It proposes nothing and changes nothing.</summary>
public static class Attention
{
    /// <summary>Days without a log after which a patient counts as quiet (our choice).</summary>
    public const int QuietDays = 7;

    /// <summary>The reasons for one patient.</summary>
    /// <param name="days">Home exercise day by day.</param>
    /// <param name="reports">Exercise reports of the last two weeks.</param>
    /// <param name="programFrom">First day of the current program; null when there is none.</param>
    /// <param name="today">Today.</param>
    /// <returns>Reasons, urgent first.</returns>
    public static ImmutableArray<AttentionReason> Reasons(
        ImmutableArray<ProgressDay> days, IReadOnlyCollection<ExerciseLog> reports, DateOnly? programFrom, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(reports);
        var reasons = ImmutableArray.CreateBuilder<AttentionReason>();
        var recent = days.Where(d => d.Day > today.AddDays(-7) && d.Day <= today).ToArray();
        var red = recent.Where(d => d.Light == PainLight.Red).ToArray();
        if (red.Length >= 2)
            reasons.Add(new AttentionReason(true, $"Red pain response {red.Length} times in 7 days, last: {red[^1].Why}."));
        else if (red.Length == 1)
            reasons.Add(new AttentionReason(true, $"Red pain response: {red[0].Why}."));
        var hurting = reports.Count(r => r.Difficulty == ExerciseReport.Hurt);
        if (hurting > 0)
            reasons.Add(new AttentionReason(false, hurting == 1 ? "One exercise was stopped because it hurt." : $"Exercises were stopped {hurting} times because they hurt."));
        if (recent.Count(d => d.Light == PainLight.Amber) >= 2)
            reasons.Add(new AttentionReason(false, "Amber pain response twice or more in 7 days: no step up."));
        if (programFrom is { } from)
        {
            // A pause before the program began is not held against it.
            var begun = !days.IsEmpty && days[^1].Day >= from;
            var quiet = today.DayNumber - (begun ? days[^1].Day : from).DayNumber;
            if (quiet >= QuietDays)
            {
                reasons.Add(new AttentionReason(
                    false, begun ? $"No session reported for {quiet} days." : $"No session reported since the program began {quiet} days ago."));
            }
        }

        var easy = reports.Count(r => r.Difficulty == ExerciseReport.TooEasy);
        if (easy >= 2 && red.Length == 0)
            reasons.Add(new AttentionReason(false, $"\"Too easy\" {easy} times in two weeks: consider the next rung."));
        return [.. reasons.OrderByDescending(r => r.Urgent)];
    }
}
