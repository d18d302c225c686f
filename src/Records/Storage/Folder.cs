namespace MomentArm.Records;

/// <summary>Checks on the folder a database lives in.</summary>
internal static class Folder
{
    private const long LeastFreeBytes = 64L * 1024 * 1024;

    /// <summary>Makes the folder if needed, writes and removes a file in it, and looks at the room left.</summary>
    internal static string RequireWritable(string databasePath)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(databasePath))!;
        try
        {
            Directory.CreateDirectory(folder);
            var probe = Path.Combine(folder, $".write-test-{Guid.CreateVersion7():N}");
            using (new FileStream(probe, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose))
            {
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new DatabaseNotUsableException(
                $"The data folder {folder} can't be written. Give this program the right to write there, or name another folder.", fault);
        }
        if (new DriveInfo(folder).AvailableFreeSpace < LeastFreeBytes)
            throw new DatabaseNotUsableException($"Less than 64 MB is free in {folder}. Make room, then start again.");
        return folder;
    }
}
