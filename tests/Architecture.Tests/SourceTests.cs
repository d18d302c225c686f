using System.Text.RegularExpressions;

namespace MomentArm.Architecture.Tests;

/// <summary>What may not stand in the source, and the few places where it may.</summary>
public sealed partial class SourceTests
{
    /// <summary>Markup that is let through as it is, each file with what it lets through.</summary>
    private static readonly Dictionary<string, string> MarkupLetThrough = new()
    {
        ["src/Web/Pages/Designer/PoseStage.razor"] = "a picture of the Drawing room",
        ["src/Web/Pages/Exam/TestPlacing.razor"] = "a picture of the Drawing room",
        ["src/Web/Pages/Education/CardPage.razor"] = "pictures of the Drawing room",
        ["src/Web/Pages/Education/CardsPage.razor"] = "pictures of the Drawing room",
        ["src/Web/Pages/Library/ExercisePicture.razor"] = "a picture of the Drawing room",
        ["src/Web/Pages/Library/MovementChartFigure.razor"] = "a chart of the Drawing room, which encodes every text",
        ["src/Web/Pages/Program/HandoutPage.razor"] = "the handout of the Documents room, which encodes every text",
    };

    [Fact]
    public void Markup_is_let_through_only_where_our_own_rooms_made_it()
    {
        var used = House.Files("src", ".razor", ".cs").Where(f => House.Read(f).Contains("MarkupString", StringComparison.Ordinal));
        Assert.Empty(used.Except(MarkupLetThrough.Keys));
    }

    [Fact]
    public void The_patient_page_and_every_other_shipped_page_hold_no_inline_style_or_script()
    {
        // Razor pages are held to this in Web.Tests, where the content policy is.
        var pages = House.Files("src", ".html").ToArray();
        Assert.NotEmpty(pages);
        Assert.All(pages, page => Assert.DoesNotMatch(Inline(), House.Read(page)));
    }

    [Fact]
    public void Statements_of_the_database_stand_in_Records_alone()
    {
        var found = Found(Code("src").Where(f => !f.StartsWith("src/Records/", StringComparison.Ordinal)), Statement(), keepTexts: true);
        Assert.Empty(found);
        Assert.NotEmpty(Found(Code("src/Records"), Statement(), keepTexts: true));
    }

    [Fact]
    public void Time_and_chance_come_from_outside() =>
        Assert.Empty(Found(Code("src"), ClockOrChance()));

    [Fact]
    public void Nothing_waits_for_a_task_by_blocking() =>
        Assert.Empty(Found(Code("src"), Blocking()));

    [Theory]
    [InlineData("var now = DateTime.UtcNow;")]
    [InlineData("var now = DateTimeOffset.Now;")]
    [InlineData("var n = Random.Shared.Next();")]
    [InlineData("var r = new Random();")]
    public void The_check_for_time_and_chance_can_fail(string code) => Assert.Matches(ClockOrChance(), code);

    [Theory]
    [InlineData("var x = LoadAsync().Result;")]
    [InlineData("task.Wait();")]
    [InlineData("var x = task.GetAwaiter().GetResult();")]
    public void The_check_for_blocking_can_fail(string code) => Assert.Matches(Blocking(), code);

    [Fact]
    public void No_file_names_a_folder_of_one_machine() =>
        Assert.Empty(FoundInText(MachinePath()));

    [Fact]
    public void No_project_file_names_a_package_host()
    {
        var projects = House.Files("", ".csproj", ".props", ".targets", ".slnx", "packages.lock.json", "global.json", ".config", ".editorconfig")
            .Concat(["run", "test", "momentarm", ".ci/run"]);
        Assert.Empty(from file in projects where PackageHost().IsMatch(House.Read(file)) select file);
    }

    [Fact]
    public void No_file_tells_how_it_was_made() => Assert.Empty(FoundInText(Making()));

    private static IEnumerable<string> Code(string under) => House.Files(under, ".cs", ".razor")
        .Where(f => !f.Contains("/Migrations/", StringComparison.Ordinal));

    private static IEnumerable<string> Found(IEnumerable<string> files, Regex pattern, bool keepTexts = false) =>
        from file in files
        let code = SourceText.Code(House.Read(file), keepTexts)
        from Match match in pattern.Matches(code)
        select $"{file}:{code[..match.Index].Count(c => c == '\n') + 1}: {match.Value}";

    /// <summary>In every written file but this one, which has to name what it looks for.</summary>
    private static IEnumerable<string> FoundInText(Regex pattern) =>
        from file in House.Files("", ".cs", ".razor", ".js", ".mjs", ".css", ".html", ".json", ".csv", ".md", ".csproj", ".props", ".targets", ".slnx", ".txt")
            .Concat(["run", "test", "momentarm", ".ci/run"])
        where file != "tests/Architecture.Tests/SourceTests.cs"
        from Match match in pattern.Matches(House.Read(file))
        select $"{file}: {match.Value}";

    [GeneratedRegex(@"\sstyle\s*=|\son[a-z]+\s*=|<script(?![^>]*\ssrc=)|<style|javascript:", RegexOptions.IgnoreCase)]
    private static partial Regex Inline();

    [GeneratedRegex(@"""[^""\n]*\b(SELECT\s[^""\n]*\sFROM\s|INSERT\s+INTO\s|UPDATE\s+\w+\s+SET\s|DELETE\s+FROM\s|(CREATE|DROP|ALTER)\s+(TABLE|INDEX|TRIGGER|VIEW)\s|PRAGMA\s)|\b(FromSql|ExecuteSql|SqlQuery)\w*\(")]
    private static partial Regex Statement();

    [GeneratedRegex(@"\bDateTime(Offset)?\.(Now|UtcNow|Today)\b|\bRandom\.Shared\b|\bnew\s+Random\s*\(")]
    private static partial Regex ClockOrChance();

    [GeneratedRegex(@"\.Result\b(?!\s*\()|\.Wait\s*\(|\.GetAwaiter\(\)\s*\.GetResult\(")]
    private static partial Regex Blocking();

    [GeneratedRegex(@"(?<![\w.~}$/:])/(work|home|root|Users)/[a-z]|\b[A-Z]:\\Users\\")]
    private static partial Regex MachinePath();

    [GeneratedRegex(@"https?://(?!localhost)|\bnuget\.org|registry\.npmjs|pkgs\.dev\.azure", RegexOptions.IgnoreCase)]
    private static partial Regex PackageHost();

    [GeneratedRegex(@"\b(language model|chat ?bot|AI[- ](generated|assisted|written))\b|\bissue #?\d+\b|\bfixes #\d+", RegexOptions.IgnoreCase)]
    private static partial Regex Making();
}
