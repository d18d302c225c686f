using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.People;

namespace MomentArm.Web.Pages.Exam;

/// <summary>What a note tells beside the visit itself: goals, and the program with its hand-over, as they stood at the visit.</summary>
/// <param name="Goals">Goals set up to the day of the visit.</param>
/// <param name="Program">The newest version made up to the signing, or now while the note is open; null when there was none.</param>
/// <param name="TeachBacks">What was noted at the hand-over of that version.</param>
public sealed record NoteFacts(IReadOnlyList<Goal> Goals, ProgramVersion? Program, IReadOnlyList<TeachBack> TeachBacks)
{
    /// <summary>Loads them for the shown visit.</summary>
    public static async Task<NoteFacts> LoadAsync(CaseDesk desk, Acting who, PatientCase patientCase)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(patientCase);
        if (patientCase.Shown?.Visit is not { } visit)
            return new NoteFacts([], null, []);
        var until = visit.SignedAtUtc ?? DateTime.MaxValue;
        var program = (await desk.Stores.Programs.HistoryAsync(who, patientCase.Episode.Id))
            .Where(v => v.CreatedAtUtc <= until).MaxBy(v => v.Number);
        return new NoteFacts(
            [.. (await desk.Stores.Goals.ListAsync(who, patientCase.Episode.Id)).Where(g => g.SetOn <= visit.Day)],
            program,
            program is null ? [] : await desk.Stores.Programs.TeachBacksAsync(who, program.Id));
    }

    /// <summary>Goals, program and hand-over in lines for the plan.</summary>
    public IReadOnlyList<string> Lines(CaseDesk desk, PatientCase patientCase)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(patientCase);
        var counted = GoalView.Of(patientCase).ToDictionary(c => c.Key, c => c.Now);
        return
        [
            .. Goals.Select(goal =>
            {
                var measure = goal.MeasureId is { } id ? desk.Content.Exam.Measure(id) : null;
                double? now = measure is not null && counted.TryGetValue(GoalForm.Key(measure.Id, goal.Side, goal.Activity), out var value) ? value : null;
                var due = goal.DueOn is { } day ? $" By {ExamWords.Day(day)}." : "";
                return $"Goal: {goal.Text.TrimEnd('.')}. {GoalView.Standing(goal, measure, now)}{due}";
            }),
            .. ProgramLines(patientCase),
        ];
    }

    private IEnumerable<string> ProgramLines(PatientCase patientCase)
    {
        if (Program is not { } version)
            yield break;
        var program = version.ToProgram();
        var until = patientCase.Shown?.Visit.SignedAtUtc ?? DateTime.MaxValue;
        var given = version.HandedOverAtUtc is { } at && at <= until
            ? $"handed over {new ClinicTime(patientCase.Clinic).Stamp(at)}"
            : "not handed over at this visit";
        yield return FormattableString.Invariant(
            $"Home program, version {version.Number}, {program.DaysPerWeek} {(program.DaysPerWeek == 1 ? "day" : "days")} a week, pain up to {program.PainCeiling} of 10 agreed; {given}.");
        foreach (var item in program.Items)
            yield return $"{EpisodeStory.NameOf(patientCase.Library, item.ExerciseId, item.WorkingSide, item.BothSides)}: {DoseText.ForClinician(item.Dose)}.";
        if (TeachBacks.Count > 0)
            yield return HandOver(patientCase);
    }

    private string HandOver(PatientCase patientCase)
    {
        var well = TeachBacks.Count(t => t is { Shown: true, SaidBack: true });
        var missed = TeachBacks.Where(t => t.Missed is { Length: > 0 })
            .Select(t => $"{EpisodeStory.NameOf(patientCase.Library, t.ExerciseId, t.Side)}: {t.Missed}");
        var rest = string.Join("; ", missed);
        return FormattableString.Invariant($"Hand-over: {well} of {TeachBacks.Count} exercises shown and said back.")
            + (rest.Length == 0 ? "" : $" Gone over again: {rest.TrimEnd('.')}.");
    }
}
