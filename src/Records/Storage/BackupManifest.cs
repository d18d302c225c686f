namespace MomentArm.Records;

/// <summary>What a backup archive says about itself.</summary>
public sealed record BackupManifest
{
    /// <summary>The form of archive this program writes and reads.</summary>
    public const int CurrentFormat = 1;

    public required int FormatVersion { get; init; }

    /// <summary>Version of the program that wrote it.</summary>
    public required string AppVersion { get; init; }

    public required DateTime CreatedAtUtc { get; init; }

    /// <summary>The latest migration of the database inside.</summary>
    public required string Migration { get; init; }

    /// <summary>SHA-256 of the database file, in lower-case hexadecimal.</summary>
    public required string DatabaseSha256 { get; init; }

    public required long DatabaseBytes { get; init; }

    /// <summary>Rows in each table.</summary>
    public required SortedDictionary<string, long> Rows { get; init; }
}

/// <summary>What a restore did.</summary>
/// <param name="Manifest">What was restored.</param>
/// <param name="KeptAs">Where the replaced database is kept; null when there was none.</param>
public sealed record RestoreReport(BackupManifest Manifest, string? KeptAs);

/// <summary>An archive that can't be restored. The message says why; nothing was changed.</summary>
public sealed class BackupNotUsableException(string sentence, Exception? cause = null) : Exception(sentence, cause);
