using MomentArm.Exam;

namespace MomentArm.Content.Tests;

/// <summary>Patterns and tests broken on purpose: each fault is told with file, place and what to do.</summary>
public sealed class DamagedPatternsTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("damaged-patterns").FullName;

    public DamagedPatternsTests()
    {
        foreach (var part in new[] { "patterns", "measures", "norms", "danger-signs" })
            Copy(Path.Combine(Shipped.Folder, part), Path.Combine(folder, part));
        File.Copy(Path.Combine(Shipped.Folder, "sources.json"), Path.Combine(folder, "sources.json"));
    }

    public void Dispose() => Directory.Delete(folder, true);

    [Theory]
    [InlineData("patterns/acl-tear.json", "\"group\": 4", "\"group\": 40", "There is no group 40.")]
    [InlineData("patterns/acl-tear.json", "\"id\": \"acl-tear\"", "\"id\": \"acl\"", "differs from the file name")]
    [InlineData("patterns/acl-tear.json", "\"pivot-landing\"", "\"pivot-landin\"", "\"pivot-landin\" is neither a question nor a test.")]
    [InlineData("patterns/acl-tear.json", "\"pop-felt\"", "\"pivot-landing\"", "\"pivot-landing\" stands in it twice.")]
    [InlineData("patterns/hip-osteoarthritis.json", "\"value\": 0.34", "\"value\": 34", "34 is no probability.")]
    [InlineData("patterns/hip-osteoarthritis.json", "\"source\": \"metcalfe-2019\"", "\"source\": \"nobody-1900\"", "\"nobody-1900\" is not in sources.json")]
    [InlineData("patterns/sacroiliac-joint-pain.json", "\"usable\": false", "\"usable\": true", "A starting value from memory may not be used by itself.")]
    [InlineData("patterns/sacroiliac-joint-pain.json", "\"low\": 0.15", "\"low\": 0.25", "The range does not hold the value")]
    [InlineData("patterns/tests/hip.json", "\"standing\": \"checkFirst\"", "\"standing\": \"usable\"", "A figure from memory may not move a probability.")]
    [InlineData("patterns/tests/neck.json", "\"countOf\": 4,", "", "The number of signs does not fit the test.")]
    [InlineData("patterns/tests/knee.json", "\"value\": 3.53", "\"value\": 9.5", "is stored as 9.5; sensitivity and specificity give 3.526.")]
    [InlineData("patterns/tests/knee.json", "\"low\": 4.05", "\"low\": 6.05", "The interval does not hold the ratio")]
    [InlineData("patterns/tests/knee.json", "\"pattern\": \"acl-tear\"", "\"pattern\": \"acl\"", "There is no pattern \"acl\".")]
    [InlineData("patterns/tests/knee.json", "\"id\": \"t030\"", "\"id\": \"t023\"", "The figure id is used twice.")]
    [InlineData("patterns/tests/knee.json", "\"squat-pain-front\"\n      ]", "\"lachman\"\n      ]", "is no other test of the same family")]
    [InlineData("patterns/questions/questions.json", "hip-abduction-strength:weak", "hip-abduction-strength:feeble", "names no finding")]
    [InlineData("patterns/questions/questions.json", "\"id\": \"runner\"", "\"id\": \"lachman\"", "The id \"lachman\" is used twice among questions and tests.")]
    [InlineData("patterns/questions/yellow-flags.json", "\"about\": \"fear\"", "\"about\": \"\"", "A text is empty.")]
    public void A_damage_is_told(string file, string from, string to, string what)
    {
        Change(file, from, to);
        var error = Assert.Throws<ContentException>(() => ExamContent.Read(folder));
        Assert.Contains(error.Faults, f => f.ToString().Contains(what, StringComparison.Ordinal) && f.Mend.Length > 0);
    }

    [Fact]
    public void Several_damages_are_told_at_once()
    {
        Change("patterns/acl-tear.json", "\"group\": 4", "\"group\": 40");
        Change("patterns/hip-osteoarthritis.json", "\"value\": 0.34", "\"value\": 34");
        Change("patterns/tests/knee.json", "\"low\": 4.05", "\"low\": 6.05");
        Assert.Equal(3, Assert.Throws<ContentException>(() => ExamContent.Read(folder)).Faults.Count);
    }

    [Fact]
    public void A_content_without_patterns_has_no_hypotheses()
    {
        Directory.Delete(Path.Combine(folder, "patterns"), true);
        Assert.Same(ReasoningBasis.Empty, ExamContent.Read(folder).Reasoning);
    }

    private void Change(string file, string from, string to)
    {
        var path = Path.Combine(folder, file);
        var text = File.ReadAllText(path);
        var at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{file} does not hold {from}.");
        File.WriteAllText(path, text[..at] + to + text[(at + from.Length)..]);
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.EnumerateFiles(from))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        foreach (var inner in Directory.EnumerateDirectories(from))
            Copy(inner, Path.Combine(to, Path.GetFileName(inner)));
    }
}
