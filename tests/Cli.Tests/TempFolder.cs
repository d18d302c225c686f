namespace MomentArm.Cli.Tests;

/// <summary>A folder of its own for one test, removed at the end.</summary>
internal sealed class TempFolder : IDisposable
{
    public string Root { get; } = Directory.CreateTempSubdirectory("momentarm-cli-").FullName;

    public IEnumerable<string> Names => Directory.EnumerateFileSystemEntries(Root).Select(p => Path.GetFileName(p)!).Order(StringComparer.Ordinal);

    public string File(string name) => Path.Combine(Root, name);

    public string Write(string name, string text)
    {
        System.IO.File.WriteAllText(File(name), text);
        return File(name);
    }

    public void CopyIn(string folder)
    {
        foreach (var path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            var target = File(Path.GetRelativePath(folder, path));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            System.IO.File.Copy(path, target);
        }
    }

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
