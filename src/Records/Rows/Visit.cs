namespace MomentArm.Records;

/// <summary>One visit. Once signed, it and its parts can't be changed.</summary>
public sealed class Visit : IAuditedRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid EpisodeId { get; init; }

    /// <summary>The clinic's local day.</summary>
    public DateOnly Day { get; init; }

    /// <summary>1 for the first visit of the episode.</summary>
    public int Number { get; init; }

    public VisitState State { get; set; }

    /// <summary>What the patient says.</summary>
    [NameOnly]
    public string? Subjective { get; set; }

    /// <summary>What is seen and measured, beyond the measurements themselves.</summary>
    [NameOnly]
    public string? Objective { get; set; }

    /// <summary>What it means.</summary>
    [NameOnly]
    public string? Assessment { get; set; }

    /// <summary>What comes next.</summary>
    [NameOnly]
    public string? Plan { get; set; }

    public Guid? SignedById { get; set; }

    public DateTime? SignedAtUtc { get; set; }

    public Guid RowVersion { get; set; }
}

/// <summary>Whether a visit may still be written in.</summary>
public enum VisitState
{
    Open,
    Signed,
}
