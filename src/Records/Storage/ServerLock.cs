namespace MomentArm.Records;

/// <summary>Held by the one server that may use a database file. The system lets go of it even when the server is killed.</summary>
public sealed class ServerLock : IDisposable
{
    private readonly FileStream file;

    private ServerLock(FileStream file) => this.file = file;

    /// <summary>Takes the lock.</summary>
    /// <exception cref="DatabaseNotUsableException">Another server holds it, or the folder can't be written.</exception>
    public static ServerLock Take(string databasePath)
    {
        var folder = Folder.RequireWritable(databasePath);
        var path = databasePath + ".lock";
        try
        {
            return new ServerLock(new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (UnauthorizedAccessException denied)
        {
            throw new DatabaseNotUsableException($"The file {path} can't be written. Give this program the right to write in {folder}.", denied);
        }
        catch (IOException busy)
        {
            throw new DatabaseNotUsableException(
                $"Another server is using {databasePath}. Stop it first, or start this one with another data folder.", busy);
        }
    }

    public void Dispose() => file.Dispose();
}
