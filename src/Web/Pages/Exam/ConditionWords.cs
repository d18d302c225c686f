using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>How a measurement was taken, in words for the note: only what differs from the measure's own way, or was noted.</summary>
public static class ConditionWords
{
    /// <summary>The words of all readings of one measure, each with its side where there are two; empty when nothing was noted.</summary>
    public static string Of(Interpretation found)
    {
        ArgumentNullException.ThrowIfNull(found);
        var told = found.Readings
            .Select(r => (Words: Of(found.Measure, r.Measurement), Start: r.Measurement.Activity ?? Say.Side(r.Measurement.Side)))
            .Where(r => r.Words.Length > 0)
            .Select(r => r.Start.Length == 0 ? r.Words : $"{r.Start}: {r.Words}");
        return string.Join("; ", told);
    }

    private static string Of(Measure measure, Measurement one)
    {
        var how = one.Conditions;
        return string.Join(", ", new[]
        {
            one.Moment,
            how.Position is { } position && position != measure.Position
                ? $"taken {ExamWords.Position(position).ToLowerInvariant()} (usually {ExamWords.Position(measure.Position).ToLowerInvariant()})"
                : null,
            how.Device is { Length: > 0 } device ? $"with {device}" : null,
            how.Examiner is { Length: > 0 } examiner ? $"by {examiner}" : null,
            how.Bound switch { ValueBound.AtLeast => "at least this", ValueBound.AtMost => "at most this", ValueBound.Exact => null },
            how.UnknownUnit is { Length: > 0 } unit ? $"typed in \"{unit}\", a unit this measure does not know" : null,
            how.LowForce switch
            {
                LowForceReason.Pain => "pain kept the force low",
                LowForceReason.Fear => "the person did not dare more",
                LowForceReason.Nerve => "a sign of a nerve was seen",
                LowForceReason.Weakness => "the muscle gave out",
                null => null,
            },
            how.Printed is { Length: > 0 } printed ? $"printed or told as {printed}" : null,
            one.Note is { Length: > 0 } note ? note.Trim() : null,
        }.Where(part => !string.IsNullOrWhiteSpace(part)));
    }
}
