using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>One published figure of how people with a complaint fared.</summary>
/// <param name="Share">Share of the people the outcome came true for, 0 to 1; null where the source gives only a time.</param>
/// <param name="Days">The time it belongs to, days from the start of care or of the complaint; null where the source gives none.</param>
/// <param name="ToDays">Later end, days, where the source gives a span.</param>
/// <param name="Outcome">What came true, in our words: "fully well".</param>
/// <param name="Population">Who they were and what was done.</param>
/// <param name="Source">Key into content/sources.json.</param>
public sealed record CourseFigure(double? Share, double? Days, double? ToDays, string Outcome, string Population, string Source)
{
    /// <summary>The figure in words: "44 of 100 fully well after 8 weeks".</summary>
    public string Words
    {
        get
        {
            var who = Share is { } share ? $"{Say.Number(100 * share)} of 100 {Outcome}" : char.ToUpperInvariant(Outcome[0]) + Outcome[1..];
            return (Days, ToDays) switch
            {
                ({ } from, { } to) => $"{who} after {Time(from)} to {Time(to)}",
                ({ } at, null) => $"{who} after {Time(at)}",
                _ => $"{who}; no time is given",
            };
        }
    }

    // Days under a month, weeks under five months, then months.
    private static string Time(double days) => days switch
    {
        < 28 => Count(Say.Number(days), "day"),
        < 150 => Count(Say.Number(days / 7), "week"),
        _ => Count(Say.Number(days * 12 / 365.25, 0), "month"),
    };

    private static string Count(string number, string unit) => $"{number} {unit}{(number == "1" ? "" : "s")}";
}

/// <summary>
/// How people with one complaint fared, from papers that were read. It tells a band of what to expect from others, never what this
/// person will do: people in studies are chosen, and most figures come from one small group.
/// </summary>
/// <param name="PatternId">Id of the working hypothesis in content/patterns.</param>
/// <param name="Figures">The figures, earliest first.</param>
public sealed record Course(string PatternId, ImmutableArray<CourseFigure> Figures)
{
    /// <summary>The course of a working hypothesis; null when none was published or read.</summary>
    /// <param name="courses">The courses of the content.</param>
    /// <param name="patternId">Id of the hypothesis.</param>
    /// <returns>The course or null.</returns>
    public static Course? Of(IEnumerable<Course> courses, string patternId)
    {
        ArgumentNullException.ThrowIfNull(courses);
        return courses.FirstOrDefault(c => c.PatternId == patternId);
    }
}
