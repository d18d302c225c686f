using System.Collections.Immutable;

namespace MomentArm.Drawing;

/// <summary>A still picture: its scene, and the same as SVG without the outer element.</summary>
/// <param name="Scene">The scene, for other writers.</param>
/// <param name="Palette">Its colors.</param>
/// <param name="Inner">SVG elements to go inside an svg element with <see cref="ViewBox"/>.</param>
public sealed record Picture(Scene Scene, Palette Palette, string Inner)
{
    /// <summary>Width in picture units.</summary>
    public double Width => Scene.Width;

    /// <summary>Height in picture units.</summary>
    public double Height => Scene.Height;

    /// <summary>Value of the viewBox attribute.</summary>
    public string ViewBox => FormattableString.Invariant($"0 0 {Width:0} {Height:0}");
}

/// <summary>A moving picture: frames at even fractions from start to end in one view box. The page eases between them.</summary>
/// <param name="Width">Width in picture units.</param>
/// <param name="Height">Height in picture units.</param>
/// <param name="Backdrop">SVG elements that stand still, behind all frames.</param>
/// <param name="Frames">SVG elements of each frame, start first.</param>
public sealed record MovingPicture(double Width, double Height, string Backdrop, ImmutableArray<string> Frames)
{
    /// <summary>Value of the viewBox attribute.</summary>
    public string ViewBox => FormattableString.Invariant($"0 0 {Width:0} {Height:0}");
}
