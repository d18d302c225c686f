using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>Where a bench or a table stands, and how it is built.</summary>
internal static class Furniture
{
    private const double UsualTableHeight = 0.74;

    /// <summary>Points of the body that lie on a bench of that height or of the height of its contacts; null when nothing lies on one.</summary>
    /// <param name="figures">The body at the start and where it is drawn.</param>
    /// <param name="props">All props: where there is a table too, the arms are on that.</param>
    /// <param name="prop">The bench.</param>
    internal static Box? BenchTop(PlacedFigure[] figures, IReadOnlyList<Prop> props, Prop prop)
    {
        var table = props.Any(p => p.Kind == PropKind.Table);
        var on = figures.SelectMany(f => Contacts(f).Where(c => !table || !IsArm(f, c)).Select(c => (Figure: f, Contact: c))).ToArray();
        if (prop.HeightM > 0 && on.Any(c => Math.Abs(c.Contact.Contact.HeightM - prop.HeightM) < 0.02))
            on = [.. on.Where(c => Math.Abs(c.Contact.Contact.HeightM - prop.HeightM) < 0.02)];
        if (on.Length == 0)
        {
            if (prop.At is not { } at)
                return null;
            var there = figures[0].Surface(at, prop.Limb);
            return Under(figures[0], [there], prop.HeightM > 0 ? prop.HeightM : there.Y, new Pads(0.1, 0.26, 0.24));
        }

        var height = on.Max(c => c.Contact.Contact.HeightM);
        var kinds = on.Select(c => c.Figure.SegmentOf(c.Contact.Contact.Point)).ToHashSet();
        var (trunk, pelvis) = (kinds.Contains(SegmentKind.Torso), kinds.Contains(SegmentKind.Pelvis));
        var leg = kinds.Overlaps([SegmentKind.Thigh, SegmentKind.Shank, SegmentKind.Foot]);
        Vec3[] points = [.. on.Select(c => c.Contact.Point)];
        var lies = figures[0].Orientation != Orientation.Upright;
        if (lies && (pelvis || (trunk && leg)))
            return Couch(figures, points, height);
        return Under(
            figures[0],
            points,
            height,
            pelvis ? new Pads(0.2, 0.2, 0.36) : trunk ? new Pads(0.1, 0.28, 0.45) : new Pads(0.1, 0.26, 0.24));
    }

    /// <summary>The top of a table: under the hands, or else before the body.</summary>
    internal static Box TableTop(PlacedFigure[] figures, Prop prop)
    {
        var on = figures.SelectMany(f => Contacts(f).Select(c => (Arm: IsArm(f, c), Contact: c))).ToArray();
        if (on.Any(c => c.Arm))
            on = [.. on.Where(c => c.Arm)];
        var f = figures[0];
        var height = prop.HeightM > 0 ? prop.HeightM : on.Select(c => c.Contact.Contact.HeightM).DefaultIfEmpty(UsualTableHeight).Max();
        Vec3[] points = [.. on.Select(c => c.Contact.Point)];
        if (points.Length == 0 && prop.At is { } at)
            points = [.. figures.Select(figure => figure.Surface(at, prop.Limb))];
        if (points.Length == 0)
        {
            var pelvis = f.At(SegmentKind.Pelvis, null, 0, 0, 0);
            var ahead = f.At(SegmentKind.Pelvis, null, 1, 0, 0) - pelvis;
            points = [pelvis + 0.42 * new Vec3(ahead.X, 0, ahead.Z)];
        }

        return Deep(Under(f, points, height, new Pads(0.14, 0.36, 0.32)), f);
    }

    /// <summary>A bench or couch: a thick top on four legs, or a block when it is low.</summary>
    internal static IEnumerable<SceneShape> Bench(Box top, Camera camera) => Standing(top, 0.085, 0.055, 0.07, camera)
        .SelectMany(box => box.Faces("bench", camera, Tone.PropTop, Tone.Prop, Tone.PropShade));

    /// <summary>A table: a thin top on four legs.</summary>
    internal static IEnumerable<SceneShape> Table(Box top, Camera camera) => TableBoxes(top, camera)
        .SelectMany(box => box.Faces("table", camera, Tone.PropTop, Tone.Prop, Tone.PropShade));

    /// <summary>Whether a table stands between the viewer and the body, so that it hides the legs.</summary>
    internal static bool Hides(Box top, PlacedFigure figure, Camera camera) =>
        camera.Toward.Dot(new Vec3(top.Middle.X, 0, top.Middle.Z) - Level(figure.At(SegmentKind.Pelvis, null, -0.08, 0, 0))) > 0.25;

    /// <summary>A table that hides the legs, as a part that is painted after them and before trunk and arms.</summary>
    internal static BodyPart TablePart(Box top, Camera camera)
    {
        var (a, b) = (top.Least, top.Most);
        var reach = from i in Enumerable.Range(0, 7)
                    from j in Enumerable.Range(0, 5)
                    from y in (double[])[0.1, 0.5, 1]
                    select new Ball(new Vec3(a.X + (b.X - a.X) * i / 6, b.Y * y, a.Z + (b.Z - a.Z) * j / 4), 0.08);
        var layers = TableBoxes(top, camera)
            .SelectMany(box => box.Sides(camera.Toward, Tone.PropTop, Tone.Prop, Tone.PropShade))
            .Select(side => new Layer(side.Tone, [[.. side.Corners.Select(corner => new Ball(corner, 0))]], false));
        return new BodyPart("table", [.. layers]) { Role = ShapeRole.Backdrop, Reach = [.. reach] };
    }

    private static IEnumerable<Box> TableBoxes(Box top, Camera camera) => Standing(top, 0.032, 0.045, 0.02, camera);

    private static IEnumerable<PlacedContact> Contacts(PlacedFigure f) =>
        f.Placed.Contacts.Where(c => c.Contact.Surface == SurfaceKind.Bench);

    private static bool IsArm(PlacedFigure f, PlacedContact contact) =>
        f.SegmentOf(contact.Contact.Point) is SegmentKind.Hand or SegmentKind.Ulna or SegmentKind.Radius or SegmentKind.UpperArm or SegmentKind.Head;

    private static Vec3 Level(Vec3 v) => new(v.X, 0, v.Z);

    /// <summary>Room for all that lies above, short where the legs hang over the end.</summary>
    private static Box Couch(PlacedFigure[] figures, Vec3[] contacts, double height)
    {
        var lying = new List<Vec3>(contacts);
        lying.AddRange(figures.SelectMany(Trunk));
        var edges = new List<Vec3>();
        foreach (var side in (Side[])[Side.Right, Side.Left])
        {
            Vec3[] thighs = [.. figures.Select(f => f.At(SegmentKind.Thigh, side, 0, -0.2, 0))];
            Vec3[] knees = [.. figures.Select(f => f.At(SegmentKind.Shank, side, 0, 0, 0))];
            Vec3[] feet = [.. figures.Select(f => f.At(SegmentKind.Foot, side, 0.03, 0.03, 0))];
            if (knees.Any(knee => knee.Y < height - 0.03))
                edges.AddRange(knees);
            else if (feet.Any(foot => foot.Y < height - 0.1))
                edges.AddRange(thighs);
            else
                lying.AddRange([.. knees, .. feet]);
        }

        var (x0, x1) = (lying.Min(p => p.X), lying.Max(p => p.X));
        var (z0, z1) = (lying.Min(p => p.Z), lying.Max(p => p.Z));
        if (edges.Count > 0 && edges.Average(p => p.X) > (x0 + x1) / 2)
            x1 = Math.Max(x1 - 0.05, edges.Min(p => p.X) - 0.2);
        else if (edges.Count > 0)
            x0 = Math.Min(x0 + 0.05, edges.Max(p => p.X) + 0.2);
        var half = Math.Max((z1 - z0) / 2 + 0.08, 0.33);
        var middle = (z0 + z1) / 2;
        return new Box(new Vec3(x0 - 0.1, 0, middle - half), new Vec3(x1 + 0.1, height, middle + half));
    }

    private static IEnumerable<Vec3> Trunk(PlacedFigure f)
    {
        yield return f.At(SegmentKind.Head, null, 0, 0.2, 0);
        foreach (var side in (Side[])[Side.Right, Side.Left])
        {
            yield return f.At(SegmentKind.Torso, side, 0, 0.3, 0.13);
            yield return f.At(SegmentKind.Pelvis, side, -0.08, 0, 0.12);
        }
    }

    /// <summary>A top under some points: so far toward the body, so far away from it, so far to both sides.</summary>
    private static Box Under(PlacedFigure f, Vec3[] points, double height, Pads pads)
    {
        var (x0, x1) = (points.Min(p => p.X), points.Max(p => p.X));
        var (z0, z1) = (points.Min(p => p.Z), points.Max(p => p.Z));
        var away = new Vec3((x0 + x1) / 2, 0, (z0 + z1) / 2) - Level(f.At(SegmentKind.Pelvis, null, -0.08, 0, 0));
        var alongX = Math.Abs(away.X) >= 0.9 * Math.Abs(away.Z);
        var (low, high) = (alongX ? away.X : away.Z) >= 0 ? (pads.Near, pads.Far) : (pads.Far, pads.Near);
        return alongX
            ? new Box(new Vec3(x0 - low, 0, z0 - pads.Across), new Vec3(x1 + high, height, z1 + pads.Across))
            : new Box(new Vec3(x0 - pads.Across, 0, z0 - low), new Vec3(x1 + pads.Across, height, z1 + high));
    }

    /// <summary>A table is at least half a meter deep; what it lacks is added on the far side.</summary>
    private static Box Deep(Box box, PlacedFigure f)
    {
        var away = box.Middle - f.At(SegmentKind.Pelvis, null, -0.08, 0, 0);
        var alongX = Math.Abs(away.X) >= 0.9 * Math.Abs(away.Z);
        var lacks = Math.Max(0, 0.5 - (alongX ? box.Most.X - box.Least.X : box.Most.Z - box.Least.Z));
        var more = lacks * (alongX ? Vec3.UnitX : Vec3.UnitZ);
        return (alongX ? away.X : away.Z) >= 0 ? box with { Most = box.Most + more } : box with { Least = box.Least - more };
    }

    private static IEnumerable<Box> Standing(Box top, double thick, double leg, double inset, Camera camera)
    {
        var (a, b) = (top.Least, top.Most);
        if (b.Y < thick + 0.12)
            return [top];
        var legs = new List<Box>();
        foreach (var x in (double[])[a.X + inset, b.X - inset - leg])
        {
            foreach (var z in (double[])[a.Z + inset, b.Z - inset - leg])
                legs.Add(new(new Vec3(x, 0, z), new Vec3(x + leg, b.Y - thick, z + leg)));
        }

        // The top hides the upper ends of the legs, seen from above.
        return legs
            .OrderBy(box => Math.Round(camera.Toward.Dot(box.Middle), 6))
            .ThenBy(box => camera.Project(box.Middle).X)
            .Append(new Box(new Vec3(a.X, b.Y - thick, a.Z), b));
    }

    private readonly record struct Pads(double Near, double Far, double Across);
}
