using System.Collections.Immutable;

namespace MomentArm.FollowUp;

/// <summary>Days done against days prescribed, with an interval.</summary>
/// <param name="DoneDays">Different days with a session in the period.</param>
/// <param name="PlannedDays">Days prescribed in the period, rounded.</param>
/// <param name="Low">Lower end of the 95 % interval of the share done, 0 to 1.</param>
/// <param name="High">Upper end.</param>
/// <param name="Share">Done over planned, at most 1; null when nothing was planned.</param>
public sealed record Adherence(int DoneDays, int PlannedDays, double Low, double High, double? Share)
{
    /// <summary>
    /// Adherence in a period. Paper diaries overstate what was done by about a quarter (Nicolson 2018, doi:10.2519/jospt.2018.8275):
    /// pages that show this say so.
    /// </summary>
    /// <param name="sessionDays">Days with a session; the same day twice counts once.</param>
    /// <param name="from">First day of the period.</param>
    /// <param name="to">Last day of the period, included.</param>
    /// <param name="daysPerWeek">Days prescribed a week, 1 to 7.</param>
    /// <returns>The adherence.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Days a week outside 1 to 7.</exception>
    public static Adherence Of(IEnumerable<DateOnly> sessionDays, DateOnly from, DateOnly to, int daysPerWeek)
    {
        ArgumentNullException.ThrowIfNull(sessionDays);
        ArgumentOutOfRangeException.ThrowIfLessThan(daysPerWeek, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(daysPerWeek, 7);
        var done = sessionDays.Where(d => d >= from && d <= to).Distinct().Count();
        var length = Math.Max(0, to.DayNumber - from.DayNumber + 1);
        var planned = (int)Math.Round(length * daysPerWeek / 7.0, MidpointRounding.AwayFromZero);
        if (planned == 0)
            return new Adherence(done, 0, 0, 1, null);
        var counted = Math.Min(done, planned);
        var (low, high) = Wilson(counted, planned);
        return new Adherence(done, planned, low, high, (double)counted / planned);
    }

    /// <summary>Wilson's 95 % interval of a proportion (Wilson 1927; Newcombe 1998, Stat Med 17:857, method 3).</summary>
    /// <param name="successes">Successes, 0 to <paramref name="trials"/>.</param>
    /// <param name="trials">Trials, above 0.</param>
    /// <returns>Lower and upper end, 0 to 1.</returns>
    public static (double Low, double High) Wilson(int successes, int trials)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(successes);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(successes, trials);
        const double z = 1.959963984540054;
        double n = trials;
        var p = successes / n;
        var center = (2 * n * p + z * z) / (2 * (n + z * z));
        var half = z * Math.Sqrt(z * z + 4 * n * p * (1 - p)) / (2 * (n + z * z));
        return (Math.Max(0, center - half), Math.Min(1, center + half));
    }
}
