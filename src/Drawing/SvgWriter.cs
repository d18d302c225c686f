using System.Collections.Immutable;
using System.Globalization;
using System.Security;
using System.Text;

namespace MomentArm.Drawing;

/// <summary>
/// Writes a scene as SVG: plain attributes only (no style elements or attributes, no ids), each shape with a class named
/// after its tone (fig-working) so that a page may recolor it. Numbers have one decimal. A loop begins with a hard arc.
/// </summary>
public static class SvgWriter
{
    private const double GapWidth = 0.9;

    /// <summary>A bow lower than this (0.6 mm of the room) is written as a line.</summary>
    private const double Flat = 0.06;

    private static readonly ImmutableArray<string> Classes = [.. Enum.GetValues<Tone>().Select(Named)];

    /// <summary>A whole standalone SVG document.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="title">Short title, read aloud as the picture's name.</param>
    /// <param name="description">What it shows, in words.</param>
    /// <returns>The document.</returns>
    public static string Document(Picture picture, string title, string description)
    {
        ArgumentNullException.ThrowIfNull(picture);
        return FormattableString.Invariant(
            $"""
            <svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="{picture.ViewBox}" width="{picture.Width:0}" height="{picture.Height:0}"><title>{SecurityElement.Escape(title)}</title><desc>{SecurityElement.Escape(description)}</desc>{picture.Inner}</svg>
            """);
    }

    /// <summary>The shapes as elements, without the outer element.</summary>
    /// <param name="shapes">Shapes in painting order.</param>
    /// <param name="palette">Colors.</param>
    /// <returns>One group.</returns>
    public static string Inner(IEnumerable<SceneShape> shapes, Palette palette)
    {
        ArgumentNullException.ThrowIfNull(shapes);
        ArgumentNullException.ThrowIfNull(palette);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<g class=\"fig-gap\" stroke=\"{palette[Tone.Paper]}\" stroke-width=\"{2 * GapWidth}\" ")
            .Append("stroke-linejoin=\"round\" stroke-linecap=\"round\" paint-order=\"stroke\">");
        foreach (var shape in shapes)
        {
            if (shape.Text is not null)
                WriteText(text, shape, palette);
            else if (shape.Line.IsEmpty)
                WriteFilled(text, shape, palette);
            else
                WriteLine(text, shape, palette);
        }

        return text.Append("</g>").ToString();
    }

    /// <summary>The class of a tone, such as fig-far-skin.</summary>
    /// <param name="tone">The tone.</param>
    /// <returns>The class.</returns>
    public static string ClassOf(Tone tone) => Classes[(int)tone];

    private static string Named(Tone tone)
    {
        var text = new StringBuilder("fig");
        foreach (var letter in tone.ToString())
            text.Append(char.IsUpper(letter) ? "-" : "").Append(char.ToLowerInvariant(letter));
        return text.ToString();
    }

    private static void WriteFilled(StringBuilder text, SceneShape shape, Palette palette)
    {
        text.Append("<path class=\"").Append(ClassOf(shape.Tone)).Append("\" fill=\"").Append(palette[shape.Tone]).Append('"');
        if (!shape.Gap)
            text.Append(" stroke=\"none\"");
        text.Append(" d=\"");
        foreach (var loop in shape.Loops)
            WriteLoop(text, loop.AsSpan());
        text.Append("\"/>");
    }

    // Relative steps between rounded points: short, and rounding never adds up.
    private static void WriteLoop(StringBuilder text, ReadOnlySpan<Arc> loop)
    {
        (long X, long Y) pen = default;
        for (var i = 0; i < loop.Length; i++)
        {
            var arc = loop[i];
            if (arc.Soft)
            {
                var next = loop[(i + 1) % loop.Length];
                var end = next.Soft
                    ? new PicturePoint((arc.Center.X + next.Center.X) / 2, (arc.Center.Y + next.Center.Y) / 2)
                    : next.At(next.From);
                Curve(text, arc.Center, end, ref pen);
                continue;
            }

            if (i == 0)
                pen = MoveTo(text, arc.At(arc.From));
            else
                Step(text, 'l', arc.At(arc.From), ref pen);
            var turn = Math.Abs(arc.To - arc.From);

            // Flat enough for a straight line, and shorter to write.
            if (turn < Math.PI && arc.Radius * (1 - Math.Cos(turn / 2)) < Flat)
            {
                Step(text, 'l', arc.At(arc.To), ref pen);
                continue;
            }

            // A whole circle needs two halves: an arc from a point to itself draws nothing.
            var whole = turn > 1.9 * Math.PI;
            if (whole)
                WriteArc(text, arc, (arc.From + arc.To) / 2, false, ref pen);
            WriteArc(text, arc, arc.To, !whole && turn > Math.PI, ref pen);
        }

        text.Append('z');
    }

    private static void WriteArc(StringBuilder text, in Arc arc, double to, bool large, ref (long X, long Y) pen)
    {
        var (x, y) = (Tenths(arc.At(to).X), Tenths(arc.At(to).Y));
        if ((x, y) == pen)
            return;
        var radius = Tenths(arc.Radius);
        text.Append('a');
        WriteTenths(text, radius, true);
        WriteTenths(text, radius, false);
        text.Append(" 0 ").Append(large ? '1' : '0').Append(arc.To > arc.From ? '1' : '0');
        WriteTenths(text, x - pen.X, true);
        WriteTenths(text, y - pen.Y, false);
        pen = (x, y);
    }

    private static (long X, long Y) MoveTo(StringBuilder text, PicturePoint point)
    {
        var (x, y) = (Tenths(point.X), Tenths(point.Y));
        WriteTenths(text.Append('M'), x, true);
        WriteTenths(text, y, false);
        return (x, y);
    }

    private static void Step(StringBuilder text, char command, PicturePoint point, ref (long X, long Y) pen)
    {
        var (x, y) = (Tenths(point.X), Tenths(point.Y));
        if ((x, y) == pen)
            return;
        WriteTenths(text.Append(command), x - pen.X, true);
        WriteTenths(text, y - pen.Y, false);
        pen = (x, y);
    }

    private static void Curve(StringBuilder text, PicturePoint toward, PicturePoint end, ref (long X, long Y) pen)
    {
        WriteTenths(text.Append('q'), Tenths(toward.X) - pen.X, true);
        WriteTenths(text, Tenths(toward.Y) - pen.Y, false);
        var (x, y) = (Tenths(end.X), Tenths(end.Y));
        WriteTenths(text, x - pen.X, false);
        WriteTenths(text, y - pen.Y, false);
        pen = (x, y);
    }

    private static long Tenths(double value) => (long)Math.Round(value * 10, MidpointRounding.AwayFromZero);

    private static void WriteTenths(StringBuilder text, long tenths, bool first)
    {
        if (tenths < 0)
            text.Append('-');
        else if (!first)
            text.Append(' ');
        tenths = Math.Abs(tenths);
        if (tenths >= 10 || tenths == 0)
            text.Append(CultureInfo.InvariantCulture, $"{tenths / 10}");
        if (tenths % 10 != 0)
            text.Append('.').Append((char)('0' + tenths % 10));
    }

    private static void WriteLine(StringBuilder text, SceneShape shape, Palette palette)
    {
        var path = new StringBuilder();
        var line = shape.Line;
        MoveTo(path, line[0]);
        for (var i = 1; i < line.Length - 1; i++)
        {
            var next = i == line.Length - 2 ? line[^1] : new((line[i].X + line[i + 1].X) / 2, (line[i].Y + line[i + 1].Y) / 2);
            WritePoint(path, 'Q', line[i]);
            WritePoint(path, ' ', next);
        }

        if (line.Length == 2)
            WritePoint(path, 'L', line[1]);
        if (shape.Gap)
        {
            text.Append(CultureInfo.InvariantCulture, $"<path fill=\"none\" stroke-width=\"{shape.LineWidth + 2 * GapWidth:0.#}\" d=\"{path}\"/>");
        }

        text.Append(
            CultureInfo.InvariantCulture,
            $"<path class=\"{ClassOf(shape.Tone)}\" fill=\"none\" stroke=\"{palette[shape.Tone]}\" stroke-width=\"{shape.LineWidth:0.#}\" d=\"{path}\"/>");
    }

    // The gap's stroke, painted first, keeps words readable over lines.
    private static void WriteText(StringBuilder text, SceneShape shape, Palette palette)
    {
        var anchor = shape.TextSide switch
        {
            TextSide.Start => "start",
            TextSide.End => "end",
            TextSide.Middle => "middle",
        };
        var at = shape.Line[0];
        text.Append(
            CultureInfo.InvariantCulture,
            $"<text class=\"{ClassOf(shape.Tone)}\" fill=\"{palette[shape.Tone]}\" x=\"{at.X:0.#}\" y=\"{at.Y:0.#}\" font-size=\"{shape.TextSize:0.#}\" font-family=\"Atkinson Hyperlegible, sans-serif\" text-anchor=\"{anchor}\">{SecurityElement.Escape(shape.Text)}</text>");
    }

    private static void WritePoint(StringBuilder text, char command, PicturePoint point)
    {
        WriteTenths(text.Append(command), Tenths(point.X), true);
        WriteTenths(text, Tenths(point.Y), false);
    }
}
