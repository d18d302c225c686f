using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Library;

/// <summary>Loads on nobody in particular, for looking at an exercise without a patient.</summary>
public sealed class ReferenceLoads(ContentLibrary content)
{
    private readonly Lazy<CaseReading> reading = new(() => CaseReading.Of(content.Basis, new CaseFacts(new Physique(), null, [], null)));

    /// <summary>The loads.</summary>
    public PersonalLoads Loads => reading.Value.Loads;

    /// <summary>The limits of length.</summary>
    public PersonalReach Reach => reading.Value.Reach;

    /// <summary>What was assumed, in sentences.</summary>
    public IReadOnlyList<string> Notes => reading.Value.Notes;
}
