namespace MomentArm.Records;

/// <summary>What was added to a signed note later: it stands below the note, with who and when, and never changes.</summary>
public sealed class NoteAmendment : IAuditedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid VisitId { get; init; }

    [NameOnly]
    public required string Text { get; init; }

    public Guid ById { get; init; }

    public required string ByName { get; init; }

    public DateTime AtUtc { get; init; }
}
