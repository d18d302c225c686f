using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using MomentArm.Body;
using MomentArm.FollowUp;

namespace MomentArm.Web.PatientLinks;

/// <summary>What the patient's page sends, read strictly: a body that is not exactly so is refused, never guessed at.</summary>
internal static class PatientRequests
{
    /// <summary>Largest body taken, in bytes. A long session with a long note needs under 10,000.</summary>
    internal const int MostBytes = 64 * 1024;

    /// <summary>For requests and answers alike.</summary>
    internal static JsonSerializerOptions Json { get; } = new(JsonSerializerOptions.Strict)
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
    };

    /// <summary>For the program, whose pictures are markup: never shown as a page, so angle brackets may stay short.</summary>
    internal static JsonSerializerOptions Plain { get; } = new(Json) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Reads a body; null for anything that is not such a request.</summary>
    internal static T? Read<T>(ReadOnlySpan<byte> body)
        where T : class
    {
        try
        {
            return JsonSerializer.Deserialize<T>(body, Json);
        }
        catch (Exception error) when (error is JsonException or InvalidOperationException or ArgumentException or FormatException)
        {
            return null;
        }
    }

    /// <summary>The whole body; null when it is longer than taken.</summary>
    internal static async Task<byte[]?> BodyAsync(HttpRequest request, CancellationToken cancellationToken)
    {
        if (request.ContentLength > MostBytes)
            return null;
        using var kept = new MemoryStream();
        var piece = new byte[8192];
        int read;
        while ((read = await request.Body.ReadAsync(piece, cancellationToken)) > 0)
        {
            if (kept.Length + read > MostBytes)
                return null;
            kept.Write(piece, 0, read);
        }

        return kept.ToArray();
    }
}

/// <summary>A request that carries the link's token.</summary>
internal interface IWithToken
{
    string Token { get; }
}

internal sealed record OpenRequest(string Token) : IWithToken;

internal sealed record SessionRequest(string Token, SentSession Session) : IWithToken;

internal sealed record MorningRequest(string Token, SentMorning Morning) : IWithToken;

internal sealed record SentSession(
    Guid Id, DateOnly Day, SentExercise?[] Exercises, int? Effort, int? PainDuring, int? PainAfter, string? Note)
{
    internal SessionLog ToLog() => new()
    {
        Id = Id,
        Day = Day,
        Exercises = [.. Exercises.Select(e => new ExerciseLog(e!.ExerciseId, e.Side, e.SetsDone, e.RepetitionsDone, e.Report))],
        Effort = Effort,
        PainDuring = PainDuring,
        PainAfter = PainAfter,
        Note = Note,
    };
}

internal sealed record SentExercise(string ExerciseId, Side? Side, int SetsDone, int RepetitionsDone, ExerciseReport Report);

internal sealed record SentMorning(Guid Id, DateOnly Day, int Pain, MorningChange Compared)
{
    internal MorningLog ToLog() => new(Id, Day, Pain, Compared);
}
