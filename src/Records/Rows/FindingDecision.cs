using System.Text.Json;
using MomentArm.Exam;

namespace MomentArm.Records;

/// <summary>What the clinician made of one finding in one visit.</summary>
public sealed class FindingDecision : IVisitRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid VisitId { get; init; }

    public required string FindingId { get; init; }

    /// <summary>True when agreed with, false when dismissed.</summary>
    public bool Accepted { get; set; }

    public string? Reason { get; set; }

    /// <summary>The finding in the clinician's own words; null when it stands as computed.</summary>
    [NameOnly]
    public string? Headline { get; set; }

    /// <summary>Place in the clinician's own order, 1 first; null when it stands where it was computed.</summary>
    public int? Rank { get; set; }

    /// <summary>What a finding of the clinician's own acts on, as JSON; null for computed ones.</summary>
    public string? Impairment { get; set; }

    public Guid RowVersion { get; set; }

    /// <summary>The judgment as the exam room knows it.</summary>
    public FindingJudgment ToJudgment() => new(FindingId, Accepted)
    {
        Reason = Reason,
        Headline = Headline,
        Rank = Rank,
        Impairment = Impairment is null ? null : JsonSerializer.Deserialize<Impairment>(Impairment, RecordsJson.Options),
    };

    internal static string? TextOf(Impairment? impairment) =>
        impairment is null ? null : JsonSerializer.Serialize(impairment, RecordsJson.Options);
}
