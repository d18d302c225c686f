using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>What stands still behind the body: floor, mat, chair, step, wall, roller, pillow.</summary>
internal sealed class Backdrop
{
    private readonly PlacedFigure[] figures;
    private readonly IReadOnlyList<Prop> props;
    private readonly Camera camera;
    private readonly Vec3 least;
    private readonly Vec3 most;

    private Backdrop(PlacedFigure[] figures, IReadOnlyList<Prop> props, Camera camera)
    {
        this.figures = figures;
        this.props = props;
        this.camera = camera;
        var balls = figures.SelectMany(Outer).ToArray();
        least = new Vec3(balls.Min(p => p.X), balls.Min(p => p.Y), balls.Min(p => p.Z));
        most = new Vec3(balls.Max(p => p.X), balls.Max(p => p.Y), balls.Max(p => p.Z));
    }

    /// <summary>The shapes, the farthest first.</summary>
    /// <param name="figures">The body at the start and where it is drawn.</param>
    /// <param name="props">The props.</param>
    /// <param name="camera">Where from.</param>
    /// <param name="tableApart">Whether the table is drawn with the body.</param>
    internal static ImmutableArray<SceneShape> Of(PlacedFigure[] figures, IReadOnlyList<Prop> props, Camera camera, bool tableApart = false)
    {
        var backdrop = new Backdrop(figures, props, camera);
        return
        [
            .. Kind(PropKind.Wall).SelectMany(backdrop.Wall),
            .. backdrop.Floor(props.Any(p => p.Kind == PropKind.Mat)),
            .. tableApart ? [] : Kind(PropKind.Table).SelectMany(table => Furniture.Table(Furniture.TableTop(figures, table), camera)),
            .. Kind(PropKind.Bench).SelectMany(backdrop.Bench),
            .. Kind(PropKind.Step).SelectMany(backdrop.Step),
            .. Kind(PropKind.Board).SelectMany(_ => BoardParts.Of(figures, camera)),
            .. Kind(PropKind.Chair).SelectMany(backdrop.Chair),
            .. Kind(PropKind.Roller).SelectMany(backdrop.Roller),
            .. Kind(PropKind.Pillow).SelectMany(backdrop.Pillow),
            .. Kind(PropKind.Towel).SelectMany(backdrop.Towel),
        ];

        IEnumerable<Prop> Kind(PropKind kind) => props.Where(prop => prop.Kind == kind);
    }

    private static IEnumerable<Vec3> Outer(PlacedFigure f)
    {
        yield return f.At(SegmentKind.Head, null, 0, 0.22, 0);
        foreach (var side in (Side[])[Side.Right, Side.Left])
        {
            yield return f.At(SegmentKind.Pelvis, side, -0.08, 0, 0.14);
            yield return f.At(SegmentKind.Torso, side, 0, 0.3, 0.15);
            yield return f.At(SegmentKind.Shank, side, 0, 0, 0);
            yield return f.At(SegmentKind.Foot, side, 0, 0, 0);
            yield return f.At(SegmentKind.Toes, side, 0.05, 0, 0);
            yield return f.At(SegmentKind.Ulna, side, 0, 0, 0);
            yield return f.At(SegmentKind.Hand, side, 0, -0.15, 0);
        }
    }

    private IEnumerable<SceneShape> Floor(bool mat)
    {
        // A mat lies under the whole body; bare floor under what stands on it.
        var (a, b) = mat ? (least, most) : OnFloor();
        var margin = mat ? 0.1 : 0.22;
        var (x0, x1) = (a.X - margin, b.X + margin);
        var middle = (a.Z + b.Z) / 2;
        var half = Math.Max((b.Z - a.Z) / 2 + 0.08, mat ? 0.3 : 0.26);
        const double corner = 0.05;
        SceneShape Slab(Tone tone, double y)
        {
            Disc[] discs =
            [
                .. new[] { (x0, -1), (x1, -1), (x1, 1), (x0, 1) }.Select(c => camera.See(new Ball(
                    new Vec3(c.Item1, y, middle + c.Item2 * half), 0.004))),
            ];
            if (!mat)
                discs = [.. Round(x0 + corner, x1 - corner, middle, half)];
            return Still("floor", tone, [CircleHull.Of(discs)]);
        }

        if (mat)
            yield return Slab(Tone.MatEdge, -0.018);
        yield return Slab(mat ? Tone.Mat : Tone.Floor, 0);
    }

    /// <summary>An oval of floor.</summary>
    private IEnumerable<Disc> Round(double x0, double x1, double z, double half)
    {
        for (var i = 0; i < 24; i++)
        {
            var (sin, cos) = Math.SinCos(i * Math.PI / 12);
            yield return camera.See(new Ball(new Vec3((x0 + x1) / 2 + (x1 - x0) / 2 * cos, 0, z + half * sin), 0.012));
        }
    }

    private (Vec3 Least, Vec3 Most) OnFloor()
    {
        var touching = figures.SelectMany(f => f.Placed.Contacts)
            .Where(c => c.Contact.Surface is not SurfaceKind.Wall)
            .Select(c => c.Point)
            .ToArray();
        touching = [.. touching, .. Tops().SelectMany(box => (Vec3[])[box.Least + Inset, box.Most - Inset])];
        if (touching.Length == 0)
            return (least, most);
        if (figures.SelectMany(f => f.Placed.Contacts).Any(c => c.Contact.Surface == SurfaceKind.Seat))
            touching = [.. touching, touching.MinBy(p => p.X) - new Vec3(0.2, 0, 0)];
        return (
            new Vec3(touching.Min(p => p.X), 0, touching.Min(p => p.Z)),
            new Vec3(touching.Max(p => p.X), 0, touching.Max(p => p.Z)));
    }

    private static Vec3 Inset => new(0.15, 0, 0.15);

    /// <summary>Benches and tables, which need floor too.</summary>
    private IEnumerable<Box> Tops()
    {
        foreach (var prop in props)
        {
            if (prop.Kind == PropKind.Bench && Furniture.BenchTop(figures, props, prop) is { } bench)
                yield return bench;
            else if (prop.Kind == PropKind.Table)
                yield return Furniture.TableTop(figures, prop);
        }
    }

    private IEnumerable<SceneShape> Bench(Prop prop) =>
        Furniture.BenchTop(figures, props, prop) is { } top ? Furniture.Bench(top, camera) : [];

    private IEnumerable<SceneShape> Step(Prop prop) => StepTop(figures, prop).Faces("step", camera, Tone.PropTop, Tone.Prop, Tone.PropShade);

    /// <summary>Where a step stands.</summary>
    /// <param name="figures">The body at the start and where it is drawn.</param>
    /// <param name="prop">The step.</param>
    internal static Box StepTop(PlacedFigure[] figures, Prop prop)
    {
        var on = figures.SelectMany(f => f.Placed.Contacts).Where(c => c.Contact.Surface == SurfaceKind.Step).ToArray();
        var both = on.Select(c => c.Contact.Limb).Distinct().Count() > 1;
        var limb = prop.Limb ?? Limb.Working;
        var middle = on.Length > 0 ? on[0].Point.Toward(on[^1].Point, 0.5) : figures[0].Surface(prop.At ?? "foot", limb);
        if (on.Length > 0)
            middle = (1.0 / on.Length) * on.Aggregate(Vec3.Zero, (sum, c) => sum + c.Point);
        var height = prop.HeightM > 0 ? prop.HeightM : on.Select(c => c.Contact.HeightM).DefaultIfEmpty(0.15).Max();

        // Room for one foot, wider away from the other leg, which may hang beside it.
        var outward = limb.On(figures[0].Working) == Side.Right ? 1 : -1;
        var (inner, outer) = both ? (0.3, 0.3) : (0.085, 0.24);
        var (z0, z1) = outward > 0 ? (middle.Z - inner, middle.Z + outer) : (middle.Z - outer, middle.Z + inner);
        var (x0, x1) = (middle.X - 0.19, middle.X + 0.19);
        if (on.Length > 0 && !on.Any(c => figures[0].IsAt(c, "heel") || figures[0].IsAt(c, "heelBack")))
            (x0, x1) = UnderForefoot(figures[0], on, limb.On(figures[0].Working));
        return new Box(new Vec3(x0, 0, z0), new Vec3(x1, height, z1));
    }

    /// <summary>A step that begins just behind the ball of the foot, so that the heel is free.</summary>
    private static (double Least, double Most) UnderForefoot(PlacedFigure f, PlacedContact[] on, Side side)
    {
        var ahead = f.At(SegmentKind.Toes, side, 0, 0, 0).X >= f.At(SegmentKind.Foot, side, 0, 0, 0).X;
        var (least, most) = (on.Min(c => c.Point.X), on.Max(c => c.Point.X));
        return ahead ? (least - 0.035, least + 0.33) : (most - 0.33, most + 0.035);
    }

    private IEnumerable<SceneShape> Chair(Prop prop)
    {
        var seats = figures.SelectMany(f => f.Placed.Contacts).Where(c => c.Contact.Surface == SurfaceKind.Seat).Select(c => c.Point).ToArray();
        if (seats.Length == 0 && prop.At is { } at && figures[0].SegmentOf(at) == SegmentKind.Hand)
            return ChairParts.Support(figures[0].Surface(at, prop.Limb ?? Limb.Other), figures[0].At(SegmentKind.Pelvis, null, 0, 0, 0), camera);
        var rests = figures.SelectMany(f => f.Placed.Contacts).Where(c => c.Contact.Surface == SurfaceKind.Bench).Select(c => c.Point).ToArray();
        if (seats.Length == 0 && rests.Length > 0 && !props.Any(p => p.Kind is PropKind.Bench or PropKind.Table))
        {
            var rest = (1.0 / rests.Length) * rests.Aggregate(Vec3.Zero, (sum, p) => sum + p);
            return ChairParts.Rest(rest, figures[0].At(SegmentKind.Pelvis, null, 0, 0, 0), camera);
        }

        var middle = seats.Length > 0
            ? (1.0 / seats.Length) * seats.Aggregate(Vec3.Zero, (sum, p) => sum + p)
            : figures.Select(f => f.At(SegmentKind.Pelvis, null, -0.14, -0.1, 0)).MinBy(p => p.Y);
        var height = seats.Length > 0 ? middle.Y : prop.HeightM > 0 ? prop.HeightM : 0.45;
        return ChairParts.Seat(new Vec3(middle.X, height, middle.Z), camera);
    }

    private IEnumerable<SceneShape> Wall(Prop prop)
    {
        var on = figures.SelectMany(f => f.Placed.Contacts).FirstOrDefault(c => c.Contact.Surface == SurfaceKind.Wall);
        var touch = on is not null ? on.Point - (on.Gap + Between(on)) * on.Normal
            : prop.At is { } at ? figures[0].Surface(at, prop.Limb ?? Limb.Other)
            : figures[0].At(SegmentKind.Pelvis, null, -0.22, 0, 0);

        // A wall that is touched knows where it stands; a drawn one stands on the side of the body it is nearest to.
        var away = on is not null ? -on.Normal : touch - least.Toward(most, 0.5);
        const double thick = 0.05;
        var alongX = on is not null
            ? Math.Abs(away.X) > Math.Abs(away.Z)
            : Math.Abs(away.X) / (most.X - least.X) >= Math.Abs(away.Z) / (most.Z - least.Z);
        var height = Math.Min(most.Y + 0.12, 2.1);
        Box box;
        if (alongX)
        {
            var (x0, x1) = away.X > 0 ? (touch.X, touch.X + thick) : (touch.X - thick, touch.X);
            box = new Box(new Vec3(x0, 0, least.Z - 0.15), new Vec3(x1, height, most.Z + 0.15));
        }
        else
        {
            var (z0, z1) = away.Z > 0 ? (touch.Z, touch.Z + thick) : (touch.Z - thick, touch.Z);
            box = new Box(new Vec3(least.X - 0.12, 0, z0), new Vec3(most.X + 0.12, height, z1));
        }

        return box.Faces("wall", camera, Tone.Floor, Tone.Floor, Tone.MatEdge);
    }

    /// <summary>How thick a ball or roller between the body and the wall is; 0 where something else touches the wall too.</summary>
    private double Between(PlacedContact on)
    {
        var held = props.FirstOrDefault(p => p.Kind is PropKind.Ball or PropKind.SmallBall or PropKind.Roller && p.At == on.Contact.Point);
        if (held is null || figures[0].Placed.Contacts.Any(c => c.Contact.Surface == SurfaceKind.Wall && c.Contact.Point != held.At))
            return 0;
        return held.Kind == PropKind.Roller ? held.HeightM > 0 ? held.HeightM : 0.15 : BallParts.DiameterOf(held);
    }

    private IEnumerable<SceneShape> Roller(Prop prop)
    {
        var contact = figures[0].Placed.Contacts.FirstOrDefault(c => c.Contact.Surface == SurfaceKind.Roller);
        return contact is null && RollerParts.AtWall(figures[0], prop) ? [] : RollerOnFloor(prop, contact);
    }

    private IEnumerable<SceneShape> RollerOnFloor(Prop prop, PlacedContact? contact)
    {
        var at = contact?.Point ?? figures[0].Surface(prop.At ?? "thighOuter", prop.Limb ?? Limb.Working);
        var diameter = prop.HeightM > 0 ? prop.HeightM : contact?.Contact.HeightM ?? 0.15;
        var lies = figures[0].At(SegmentKind.Head, null, 0, 0, 0) - figures[0].At(SegmentKind.Pelvis, null, 0, 0, 0);
        var across = Math.Abs(lies.X) >= Math.Abs(lies.Z) ? Vec3.UnitZ : Vec3.UnitX;
        var center = new Vec3(at.X, diameter / 2, at.Z);
        var near = center + (across.Dot(camera.Toward) > 0 ? 0.24 : -0.24) * across;
        var far = center - (near - center);
        foreach (var layer in RollerParts.Layers(near, far, across, diameter / 2, camera.Toward))
            yield return Still("roller", layer.Tone, [.. layer.Loops(camera)], layer.Gap);
    }

    private IEnumerable<SceneShape> Pillow(Prop prop)
    {
        var name = prop.At ?? "headBack";
        var height = prop.HeightM > 0 ? prop.HeightM : 0.1;
        return Soft("pillow", prop, name, height, new Vec3(0.15, 0.06, 0.2));
    }

    /// <summary>A towel under a part of the body: rolled where the part is well off the ground, else folded.</summary>
    private IEnumerable<SceneShape> Towel(Prop prop)
    {
        if (!HandTools.LiesUnder(figures[0], prop))
            return [];
        var above = figures[0].Surface(prop.At!, prop.Limb).Y - Ground(prop);
        var height = prop.HeightM > 0 ? prop.HeightM : above is > 0.03 and < 0.25 ? above : 0.03;
        return Soft("towel", prop, prop.At!, height, new Vec3(height > 0.06 ? height / 2 + 0.005 : 0.09, 0.06, 0.15));
    }

    private double Ground(Prop prop)
    {
        var at = figures[0].Surface(prop.At!, prop.Limb);
        return Tops().Where(box => at.X > box.Least.X && at.X < box.Most.X && at.Z > box.Least.Z && at.Z < box.Most.Z && at.Y > box.Most.Y - 0.03)
            .Select(box => box.Most.Y)
            .DefaultIfEmpty(0)
            .Max();
    }

    /// <summary>Something soft under a named point, or round it when it is higher up.</summary>
    private IEnumerable<SceneShape> Soft(string kind, Prop prop, string name, double height, Vec3 half)
    {
        var at = figures[0].Surface(name, prop.Limb);
        var spread = prop.Limb is null && figures[0].HasTwin(name) ? Math.Abs(figures[0].Surface(name, Limb.Working).Z - at.Z) : 0;
        var r = height / 2;
        var ground = Ground(prop with { At = name });
        var y = at.Y > ground + height + half.Y ? at.Y : ground + r;
        Disc[] discs =
        [
            .. new[] { (-1, -1), (1, -1), (1, 1), (-1, 1) }.Select(c => camera.See(new Ball(
                new Vec3(at.X + c.Item1 * (half.X - r), y, at.Z + c.Item2 * (half.Z + spread - r)), r))),
        ];
        yield return Still(kind, Tone.PropTop, [CircleHull.Of(discs)], true);
    }

    private static SceneShape Still(string name, Tone tone, ImmutableArray<ImmutableArray<Arc>> loops, bool gap = false) =>
        new() { Name = name, Tone = tone, Role = ShapeRole.Backdrop, Loops = loops, Gap = gap };
}
