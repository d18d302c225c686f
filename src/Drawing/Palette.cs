using System.Collections.Frozen;

namespace MomentArm.Drawing;

/// <summary>A color for each tone, as #rrggbb.</summary>
public sealed class Palette
{
    private readonly FrozenDictionary<Tone, string> colors;

    private Palette(Dictionary<Tone, string> colors) => this.colors = colors.ToFrozenDictionary();

    /// <summary>On the light page and on paper in color.</summary>
    public static Palette Light { get; } = new(new Dictionary<Tone, string>
    {
        [Tone.Paper] = "#fbfaf7",
        [Tone.Floor] = "#ece6d9",
        [Tone.Mat] = "#d5dce6",
        [Tone.MatEdge] = "#b4c0cf",
        [Tone.PropTop] = "#e3cfa9",
        [Tone.Prop] = "#cdb383",
        [Tone.PropShade] = "#b0956a",
        [Tone.Band] = "#6d4c91",
        [Tone.Weight] = "#3d3550",
        [Tone.Working] = "#1f6f5c",
        [Tone.FarWorking] = "#2a7a67",
        [Tone.Other] = "#6b788d",
        [Tone.FarOther] = "#8995a8",
        [Tone.Shorts] = "#2c394b",
        [Tone.FarShorts] = "#414f63",
        [Tone.Shirt] = "#8fa5bf",
        [Tone.FarShirt] = "#778daa",
        [Tone.Skin] = "#e5bf9f",
        [Tone.FarSkin] = "#d0a585",
        [Tone.Hair] = "#4f3529",
        [Tone.Feature] = "#b98a6b",
        [Tone.Shoe] = "#d6cebf",
        [Tone.Sole] = "#857b6b",
        [Tone.Ghost] = "#dcdcda",
        [Tone.GhostWorking] = "#bfd6cd",
        [Tone.Arrow] = "#9a6700",
        [Tone.TintWork] = "#d6552f",
        [Tone.TintStretch] = "#f3c544",
        [Tone.TintMark] = "#2b3440",
        [Tone.Label] = "#26303c",
    });

    /// <summary>On the dark page.</summary>
    public static Palette Dark { get; } = new(new Dictionary<Tone, string>
    {
        [Tone.Paper] = "#171b21",
        [Tone.Floor] = "#2a2d31",
        [Tone.Mat] = "#323c4a",
        [Tone.MatEdge] = "#242c38",
        [Tone.PropTop] = "#a58f67",
        [Tone.Prop] = "#86724e",
        [Tone.PropShade] = "#65563a",
        [Tone.Band] = "#b497dc",
        [Tone.Weight] = "#c9c0dd",
        [Tone.Working] = "#3fae91",
        [Tone.FarWorking] = "#36997f",
        [Tone.Other] = "#8b98ae",
        [Tone.FarOther] = "#6c788c",
        [Tone.Shorts] = "#46566f",
        [Tone.FarShorts] = "#394659",
        [Tone.Shirt] = "#9fb4cd",
        [Tone.FarShirt] = "#7e93ae",
        [Tone.Skin] = "#e0b997",
        [Tone.FarSkin] = "#bf9675",
        [Tone.Hair] = "#7a5646",
        [Tone.Feature] = "#a97c5f",
        [Tone.Shoe] = "#d9d2c5",
        [Tone.Sole] = "#948a79",
        [Tone.Ghost] = "#363b43",
        [Tone.GhostWorking] = "#2b4c45",
        [Tone.Arrow] = "#e0a93b",
        [Tone.TintWork] = "#cf4d26",
        [Tone.TintStretch] = "#f5d469",
        [Tone.TintMark] = "#171b21",
        [Tone.Label] = "#e4e7ec",
    });

    /// <summary>For printers without color: the treated limb darkest, told apart by lightness alone.</summary>
    public static Palette Gray { get; } = new(new Dictionary<Tone, string>
    {
        [Tone.Paper] = "#ffffff",
        [Tone.Floor] = "#f0f0f0",
        [Tone.Mat] = "#ececec",
        [Tone.MatEdge] = "#bdbdbd",
        [Tone.PropTop] = "#dcdcdc",
        [Tone.Prop] = "#c4c4c4",
        [Tone.PropShade] = "#a4a4a4",
        [Tone.Band] = "#111111",
        [Tone.Weight] = "#111111",
        [Tone.Working] = "#2a2a2a",
        [Tone.FarWorking] = "#333333",
        [Tone.Other] = "#868686",
        [Tone.FarOther] = "#9c9c9c",
        [Tone.Shorts] = "#565656",
        [Tone.FarShorts] = "#686868",
        [Tone.Shirt] = "#a9a9a9",
        [Tone.FarShirt] = "#949494",
        [Tone.Skin] = "#cfcfcf",
        [Tone.FarSkin] = "#bababa",
        [Tone.Hair] = "#3c3c3c",
        [Tone.Feature] = "#8a8a8a",
        [Tone.Shoe] = "#c6c6c6",
        [Tone.Sole] = "#707070",
        [Tone.Ghost] = "#e0e0e0",
        [Tone.GhostWorking] = "#c8c8c8",
        [Tone.Arrow] = "#000000",
        [Tone.TintWork] = "#f4f4f4",
        [Tone.TintStretch] = "#f4f4f4",
        [Tone.TintMark] = "#000000",
        [Tone.Label] = "#111111",
    }) { Marked = true };

    /// <summary>Whether tinted areas carry stripes, across for work and along for stretch, since their colors are alike.</summary>
    public bool Marked { get; private init; }

    /// <summary>The color of a tone.</summary>
    /// <param name="tone">The tone.</param>
    /// <returns>#rrggbb.</returns>
    public string this[Tone tone] => colors[tone];
}
