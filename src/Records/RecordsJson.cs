using System.Text.Json;
using System.Text.Json.Serialization;

namespace MomentArm.Records;

/// <summary>How documents are written into columns: camel case, enum members by name, computed values left out.</summary>
internal static class RecordsJson
{
    internal static JsonSerializerOptions Options { get; } = new(JsonSerializerDefaults.Web)
    {
        NumberHandling = JsonNumberHandling.Strict,
        IgnoreReadOnlyProperties = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>For drafts, which keep what was typed even when it is no number.</summary>
    internal static JsonSerializerOptions Drafts { get; } = new(Options)
    {
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
    };
}
