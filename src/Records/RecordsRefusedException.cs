namespace MomentArm.Records;

/// <summary>A change the record does not allow. The message is a sentence for the person at the screen.</summary>
public sealed class RecordsRefusedException(string sentence) : Exception(sentence);
