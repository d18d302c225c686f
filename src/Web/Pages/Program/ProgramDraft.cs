using System.Text.Json;
using System.Text.Json.Serialization;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Program;

/// <summary>Unsaved changes of a program, kept per clinician under the key that the program's save clears.</summary>
public sealed record ProgramDraft
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        IgnoreReadOnlyProperties = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>The version that was changed; null when there was none.</summary>
    public Guid? BasedOn { get; init; }

    public string? Reason { get; init; }

    public required HomeProgram Program { get; init; }

    public static string Key(Guid episodeId) => $"episode/{episodeId:D}/program";

    public string Write() => JsonSerializer.Serialize(this, Json);

    /// <summary>Whether two programs say the same.</summary>
    public static bool Same(HomeProgram? one, HomeProgram? other) =>
        JsonSerializer.Serialize(one, Json) == JsonSerializer.Serialize(other, Json);

    /// <summary>Reads what was kept, as written here or by a save that was turned away; null when it can't be read.</summary>
    public static ProgramDraft? Read(string text)
    {
        return TryRead<ProgramDraft>(text)
            ?? (TryRead<HomeProgram>(text) is { } bare ? new ProgramDraft { Program = bare, BasedOn = Guid.Empty } : null);
    }

    private static T? TryRead<T>(string text)
        where T : class
    {
        try
        {
            return JsonSerializer.Deserialize<T>(text, Json);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
