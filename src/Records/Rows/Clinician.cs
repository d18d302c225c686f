using Microsoft.AspNetCore.Identity;

namespace MomentArm.Records;

/// <summary>
/// Someone who signs in. Not filtered by clinic, because sign-in has to find the person before the clinic is known;
/// whoever lists clinicians names the clinic.
/// </summary>
public sealed class Clinician : IdentityUser<Guid>
{
    public Guid ClinicId { get; init; }

    public string DisplayName { get; set; } = "";

    public ClinicianRole Role { get; set; }
}

/// <summary>What a person does in the clinic.</summary>
public enum ClinicianRole
{
    Owner,
    Therapist,
    Assistant,
    FrontDesk,
}
