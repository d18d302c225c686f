using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;

namespace MomentArm.Content;

/// <summary>
/// The JSON schemas of every file a clinician may write, made from the records that read them, so that an editor's help and
/// the reader cannot tell two stories.
/// </summary>
public static class Schemas
{
    private static readonly (string Name, Type Type)[] Kinds =
    [
        ("body-checks", typeof(ChecksFile)),
        ("capacity", typeof(CapacityFile)),
        ("card", typeof(CardFile)),
        ("card-words", typeof(CardWordsFile)),
        ("case", typeof(CaseFile)),
        ("clinical-tests", typeof(ClinicalTestsFile)),
        ("content", typeof(AboutFile)),
        ("courses", typeof(CoursesFile)),
        ("danger-signs", typeof(DangerSignsFile)),
        ("equipment-words", typeof(EquipmentWordsFile)),
        ("exercise", typeof(ExerciseFile)),
        ("exercise-words", typeof(ExerciseWordsFile)),
        ("measure", typeof(MeasureFile)),
        ("muscles", typeof(MusclesFile)),
        ("pattern", typeof(PatternFile)),
        ("pattern-questions", typeof(PatternQuestionsFile)),
        ("patient-words", typeof(PatientWordsFile)),
        ("pose", typeof(PoseInputFile)),
        ("predictions", typeof(PredictionsFile)),
        ("rule", typeof(RuleFile)),
        ("segments", typeof(SegmentsFile)),
        ("skeleton", typeof(SkeletonFile)),
        ("sources", typeof(Dictionary<string, Source>)),
        ("surface-points", typeof(SurfacePointsFile)),
        ("yellow-flags", typeof(YellowFlagsFile)),
    ];

    private static readonly JsonSerializerOptions Writing = new(StrictJson.Options) { NewLine = "\n" };

    /// <summary>Makes every schema, ordered by name.</summary>
    public static IReadOnlyList<SchemaFile> All()
    {
        var words = new DocWords();
        return [.. Kinds.Select(k => new SchemaFile($"{k.Name}.schema.json", Text(k.Name, k.Type, words)))];
    }

    /// <summary>Compares with what lies in a content folder.</summary>
    /// <param name="contentFolder">The content folder.</param>
    /// <returns>Names of the schemas that are missing there or differ.</returns>
    public static IReadOnlyList<string> Differing(string contentFolder) =>
    [
        .. All().Where(s =>
        {
            var path = Path.Combine(contentFolder, "schemas", s.Name);
            return !File.Exists(path) || File.ReadAllText(path) != s.Text;
        }).Select(s => s.Name),
    ];

    /// <summary>Writes every schema into a content folder.</summary>
    public static void Write(string contentFolder)
    {
        var folder = Directory.CreateDirectory(Path.Combine(contentFolder, "schemas")).FullName;
        foreach (var schema in All())
            File.WriteAllText(Path.Combine(folder, schema.Name), schema.Text);
    }

    private static string Text(string name, Type type, DocWords words)
    {
        var exporting = new JsonSchemaExporterOptions
        {
            TreatNullObliviousAsNonNullable = true,
            TransformSchemaNode = (context, schema) => Described(schema, words.Of(context)),
        };
        var made = (JsonObject)StrictJson.Options.GetJsonSchemaAsNode(type, exporting);
        var whole = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = name,
        };
        foreach (var (key, value) in made.ToArray())
        {
            made.Remove(key);
            whole[key] = value;
        }

        return whole.ToJsonString(Writing) + "\n";
    }

    private static JsonNode Described(JsonNode schema, string? description)
    {
        if (schema is not JsonObject described || description is null)
            return schema;
        described.Remove("description");
        described.Insert(0, "description", description);
        return described;
    }
}
