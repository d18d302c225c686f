using System.Collections.Immutable;
using System.Text.Json.Serialization;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>content/words/&lt;language&gt;/equipment.json: what things are called for patients, and what a home has in their place.</summary>
/// <param name="Schema">Where the schema is.</param>
/// <param name="Things">One entry for each thing.</param>
public sealed record EquipmentWordsFile(
    [property: JsonPropertyName("$schema")] string Schema, IReadOnlyDictionary<Equipment, ThingWords> Things)
{
    /// <summary>Reads the things of a language; every one of <see cref="Equipment"/> must be there.</summary>
    internal static ImmutableDictionary<Equipment, ThingWords> Read(string contentFolder, string language, FaultList faults)
    {
        var shown = $"words/{language}/equipment.json";
        var file = StrictJson.ReadFile<EquipmentWordsFile>(Path.Combine(contentFolder, "words", language, "equipment.json"), shown, faults);
        if (file is null)
            return ImmutableDictionary<Equipment, ThingWords>.Empty;
        foreach (var missing in Enum.GetValues<Equipment>().Except(file.Things.Keys))
            faults.Add(shown, null, "things", $"There are no words for {IntentCheck.Name(missing)}.", "Add them.");
        foreach (var (thing, words) in file.Things)
        {
            if (ReadingGrade.LongestSentence(words.Instead) is > WordsReader.LongestSentence and var length)
                faults.Add(shown, null, $"things.{IntentCheck.Name(thing)}", $"A sentence has {length} words.", $"Use at most {WordsReader.LongestSentence}.");
        }

        return file.Things.ToImmutableDictionary();
    }
}

/// <summary>A thing for patients.</summary>
/// <param name="Name">What it is called, with its article: "a strap".</param>
/// <param name="Instead">What a home has in its place, a sentence or two.</param>
public sealed record ThingWords(string Name, string Instead);
