using System.Text.Json.Serialization;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>One file of content/patterns: a working hypothesis.</summary>
/// <param name="Schema">Where the schema is.</param>
/// <param name="Pattern">The hypothesis; its id is the file name.</param>
public sealed record PatternFile([property: JsonPropertyName("$schema")] string Schema, Pattern Pattern);

/// <summary>One file of content/patterns/tests.</summary>
/// <param name="Schema">Where the schema is.</param>
/// <param name="Tests">Clinical tests with what is known of their accuracy.</param>
public sealed record ClinicalTestsFile([property: JsonPropertyName("$schema")] string Schema, IReadOnlyList<ClinicalTest> Tests);

/// <summary>content/patterns/questions/questions.json.</summary>
/// <param name="Schema">Where the schema is.</param>
/// <param name="Questions">Questions that patterns rest on.</param>
public sealed record PatternQuestionsFile([property: JsonPropertyName("$schema")] string Schema, IReadOnlyList<PatternQuestion> Questions);

/// <summary>content/patterns/questions/yellow-flags.json.</summary>
/// <param name="Schema">Where the schema is.</param>
/// <param name="Flags">Questions about what may slow recovery, in our own words.</param>
public sealed record YellowFlagsFile([property: JsonPropertyName("$schema")] string Schema, IReadOnlyList<YellowFlag> Flags);
