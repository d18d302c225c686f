namespace MomentArm.Records;

/// <summary>Short ways to write an outcome.</summary>
internal static class Outcome
{
    internal static SaveOutcome<T> Saved<T>(T value) => new SaveOutcome<T>.Saved(value);

    internal static SaveOutcome<T> Refused<T>(string sentence) => new SaveOutcome<T>.Refused(sentence);
}
