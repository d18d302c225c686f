namespace MomentArm.Drawing;

/// <summary>Names beside the figure, each in the nearest free place, with thin lines to what they name.</summary>
internal static class LabelLayout
{
    /// <summary>Height of the letters over the width of the picture: 13 px in a picture 340 px wide (our choice).</summary>
    private const double LetterShare = 0.038;

    /// <summary>Mean width of a letter over its height, for the frame (our choice for plain sans letters).</summary>
    private const double LetterWidth = 0.55;

    private const int Directions = 16;

    private const int SamplesPerWord = 15;

    /// <summary>Where a written text lies.</summary>
    internal static Frame BoundsOf(string text, double size, PicturePoint at, TextSide side)
    {
        var width = text.Length * LetterWidth * size;
        var left = side switch
        {
            TextSide.Start => at.X,
            TextSide.End => at.X - width,
            TextSide.Middle => at.X - width / 2,
        };
        return new Frame(left, at.Y - 0.8 * size, width, 1.1 * size);
    }

    /// <summary>The labels and their lines.</summary>
    /// <param name="labels">Texts and the points they name, the most important first.</param>
    /// <param name="drawn">What is drawn already; labels keep off all that moves, and off furniture where they can.</param>
    /// <param name="width">Width of the picture without them.</param>
    internal static IEnumerable<SceneShape> Of(
        IReadOnlyList<(string Text, PicturePoint At)> labels, IReadOnlyList<SceneShape> drawn, double width)
    {
        if (labels.Count == 0)
            yield break;
        var size = Math.Round(Math.Clamp(LetterShare * width, 7, 13), 1);
        Outline[] figure = [.. drawn.Where(shape => shape.Role != ShapeRole.Backdrop).SelectMany(Outline.Of)];
        Outline[] furniture = [.. drawn.Where(shape => shape.Role == ShapeRole.Backdrop && shape.Name != "floor").SelectMany(Outline.Of)];
        var taken = new List<Frame>();
        var lines = new List<(PicturePoint, PicturePoint)>();
        foreach (var (text, at) in labels)
        {
            var (best, least) = (default(Place), double.MaxValue);
            foreach (var place in Places(text, size, at))
            {
                var cost = Math.Round(Cost(place, least), 6);
                if (cost < least)
                    (best, least) = (place, cost);
            }

            taken.Add(best.Bounds);
            lines.Add((best.Tip, at));
            yield return new SceneShape
            {
                Name = "leader", Tone = Tone.Label, Role = ShapeRole.Label, Line = [best.Tip, at], LineWidth = 0.8,
            };
            yield return new SceneShape
            {
                Name = "label", Tone = Tone.Label, Role = ShapeRole.Label, Line = [best.Base], Text = text, TextSize = size, TextSide = best.Side,
            };

            // Ends as soon as it is dearer than the best so far.
            double Cost(in Place place, double enough)
            {
                var cost = place.Distance;
                if (cost >= enough)
                    return cost;
                foreach (var other in taken)
                {
                    if (Overlap(other, place.Bounds, 2))
                        cost += 2000;
                    if (Crosses(other, place.Tip, at))
                        cost += 500;
                }

                foreach (var line in lines)
                {
                    if (Cut(line.Item1, line.Item2, place.Tip, at))
                        cost += 300;
                    if (Crosses(place.Bounds, line.Item1, line.Item2))
                        cost += 500;
                }

                for (var i = 0; i < SamplesPerWord && cost < enough; i++)
                {
                    var p = Sample(place.Bounds, i);
                    cost += Held(figure, p) ? 60 : Held(furniture, p) ? 4 : 0;
                }

                return cost;
            }
        }
    }

    /// <summary>Places round a point, level ones a little dearer than none.</summary>
    private static IEnumerable<Place> Places(string text, double size, PicturePoint at)
    {
        foreach (var distance in (double[])[13, 18, 24, 31, 39, 48, 58, 70, 84, 100])
        {
            for (var i = 0; i < Directions; i++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * i / Directions);
                var tip = new PicturePoint(at.X + distance * cos, at.Y + distance * sin);
                var side = cos > 0.3 ? TextSide.Start : cos < -0.3 ? TextSide.End : TextSide.Middle;
                var x = tip.X + (side == TextSide.Start ? 1.5 : side == TextSide.End ? -1.5 : 0);
                var y = side == TextSide.Middle ? sin > 0 ? tip.Y + 0.9 * size : tip.Y - 0.25 * size : tip.Y + 0.33 * size;
                var foot = new PicturePoint(x, y);

                // Steep lines read less well; up is better than down.
                yield return new Place(foot, tip, side, distance * (1 + 0.25 * Math.Abs(sin) + (sin > 0.1 ? 0.15 : 0)), BoundsOf(text, size, foot, side));
            }
        }
    }

    private static PicturePoint Sample(Frame box, int i) =>
        new(box.Left + box.Width * (i % 5) / 4, box.Top + box.Height * (i / 5) / 2);

    private static bool Held(Outline[] outlines, PicturePoint p)
    {
        foreach (var outline in outlines)
        {
            if (outline.Holds(p))
                return true;
        }

        return false;
    }

    private static bool Overlap(Frame a, Frame b, double apart) =>
        a.Left < b.Left + b.Width + apart && b.Left < a.Left + a.Width + apart
        && a.Top < b.Top + b.Height + apart && b.Top < a.Top + a.Height + apart;

    private static bool Crosses(Frame box, PicturePoint from, PicturePoint to)
    {
        PicturePoint a = new(box.Left, box.Top), b = new(box.Left + box.Width, box.Top + box.Height);
        return Cut(from, to, a, b) || Cut(from, to, new(a.X, b.Y), new(b.X, a.Y));
    }

    private static bool Cut(PicturePoint a, PicturePoint b, PicturePoint c, PicturePoint d)
    {
        static double Turn(PicturePoint p, PicturePoint q, PicturePoint r) => (q.X - p.X) * (r.Y - p.Y) - (q.Y - p.Y) * (r.X - p.X);
        return Turn(a, b, c) * Turn(a, b, d) < 0 && Turn(c, d, a) * Turn(c, d, b) < 0;
    }

    private readonly record struct Place(PicturePoint Base, PicturePoint Tip, TextSide Side, double Distance, Frame Bounds);

    /// <summary>A loop as a polygon.</summary>
    private sealed class Outline
    {
        private readonly PicturePoint[] corners;
        private readonly Frame bounds;

        private Outline(PicturePoint[] corners)
        {
            this.corners = corners;
            var (x, y) = (corners.Min(p => p.X), corners.Min(p => p.Y));
            bounds = new Frame(x, y, corners.Max(p => p.X) - x, corners.Max(p => p.Y) - y);
        }

        internal static IEnumerable<Outline> Of(SceneShape shape)
        {
            foreach (var loop in shape.Loops)
                yield return new Outline([.. loop.SelectMany(arc => (PicturePoint[])[arc.At(arc.From), arc.At((arc.From + arc.To) / 2), arc.At(arc.To)])]);
            for (var i = 0; i + 1 < shape.Line.Length; i++)
            {
                var (a, b) = (shape.Line[i], shape.Line[i + 1]);
                var length = Math.Sqrt((b.X - a.X) * (b.X - a.X) + (b.Y - a.Y) * (b.Y - a.Y)) + 1e-9;
                var (x, y) = ((a.Y - b.Y) / length * (shape.LineWidth + 2), (b.X - a.X) / length * (shape.LineWidth + 2));
                yield return new Outline([new(a.X + x, a.Y + y), new(b.X + x, b.Y + y), new(b.X - x, b.Y - y), new(a.X - x, a.Y - y)]);
            }
        }

        internal bool Holds(PicturePoint p)
        {
            const double apart = 1.5;
            if (p.X < bounds.Left - apart || p.X > bounds.Left + bounds.Width + apart
                || p.Y < bounds.Top - apart || p.Y > bounds.Top + bounds.Height + apart)
                return false;
            var inside = false;
            for (int i = 0, j = corners.Length - 1; i < corners.Length; j = i++)
            {
                var (a, b) = (corners[i], corners[j]);
                if (a.Y > p.Y != b.Y > p.Y && p.X < (b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y) + a.X)
                    inside = !inside;
            }

            return inside;
        }
    }
}
