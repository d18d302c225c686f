using System.Collections.Immutable;
using MomentArm.FollowUp;
using MomentArm.Records;

namespace MomentArm.Web.Pages.People;

/// <summary>A patient's home exercise: day by day, and the reasons to look at it.</summary>
/// <param name="Days">Days with sessions, judged by the pain rule.</param>
/// <param name="Reasons">Reasons to look, urgent first; silence, if any, is one of them.</param>
/// <param name="Ceiling">Pain agreed as acceptable, 0 to 10.</param>
/// <param name="ProgramFrom">First day of the current program; null when there is none.</param>
/// <param name="IsQuiet">Whether nothing was reported for as many days as count as quiet.</param>
public sealed record HomeWork(
    ImmutableArray<ProgressDay> Days, ImmutableArray<AttentionReason> Reasons, int Ceiling, DateOnly? ProgramFrom, bool IsQuiet)
{
    /// <summary>The pain ceiling where no program names one.</summary>
    public const int UsualCeiling = 3;

    /// <summary>The reasons without silence.</summary>
    public required ImmutableArray<AttentionReason> Reported { get; init; }

    /// <summary>Reads what was reported against the program the patient has.</summary>
    public static HomeWork Of(
        IReadOnlyCollection<SessionLog> sessions, IReadOnlyCollection<MorningLog> mornings, ProgramVersion? current,
        ClinicTime time, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        ArgumentNullException.ThrowIfNull(time);
        var ceiling = current?.ToProgram().PainCeiling ?? UsualCeiling;
        DateOnly? from = current?.HandedOverAtUtc is { } utc ? time.DayOf(utc) : null;
        var days = Progress.Days(sessions, mornings, ceiling);
        var reports = sessions.Where(s => s.Day > today.AddDays(-14)).SelectMany(s => s.Exercises).ToArray();
        var last = days.IsEmpty ? from : days[^1].Day;
        return new HomeWork(
            days, Attention.Reasons(days, reports, from, today), ceiling, from,
            from is not null && today.DayNumber - last!.Value.DayNumber >= Attention.QuietDays)
        {
            Reported = Attention.Reasons(days, reports, null, today),
        };
    }
}
