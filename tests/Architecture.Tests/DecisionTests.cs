using System.Text.RegularExpressions;

namespace MomentArm.Architecture.Tests;

/// <summary>A decision says when and why, what else there was, and what it costs.</summary>
public sealed partial class DecisionTests
{
    private const string Folder = "docs/decisions";

    public static TheoryData<string> Decisions { get; } = [.. House.Files(Folder, ".md")];

    [Theory]
    [MemberData(nameof(Decisions))]
    public void A_decision_has_number_date_and_its_four_parts(string file)
    {
        var name = Path.GetFileName(file);
        Assert.Matches(Numbered(), name);
        var lines = House.Lines(file);
        Assert.StartsWith($"# {name[..4].TrimStart('0')}. ", lines[0], StringComparison.Ordinal);
        Assert.Contains(lines, l => Dated().IsMatch(l));
        foreach (var part in new[] { "Context", "Options", "Choice", "Consequences" })
        {
            var at = Array.FindIndex(lines, l => l.StartsWith("## " + part, StringComparison.Ordinal));
            Assert.True(at > 0, $"{name} has no part {part}.");
            Assert.Contains(lines[(at + 1)..].TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal)), l => l.Trim().Length > 0);
        }
    }

    [Fact]
    public void Decisions_are_numbered_without_gaps() =>
        Assert.Equal(
            Enumerable.Range(1, Decisions.Count),
            House.Files(Folder, ".md").Select(f => int.Parse(Path.GetFileName(f)[..4], System.Globalization.CultureInfo.InvariantCulture)));

    [GeneratedRegex(@"^\d{4}-[a-z0-9-]+\.md$")]
    private static partial Regex Numbered();

    [GeneratedRegex(@"^Date: \d{4}-\d{2}-\d{2}\b")]
    private static partial Regex Dated();
}
