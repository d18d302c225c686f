namespace MomentArm.Records;

/// <summary>One version of an exercise form that a clinic made itself. What it says never changes; a change makes a new version.</summary>
public sealed class ClinicForm : IAuditedRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    /// <summary>The id programs name it by; the same in every version.</summary>
    public required string FormId { get; init; }

    /// <summary>1 for the first version.</summary>
    public int Number { get; init; }

    public required string Name { get; init; }

    public ClinicFormState State { get; set; }

    /// <summary>The way in which <see cref="Document"/> is written.</summary>
    public int Format { get; init; }

    /// <summary>The form as JSON, as the content room writes it.</summary>
    [NameOnly]
    public required string Document { get; init; }

    public Guid CreatedById { get; init; }

    public required string CreatedByName { get; init; }

    public DateTime CreatedAtUtc { get; init; }

    public Guid RowVersion { get; set; }
}

/// <summary>Where a version of a form is in its life. A form not yet saved is a draft of the person who writes it.</summary>
public enum ClinicFormState
{
    /// <summary>In the clinic's library.</summary>
    InUse,

    /// <summary>A later version took its place.</summary>
    Replaced,

    /// <summary>No longer offered; programs that have it keep it.</summary>
    Retired,
}
