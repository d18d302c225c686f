using System.Text.Json;
using Json.Schema;

namespace MomentArm.Content.Tests;

/// <summary>The committed schemas are what the program makes, and another reader of the standard agrees with ours.</summary>
public sealed class SchemasTests
{
    private static readonly string Content = Shipped.Folder;
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
    private static readonly Dictionary<string, JsonSchema> Read =
        Schemas.All().ToDictionary(s => s.Name, s => JsonSchema.FromText(s.Text));

    /// <summary>Every shipped JSON file that is not a schema itself.</summary>
    public static TheoryData<string> Files { get; } =
    [
        .. Directory.EnumerateFiles(Content, "*.json", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Content, path).Replace('\\', '/'))
            .Where(path => !path.StartsWith("schemas/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal),
    ];

    [Fact]
    public void The_committed_schemas_are_those_the_program_makes()
    {
        Assert.Empty(Schemas.Differing(Content));
        Assert.Equal(
            Schemas.All().Select(s => s.Name).Order(StringComparer.Ordinal),
            Directory.EnumerateFiles(Path.Combine(Content, "schemas")).Select(p => Path.GetFileName(p)!).Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_shipped_file_names_a_schema_that_is_there_and_keeps_to_it(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Content, file)), Lenient);
        var result = Read[SchemaOf(file, document.RootElement)].Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, JsonSerializer.Serialize(result));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void An_unknown_key_is_against_the_schema_of_every_file(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Content, file)), Lenient);
        var whole = document.RootElement.EnumerateObject().Select(p => (p.Name, p.Value.Clone()))
            .Append(("noSuchKey", JsonSerializer.SerializeToElement("?")));
        Assert.False(Read[SchemaOf(file, document.RootElement)].Evaluate(Whole(whole)).IsValid);
    }

    [Theory]
    [InlineData("exercise", """{ "id": "clam" }""")]
    [InlineData("danger-signs", """{ "$schema": "x", "signs": [{ "id": "a", "question": "?", "mayMean": "?", "urgency": "soon", "action": "?", "source": "?", "confirmation": "?" }] }""")]
    [InlineData("case", """{ "patient": { "massKg": "66 kg" } }""")]
    [InlineData("case", """{ "patient": { "weight": 66 } }""")]
    [InlineData("case", """{ "exercises": [{ "side": "left" }] }""")]
    [InlineData("content", """{ "$schema": "x", "version": 1, "note": "" }""")]
    public void What_the_reader_refuses_is_against_the_schema_too(string schema, string json)
    {
        using var document = JsonDocument.Parse(json);
        Assert.False(Read[schema + ".schema.json"].Evaluate(document.RootElement).IsValid);
    }

    [Theory]
    [InlineData("""{ "wishes": ["climb stairs"] }""")]
    [InlineData("""{ "entries": ["SLR L 72"], "patient": { "sex": "female", "ageYears": null } }""")]
    public void A_small_case_keeps_to_the_schema(string json)
    {
        using var document = JsonDocument.Parse(json);
        Assert.True(Read["case.schema.json"].Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void Every_property_of_the_files_written_most_is_described()
    {
        foreach (var name in new[] { "case", "exercise-words", "patient-words", "danger-signs", "sources" })
        {
            using var schema = JsonDocument.Parse(Schemas.All().Single(s => s.Name == name + ".schema.json").Text);
            foreach (var (path, property) in Properties(schema.RootElement, name))
                Assert.True(property.TryGetProperty("description", out var text) && text.GetString()!.Length > 0, path);
        }
    }

    private static JsonElement Whole(IEnumerable<(string Name, JsonElement Value)> properties)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream))
        {
            writer.WriteStartObject();
            foreach (var (name, value) in properties)
            {
                writer.WritePropertyName(name);
                value.WriteTo(writer);
            }

            writer.WriteEndObject();
        }

        return JsonDocument.Parse(stream.ToArray()).RootElement;
    }

    private static string SchemaOf(string file, JsonElement root)
    {
        // The sources are one table by key, so there is no room for a key that is none.
        if (file == "sources.json")
            return "sources.schema.json";
        var named = root.GetProperty("$schema").GetString()!;
        var path = Path.GetFullPath(Path.Combine(Content, Path.GetDirectoryName(file)!, named));
        Assert.True(File.Exists(path), $"{file} names {named}, which is not there.");
        Assert.Equal(Path.Combine(Content, "schemas"), Path.GetDirectoryName(path));
        return Path.GetFileName(path);
    }

    private static IEnumerable<(string Path, JsonElement Property)> Properties(JsonElement schema, string path)
    {
        if (schema.TryGetProperty("properties", out var properties))
        {
            foreach (var property in properties.EnumerateObject())
            {
                yield return ($"{path}.{property.Name}", property.Value);
                foreach (var inner in Properties(property.Value, $"{path}.{property.Name}"))
                    yield return inner;
            }
        }

        foreach (var key in new[] { "items", "additionalProperties" })
        {
            if (schema.TryGetProperty(key, out var inner) && inner.ValueKind == JsonValueKind.Object)
            {
                foreach (var property in Properties(inner, path + "[]"))
                    yield return property;
            }
        }
    }
}
