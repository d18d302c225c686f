using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>
/// Questions that one reading alone does not raise: sides swapped against the last visit, and readings of one visit that
/// contradict each other. They ask and never block.
/// </summary>
public static class EntryGuard
{
    /// <summary>Asks about what does not fit together.</summary>
    /// <param name="measures">The measures.</param>
    /// <param name="now">All readings of the visit, the new ones among them.</param>
    /// <param name="last">The latest earlier readings; empty on a first visit.</param>
    /// <returns>Questions in plain words; empty when all fits.</returns>
    public static ImmutableArray<EntryQuestion> Questions(
        IEnumerable<Measure> measures, IReadOnlyCollection<Measurement> now, IReadOnlyCollection<Measurement> last)
    {
        ArgumentNullException.ThrowIfNull(measures);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(last);
        var asked = ImmutableArray.CreateBuilder<EntryQuestion>();
        foreach (var measure in measures.Where(m => m.Sided))
        {
            if (Pair(measure, now) is { } today && Pair(measure, last) is { } before && AreSwapped(measure, today, before))
                asked.Add(new EntryQuestion(
                    measure.Name,
                    $"{measure.Name}: left {Say.Shown(measure, today.Left)} and right {Say.Shown(measure, today.Right)} are last visit's values with the sides "
                    + $"swapped (left {Say.Shown(measure, before.Left)}, right {Say.Shown(measure, before.Right)}). Are the sides right?"));
        }

        asked.AddRange(Ratings(measures, now));
        return asked.ToImmutable();
    }

    /// <summary>
    /// Whether today's two sides lie within error of last visit's other sides, and both beyond error of their own. Without a
    /// published error the default limits of findings are used.
    /// </summary>
    private static bool AreSwapped(Measure measure, (double Left, double Right) today, (double Left, double Right) before)
    {
        bool Alike(double a, double b) => Math.Abs(a - b) <= Limit(measure, a, b);
        return Alike(today.Left, before.Right) && Alike(today.Right, before.Left)
            && !Alike(today.Left, before.Left) && !Alike(today.Right, before.Right)
            && (today.Left - today.Right) * (before.Left - before.Right) < 0;
    }

    private static double Limit(Measure measure, double a, double b)
    {
        if (measure.Error is { } error)
            return error.Detectable(a, b);
        return measure.Unit == MeasureUnit.Radians ? 10 * Math.PI / 180 : 0.15 * (Math.Abs(a) + Math.Abs(b)) / 2;
    }

    private static (double Left, double Right)? Pair(Measure measure, IEnumerable<Measurement> readings)
    {
        var own = JudgedReadings.Of(readings.Where(m => m.MeasureId == measure.Id)).ToList();
        var (left, right) = (own.LastOrDefault(m => m.Side == Side.Left), own.LastOrDefault(m => m.Side == Side.Right));
        return left is null || right is null ? null : (measure.Combine(left.Trials), measure.Combine(right.Trials));
    }

    /// <summary>Worst pain is at least the pain now; the least is at most the usual, and the usual at most the worst.</summary>
    private static IEnumerable<EntryQuestion> Ratings(IEnumerable<Measure> measures, IReadOnlyCollection<Measurement> now)
    {
        var known = measures.ToDictionary(m => m.Id);
        foreach (var (low, high) in new[] { ("pain-now", "pain-worst"), ("pain-best", "pain-usual"), ("pain-usual", "pain-worst"), ("pain-best", "pain-worst"), ("pain-best", "pain-now") })
        {
            if (!known.TryGetValue(low, out var lower) || !known.TryGetValue(high, out var higher)
                || Rating(lower, now) is not { } a || Rating(higher, now) is not { } b || a <= b)
                continue;
            yield return new EntryQuestion(
                higher.Name, $"{lower.Name} ({Say.Number(a)}) is more than {Lower(higher.Name)} ({Say.Number(b)}). Ask once more which of the two is right.");
        }
    }

    private static double? Rating(Measure measure, IEnumerable<Measurement> now) =>
        now.LastOrDefault(m => m.MeasureId == measure.Id && m is { Activity: null, Moment: null }) is { } one ? measure.Combine(one.Trials) : null;

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
