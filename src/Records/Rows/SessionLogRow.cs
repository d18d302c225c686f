using System.Text.Json;
using MomentArm.FollowUp;

namespace MomentArm.Records;

/// <summary>A home session as the patient's device reported it. Never changed after it arrived.</summary>
public sealed class SessionLogRow : IAuditedRow
{
    public Guid ClinicId { get; init; }

    /// <summary>Made on the device.</summary>
    public Guid Id { get; init; }

    public Guid EpisodeId { get; init; }

    public Guid? ProgramVersionId { get; init; }

    public DateOnly Day { get; init; }

    /// <summary>The report as JSON.</summary>
    [NameOnly]
    public required string Document { get; init; }

    public DateTime ReceivedAtUtc { get; init; }

    /// <summary>The report as the follow-up room knows it.</summary>
    public SessionLog ToLog() => JsonSerializer.Deserialize<SessionLog>(Document, RecordsJson.Options)
        ?? throw new JsonException("A stored session log is empty.");

    internal static string Write(SessionLog log) => JsonSerializer.Serialize(log, RecordsJson.Options);
}
