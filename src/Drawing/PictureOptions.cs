using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>How the hair is drawn; it says where the back of the head is.</summary>
public enum HairStyle
{
    /// <summary>Tied in a knot at the back.</summary>
    Tied,

    /// <summary>Short.</summary>
    Short,
}

/// <summary>Choices for a picture.</summary>
public sealed record PictureOptions
{
    /// <summary>The usual choices.</summary>
    public static PictureOptions Usual { get; } = new();

    /// <summary>Colors.</summary>
    public Palette Palette { get; init; } = Palette.Light;

    /// <summary>Hair.</summary>
    public HairStyle Hair { get; init; } = HairStyle.Tied;

    /// <summary>Width over height of the frame, so that pictures in a list look even; null fits the frame to the content.</summary>
    public double? Aspect { get; init; } = 1.6;

    /// <summary>Whether a combined picture shows the start pose behind.</summary>
    public bool Ghost { get; init; } = true;

    /// <summary>Whether a combined picture shows the arrow of the motion.</summary>
    public bool Arrow { get; init; } = true;

    /// <summary>Which part carries the accent; null leaves it to the movement.</summary>
    public MovementFocus? Accent { get; init; }

    /// <summary>Whether the whole body is in the frame, also where a movement is better seen close.</summary>
    public bool Whole { get; init; }

    /// <summary>Areas tinted on the body, the most important first; labels are written in still pictures only.</summary>
    public ImmutableArray<Tint> Tints { get; init; } = [];
}
