using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>Reads the words of one language and holds them to plain language: short sentences, grade 6, known side marks.</summary>
internal static partial class WordsReader
{
    internal const int LongestSentence = 15;
    internal const double HighestGrade = 6;

    internal static ImmutableDictionary<(string Language, string Id), ExerciseWords> Read(
        string contentFolder, string language, IReadOnlyList<Exercise> exercises, FaultList faults)
    {
        var words = ImmutableDictionary.CreateBuilder<(string Language, string Id), ExerciseWords>();
        var known = exercises.Select(e => e.Id).ToHashSet();
        var folder = Path.Combine(contentFolder, "words", language, "exercises");
        foreach (var path in StrictJson.FilesIn(folder, ".json"))
        {
            var id = Path.GetFileNameWithoutExtension(path);
            var shown = $"words/{language}/exercises/{id}.json";
            if (StrictJson.ReadFile<ExerciseWordsFile>(path, shown, faults) is not { } file)
                continue;
            if (!known.Contains(id))
                faults.Add(shown, null, "", $"There is no usable exercise \"{id}\".", "Rename the file, or mend or add the exercise.");
            CheckWords(shown, language, file, faults);
            words[(language, id)] = file.ToWords();
        }

        foreach (var id in known.Where(id => !words.ContainsKey((language, id))).Order(StringComparer.Ordinal))
            faults.Add($"words/{language}/exercises/{id}.json", null, "", "The exercise has no words.", "Write the file.");
        return words.ToImmutable();
    }

    /// <summary>Holds the words of one exercise to plain language.</summary>
    internal static void CheckWords(string shown, string language, ExerciseWordsFile file, FaultList faults)
    {
        foreach (var (place, text) in file.Texts())
            CheckText(shown, place, text, faults);
        var grade = ReadingGrade.Of(file.ToWords().AllText, language);
        if (grade > HighestGrade)
        {
            faults.Add(
                shown, null, "", string.Create(CultureInfo.InvariantCulture, $"Reading grade {grade:0.0} is above {HighestGrade:0}."),
                "Use shorter words and sentences.");
        }
    }

    private static void CheckText(string file, string place, string text, FaultList faults)
    {
        if (string.IsNullOrWhiteSpace(text))
            faults.Add(file, null, place, "The text is empty.", "Write it.");
        var length = ReadingGrade.LongestSentence(text);
        if (length > LongestSentence)
            faults.Add(file, null, place, $"A sentence has {length} words.", $"Use at most {LongestSentence}.");
        var marks = SideWords.Marks.Aggregate(text, (rest, mark) => rest.Replace(mark, "", StringComparison.Ordinal));
        if (marks.Contains('{', StringComparison.Ordinal) || marks.Contains('}', StringComparison.Ordinal))
            faults.Add(file, null, place, "There is an unknown mark in braces.", $"Use {string.Join(", ", SideWords.Marks)}.");
        if (SideWord().Match(text) is { Success: true } side)
            faults.Add(file, null, place, $"\"{side.Value}\" can be taken for a side of the body.", "Write {side} or {other} for a side, \"straight\" or \"square\" for the rest.");
        foreach (var jargon in (string[])["affected", "afectad"])
        {
            if (text.Contains(jargon, StringComparison.OrdinalIgnoreCase))
                faults.Add(file, null, place, $"A patient should not read \"{jargon}\".", "Name the side: {side}.");
        }
    }

    [GeneratedRegex(@"\b(right|left|derech[oa]s?|izquierd[oa]s?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex SideWord();
}
