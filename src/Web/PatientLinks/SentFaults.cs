namespace MomentArm.Web.PatientLinks;

/// <summary>What can't be right about a report, as a sentence for the patient; null when nothing is wrong.</summary>
internal static class SentFaults
{
    /// <summary>Longest note.</summary>
    internal const int LongestNote = 1000;

    /// <summary>A phone without network may send this many days later.</summary>
    internal const int DaysBack = 30;

    private const int MostExercises = 50;

    internal static string? Of(SentSession session)
    {
        if (session.Id == Guid.Empty)
            return "This report has no id.";
        if (session.Exercises.Length is 0 or > MostExercises)
            return FormattableString.Invariant($"A session holds 1 to {MostExercises} exercises.");
        foreach (var exercise in session.Exercises)
        {
            if (exercise is null || exercise.ExerciseId.Length is 0 or > 200 || !Enum.IsDefined(exercise.Report)
                || exercise.Side is { } side && !Enum.IsDefined(side))
                return "One exercise of this report can't be read.";
            if (exercise.SetsDone is < 0 or > 100 || exercise.RepetitionsDone is < 0 or > 10_000)
                return "The sets or repetitions of this report can't be right.";
        }

        if (!IsRating(session.Effort) || !IsRating(session.PainDuring) || !IsRating(session.PainAfter))
            return "Effort and pain go from 0 to 10.";
        return session.Note is { Length: > LongestNote }
            ? FormattableString.Invariant($"The note is longer than {LongestNote} letters.")
            : null;
    }

    internal static string? Of(SentMorning morning)
    {
        if (morning.Id == Guid.Empty)
            return "This report has no id.";
        if (!Enum.IsDefined(morning.Compared))
            return "This report can't be read.";
        return IsRating(morning.Pain) ? null : "Pain goes from 0 to 10.";
    }

    /// <summary>The day must lie near today: a month back for a phone that was offline, a day ahead for one that travels.</summary>
    internal static string? OfDay(DateOnly day, DateOnly today) =>
        day.DayNumber < today.DayNumber - DaysBack || day.DayNumber > today.DayNumber + 1
            ? FormattableString.Invariant($"The day of this report is more than {DaysBack} days back or lies ahead. Check the date on your phone.")
            : null;

    private static bool IsRating(int? value) => value is null or (>= 0 and <= 10);
}
