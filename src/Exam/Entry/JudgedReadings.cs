using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Which readings of a visit may be judged.</summary>
public static class JudgedReadings
{
    /// <summary>
    /// Leaves out readings in a unit that nothing can be made of, and those of a named moment ("after", "passive") where a plain one of
    /// the same cell stands beside them; of several moments alone the first counts. They all stay in the record.
    /// </summary>
    /// <param name="readings">Readings of one visit.</param>
    /// <returns>Those that are compared and computed with.</returns>
    public static ImmutableArray<Measurement> Of(IEnumerable<Measurement> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var known = readings.Where(m => m.Conditions.UnknownUnit is null).ToList();
        return [.. known.Where(m => m.Moment is null || !known.Any(o => o != m && IsSameCell(o, m) && (o.Moment is null || known.IndexOf(o) < known.IndexOf(m))))
            .Where(m => m.Moment is not ("passive" or "active"))];
    }

    private static bool IsSameCell(Measurement a, Measurement b) => a.MeasureId == b.MeasureId && a.Side == b.Side && a.Activity == b.Activity;
}
