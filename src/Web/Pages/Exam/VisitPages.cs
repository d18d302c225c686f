using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Finding the visit that a page is about.</summary>
public static class VisitPages
{
    /// <summary>The case with the named visit, or with the latest; null when the patient has no episode or the visit is not theirs.</summary>
    public static async Task<PatientCase?> FindAsync(CaseDesk desk, Acting who, Guid patientId, Guid? visitId)
    {
        ArgumentNullException.ThrowIfNull(desk);
        if (visitId is not { } wanted)
            return await desk.LoadAsync(who, patientId);
        var record = await desk.Stores.Visits.GetAsync(who, wanted);
        return record?.Patient.Id == patientId ? await desk.LoadAsync(who, patientId, wanted, record.Episode.Id) : null;
    }
}
