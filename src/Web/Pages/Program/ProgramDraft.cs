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

    /// <summary>
    /// Whether a clinician would call two programs the same: what was computed at the time (shares, versions) does not count,
    /// since it changes with every new measurement.
    /// </summary>
    public static bool Same(HomeProgram? one, HomeProgram? other) =>
        JsonSerializer.Serialize(AsWritten(one), Json) == JsonSerializer.Serialize(AsWritten(other), Json);

    private static HomeProgram? AsWritten(HomeProgram? program) => program is null ? null : program with
    {
        Items = [.. program.Items.Select(item => item with { LoadShare = null, Dose = item.Dose with { DaysPerWeek = program.DaysPerWeek } })],
        EngineVersion = "",
        ContentVersion = "",
    };

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
