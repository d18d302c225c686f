namespace MomentArm.Records;

/// <summary>The database can't be used as it is. The message says why and what to do.</summary>
public sealed class DatabaseNotUsableException : Exception
{
    public DatabaseNotUsableException(string sentence, Exception? cause = null)
        : base(sentence, cause)
    {
    }
}
