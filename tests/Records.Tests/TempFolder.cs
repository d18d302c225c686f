using Microsoft.Data.Sqlite;

namespace MomentArm.Records.Tests;

/// <summary>A folder of its own for one test, removed at the end.</summary>
internal sealed class TempFolder : IDisposable
{
    public TempFolder() => Root = Directory.CreateTempSubdirectory("momentarm-records-").FullName;

    public string Root { get; }

    public string File(string name) => Path.Combine(Root, name);

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(Root, recursive: true);
    }
}
