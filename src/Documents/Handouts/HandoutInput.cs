using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Documents;

/// <summary>Everything a handout is made from. No patient name: the sheet lies about in kitchens.</summary>
public sealed record HandoutInput
{
    /// <summary>The program.</summary>
    public required HomeProgram Program { get; init; }

    /// <summary>The complaint as the clinic names it, such as "left hip".</summary>
    public required string Area { get; init; }

    /// <summary>Finds an exercise by id.</summary>
    public required Func<string, Exercise?> Exercise { get; init; }

    /// <summary>Finds an exercise's words by id.</summary>
    public required Func<string, ExerciseWords> Words { get; init; }

    /// <summary>The words around the exercises.</summary>
    public required PatientWords Phrases { get; init; }

    /// <summary>The body that is drawn.</summary>
    public required BodyModel Model { get; init; }

    /// <summary>Named surface points.</summary>
    public required SurfacePoints Points { get; init; }

    /// <summary>Name of the clinic; null on the command line.</summary>
    public string? ClinicName { get; init; }

    /// <summary>Phone of the clinic.</summary>
    public string? ClinicPhone { get; init; }

    /// <summary>Address that opens the patient page, with its token; null for none.</summary>
    public string? PageAddress { get; init; }

    /// <summary>Day of the handout.</summary>
    public required DateOnly Day { get; init; }
}

/// <summary>One exercise on the handout.</summary>
/// <param name="Number">Number in the program, from 1.</param>
/// <param name="Title">Name for the patient, for their side.</param>
/// <param name="SideLine">Which side works, in words.</param>
/// <param name="Picture">Start as ghost, end, arrow.</param>
/// <param name="Alt">What the picture shows, in words.</param>
/// <param name="Steps">Set-up and movement, for their side.</param>
/// <param name="Feel">What to feel.</param>
/// <param name="Dose">The dose in sentences.</param>
/// <param name="Note">The clinician's own words.</param>
public sealed record HandoutItem(
    int Number, string Title, string SideLine, Picture Picture, string Alt, ImmutableArray<string> Steps, string Feel, string Dose,
    string? Note);
