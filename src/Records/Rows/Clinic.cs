namespace MomentArm.Records;

/// <summary>A clinic: the wall around everything else.</summary>
public sealed class Clinic : IAuditedRow, IVersionedRow
{
    public Guid Id { get; init; }

    public required string Name { get; set; }

    public string? Phone { get; set; }

    /// <summary>IANA name, for example America/Chicago.</summary>
    public required string TimeZone { get; set; }

    /// <summary>The invented clinic for looking around, which anyone at this computer may enter without an account.</summary>
    public bool IsDemo { get; init; }

    public Guid RowVersion { get; set; }

    Guid IClinicRow.ClinicId => Id;
}
