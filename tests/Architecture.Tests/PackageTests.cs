using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace MomentArm.Architecture.Tests;

/// <summary>Every package is there for a reason that stands above it, and is used.</summary>
public sealed partial class PackageTests
{
    public static TheoryData<string> Packages { get; } =
        [.. XDocument.Load(Path.Combine(House.Root, "Directory.Packages.props")).Descendants("PackageVersion").Select(p => p.Attribute("Include")!.Value)];

    [Theory]
    [MemberData(nameof(Packages))]
    public void A_package_is_used(string package)
    {
        var users = House.Files("", ".csproj", ".props", ".targets")
            .Where(f => Regex.IsMatch(House.Read(f), $"<PackageReference Include=\"{Regex.Escape(package)}\""));
        Assert.NotEmpty(users);
    }

    [Theory]
    [MemberData(nameof(Packages))]
    public void A_package_or_its_group_has_its_reason_above_it(string package)
    {
        var lines = House.Lines("Directory.Packages.props");
        var at = Array.FindIndex(lines, l => l.Contains($"Include=\"{package}\"", StringComparison.Ordinal));
        while (lines[at].Contains("<PackageVersion", StringComparison.Ordinal))
            at--;
        Assert.Contains("-->", lines[at], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Packages))]
    public void A_package_has_one_exact_version(string package)
    {
        var version = XDocument.Load(Path.Combine(House.Root, "Directory.Packages.props")).Descendants("PackageVersion")
            .Single(p => p.Attribute("Include")!.Value == package).Attribute("Version")!.Value;
        Assert.Matches(Exact(), version);
    }

    [Fact]
    public void Every_project_locks_what_it_restores()
    {
        Assert.Contains("<RestorePackagesWithLockFile>true<", House.Read("Directory.Build.props"), StringComparison.Ordinal);
        Assert.All(
            House.Files("", ".csproj"),
            project => Assert.True(File.Exists(Path.Combine(House.Root, Path.GetDirectoryName(project)!, "packages.lock.json")), project));
    }

    [GeneratedRegex(@"^\d+(\.\d+){1,3}$")]
    private static partial Regex Exact();
}
