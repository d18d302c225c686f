using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>What stands in a cell for what is saved: the typing itself where it means just that, else the same written short.</summary>
public static class CellText
{
    /// <summary>The text of a saved cell; empty when nothing is saved.</summary>
    public static string Of(Measure measure, MeasurementRow? measured, ObservationRow? observed)
    {
        ArgumentNullException.ThrowIfNull(measure);
        var typed = (measured?.AsTyped ?? observed?.AsTyped)?.Trim();
        if (typed is not null && Means(typed, measure, measured, observed))
            return typed;
        var parts = new List<string>();
        if (observed is not null)
            parts.Add(observed.Grade ?? observed.Text);
        if (measured is not null)
            parts.Add(Short(measure, measured.ToMeasurement()));
        return string.Join(' ', parts);
    }

    /// <summary>A measurement written so that reading it again gives the same, to the digits shown.</summary>
    public static string Short(Measure measure, Measurement measurement)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(measurement);
        var unit = measure.Unit == MeasureUnit.Newtons ? "" : measure.Shown.Suffix;
        var numbers = measurement.Trials.Select(trial => Say.Number(trial / measure.Shown.StoredPerShown, 2) + unit);
        var text = string.Join(' ', numbers);
        if (measurement.Activity is { Length: > 0 } activity)
            text = $"{activity} {text}";
        if (measure.Unit == MeasureUnit.Newtons)
            text += measurement.LeverArmM == 1 ? " Nm" : " N";
        if (measurement.LeverArmM is { } lever && lever != 1)
            text += $" at {Say.Centimetres(lever)}";
        if (measurement.PainDuring is { } pain)
            text += FormattableString.Invariant($" pain {pain}");
        return measurement.Note is { Length: > 0 } note ? $"{text} {note}" : text;
    }

    private static bool Means(string typed, Measure measure, MeasurementRow? measured, ObservationRow? observed)
    {
        var side = measured is not null ? measured.Side : observed?.Side;
        var read = TypedEntry.Parse(typed, measure, side);
        return read.Faults.IsEmpty
            && read.Measurements.Length == (measured is null ? 0 : 1)
            && read.Observations.Length == (observed is null ? 0 : 1)
            && (measured is null || measured.Says(read.Measurements[0] with { AsTyped = measured.AsTyped }))
            && (observed is null || observed.Says(read.Observations[0], observed.AsTyped));
    }
}
