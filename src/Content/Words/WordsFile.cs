using System.Collections.Immutable;
using System.Text.Json.Serialization;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>One file of content/words/&lt;language&gt;/exercises: what a patient reads of one exercise.</summary>
public sealed record ExerciseWordsFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public required string Schema { get; init; }

    /// <summary>Name for the patient.</summary>
    public required string Title { get; init; }

    /// <summary>Steps into the start.</summary>
    public required IReadOnlyList<string> SetUp { get; init; }

    /// <summary>Steps of the movement.</summary>
    public required IReadOnlyList<string> Steps { get; init; }

    /// <summary>How to breathe, where it matters.</summary>
    public string? Breathing { get; init; }

    /// <summary>What one should feel.</summary>
    public required string Feel { get; init; }

    /// <summary>What to watch for.</summary>
    public required IReadOnlyList<string> Watch { get; init; }

    /// <summary>An easier way.</summary>
    public required string Easier { get; init; }

    /// <summary>A harder way.</summary>
    public required string Harder { get; init; }

    /// <summary>Signs to stop this exercise, beside those that always hold.</summary>
    public IReadOnlyList<string> Stop { get; init; } = [];

    /// <summary>What to do where there is little room.</summary>
    public string? ShortSpace { get; init; }

    /// <summary>What one repetition is called.</summary>
    public required string RepetitionWord { get; init; }

    /// <summary>Every text of the file with its place in it.</summary>
    internal IEnumerable<(string Path, string Text)> Texts()
    {
        yield return ("title", Title);
        for (var i = 0; i < SetUp.Count; i++)
            yield return ($"setUp[{i}]", SetUp[i]);
        for (var i = 0; i < Steps.Count; i++)
            yield return ($"steps[{i}]", Steps[i]);
        if (Breathing is { } breathing)
            yield return ("breathing", breathing);
        yield return ("feel", Feel);
        for (var i = 0; i < Watch.Count; i++)
            yield return ($"watch[{i}]", Watch[i]);
        yield return ("easier", Easier);
        yield return ("harder", Harder);
        for (var i = 0; i < Stop.Count; i++)
            yield return ($"stop[{i}]", Stop[i]);
        if (ShortSpace is { } little)
            yield return ("shortSpace", little);
    }

    internal ExerciseWords ToWords() => new()
    {
        Title = Title,
        SetUp = [.. SetUp],
        Steps = [.. Steps],
        Breathing = Breathing,
        Feel = Feel,
        Watch = [.. Watch],
        Easier = Easier,
        Harder = Harder,
        Stop = [.. Stop],
        ShortSpace = ShortSpace,
        RepetitionWord = RepetitionWord,
    };
}
