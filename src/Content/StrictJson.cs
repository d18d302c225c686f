using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;

namespace MomentArm.Content;

/// <summary>
/// Reads JSON strictly: unknown keys, keys twice, missing values and nulls are faults with file, path and line.
/// Comments and trailing commas are welcome, since clinicians edit these files.
/// </summary>
public static partial class StrictJson
{
    /// <summary>The one set of options for every content and case file.</summary>
    public static JsonSerializerOptions Options { get; } = MakeOptions();

    /// <summary>Reads one file; on a fault adds it to the list and returns null.</summary>
    /// <param name="fullPath">Where the file is.</param>
    /// <param name="shownPath">How the file is named in messages, relative to its folder.</param>
    /// <param name="faults">Gathers the faults.</param>
    public static T? ReadFile<T>(string fullPath, string shownPath, FaultList faults)
        where T : class
    {
        try
        {
            return Read<T>(File.ReadAllText(fullPath), shownPath, faults);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            faults.Add(shownPath, null, "", $"The file cannot be read ({error.Message}).", "Check that it exists and may be read.");
            return null;
        }
    }

    /// <summary>Reads one text; on a fault adds it to the list and returns null.</summary>
    public static T? Read<T>(string json, string shownPath, FaultList faults)
        where T : class
    {
        try
        {
            var value = JsonSerializer.Deserialize<T>(json, Options);
            if (value is null)
                faults.Add(shownPath, 1, "", "The file holds null.", "Give it a JSON object.");
            return value;
        }
        catch (JsonException error)
        {
            var line = error.LineNumber is { } number ? (int?)checked((int)number + 1) : null;
            faults.Add(shownPath, line, (error.Path ?? "").TrimStart('$', '.'), What(error.Message), Mend(error.Message));
            return null;
        }
    }

    /// <summary>Every file of a folder with an ending, ordered by name so that reading never depends on the disk.</summary>
    public static IReadOnlyList<string> FilesIn(string folder, string ending) =>
        Directory.Exists(folder)
            ? [.. Directory.EnumerateFiles(folder, "*" + ending).Order(StringComparer.Ordinal)]
            : [];

    private static JsonSerializerOptions MakeOptions()
    {
        var options = new JsonSerializerOptions(JsonSerializerOptions.Strict)
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            ReadCommentHandling = JsonCommentHandling.Skip,
            AllowTrailingCommas = true,
            WriteIndented = true,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false));
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }

    /// <summary>The parser's message in words for someone who edits the file, without the program's own names.</summary>
    private static string What(string message)
    {
        var names = Quoted().Matches(message).Select(m => m.Groups[1].Value).ToArray();
        if (message.Contains("could not be mapped", StringComparison.Ordinal))
            return $"There is no key \"{names[0]}\" here.";
        if (message.Contains("Duplicate", StringComparison.OrdinalIgnoreCase))
            return $"The key \"{names[0]}\" is there twice.";
        if (message.Contains("doesn't allow setting null", StringComparison.Ordinal) || message.Contains("doesn't allow null", StringComparison.Ordinal))
            return "The value may not be null.";
        if (message.Contains("missing required", StringComparison.Ordinal))
            return $"Keys are missing: {string.Join(", ", names.Where(n => !n.Contains("MomentArm", StringComparison.Ordinal)))}.";
        if (message.Contains("could not be converted", StringComparison.Ordinal))
            return "The value is not of the kind that belongs here.";
        if (message.Contains("any JSON tokens", StringComparison.Ordinal))
            return "The file is empty.";
        if (message.Contains("depth to be zero", StringComparison.Ordinal))
            return "The file ends too early: a bracket or brace is not closed.";
        var end = message.IndexOf(" Path:", StringComparison.Ordinal);
        return end > 0 ? message[..end].Trim() : message;
    }

    [GeneratedRegex("'([^']*)'")]
    private static partial Regex Quoted();

    private static string Mend(string message) =>
        message.Contains("could not be mapped", StringComparison.Ordinal) ? "Remove the key or correct its name; the schema lists the names."
        : message.Contains("missing required", StringComparison.Ordinal) ? "Add the missing keys; the schema lists them."
        : message.Contains("Duplicate", StringComparison.OrdinalIgnoreCase) ? "Keep one of the two."
        : message.Contains("any JSON tokens", StringComparison.Ordinal) ? "Write a JSON object in braces."
        : message.Contains("depth to be zero", StringComparison.Ordinal) ? "Close it."
        : "Correct the value; the schema says what is allowed.";
}
