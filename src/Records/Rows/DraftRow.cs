namespace MomentArm.Records;

/// <summary>What a clinician has typed and not yet saved. Private to that clinician; not part of the record.</summary>
public sealed class DraftRow : IClinicRow
{
    public Guid ClinicId { get; init; }

    public Guid ClinicianId { get; init; }

    /// <summary>Which form or cell, for example "visit/…/note".</summary>
    public required string Key { get; init; }

    /// <summary>Text or JSON, as the page wrote it.</summary>
    public required string Text { get; set; }

    public DateTime UpdatedAtUtc { get; set; }
}
