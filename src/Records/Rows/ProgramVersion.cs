using System.Text.Json;
using MomentArm.Prescribing;

namespace MomentArm.Records;

/// <summary>One version of an episode's home program. What it says never changes; a change makes a new version.</summary>
public sealed class ProgramVersion : IAuditedRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid EpisodeId { get; init; }

    /// <summary>1 for the first version of the episode.</summary>
    public int Number { get; init; }

    /// <summary>The home program as JSON.</summary>
    [NameOnly]
    public required string Document { get; init; }

    public ProgramState State { get; set; }

    public Guid CreatedById { get; init; }

    public required string CreatedByName { get; init; }

    public DateTime CreatedAtUtc { get; init; }

    /// <summary>Why it differs from the version before.</summary>
    public string? Reason { get; init; }

    public DateTime? HandedOverAtUtc { get; set; }

    public Guid RowVersion { get; set; }

    /// <summary>The home program as the prescribing room knows it.</summary>
    public HomeProgram ToProgram() => JsonSerializer.Deserialize<HomeProgram>(Document, RecordsJson.Options)
        ?? throw new JsonException("A stored home program is empty.");

    internal static string Write(HomeProgram program) => JsonSerializer.Serialize(program, RecordsJson.Options);
}

/// <summary>Where a program version is in its life.</summary>
public enum ProgramState
{
    /// <summary>Written, not yet taught.</summary>
    Draft,

    /// <summary>Taught and given to the patient.</summary>
    HandedOver,

    /// <summary>A later version took its place.</summary>
    Replaced,
}
