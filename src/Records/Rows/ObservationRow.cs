using System.Globalization;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Records;

/// <summary>Words or a manual grade of a visit, typed where a number may stand: kept as typed, never turned into a number.</summary>
public sealed class ObservationRow : IVisitRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid VisitId { get; init; }

    /// <summary>Which cell of the visit: measure and side joined; one row each.</summary>
    public required string Cell { get; init; }

    public required string MeasureId { get; init; }

    public Side? Side { get; init; }

    /// <summary>The words.</summary>
    [NameOnly]
    public required string Text { get; set; }

    /// <summary>The manual grade, such as "4+/5"; null for words.</summary>
    public string? Grade { get; set; }

    /// <summary>The whole entry as typed.</summary>
    [NameOnly]
    public required string AsTyped { get; set; }

    /// <summary>When it was last typed.</summary>
    public DateTime AtUtc { get; set; }

    public Guid RowVersion { get; set; }

    /// <summary>The cell an observation belongs in.</summary>
    public static string CellOf(Observation observation) => string.Create(
        CultureInfo.InvariantCulture, $"{observation.MeasureId}|{observation.Side?.ToString() ?? "-"}");

    /// <summary>A new row for an observation.</summary>
    public static ObservationRow From(
        Observation observation, string asTyped, Guid clinicId, Guid visitId, Guid id, DateTime atUtc) => new()
    {
        ClinicId = clinicId,
        Id = id,
        VisitId = visitId,
        Cell = CellOf(observation),
        MeasureId = observation.MeasureId,
        Side = observation.Side,
        Text = observation.Text,
        Grade = observation.Grade,
        AsTyped = asTyped,
        AtUtc = atUtc,
    };

    /// <summary>Takes over what was typed into the same cell.</summary>
    public void Take(Observation observation, string asTyped, DateTime atUtc) =>
        (Text, Grade, AsTyped, AtUtc) = (observation.Text, observation.Grade, asTyped, atUtc);

    /// <summary>Whether the row already says exactly this.</summary>
    public bool Says(Observation observation, string asTyped) =>
        Cell == CellOf(observation) && Text == observation.Text && Grade == observation.Grade && AsTyped == asTyped;

    /// <summary>The observation as the exam room knows it.</summary>
    public Observation ToObservation() => new(MeasureId, Side, Text, Grade);
}
