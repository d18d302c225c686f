using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Prescribing;

/// <summary>One visit of a case: what was measured and what was said in words.</summary>
/// <param name="Order">Order in the episode, 1 first.</param>
/// <param name="Day">Day of the visit.</param>
/// <param name="Measurements">Readings.</param>
/// <param name="Observations">Words and manual grades.</param>
public sealed record CaseVisit(
    int Order, DateOnly Day, ImmutableArray<Measurement> Measurements, ImmutableArray<Observation> Observations);

/// <summary>What is known of a case. Everything but the visits may be missing.</summary>
/// <param name="Person">Build of the person.</param>
/// <param name="AffectedSide">The affected side, if one is named.</param>
/// <param name="Visits">Visits in any order; the one with the highest order is read as today's.</param>
/// <param name="Irritability">The clinician's grade; null to grade by pain ratings alone.</param>
public sealed record CaseFacts(
    Physique Person, Side? AffectedSide, ImmutableArray<CaseVisit> Visits, Irritability? Irritability)
{
    /// <summary>Whether norms that nobody read in their source are shown beside values.</summary>
    public bool ShowUnverified { get; init; } = true;

    /// <summary>What matters to this person when findings are ranked.</summary>
    public FindingRelevance Relevance { get; init; } = FindingRelevance.None;
}
