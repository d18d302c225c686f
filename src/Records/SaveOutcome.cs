namespace MomentArm.Records;

/// <summary>How a save ended. Only <see cref="Saved"/> changed the record.</summary>
/// <typeparam name="T">What was to be saved.</typeparam>
public abstract record SaveOutcome<T>
{
    private SaveOutcome()
    {
    }

    /// <summary>It is in the record.</summary>
    /// <param name="Value">As it now stands, with its new row version.</param>
    public sealed record Saved(T Value) : SaveOutcome<T>;

    /// <summary>Someone else was faster. Nothing was changed; what was typed is in the draft.</summary>
    /// <param name="Theirs">What now stands; null when they removed it.</param>
    /// <param name="Who">Who changed it.</param>
    /// <param name="AtUtc">When they changed it.</param>
    /// <param name="DraftKey">Where what was typed is kept; null when nothing was typed.</param>
    public sealed record Conflict(T? Theirs, string Who, DateTime? AtUtc, string? DraftKey = null) : SaveOutcome<T>
    {
        /// <summary>For the screen.</summary>
        public string Sentence =>
            $"{Who} changed this before you saved. Nothing was overwritten: both values are shown, and yours is kept as a draft.";
    }

    /// <summary>It can't be saved; the sentence says why and what to do.</summary>
    /// <param name="Sentence">For the screen.</param>
    /// <param name="DraftKey">Where what was typed is kept; null when nothing was typed.</param>
    public sealed record Refused(string Sentence, string? DraftKey = null) : SaveOutcome<T>;

    /// <summary>What was saved; an exception with the sentence when it was not. For seeding and tests.</summary>
    public T Require() => this switch
    {
        Saved saved => saved.Value,
        Conflict conflict => throw new RecordsRefusedException(conflict.Sentence),
        Refused refused => throw new RecordsRefusedException(refused.Sentence),
        _ => throw new InvalidOperationException("Unknown outcome."),
    };
}
