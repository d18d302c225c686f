using System.Globalization;

namespace MomentArm.Drawing.Tests;

public sealed class PaletteTests
{
    public static TheoryData<string> Palettes { get; } = ["light", "dark", "gray"];

    private static Palette Named(string name) => name switch
    {
        "light" => Palette.Light,
        "dark" => Palette.Dark,
        _ => Palette.Gray,
    };

    /// <summary>Relative luminance and contrast as in WCAG 2.2, "contrast ratio" (w3.org/TR/WCAG22/#dfn-contrast-ratio).</summary>
    private static double Contrast(string a, string b)
    {
        static double Luminance(string color)
        {
            double Channel(int at)
            {
                var v = int.Parse(color.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
                return v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
            }

            return 0.2126 * Channel(1) + 0.7152 * Channel(3) + 0.0722 * Channel(5);
        }

        var (x, y) = (Luminance(a), Luminance(b));
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    [Fact]
    public void Black_on_white_has_the_published_contrast_of_21() => Assert.Equal(21, Contrast("#000000", "#ffffff"), 6);

    [Theory]
    [MemberData(nameof(Palettes))]
    public void What_matters_most_stands_out_from_the_page(string name)
    {
        var palette = Named(name);
        foreach (var tone in (Tone[])[Tone.Working, Tone.FarWorking, Tone.Arrow, Tone.Band, Tone.Weight])
            Assert.True(Contrast(palette[tone], palette[Tone.Paper]) >= 3, $"{tone} {Contrast(palette[tone], palette[Tone.Paper]):0.00}");
    }

    [Theory]
    [MemberData(nameof(Palettes))]
    public void The_end_pose_stands_out_from_its_ghost(string name)
    {
        var palette = Named(name);
        Assert.True(Contrast(palette[Tone.Working], palette[Tone.GhostWorking]) >= 3);
    }

    [Theory]
    [MemberData(nameof(Palettes))]
    public void Tints_stand_out_from_the_clothes_and_limbs_under_them(string name)
    {
        var palette = Named(name);
        foreach (var under in (Tone[])[Tone.Working, Tone.FarWorking, Tone.Other, Tone.Shorts, Tone.Shirt])
        {
            foreach (var tint in (Tone[])[Tone.TintWork, Tone.TintStretch])
                Assert.True(Contrast(palette[tint], palette[under]) >= 1.1, $"{tint} on {under} {Contrast(palette[tint], palette[under]):0.00}");
        }

        var mark = palette.Marked ? Tone.TintMark : Tone.TintWork;
        Assert.True(Contrast(palette[Tone.TintStretch], palette[mark]) >= 1.7);
        Assert.True(Contrast(palette[Tone.Label], palette[Tone.Paper]) >= 7);
    }

    [Fact]
    public void In_gray_the_limbs_differ_by_lightness_alone()
    {
        var gray = Palette.Gray;
        Assert.True(Contrast(gray[Tone.Working], gray[Tone.Other]) >= 3);
        foreach (var tone in Enum.GetValues<Tone>())
            Assert.True(gray[tone][1..3] == gray[tone][3..5] && gray[tone][3..5] == gray[tone][5..7], $"{tone} is gray");
    }
}
