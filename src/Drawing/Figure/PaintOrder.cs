using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>
/// Which part is painted first. For each two parts that overlap in the picture, the depths at the place of overlap decide,
/// with a small lean for neighbors in a limb (clothes over skin, thigh over lower leg); then all pairs are put in one order,
/// the surest first, leaving out what would go in a circle.
/// </summary>
internal static class PaintOrder
{
    /// <summary>Indexes of the parts, the farthest first.</summary>
    internal static int[] Of(IReadOnlyList<BodyPart> parts, Camera camera)
    {
        var discs = parts.Select(part => Samples(part, camera)).ToArray();
        var names = parts.Select(part => new PartName(part.Name)).ToArray();
        var rules = new List<(int Under, int Over, double Sureness)>();
        for (var a = 0; a < parts.Count; a++)
        {
            for (var b = a + 1; b < parts.Count; b++)
            {
                if (Compare(discs[a], discs[b], names[a], names[b]) is not { } nearer)
                    continue;
                rules.Add(nearer < 0 ? (a, b, -nearer) : (b, a, nearer));
            }
        }

        return Sort(discs, rules);
    }

    /// <summary>Mean depth of a part, meters.</summary>
    internal static double Depth(BodyPart part, Camera camera) => Samples(part, camera).Average(d => d.Depth);

    /// <summary>Balls of the part and the middles between neighbors.</summary>
    internal static Disc[] Samples(BodyPart part, Camera camera)
    {
        if (part.Reach.Length > 0)
            return [.. part.Reach.Select(camera.See)];
        var samples = new List<Disc>();
        foreach (var hull in part.Layers.Where(layer => layer.Gap).SelectMany(layer => layer.Hulls))
        {
            for (var i = 0; i < hull.Length; i++)
            {
                samples.Add(camera.See(hull[i]));
                if (i > 0)
                    samples.Add(camera.See(new Ball(hull[i - 1].Center.Toward(hull[i].Center, 0.5), (hull[i - 1].Radius + hull[i].Radius) / 2)));
            }
        }

        return [.. samples];
    }

    /// <summary>Positive when the first is nearer, meters; null when they do not overlap.</summary>
    private static double? Compare(Disc[] first, Disc[] second, PartName one, PartName other)
    {
        double weight = 0;
        double sum = 0;
        foreach (var a in first)
        {
            foreach (var b in second)
            {
                var (dx, dy, reach) = (a.X - b.X, a.Y - b.Y, a.R + b.R);
                var square = dx * dx + dy * dy;
                if (square >= reach * reach)
                    continue;
                var overlap = reach - Math.Sqrt(square);
                weight += overlap * overlap;
                sum += overlap * overlap * (a.Depth - b.Depth);
            }
        }

        // Rounded, so that a tie stays a tie on both sides.
        return weight > 0 ? Math.Round(sum / weight + Lean(one, other), 7) : null;
    }

    /// <summary>Lean for the first of two neighbors to be over the second, meters.</summary>
    private static double Lean(PartName first, PartName second) => Rank(first, second) - Rank(second, first);

    private static double Rank(PartName over, PartName under)
    {
        var sameSide = over.Right == under.Right;
        return (over.Part, under.Part) switch
        {
            ("shirt", "pelvis") or ("shirt", "neck") or ("head", "neck") => 10,
            ("Shorts", "Thigh") or ("Sleeve", "UpperArm") when sameSide => 10,
            ("Shank", "Shoe") when sameSide => 0.1,
            ("Thigh", "Shank") when sameSide => 0.03,
            ("Shorts", "pelvis") => 0.03,
            ("Sleeve", "shirt") => 0.035,
            ("UpperArm", "Forearm") when sameSide => 0.01,
            ("Forearm", "Hand") when sameSide => 0.01,
            ("Thigh", "pelvis") => 0.02,
            ("head", "shirt") => 0.02,
            ("Hand", "strap" or "HandWeight" or "stick" or "longBand" or "towel" or "bicycle") => 0.06,
            ("longBand", "Shoe") => 0.06,
            ("longBand", "door") => 10,
            ("HandWeight" or "WeightEnd" or "smallBall", "table") => 10,
            ("WeightEnd", "HandWeight") => 0.08,
            ("Shoe", "ball" or "smallBall") => 0.04,
            ("pelvis" or "Shorts" or "Thigh" or "shirt" or "Sleeve" or "Shank", "ball" or "smallBall" or "roller") => 0.06,
            ("Cuff", "longBand") => 0.04,
            ("table", "Shoe" or "Shank" or "Thigh" or "Shorts" or "pelvis" or "Cuff") => 10,
            ("Hand" or "Forearm" or "UpperArm" or "Sleeve" or "shirt" or "head" or "neck", "table") => 10,
            ("pelvis" or "Shorts", "bicycle") => 0.03,
            ("strap", "Shoe") => 0.06,
            ("Cuff", "Thigh" or "Shank") when sameSide => 0.06,
            ("Cuff", "Shoe") when sameSide => 0.04,
            ("Cuff", "band") => 0.04,
            _ => 0,
        };
    }

    private static int[] Sort(Disc[][] discs, List<(int Under, int Over, double Sureness)> rules)
    {
        var n = discs.Length;
        var above = new bool[n, n];
        foreach (var (under, over, _) in rules.OrderByDescending(r => r.Sureness).ThenBy(r => r.Under).ThenBy(r => r.Over))
        {
            if (above[over, under])
                continue;
            for (var i = 0; i < n; i++)
            {
                if (i != under && !above[i, under])
                    continue;
                for (var j = 0; j < n; j++)
                    above[i, j] |= j == over || above[over, j];
            }
        }

        var depth = discs.Select(part => Math.Round(part.Average(d => d.Depth), 7)).ToArray();
        var order = new int[n];
        var placed = new bool[n];
        for (var k = 0; k < n; k++)
        {
            var next = -1;
            for (var i = 0; i < n; i++)
            {
                if (!placed[i] && (next < 0 || depth[i] < depth[next]) && Free(i))
                    next = i;
            }

            (order[k], placed[next]) = (next, true);
        }

        return order;

        bool Free(int i)
        {
            for (var j = 0; j < n; j++)
            {
                if (!placed[j] && above[j, i])
                    return false;
            }

            return true;
        }
    }

    /// <summary>The name of a part without its side.</summary>
    private readonly record struct PartName
    {
        internal PartName(string name)
        {
            Right = name.StartsWith("right", StringComparison.Ordinal);
            Part = Right ? name[5..] : name.StartsWith("left", StringComparison.Ordinal) ? name[4..] : name;
        }

        internal bool Right { get; }

        internal string Part { get; }
    }
}
