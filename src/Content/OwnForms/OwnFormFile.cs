namespace MomentArm.Content;

/// <summary>A clinic's own form in one file: the exercise and its words. The same text is kept in the records and sent to another clinic.</summary>
public sealed record OwnFormFile
{
    /// <summary>The number of this way of writing forms; a higher one is of a newer program.</summary>
    public required int Format { get; init; }

    /// <summary>The exercise, written as a shipped one is.</summary>
    public required ExerciseFile Exercise { get; init; }

    /// <summary>What the patient reads.</summary>
    public required FormWordsFile Words { get; init; }
}

/// <summary>The words of a form by language.</summary>
public sealed record FormWordsFile
{
    /// <summary>English.</summary>
    public required ExerciseWordsFile En { get; init; }

    /// <summary>Spanish; left out where it is not written yet.</summary>
    public ExerciseWordsFile? Es { get; init; }
}
