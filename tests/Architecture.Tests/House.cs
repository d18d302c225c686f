using System.Reflection;
using System.Xml.Linq;

namespace MomentArm.Architecture.Tests;

/// <summary>The source tree and the rooms as they are drawn: what is not drawn here is forbidden.</summary>
internal static class House
{
    public static readonly string[] PureRooms = ["Body", "Drawing", "Exam", "Prescribing", "FollowUp"];

    /// <summary>Each room and the rooms it may use, as in the plan of the house (docs/decisions/0001-rooms-and-arrows.md).</summary>
    public static readonly IReadOnlyDictionary<string, string[]> Arrows = new Dictionary<string, string[]>
    {
        ["Body"] = [],
        ["Drawing"] = ["Body"],
        ["Exam"] = ["Body"],
        ["Prescribing"] = ["Exam", "Body"],
        ["FollowUp"] = ["Prescribing", "Exam", "Body"],
        ["Content"] = ["Body", "Drawing", "Exam", "Prescribing", "FollowUp"],
        ["Records"] = ["Body", "Exam", "Prescribing", "FollowUp"],
        ["Documents"] = ["Body", "Drawing", "Exam", "Prescribing", "FollowUp"],
        ["Web"] = ["Body", "Drawing", "Exam", "Prescribing", "FollowUp", "Content", "Records", "Documents"],
        ["Cli"] = ["Body", "Drawing", "Exam", "Prescribing", "FollowUp", "Content", "Records", "Documents"],
    };

    private static readonly string[] NotSource = ["artifacts", "out", "data", "node_modules", "bin", "obj", ".git", ".vs", ".idea"];

    public static string Root { get; } = FindRoot();

    /// <summary>Every file under a folder that belongs to the source, as a path from the root with slashes.</summary>
    public static IEnumerable<string> Files(string under = "") => Walk(Path.Combine(Root, under)).Order(StringComparer.Ordinal);

    public static IEnumerable<string> Files(string under, params string[] endings) =>
        Files(under).Where(f => endings.Any(e => f.EndsWith(e, StringComparison.Ordinal)));

    public static string Read(string file) => File.ReadAllText(Path.Combine(Root, file));

    public static string[] Lines(string file) => File.ReadAllLines(Path.Combine(Root, file));

    public static XDocument Project(string room) => XDocument.Load(Path.Combine(Root, "src", room, room + ".csproj"));

    public static Assembly Room(string room) => Assembly.Load("MomentArm." + room);

    private static IEnumerable<string> Walk(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(folder))
            yield return Path.GetRelativePath(Root, file).Replace('\\', '/');
        foreach (var inner in Directory.EnumerateDirectories(folder).Where(d => !NotSource.Contains(Path.GetFileName(d))))
        {
            foreach (var file in Walk(inner))
                yield return file;
        }
    }

    private static string FindRoot()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "MomentArm.slnx")))
                return at.FullName;
        }

        throw new InvalidOperationException("No folder above holds MomentArm.slnx.");
    }
}
