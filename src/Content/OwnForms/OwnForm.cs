using System.Collections.Immutable;
using System.Text.Json;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>A clinic's own form, checked as shipped content is.</summary>
/// <param name="Exercise">The exercise; its id begins with <see cref="IdStart"/>.</param>
/// <param name="English">Its words.</param>
/// <param name="Spanish">Its words in Spanish; null where they are not written.</param>
public sealed record OwnForm(Exercise Exercise, ExerciseWords English, ExerciseWords? Spanish)
{
    /// <summary>What the id of every form of a clinic begins with, so that it never meets that of a shipped one.</summary>
    public const string IdStart = "own-";

    /// <summary>The format that is written.</summary>
    public const int CurrentFormat = 1;

    /// <summary>The longest file that is read, characters.</summary>
    public const int LongestFile = 300_000;

    /// <summary>Name of the file in messages.</summary>
    private const string Shown = "form";

    /// <summary>The words in a language; the English ones where Spanish is not written.</summary>
    public ExerciseWords Words(string language) => language == "es" && Spanish is not null ? Spanish : English;

    /// <summary>Writes a form as a file.</summary>
    public static string Write(OwnFormFile form) => JsonSerializer.Serialize(form, StrictJson.Options);

    /// <summary>Reads a file without judging what it says; gives the form, or every fault that keeps it from being one.</summary>
    /// <param name="text">The file.</param>
    public static (OwnFormFile? Form, IReadOnlyList<ContentFault> Faults) Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var faults = new FaultList();
        if (text.Length > LongestFile)
        {
            faults.Add(Shown, null, "", FormattableString.Invariant($"The file has {text.Length} characters; a form has at most {LongestFile}."), "Choose the file of a single form.");
            return (null, faults.Faults);
        }

        FormShape.Check(text, Shown, faults);
        var form = faults.Faults.Count > 0 ? null : StrictJson.Read<OwnFormFile>(text, Shown, faults);
        return (form, faults.Faults);
    }

    /// <summary>Holds a form to what shipped content is held to; gives the form, or every fault.</summary>
    /// <param name="form">The form.</param>
    /// <param name="library">The shipped content: body, sources and ids.</param>
    /// <param name="settle">Whether its poses are settled for three builds too.</param>
    public static (OwnForm? Form, IReadOnlyList<ContentFault> Faults) Check(OwnFormFile form, ContentLibrary library, bool settle = true)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(library);
        var faults = new FaultList();
        FormShape.CheckSizes(form, Shown, faults);
        var exercise = ExerciseOf(form.Exercise, library, settle, faults);
        WordsReader.CheckWords(Shown + " words en", "en", form.Words.En, faults);
        if (form.Words.Es is { } spanish)
            WordsReader.CheckWords(Shown + " words es", "es", spanish, faults);
        return exercise is null || faults.Faults.Count > 0
            ? (null, faults.Faults)
            : (new OwnForm(exercise, form.Words.En.ToWords(), form.Words.Es?.ToWords()), []);
    }

    /// <summary>The exercise of a form that is still being made; gives it, or every fault of its poses and figures.</summary>
    /// <param name="file">The exercise as written.</param>
    /// <param name="library">The shipped content.</param>
    public static (Exercise? Exercise, IReadOnlyList<ContentFault> Faults) ExerciseOf(ExerciseFile file, ContentLibrary library)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(library);
        var faults = new FaultList();
        var exercise = ExerciseOf(file, library, settle: false, faults);
        return (exercise, faults.Faults);
    }

    private static Exercise? ExerciseOf(ExerciseFile file, ContentLibrary library, bool settle, FaultList faults)
    {
        var found = new FaultList();
        var exercise = new ExerciseReader(library.Body.Points, library.Sources.Keys.ToHashSet(), found).ReadOne(file, Shown);
        if (settle && exercise is not null)
            PoseCheck.Check(library.Body, [exercise], found);
        foreach (var fault in found.Faults)
            faults.Add(Shown, fault.Line, fault.Path, fault.What, fault.Mend);
        return exercise;
    }
}
