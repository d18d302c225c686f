using System.Text.Json;
using MomentArm.FollowUp;

namespace MomentArm.Records;

/// <summary>A next-morning answer as the patient's device reported it. Never changed after it arrived.</summary>
public sealed class MorningLogRow : IAuditedRow
{
    public Guid ClinicId { get; init; }

    /// <summary>Made on the device.</summary>
    public Guid Id { get; init; }

    public Guid EpisodeId { get; init; }

    public DateOnly Day { get; init; }

    /// <summary>The answer as JSON.</summary>
    [NameOnly]
    public required string Document { get; init; }

    public DateTime ReceivedAtUtc { get; init; }

    /// <summary>The answer as the follow-up room knows it.</summary>
    public MorningLog ToLog() => JsonSerializer.Deserialize<MorningLog>(Document, RecordsJson.Options)
        ?? throw new JsonException("A stored morning answer is empty.");

    internal static string Write(MorningLog log) => JsonSerializer.Serialize(log, RecordsJson.Options);
}
