using MomentArm.Body;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Program;

/// <summary>Saving and handing over a program, with the rules that no page may go around.</summary>
public sealed class ProgramDesk(CaseDesk desk)
{
    /// <summary>How long a patient's link opens the page.</summary>
    public static readonly TimeSpan LinkLifetime = TimeSpan.FromDays(180);

    public const string StoppedSentence =
        "Danger signs stop prescribing: nothing was saved. Finish the danger signs in the exam, or record a decision there.";

    public const string ReasonSentence = "Say in a few words why the program changes; the record keeps it with the new version.";

    public const string TeachSentence =
        "Not every exercise was shown and said back. Tick what the patient did, or write why the program is handed over without it.";

    private const string NotHere = "This clinic has no such patient.";
    private const int LongestReason = 500;

    /// <summary>Saves a new version: never while a danger sign stops prescribing, and never a change without its reason.</summary>
    public async Task<SaveOutcome<ProgramVersion>> SaveAsync(
        Acting who, Guid patientId, HomeProgram program, string? reason, Guid? basedOn)
    {
        ArgumentNullException.ThrowIfNull(program);
        if (await desk.LoadAsync(who, patientId) is not { } patientCase)
            return new SaveOutcome<ProgramVersion>.Refused(NotHere);
        if (patientCase.Gate.PrescribingStopped)
            return new SaveOutcome<ProgramVersion>.Refused(StoppedSentence);
        if (DoseFaults.Of(program, patientCase.Library.Exercise) is { } fault)
            return new SaveOutcome<ProgramVersion>.Refused(fault);
        var why = string.IsNullOrWhiteSpace(reason) ? null : reason.Trim();
        if (why is { Length: > LongestReason })
        {
            return new SaveOutcome<ProgramVersion>.Refused(
                FormattableString.Invariant($"The reason is longer than {LongestReason} letters; shorten it."));
        }


        if (patientCase.Latest is { } latest && why is null && !ProgramDraft.Same(latest.ToProgram(), program))
            return new SaveOutcome<ProgramVersion>.Refused(ReasonSentence);
        return await desk.Stores.Programs.SaveAsync(who, patientCase.Episode.Id, program, why, basedOn);
    }

    /// <summary>
    /// Hands the latest version over. What was not shown and said back needs a reason, which stays with each such exercise.
    /// </summary>
    public async Task<SaveOutcome<ProgramVersion>> HandOverAsync(
        Acting who, Guid patientId, Guid versionId, IReadOnlyList<TeachBackInput> taught, string? reasonWithout)
    {
        ArgumentNullException.ThrowIfNull(taught);
        if (await desk.LoadAsync(who, patientId) is not { } patientCase)
            return new SaveOutcome<ProgramVersion>.Refused(NotHere);
        if (patientCase.Gate.PrescribingStopped)
            return new SaveOutcome<ProgramVersion>.Refused(StoppedSentence);
        if (patientCase.Latest is not { } latest || latest.Id != versionId)
        {
            return new SaveOutcome<ProgramVersion>.Refused(
                "A newer version of this program was saved. Load the page again and teach that one.");
        }


        var rows = Complete(latest.ToProgram(), taught);
        var lacking = rows.Where(row => !(row.Shown && row.SaidBack)).ToHashSet();
        if (lacking.Count > 0 && string.IsNullOrWhiteSpace(reasonWithout))
            return new SaveOutcome<ProgramVersion>.Refused(TeachSentence);
        return await desk.Stores.Programs.HandOverAsync(
            who, versionId, [.. rows.Select(row => lacking.Contains(row) ? row with { Missed = Why(row.Missed, reasonWithout!) } : row)]);
    }

    /// <summary>One row for each exercise of the program, whatever was sent.</summary>
    private static List<TeachBackInput> Complete(HomeProgram program, IReadOnlyList<TeachBackInput> taught) =>
    [
        .. program.Items.DistinctBy(item => (item.ExerciseId, item.WorkingSide)).Select(item =>
            taught.FirstOrDefault(t => t.ExerciseId == item.ExerciseId && t.Side == item.WorkingSide)
            ?? new TeachBackInput(item.ExerciseId, item.WorkingSide, false, false)),
    ];

    private static string Why(string? missed, string reason)
    {
        var without = "Without teach-back: " + reason.Trim();
        return string.IsNullOrWhiteSpace(missed) ? without : missed.Trim() + "\n" + without;
    }
}
