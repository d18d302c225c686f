using System.Text.RegularExpressions;

namespace MomentArm.Web.Shell;

/// <summary>The content policy allows no script or style written into a page; raw markup is not let through either.</summary>
public sealed partial class PageSourceTests
{
    private static readonly string Web = Path.Combine(House.Root, "src", "Web");

    public static TheoryData<string> Pages { get; } =
        [.. Directory.EnumerateFiles(Web, "*.razor", SearchOption.AllDirectories)
            .Where(file => !file.Contains(Path.DirectorySeparatorChar + "obj" + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            .Select(file => Path.GetRelativePath(Web, file))];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_has_no_style_attribute_and_no_inline_script(string page)
    {
        var text = File.ReadAllText(Path.Combine(Web, page));
        Assert.DoesNotMatch(Inline(), text);
    }

    [Fact]
    public void Every_style_sheet_and_script_named_is_there()
    {
        var named = Styles.Sheets.Concat(["js/theme.js", "js/shell.js", "js/reconnect.js", "mark.svg", "fonts/OFL.txt"]);
        Assert.All(named, file => Assert.True(File.Exists(Path.Combine(Web, "wwwroot", file)), file));
    }

    [Fact]
    public void Nothing_is_loaded_from_another_place()
    {
        var shipped = Directory.EnumerateFiles(Path.Combine(Web, "wwwroot"), "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is ".css" or ".js" or ".svg");
        Assert.All(shipped, file => Assert.DoesNotMatch(Remote(), File.ReadAllText(file)));
    }

    [GeneratedRegex(@"\sstyle\s*=|\son[a-z]+\s*=\s*""(?!@)|<script(?![^>]*\ssrc=)|<style|javascript:")]
    private static partial Regex Inline();

    [GeneratedRegex(@"(https?:)?//(?!www\.w3\.org/)[a-z0-9-]+\.[a-z]", RegexOptions.IgnoreCase)]
    private static partial Regex Remote();
}
