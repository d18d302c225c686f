using System.Text;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>One cell of the exam: a measure, a side where sides are measured apart, and an activity where the patient names one.</summary>
/// <param name="MeasureId">The measure.</param>
/// <param name="Side">The side; null for measures without side.</param>
/// <param name="Activity">The activity; null for the cell that is always there.</param>
/// <param name="Moment">Which of several readings of the visit, such as "after"; null for the cell that is always there.</param>
public sealed record CellKey(string MeasureId, Side? Side, string? Activity = null, string? Moment = null)
{
    /// <summary>Id of the cell's field on the page, such as "cell-hip-abduction-strength-left".</summary>
    public string ElementId
    {
        get
        {
            var parts = new[] { "cell", MeasureId, Say.Side(Side), Slug(Activity), Slug(Moment) };
            return string.Join('-', parts.Where(part => part.Length > 0));
        }
    }

    /// <summary>The cell of a measurement.</summary>
    public static CellKey Of(Measurement measurement)
    {
        ArgumentNullException.ThrowIfNull(measurement);
        return new CellKey(measurement.MeasureId, measurement.Side, Worded(measurement.Activity), Worded(measurement.Moment));
    }

    /// <summary>The cell of an observation.</summary>
    public static CellKey Of(Observation observation)
    {
        ArgumentNullException.ThrowIfNull(observation);
        return new CellKey(observation.MeasureId, observation.Side);
    }

    private static string? Worded(string? words) => string.IsNullOrWhiteSpace(words) ? null : words.Trim();

    private static string Slug(string? activity)
    {
        var slug = new StringBuilder();
        foreach (var letter in activity ?? "")
        {
            if (char.IsLetterOrDigit(letter))
                slug.Append(char.ToLowerInvariant(letter));
            else if (slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }

        return slug.ToString().TrimEnd('-');
    }
}
