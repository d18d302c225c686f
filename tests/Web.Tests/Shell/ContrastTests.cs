using System.Globalization;
using System.Text.RegularExpressions;

namespace MomentArm.Web.Shell;

/// <summary>
/// WCAG 2.2 success criteria 1.4.3 (text 4.5 to 1) and 1.4.11 (controls and graphics 3 to 1), computed from the palette
/// by the relative luminance of WCAG 2.2, https://www.w3.org/TR/WCAG22/#dfn-relative-luminance.
/// </summary>
public sealed partial class ContrastTests
{
    private static readonly Dictionary<string, (string Light, string Dark)> Palette = Read();

    public static TheoryData<string, string> TextPairs { get; } = Pairs(
        ["ink", "quiet", "accent", "accent-deep", "watch", "stop"], ["paper", "card", "sunk"]);

    public static TheoryData<string, string> GraphicPairs { get; } = Pairs(
        ["control", "focus", "accent", "watch-mark", "stop", "ink"], ["paper", "card", "sunk"]);

    [Theory]
    [MemberData(nameof(TextPairs))]
    [InlineData("on-accent", "accent")]
    [InlineData("on-accent", "accent-deep")]
    [InlineData("on-stop", "stop")]
    [InlineData("accent-deep", "accent-wash")]
    [InlineData("watch", "watch-wash")]
    [InlineData("stop", "stop-wash")]
    [InlineData("ink", "accent-wash")]
    [InlineData("ink", "watch-wash")]
    [InlineData("ink", "stop-wash")]
    public void Text_stands_out_at_least_four_and_a_half_to_one(string text, string ground) =>
        AssertBoth(text, ground, 4.5);

    [Theory]
    [MemberData(nameof(GraphicPairs))]
    [InlineData("ink", "zone")]
    public void Controls_and_graphics_stand_out_at_least_three_to_one(string mark, string ground) =>
        AssertBoth(mark, ground, 3);

    [Fact]
    public void Black_on_white_is_21_to_1() => Assert.Equal(21, Contrast("#000000", "#ffffff"), 9);

    private static void AssertBoth(string text, string ground, double least)
    {
        var light = Contrast(Palette[text].Light, Palette[ground].Light);
        var dark = Contrast(Palette[text].Dark, Palette[ground].Dark);
        Assert.True(light >= least, FormattableString.Invariant($"{text} on {ground}, light: {light:F2}"));
        Assert.True(dark >= least, FormattableString.Invariant($"{text} on {ground}, dark: {dark:F2}"));
    }

    private static TheoryData<string, string> Pairs(string[] fronts, string[] grounds)
    {
        var data = new TheoryData<string, string>();
        foreach (var front in fronts)
        {
            foreach (var ground in grounds)
            {
                data.Add(front, ground);
            }
        }

        return data;
    }

    private static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string hex)
    {
        var parts = Enumerable.Range(0, 3)
            .Select(i => int.Parse(hex.AsSpan(1 + 2 * i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
            .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)).ToArray();
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }

    private static Dictionary<string, (string, string)> Read() =>
        Token().Matches(File.ReadAllText(Path.Combine(House.Root, "src", "Web", "wwwroot", "css", "tokens.css")))
            .ToDictionary(match => match.Groups[1].Value, match => (match.Groups[2].Value, match.Groups[3].Value));

    [GeneratedRegex(@"--([a-z-]+):\s*light-dark\((#[0-9a-f]{6}),\s*(#[0-9a-f]{6})\)")]
    private static partial Regex Token();
}
