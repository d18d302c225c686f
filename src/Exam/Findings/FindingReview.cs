using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>What the clinician made of one finding.</summary>
/// <param name="FindingId">The finding; ids of the clinician's own ones start with <see cref="OwnStart"/>.</param>
/// <param name="Accepted">False when dismissed.</param>
public sealed record FindingJudgment(string FindingId, bool Accepted)
{
    /// <summary>How the ids of findings written by a clinician start.</summary>
    public const string OwnStart = "own/";

    /// <summary>Why.</summary>
    public string? Reason { get; init; }

    /// <summary>The finding in the clinician's words; null as computed.</summary>
    public string? Headline { get; init; }

    /// <summary>Place in the clinician's own order, 1 first; null where it was computed.</summary>
    public int? Rank { get; init; }

    /// <summary>What a finding of the clinician's own acts on; null for computed ones, or when it acts on nothing.</summary>
    public Impairment? Impairment { get; init; }

    /// <summary>Whether a clinician wrote the finding.</summary>
    public bool IsOwn => FindingId.StartsWith(OwnStart, StringComparison.Ordinal);
}

/// <summary>A finding as it stands after the clinician looked at it.</summary>
/// <param name="Finding">The finding, in the clinician's words where there are any.</param>
/// <param name="Judgment">What the clinician made of it; null when not looked at yet.</param>
public sealed record ReviewedFinding(Finding Finding, FindingJudgment? Judgment)
{
    /// <summary>Whether it counts: everything does until it is dismissed.</summary>
    public bool Counts => Judgment is not { Accepted: false };
}

/// <summary>Puts the clinician's words, order and own findings over the computed ones. Nothing is ever taken away.</summary>
public static class FindingReview
{
    /// <summary>Weight of a clinician's own finding: that of a clear one on the affected side. Our choice.</summary>
    public const double OwnWeight = 0.8;

    /// <summary>Reviews the findings of a visit.</summary>
    /// <param name="findings">Computed findings, heaviest first.</param>
    /// <param name="judgments">What the clinician recorded, one a finding.</param>
    /// <returns>
    /// Those the clinician placed first, in that order; then the others by weight. Judgments about findings that are no longer
    /// computed are left out; own findings always stay.
    /// </returns>
    public static ImmutableArray<ReviewedFinding> Apply(IReadOnlyList<Finding> findings, IReadOnlyList<FindingJudgment> judgments)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(judgments);
        var known = judgments.DistinctBy(j => j.FindingId).ToDictionary(j => j.FindingId, StringComparer.Ordinal);
        var computed = findings.Select(f =>
            known.GetValueOrDefault(f.Id) is { } judgment
                ? new ReviewedFinding(judgment.Headline is { } words ? f with { Headline = words } : f, judgment)
                : new ReviewedFinding(f, null));
        var own = judgments.Where(j => j.IsOwn).Select(j => new ReviewedFinding(
            new Finding(j.FindingId, j.Headline ?? "", "Written by the clinician.", OwnWeight, null, j.Impairment, []), j));
        return
        [
            .. computed.Concat(own)
                .OrderBy(r => r.Judgment?.Rank ?? int.MaxValue)
                .ThenByDescending(r => r.Finding.Weight)
                .ThenBy(r => r.Finding.Id, StringComparer.Ordinal),
        ];
    }
}
