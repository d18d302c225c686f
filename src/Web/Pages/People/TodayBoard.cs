using System.Collections.Immutable;
using MomentArm.Exam;
using MomentArm.FollowUp;
using MomentArm.Records;

namespace MomentArm.Web.Pages.People;

/// <summary>Where a patient stands on the start page, most pressing first.</summary>
public enum TodayGroup
{
    /// <summary>Should not wait for the next visit.</summary>
    Urgent,

    /// <summary>Look before the next visit.</summary>
    Look,

    /// <summary>A visit or a hand-over is due.</summary>
    Due,

    /// <summary>Nothing heard.</summary>
    Quiet,

    /// <summary>Nothing to do today.</summary>
    AsPlanned,
}

/// <summary>One reason, and the page where it is looked into.</summary>
public sealed record TodayReason(Tone Tone, string Word, string Sentence, string Href);

/// <summary>One open episode on the start page.</summary>
/// <param name="Row">The records.</param>
/// <param name="Group">Where it stands.</param>
/// <param name="Reasons">Why, most pressing first.</param>
/// <param name="Last">The latest day with a session; null when there is none.</param>
/// <param name="Week">Weeks since the episode began.</param>
public sealed record TodayLine(TodayRow Row, TodayGroup Group, ImmutableArray<TodayReason> Reasons, ProgressDay? Last, int Week)
{
    /// <summary>The patient's pages.</summary>
    public string Href => $"/patients/{Row.Patient.Id}";
}

/// <summary>Sorts the clinic's open episodes by what they ask for today.</summary>
public static class TodayBoard
{
    /// <summary>Days after a visit from which the next one counts as due. Our choice, no source.</summary>
    public const int DueDays = 14;

    public static IReadOnlyList<TodayLine> Of(IEnumerable<TodayRow> rows, ClinicTime time, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(rows);
        return [.. rows.Select(row => Line(row, time, today)).OrderBy(line => line.Group)];
    }

    /// <summary>The heading of a group.</summary>
    public static string Heading(TodayGroup group) => group switch
    {
        TodayGroup.Urgent => "Do not wait for the next visit",
        TodayGroup.Look => "Look before the next visit",
        TodayGroup.Due => "Due",
        TodayGroup.Quiet => "Quiet",
        TodayGroup.AsPlanned => "As planned",
    };

    private static TodayLine Line(TodayRow row, ClinicTime time, DateOnly today)
    {
        var href = $"/patients/{row.Patient.Id}";
        var home = HomeWork.Of(
            [.. row.RecentSessions.Select(s => s.ToLog())], [.. row.RecentMornings.Select(m => m.ToLog())],
            row.CurrentProgram, time, today);
        var pain = home.Reasons.Select(r => home.Reported.Contains(r)
            ? new TodayReason(r.Urgent ? Tone.Stop : Tone.Watch, r.Urgent ? "Urgent" : "Look", r.Sentence, href + "/progress")
            : new TodayReason(Tone.Neutral, "Quiet", r.Sentence, href + "/progress"));
        var due = Due(row, today, href).ToArray();
        var group = home.Reasons.Any(r => r.Urgent) ? TodayGroup.Urgent
            : !home.Reported.IsEmpty ? TodayGroup.Look
            : due.Length > 0 ? TodayGroup.Due
            : home.IsQuiet ? TodayGroup.Quiet
            : TodayGroup.AsPlanned;
        return new TodayLine(
            row, group, [.. pain, .. due], home.Days.IsEmpty ? null : home.Days[^1],
            Math.Max(0, (today.DayNumber - row.Episode.StartedOn.DayNumber) / 7));
    }

    private static IEnumerable<TodayReason> Due(TodayRow row, DateOnly today, string href)
    {
        if (row.LastVisit is not { } visit)
            yield return new TodayReason(Tone.Neutral, "Due", "No visit yet.", href);
        else if (visit.State == VisitState.Open && visit.Day < today)
            yield return new TodayReason(
                Tone.Neutral, "Due", FormattableString.Invariant($"Visit {visit.Number} is not signed."), href + "/exam");
        if (row.HasDraftProgram)
        {
            yield return new TodayReason(
                Tone.Neutral,
                "Due",
                row.CurrentProgram is null ? "A program waits to be taught and handed over." : "A changed program waits to be taught and handed over.",
                href + "/program");
        }

        if (row.LastVisitDay is { } day && today.DayNumber - day.DayNumber > DueDays)
        {
            yield return new TodayReason(
                Tone.Neutral, "Due", FormattableString.Invariant($"Last visit {today.DayNumber - day.DayNumber} days ago."), href);
        }
    }
}
