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

    /// <summary>Whether norms and figures that nobody read in their source are shown, marked so. They never grade.</summary>
    public bool ShowUnverified { get; set; } = true;

    public Guid RowVersion { get; set; }

    Guid IClinicRow.ClinicId => Id;
}
