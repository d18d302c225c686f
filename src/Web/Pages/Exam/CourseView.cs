using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Which working hypotheses an episode holds, for the course beside its goals.</summary>
public static class CourseView
{
    private const string Sheet = "hypothesis";
    private const string AcceptedStart = "accepted";

    /// <summary>Ids of the hypotheses accepted when each was last decided on.</summary>
    public static IReadOnlyList<string> Accepted(IEnumerable<DatedAnswer> answers) =>
    [
        .. answers.Where(a => a.Row.Sheet == Sheet)
            .GroupBy(a => a.Row.Item, StringComparer.Ordinal)
            .Select(g => g.MaxBy(a => a.VisitNumber)!)
            .Where(a => a.Row.Value.StartsWith(AcceptedStart, StringComparison.Ordinal))
            .Select(a => a.Row.Item),
    ];

    /// <summary>"iliotibial-band-syndrome" as "Iliotibial band syndrome".</summary>
    public static string Name(string patternId)
    {
        ArgumentException.ThrowIfNullOrEmpty(patternId);
        return char.ToUpperInvariant(patternId[0]) + patternId[1..].Replace('-', ' ');
    }
}
