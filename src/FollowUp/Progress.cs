using System.Collections.Immutable;

namespace MomentArm.FollowUp;

/// <summary>One day of a patient's home exercise.</summary>
/// <param name="Day">The day.</param>
/// <param name="Sessions">Sessions done.</param>
/// <param name="WorstPain">Worst pain during or straight after, 0 to 10; null when not answered.</param>
/// <param name="NextMorning">Pain the morning after; null when not answered.</param>
/// <param name="Effort">Highest effort, 0 to 10; null when not answered.</param>
/// <param name="Light">What the pain rule says; null when nothing was answered.</param>
/// <param name="Why">The reason for the light.</param>
public sealed record ProgressDay(
    DateOnly Day, int Sessions, int? WorstPain, int? NextMorning, int? Effort, PainLight? Light, string? Why);

/// <summary>Home exercise over time, day by day.</summary>
public static class Progress
{
    /// <summary>Days with a session, in order, each judged by the pain rule with the answer of the morning after.</summary>
    /// <param name="sessions">Session logs, any order; the same id twice is one session.</param>
    /// <param name="mornings">Morning logs, any order.</param>
    /// <param name="ceiling">Pain accepted as safe.</param>
    /// <returns>The days.</returns>
    public static ImmutableArray<ProgressDay> Days(
        IReadOnlyCollection<SessionLog> sessions, IReadOnlyCollection<MorningLog> mornings, int ceiling)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        ArgumentNullException.ThrowIfNull(mornings);

        // The morning answer on day d belongs to the session of day d - 1. Of two answers for one morning the worse counts.
        var morningPain = mornings.GroupBy(m => m.Day).ToDictionary(g => g.Key, g => g.Max(m => m.Pain));
        return
        [
            .. sessions.DistinctBy(s => s.Id).GroupBy(s => s.Day).OrderBy(g => g.Key).Select(day =>
            {
                int? worst = Highest(day.SelectMany(s => new[] { s.PainDuring, s.PainAfter }));
                int? morning = morningPain.TryGetValue(day.Key.AddDays(1), out var pain) ? pain : null;
                var verdict = PainResponse.Judge(worst, morning, UsualMorning(morningPain, day.Key), ceiling);
                return new ProgressDay(
                    day.Key, day.Count(), worst, morning, Highest(day.Select(s => s.Effort)), verdict?.Light, verdict?.Why);
            }),
        ];
    }

    /// <summary>Median of the morning answers of the seven days up to and including a day; null when there are none.</summary>
    private static int? UsualMorning(Dictionary<DateOnly, int> mornings, DateOnly day)
    {
        var week = Enumerable.Range(0, 7)
            .Select(back => day.AddDays(-back))
            .Where(mornings.ContainsKey)
            .Select(d => mornings[d])
            .Order()
            .ToArray();
        return week.Length == 0 ? null : week[(week.Length - 1) / 2];
    }

    private static int? Highest(IEnumerable<int?> values)
    {
        int? highest = null;
        foreach (var value in values)
            highest = value is { } v && (highest is null || v > highest) ? v : highest;
        return highest;
    }
}
