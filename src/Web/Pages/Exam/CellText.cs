using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>What stands in a cell for what is saved: the typing itself where it means just that, else the same written short.</summary>
public static class CellText
{
    /// <summary>The text of a saved cell; empty when nothing is saved.</summary>
    public static string Of(Measure measure, MeasurementRow? measured, ObservationRow? observed, UnitChoice units = UnitChoice.Metric)
    {
        ArgumentNullException.ThrowIfNull(measure);
        var typed = (measured?.AsTyped ?? observed?.AsTyped)?.Trim();
        if (typed is not null && Means(typed, measure, measured, observed, units))
            return typed;
        var parts = new List<string>();
        if (observed is not null)
            parts.Add(observed.Grade ?? observed.Text);
        if (measured is not null)
            parts.Add(Short(measure, measured.ToMeasurement(), units));
        return string.Join(' ', parts);
    }

    /// <summary>A measurement written so that reading it again gives the same, to the digits shown.</summary>
    public static string Short(Measure measure, Measurement measurement, UnitChoice units = UnitChoice.Metric)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(measurement);
        var (shown, conditions) = (UsUnits.Shown(measure.Shown, units), measurement.Conditions);
        var isForce = measure.Unit == MeasureUnit.Newtons;
        var isTorque = isForce && measurement.LeverArmM == 1;
        var numbers = conditions.UnknownUnit is { } unit
            ? measurement.Trials.Select(trial => Say.Number(trial, 2) + " " + unit)
            : measurement.Trials.Select(trial => Say.Number(isTorque ? trial : trial / shown.StoredPerShown, 2) + (isForce ? "" : shown.Suffix));
        var bound = conditions.Bound switch { ValueBound.AtLeast => ">", ValueBound.AtMost => "<", _ => "" };
        var parts = new List<string?>
        {
            measurement.Activity,
            bound + string.Join(' ', numbers) + (isForce && conditions.UnknownUnit is null ? isTorque ? " Nm" : shown.Suffix : ""),
            measurement.LeverArmM is { } lever && !isTorque ? "at " + UsUnits.Lever(lever, units) : null,
            measurement.PainDuring is { } pain ? FormattableString.Invariant($"pain {pain}") : null,
            conditions.Position is { } position ? Position(position) : null,
            conditions.Device,
            conditions.Examiner is { } examiner ? "by " + examiner : null,
            measurement.Moment,
            measurement.Note,
            conditions.Printed is { } printed ? $"({printed})" : null,
        };
        return string.Join(' ', parts.Where(part => !string.IsNullOrEmpty(part)));
    }

    private static string Position(ExamPosition position) => ExamWords.Position(position).ToLowerInvariant();

    private static bool Means(string typed, Measure measure, MeasurementRow? measured, ObservationRow? observed, UnitChoice units)
    {
        var side = measured is not null ? measured.Side : observed?.Side;
        var read = TypedEntry.Parse(typed, measure, side, new EntryContext { Units = units });
        return read.Faults.IsEmpty
            && read.Measurements.Length == (measured is null ? 0 : 1)
            && read.Observations.Length == (observed is null ? 0 : 1)
            && (measured is null || measured.Says(Placed(read.Measurements[0], measured) with { AsTyped = measured.AsTyped }))
            && (observed is null || observed.Says(read.Observations[0], observed.AsTyped));
    }

    // In the cell of an activity or a moment the number alone is enough.
    private static Measurement Placed(Measurement read, MeasurementRow row) =>
        read with { Activity = read.Activity ?? row.Activity, Moment = read.Moment ?? row.Moment };
}
