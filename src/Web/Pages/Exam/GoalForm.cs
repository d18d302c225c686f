using System.Globalization;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>The fields of a goal, as typed.</summary>
public sealed class GoalForm
{
    /// <summary>The goal, or the id the form was given when it was shown.</summary>
    public Guid Id { get; set; }

    /// <summary>Version that was read; empty for a new goal.</summary>
    public Guid? Version { get; set; }

    public string? Text { get; set; }

    /// <summary>Measure, side and activity joined by |; empty for none.</summary>
    public string? On { get; set; }

    /// <summary>Target in the shown unit.</summary>
    public string? Target { get; set; }

    public string? TargetReason { get; set; }

    public string? Due { get; set; }

    public string? State { get; set; }

    public string? Outcome { get; set; }

    /// <summary>Which measure, side and activity a goal is counted by.</summary>
    public static string Key(string measureId, Side? side, string? activity) => $"{measureId}|{side}|{activity}";

    /// <summary>The details the fields say, or what is wrong with them.</summary>
    /// <param name="measures">The measures.</param>
    /// <param name="before">The goal before, null for a new one.</param>
    /// <param name="today">Today in the clinic.</param>
    /// <param name="now">The value now of a key, in the stored unit; null when it was not measured.</param>
    public (GoalDetails? Details, string? Fault) Read(
        IReadOnlyList<Measure> measures, GoalDetails? before, DateOnly today, Func<string, double?> now)
    {
        ArgumentNullException.ThrowIfNull(now);
        var parts = (On ?? "").Split('|', 3);
        var measure = measures.FirstOrDefault(m => m.Id == parts[0]);
        double? target = null;
        if (!string.IsNullOrWhiteSpace(Target))
        {
            if (measure is null)
                return (null, "Choose the measure that the target belongs to.");
            if (!double.TryParse(Target.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var typed))
                return (null, $"\"{Target}\" is no number: type the target in {measure.Shown.Word}, such as 120.");
            target = typed * measure.Shown.StoredPerShown;
            if (!measure.HardRange.Holds(target.Value))
                return (null, $"{measure.Name} cannot be {Target}: it goes from {Say.Shown(measure, measure.HardRange.Low)} to {Say.Shown(measure, measure.HardRange.High)}.");
        }

        DateOnly? due = null;
        if (!string.IsNullOrWhiteSpace(Due))
        {
            if (!DateOnly.TryParseExact(Due, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
                return (null, $"\"{Due}\" is no day: type it as year-month-day.");
            due = day;
        }

        var baseline = before?.MeasureId == measure?.Id && before?.Baseline is { } kept ? kept : measure is null ? null : now(On!);
        return (new GoalDetails(Text ?? "", before?.SetOn ?? today)
        {
            MeasureId = measure?.Id,
            Side = parts.Length > 1 && Enum.TryParse<Side>(parts[1], out var side) ? side : null,
            Activity = parts.Length > 2 && parts[2].Length > 0 ? parts[2] : null,
            Baseline = baseline,
            Target = target,
            TargetReason = string.IsNullOrWhiteSpace(TargetReason) ? null : TargetReason.Trim(),
            DueOn = due,
            State = Enum.TryParse<GoalState>(State, out var state) && Enum.IsDefined(state) ? state : GoalState.Open,
            Outcome = string.IsNullOrWhiteSpace(Outcome) ? null : Outcome.Trim(),
        }, null);
    }
}
