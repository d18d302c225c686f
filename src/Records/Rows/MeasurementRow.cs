using System.Globalization;
using System.Text.Json;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Records;

/// <summary>One measurement of a visit: one cell of the exam table, saved as soon as it is typed.</summary>
public sealed class MeasurementRow : IVisitRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid VisitId { get; init; }

    /// <summary>Which cell of the visit: measure, side and activity joined; one row each.</summary>
    public required string Cell { get; init; }

    public required string MeasureId { get; init; }

    public Side? Side { get; init; }

    /// <summary>In the stored unit of the measure, in the order taken.</summary>
    public required List<double> Trials { get; set; }

    public double? LeverArmM { get; set; }

    public int? PainDuring { get; set; }

    [NameOnly]
    public string? Activity { get; init; }

    /// <summary>Which of several readings of the visit; null when there is one only.</summary>
    public string? Moment { get; init; }

    /// <summary>How it was taken, as JSON; null when nothing was noted.</summary>
    [NameOnly]
    public string? Conditions { get; set; }

    public string? AsTyped { get; set; }

    [NameOnly]
    public string? Note { get; set; }

    /// <summary>When it was last typed.</summary>
    public DateTime AtUtc { get; set; }

    public Guid RowVersion { get; set; }

    /// <summary>The cell a measurement belongs in.</summary>
    public static string CellOf(Measurement measurement) => string.Create(
        CultureInfo.InvariantCulture,
        $"{measurement.MeasureId}|{measurement.Side?.ToString() ?? "-"}|{measurement.Activity?.Trim() ?? ""}")
        + (measurement.Moment is { } moment ? "|" + moment.Trim() : "");

    /// <summary>A new row for a measurement.</summary>
    public static MeasurementRow From(Measurement measurement, Guid clinicId, Guid visitId, Guid id, DateTime atUtc)
    {
        var row = new MeasurementRow
        {
            ClinicId = clinicId,
            Id = id,
            VisitId = visitId,
            Cell = CellOf(measurement),
            MeasureId = measurement.MeasureId,
            Side = measurement.Side,
            Activity = measurement.Activity?.Trim(),
            Moment = measurement.Moment?.Trim(),
            Trials = [.. measurement.Trials],
        };
        row.Take(measurement, atUtc);
        return row;
    }

    /// <summary>Takes over what was typed into the same cell.</summary>
    public void Take(Measurement measurement, DateTime atUtc)
    {
        Trials = [.. measurement.Trials];
        LeverArmM = measurement.LeverArmM;
        PainDuring = measurement.PainDuring;
        Conditions = TextOf(measurement.Conditions);
        AsTyped = measurement.AsTyped;
        Note = measurement.Note;
        AtUtc = atUtc;
    }

    /// <summary>Whether the row already says exactly this.</summary>
    public bool Says(Measurement measurement) =>
        Cell == CellOf(measurement)
        && Trials.SequenceEqual(measurement.Trials)
        && LeverArmM.Equals(measurement.LeverArmM)
        && PainDuring == measurement.PainDuring
        && Conditions == TextOf(measurement.Conditions)
        && AsTyped == measurement.AsTyped
        && Note == measurement.Note;

    /// <summary>The measurement as the exam room knows it.</summary>
    public Measurement ToMeasurement() => new()
    {
        MeasureId = MeasureId,
        Side = Side,
        Trials = [.. Trials],
        LeverArmM = LeverArmM,
        PainDuring = PainDuring,
        Activity = Activity,
        Moment = Moment,
        Conditions = Conditions is null ? TestConditions.None : JsonSerializer.Deserialize<TestConditions>(Conditions, RecordsJson.Options)!,
        AsTyped = AsTyped,
        Note = Note,
    };

    private static string? TextOf(TestConditions conditions) =>
        conditions == TestConditions.None ? null : JsonSerializer.Serialize(conditions, RecordsJson.Options);
}
