namespace MomentArm.Records;

/// <summary>
/// One line of a clinic's audit trail. Written in the transaction of the change itself; the database refuses to change
/// or delete it; each line carries the hash of the one before.
/// </summary>
public sealed class AuditEntry : IClinicRow
{
    public Guid ClinicId { get; init; }

    /// <summary>1, 2, 3 … without gaps within the clinic.</summary>
    public long Sequence { get; init; }

    public DateTime AtUtc { get; init; }

    /// <summary>The clinician; null when the patient acted through a link.</summary>
    public Guid? WhoId { get; init; }

    public required string WhoName { get; init; }

    public Guid? PatientId { get; init; }

    /// <summary>What was done: added, changed, removed, signed, handed over …</summary>
    public required string Action { get; init; }

    public required string SubjectType { get; init; }

    public required string SubjectId { get; init; }

    /// <summary>JSON: field names, with before and after where the field is not by name only.</summary>
    public required string Changes { get; init; }

    /// <summary>SHA-256 over the previous hash and this line.</summary>
    public required byte[] Hash { get; init; }
}
