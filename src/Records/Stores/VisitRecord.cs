namespace MomentArm.Records;

/// <summary>A visit with all its parts.</summary>
public sealed record VisitRecord(
    Visit Visit,
    Episode Episode,
    Patient Patient,
    IReadOnlyList<MeasurementRow> Measurements,
    IReadOnlyList<ObservationRow> Observations,
    IReadOnlyList<DangerAnswerRow> DangerAnswers,
    IReadOnlyList<DangerDecision> DangerDecisions,
    IReadOnlyList<FindingDecision> FindingDecisions,
    IReadOnlyList<VisitAnswerRow> Answers,
    IReadOnlyList<NoteAmendment> Amendments);

/// <summary>An answer with the visit it was given in.</summary>
public sealed record DatedAnswer(Guid VisitId, DateOnly Day, int VisitNumber, VisitAnswerRow Row);

/// <summary>A measurement with the visit it was taken in.</summary>
public sealed record DatedMeasurement(Guid VisitId, DateOnly Day, int VisitNumber, MeasurementRow Row);

/// <summary>An observation with the visit it was made in.</summary>
public sealed record DatedObservation(Guid VisitId, DateOnly Day, int VisitNumber, ObservationRow Row);

/// <summary>The free text of a visit: what the patient says, what is seen, what it means, what comes next.</summary>
public sealed record VisitNote(string? Subjective = null, string? Objective = null, string? Assessment = null, string? Plan = null)
{
    /// <summary>What a row says, ready for editing.</summary>
    public static VisitNote Of(Visit row) => new(row.Subjective, row.Objective, row.Assessment, row.Plan);
}
