namespace MomentArm.Web.Parts;

/// <summary>The pages about one patient.</summary>
public enum PatientTab
{
    Timeline,
    Exam,
    Reasoning,
    Findings,
    Program,
    Progress,
}
