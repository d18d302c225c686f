namespace MomentArm.Content;

/// <summary>Shipped forms as files again, so that a clinic can start its own from one.</summary>
public static class ShippedForms
{
    /// <summary>A shipped form with its words; null when there is none of that id.</summary>
    /// <param name="library">The content.</param>
    /// <param name="folder">The folder the content was read from.</param>
    /// <param name="id">The exercise.</param>
    public static OwnFormFile? Read(ContentLibrary library, string folder, string id)
    {
        ArgumentNullException.ThrowIfNull(library);
        if (library.Exercise(id) is null)
            return null;
        var faults = new FaultList();
        var exercise = StrictJson.ReadFile<ExerciseFile>(Path.Combine(folder, "exercises", id + ".json"), id, faults);
        var english = StrictJson.ReadFile<ExerciseWordsFile>(Path.Combine(folder, "words", "en", "exercises", id + ".json"), id, faults);
        var spanish = StrictJson.ReadFile<ExerciseWordsFile>(Path.Combine(folder, "words", "es", "exercises", id + ".json"), id, faults);
        return exercise is null || english is null
            ? null
            : new OwnFormFile { Format = OwnForm.CurrentFormat, Exercise = exercise, Words = new FormWordsFile { En = english, Es = spanish } };
    }
}
