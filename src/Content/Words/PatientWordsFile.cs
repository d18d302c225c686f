using System.Text.Json.Serialization;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>content/words/&lt;language&gt;/patient.json. Stop signs: common practice, no source.</summary>
public sealed record PatientWordsFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public required string Schema { get; init; }

    /// <summary>Left, lower case.</summary>
    public required string Left { get; init; }

    /// <summary>Right, lower case.</summary>
    public required string Right { get; init; }

    /// <summary>Left with a masculine noun, in languages with gender.</summary>
    public string? LeftMasculine { get; init; }

    /// <summary>Right with a masculine noun.</summary>
    public string? RightMasculine { get; init; }

    /// <summary>Whether a clinician who speaks the language from childhood has read all its words; false is told wherever they are shown to clinicians.</summary>
    public bool Reviewed { get; init; } = true;

    /// <summary>See <see cref="PatientWords.HandoutTitle"/>.</summary>
    public required string HandoutTitle { get; init; }

    /// <summary>See <see cref="PatientWords.HandoutPlan"/>.</summary>
    public required string HandoutPlan { get; init; }

    /// <summary>See <see cref="PatientWords.SideLine"/>.</summary>
    public required string SideLine { get; init; }

    /// <summary>See <see cref="PatientWords.BothSidesLine"/>.</summary>
    public required string BothSidesLine { get; init; }

    /// <summary>See <see cref="PatientWords.TogetherLine"/>.</summary>
    public required string TogetherLine { get; init; }

    /// <summary>See <see cref="PatientWords.StopHeading"/>.</summary>
    public required string StopHeading { get; init; }

    /// <summary>See <see cref="PatientWords.StopSigns"/>.</summary>
    public required IReadOnlyList<string> StopSigns { get; init; }

    /// <summary>See <see cref="PatientWords.Emergency"/>.</summary>
    public required string Emergency { get; init; }

    /// <summary>See <see cref="PatientWords.PainRule"/>.</summary>
    public required string PainRule { get; init; }

    /// <summary>See <see cref="PatientWords.PageHeading"/>.</summary>
    public required string PageHeading { get; init; }

    /// <summary>See <see cref="PatientWords.PageHelp"/>.</summary>
    public required string PageHelp { get; init; }

    /// <summary>See <see cref="PatientWords.NotesHeading"/>.</summary>
    public required string NotesHeading { get; init; }

    /// <summary>See <see cref="PatientWords.About"/>.</summary>
    public required string About { get; init; }

    /// <summary>See <see cref="PatientWords.Weekdays"/>.</summary>
    public required IReadOnlyList<string> Weekdays { get; init; }

    /// <summary>Reads the words of a language, or null with faults told.</summary>
    internal static PatientWords? Read(string contentFolder, string language, FaultList faults)
    {
        var shown = $"words/{language}/patient.json";
        var file = StrictJson.ReadFile<PatientWordsFile>(Path.Combine(contentFolder, "words", language, "patient.json"), shown, faults);
        if (file is null)
            return null;
        if (file.Weekdays.Count != 7)
            faults.Add(shown, null, "weekdays", $"There are {file.Weekdays.Count} weekdays.", "Give seven from Monday.");
        if (file.StopSigns.Count == 0)
            faults.Add(shown, null, "stopSigns", "There is no stop sign.", "A patient must be told when to stop: give at least one.");
        return new PatientWords
        {
            Sides = new SideWords(file.Left, file.Right, file.LeftMasculine, file.RightMasculine),
            Reviewed = file.Reviewed,
            HandoutTitle = file.HandoutTitle,
            HandoutPlan = file.HandoutPlan,
            SideLine = file.SideLine,
            BothSidesLine = file.BothSidesLine,
            TogetherLine = file.TogetherLine,
            StopHeading = file.StopHeading,
            StopSigns = [.. file.StopSigns],
            Emergency = file.Emergency,
            PainRule = file.PainRule,
            PageHeading = file.PageHeading,
            PageHelp = file.PageHelp,
            NotesHeading = file.NotesHeading,
            About = file.About,
            Weekdays = [.. file.Weekdays],
        };
    }
}
