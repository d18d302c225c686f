using System.Collections.Immutable;

namespace MomentArm.Drawing;

/// <summary>The frame round what is drawn.</summary>
internal readonly record struct Frame(double Left, double Top, double Width, double Height)
{
    private const double Margin = 6;

    /// <summary>Room round a close-up of a hand, picture units (centimeters of the body).</summary>
    internal const double HandRoom = 27;

    /// <summary>The same round a foot.</summary>
    internal const double FootRoom = 19;

    /// <summary>The same round head and shoulders.</summary>
    internal const double HeadRoom = 44;

    /// <summary>A frame that holds the shapes, with margin, widened or heightened to the aspect asked for.</summary>
    internal static Frame Round(IEnumerable<SceneShape> shapes, double? aspect)
    {
        var bounds = Bounds(shapes);
        var width = bounds.Width + 2 * Margin;
        var height = bounds.Height + 2 * Margin;
        if (aspect is { } ratio)
            (width, height) = (Math.Max(width, height * ratio), Math.Max(height, width / ratio));
        (width, height) = (Math.Ceiling(width), Math.Ceiling(height));
        var (x, y) = (bounds.Left + bounds.Width / 2, bounds.Top + bounds.Height / 2);
        return new Frame(x - width / 2, y - height / 2, width, height);
    }

    /// <summary>A frame close round two places, with room round them; what lies outside is cut off.</summary>
    internal static Frame Close(PicturePoint a, PicturePoint b, double? aspect, double room)
    {
        var height = 2 * room + Math.Abs(a.Y - b.Y);
        var width = Math.Max(2 * room + Math.Abs(a.X - b.X), height * (aspect ?? 1));
        height = Math.Max(height, width / (aspect ?? width / height));
        return new Frame((a.X + b.X - width) / 2, (a.Y + b.Y - height) / 2, Math.Ceiling(width), Math.Ceiling(height));
    }

    /// <summary>The bounds of shapes, without margin.</summary>
    internal static Frame Bounds(IEnumerable<SceneShape> shapes)
    {
        var (x0, y0, x1, y1) = (double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var shape in shapes)
        {
            var half = shape.LineWidth / 2;
            foreach (var p in Extremes(shape))
            {
                x0 = Math.Min(x0, p.X - half);
                y0 = Math.Min(y0, p.Y - half);
                x1 = Math.Max(x1, p.X + half);
                y1 = Math.Max(y1, p.Y + half);
            }
        }

        return new Frame(x0, y0, x1 - x0, y1 - y0);
    }

    /// <summary>Shapes in this frame, flipped when the camera says so; what lies wholly outside is left out.</summary>
    internal ImmutableArray<SceneShape> Place(IEnumerable<SceneShape> shapes, bool flip)
    {
        var (dx, dy, width) = (-Left, -Top, Width);
        return [.. shapes.Where(Shows).Select(shape => shape.Moved(dx, dy)).Select(shape => flip ? shape.Flipped(width) : shape)];
    }

    private bool Shows(SceneShape shape)
    {
        const double gap = 1;
        var bounds = Bounds([shape]);
        return bounds.Left < Left + Width + gap && bounds.Left + bounds.Width > Left - gap
            && bounds.Top < Top + Height + gap && bounds.Top + bounds.Height > Top - gap;
    }

    /// <summary>The outermost points of a shape's arcs and line.</summary>
    private static IEnumerable<PicturePoint> Extremes(SceneShape shape)
    {
        foreach (var arc in shape.Loops.SelectMany(loop => loop))
        {
            yield return arc.At(arc.From);
            yield return arc.At(arc.To);
            const double quarter = Math.PI / 2;
            for (var k = Math.Ceiling(Math.Min(arc.From, arc.To) / quarter); k * quarter <= Math.Max(arc.From, arc.To); k++)
                yield return arc.At(k * quarter);
        }

        if (shape.Text is { } text)
        {
            var words = LabelLayout.BoundsOf(text, shape.TextSize, shape.Line[0], shape.TextSide);
            yield return new PicturePoint(words.Left, words.Top);
            yield return new PicturePoint(words.Left + words.Width, words.Top + words.Height);
        }

        foreach (var p in shape.Line)
            yield return p;
    }
}
