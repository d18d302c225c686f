using MomentArm.Content;
using MomentArm.Documents;
using MomentArm.Records;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.Pages.Program;

/// <summary>Makes the sheet of a program version.</summary>
public sealed class HandoutMaker(ContentLibrary content, ExercisePictures pictures)
{
    /// <summary>The sheet as markup of our own making; every text in it is encoded.</summary>
    public string Make(PatientCase patientCase, ProgramVersion version, string? pageAddress)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        ArgumentNullException.ThrowIfNull(version);
        return Handout.Body(new HandoutInput
        {
            Program = version.ToProgram(),
            Area = patientCase.Episode.Title,
            Exercise = patientCase.Library.Exercise,
            Words = id => patientCase.Library.Words("en", id),
            Phrases = content.PatientWords,
            Model = pictures.Figure,
            Points = content.Body.Points,
            ClinicName = patientCase.Clinic.Name,
            ClinicPhone = patientCase.Clinic.Phone,
            PageAddress = pageAddress,
            Day = patientCase.Today,
        });
    }
}
