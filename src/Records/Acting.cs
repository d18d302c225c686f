namespace MomentArm.Records;

/// <summary>Who does something, and in which clinic. Every store asks for it; it decides what can be seen.</summary>
/// <param name="ClinicId">The clinic.</param>
/// <param name="ClinicianId">The clinician; null when the patient acts through a link.</param>
/// <param name="Name">The name the audit trail shows.</param>
public sealed record Acting(Guid ClinicId, Guid? ClinicianId, string Name)
{
    /// <summary>The clinician as acting person.</summary>
    public static Acting As(Clinician clinician) => new(clinician.ClinicId, clinician.Id, clinician.DisplayName);

    internal Guid Clinician => ClinicianId
        ?? throw new InvalidOperationException("Only a signed-in clinician can do this.");
}
