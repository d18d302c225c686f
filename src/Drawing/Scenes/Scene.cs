using System.Collections.Immutable;

namespace MomentArm.Drawing;

/// <summary>A point of the picture: x to the right, y down, in centimeters of the room.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
public readonly record struct PicturePoint(double X, double Y);

/// <summary>A part of a circle, from one angle to another (radians, y down; the way round follows from the sign).</summary>
/// <param name="Center">Center.</param>
/// <param name="Radius">Radius; 0 for a corner.</param>
/// <param name="From">Angle at which the arc begins.</param>
/// <param name="To">Angle at which it ends.</param>
public readonly record struct Arc(PicturePoint Center, double Radius, double From, double To)
{
    /// <summary>
    /// Whether this is a corner (radius 0) that the outline only bends toward: control point of a quadratic curve between the
    /// middles of the edges to its neighbors, or their ends where the neighbor is not soft.
    /// </summary>
    public bool Soft { get; init; }

    /// <summary>The point of the circle at an angle.</summary>
    /// <param name="angle">Radians.</param>
    /// <returns>The point.</returns>
    public PicturePoint At(double angle) =>
        new(Center.X + Radius * Math.Cos(angle), Center.Y + Radius * Math.Sin(angle));
}

/// <summary>Which side of written words stands at their point.</summary>
public enum TextSide
{
    /// <summary>Their middle.</summary>
    Middle,

    /// <summary>Where reading starts; the words go right.</summary>
    Start,

    /// <summary>Where reading ends; the words come from the left.</summary>
    End,
}

/// <summary>
/// A shape of one tone. Filled loops (each a round of arcs joined by straight lines, filled together), or a stroked line.
/// </summary>
public sealed record SceneShape
{
    /// <summary>Name of the part, such as rightThigh.</summary>
    public required string Name { get; init; }

    /// <summary>What it is made of.</summary>
    public required Tone Tone { get; init; }

    /// <summary>Why it is there.</summary>
    public required ShapeRole Role { get; init; }

    /// <summary>Mean depth toward the viewer, meters; for reading only, shapes are already in painting order.</summary>
    public double Depth { get; init; }

    /// <summary>Filled loops; empty for a line.</summary>
    public ImmutableArray<ImmutableArray<Arc>> Loops { get; init; } = [];

    /// <summary>Points of a stroked line; empty for a filled shape.</summary>
    public ImmutableArray<PicturePoint> Line { get; init; } = [];

    /// <summary>Width of the line, picture units.</summary>
    public double LineWidth { get; init; }

    /// <summary>Words written at the first point of <see cref="Line"/>, on its baseline; null for a drawn shape.</summary>
    public string? Text { get; init; }

    /// <summary>Height of the letters, picture units.</summary>
    public double TextSize { get; init; }

    /// <summary>Which side of the words is at that point.</summary>
    public TextSide TextSide { get; init; }

    /// <summary>Whether a gap in the tone of the paper surrounds the shape.</summary>
    public bool Gap { get; init; } = true;

    /// <summary>The shape moved.</summary>
    internal SceneShape Moved(double dx, double dy)
    {
        PicturePoint Move(PicturePoint p) => new(p.X + dx, p.Y + dy);
        return this with
        {
            Loops = [.. Loops.Select(loop => loop.Select(a => a with { Center = Move(a.Center) }).ToImmutableArray())],
            Line = [.. Line.Select(Move)],
        };
    }

    /// <summary>The shape flipped in a picture of that width.</summary>
    internal SceneShape Flipped(double width)
    {
        PicturePoint Flip(PicturePoint p) => new(width - p.X, p.Y);
        return this with
        {
            Loops =
            [
                .. Loops.Select(loop => loop
                    .Select(a => new Arc(Flip(a.Center), a.Radius, Math.PI - a.From, Math.PI - a.To) { Soft = a.Soft })
                    .ToImmutableArray()),
            ],
            Line = [.. Line.Select(Flip)],
            TextSide = TextSide switch
            {
                TextSide.Start => TextSide.End,
                TextSide.End => TextSide.Start,
                _ => TextSide,
            },
        };
    }
}

/// <summary>Shapes in painting order, the farthest first, in a frame that begins at 0, 0.</summary>
/// <param name="Shapes">The shapes.</param>
/// <param name="Width">Width of the frame, picture units.</param>
/// <param name="Height">Height of the frame.</param>
public sealed record Scene(ImmutableArray<SceneShape> Shapes, double Width, double Height);
