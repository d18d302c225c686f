using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>A long band or tubing: along the pulls of the movement, or in the hands where it has none.</summary>
internal static class LongBandParts
{
    private const double Half = 0.008;

    /// <summary>A band made fast higher than this is made fast at a door, lower at a post or the leg of something heavy, meters; our choice.</summary>
    private const double DoorFrom = 0.6;

    /// <summary>Hands that hold it.</summary>
    internal static IEnumerable<Side> Hands(PlacedFigure f, HeldSetting setting)
    {
        var runs = Runs(setting).ToArray();
        if (runs.Length == 0)
            return Loops(setting).Any() ? [] : [Side.Left, Side.Right];
        return runs.SelectMany(run => run.To is { } to ? (BodyPlace[])[run.From, to] : [run.From])
            .Where(place => f.SegmentOf(place.At) == SegmentKind.Hand)
            .Select(place => (place.Limb ?? Limb.Working).On(f.Working));
    }

    internal static IEnumerable<BodyPart> Of(PlacedFigure f, Prop prop, HeldSetting setting, Vec3 toward)
    {
        var runs = Runs(setting).ToArray();
        if (runs.Length == 0)
            return InHands(f, prop);
        var posts = Posts([.. runs.Select(run => run.Anchor).OfType<Vec3>()]);
        var parts = new List<BodyPart>();
        foreach (var (from, to, anchor) in runs)
            parts.AddRange(Along(f, from, to, anchor is { } at ? posts.MinBy(post => Math.Round((post - at).Length, 9)) : null));
        var body = f.At(SegmentKind.Torso, null, 0, 0, 0);
        return [.. parts, .. posts.SelectMany(at => f.Orientation == Orientation.Upright && at.Y > DoorFrom ? DoorParts.Of(at, body, toward) : [Post(at)])];
    }

    /// <summary>Where posts stand: bands to points near each other share one, as they would at a door.</summary>
    private static List<Vec3> Posts(IReadOnlyList<Vec3> anchors)
    {
        const double near = 0.6;
        var posts = new List<Vec3>();
        foreach (var at in anchors)
        {
            if (posts.Exists(post => (post - at).Length < near))
                continue;
            Vec3[] shared = [.. anchors.Where(other => (other - at).Length < near)];
            posts.Add((1.0 / shared.Length) * shared.Aggregate(Vec3.Zero, (sum, p) => sum + p));
        }

        return posts;
    }

    /// <summary>Where a loop lies when the band is tied as one.</summary>
    internal static IEnumerable<LoopPull> Loops(HeldSetting setting) =>
        Runs(setting).Any() ? [] : setting.Pulls.Select(p => p.Pull).OfType<LoopPull>();

    private static IEnumerable<(BodyPlace From, BodyPlace? To, Vec3? Anchor)> Runs(HeldSetting setting)
    {
        foreach (var (pull, tied) in setting.Pulls)
        {
            if (pull is LinkPull link)
                yield return (link.At, link.To, null);
            else if (tied is { } at)
                yield return (pull.At, null, at);
        }
    }

    private static IEnumerable<BodyPart> Along(PlacedFigure f, BodyPlace from, BodyPlace? to, Vec3? anchor)
    {
        var first = EndAt(f, from);
        var second = to is { } there ? EndAt(f, there) : [new Ball(anchor!.Value, Half)];
        var line = first.SelectMany(a => second.Select(b => (Ball[])[a, b]));
        Ball[][] round = first.Length == 2 ? [first] : [];
        if (second.Length == 2)
            round = [.. round, second];
        yield return new BodyPart("longBand", new Layer(Tone.Band, [.. line, .. round])) { Role = ShapeRole.Held };
        foreach (var place in to is null ? (BodyPlace[])[from] : [from, to])
        {
            if (Worn(f, place) is { } cuff)
                yield return cuff;
        }
    }

    /// <summary>Where the band ends at a place: in the grip, at both edges of the sole, or in the middle of the limb.</summary>
    private static Ball[] EndAt(PlacedFigure f, BodyPlace place)
    {
        var side = (place.Limb ?? Limb.Working).On(f.Working);
        return f.SegmentOf(place.At) switch
        {
            SegmentKind.Hand => [new Ball(HeldThings.Grip(f, side), Half)],
            SegmentKind.Foot or SegmentKind.Toes when Sole(place.At) => SoleEdges(f, side),
            SegmentKind.Foot or SegmentKind.Toes => [f.Ball(SegmentKind.Foot, side, 0.09, 0.02, 0, Half)],
            _ => [new Ball(f.Place(place), Half)],
        };
    }

    private static bool Sole(string at) => at is "forefootSole" or "ballInner" or "ballOuter" or "heel" or "foot" or "forefoot";

    private static Ball[] SoleEdges(PlacedFigure f, Side side) =>
    [
        new(f.At(SegmentKind.Foot, side, 0.135, -0.022, -0.03), Half),
        new(f.At(SegmentKind.Foot, side, 0.125, -0.022, 0.045), Half),
    ];

    private static BodyPart? Worn(PlacedFigure f, BodyPlace place)
    {
        var side = (place.Limb ?? Limb.Working).On(f.Working);
        return f.SegmentOf(place.At) switch
        {
            SegmentKind.Thigh or SegmentKind.Shank or SegmentKind.Talus => HeldThings.Cuff(f, side, place.At, Tone.Band, 0.013),
            SegmentKind.Foot or SegmentKind.Toes when !Sole(place.At) =>
                new BodyPart((side == Side.Right ? "right" : "left") + "Cuff", new Layer(Tone.Band, [Instep(f, side)])) { Role = ShapeRole.Held },
            _ => null,
        };
    }

    /// <summary>A loop round the middles of both feet: over the laces, under the soles, and two strands between.</summary>
    internal static IEnumerable<BodyPart> RoundBothFeet(PlacedFigure f, string name)
    {
        var (own, other) = (Instep(f, f.Working), Instep(f, f.Working.Other()));
        yield return new BodyPart("rightCuff", new Layer(Tone.Band, [Instep(f, Side.Right)])) { Role = ShapeRole.Held };
        yield return new BodyPart("leftCuff", new Layer(Tone.Band, [Instep(f, Side.Left)])) { Role = ShapeRole.Held };
        yield return new BodyPart(name, new Layer(Tone.Band, [[own[0], other[0]], [own[1], other[1]]])) { Role = ShapeRole.Held };
    }

    // Round the middle of the foot, over the laces and under the sole.
    private static Ball[] Instep(PlacedFigure f, Side side) =>
    [
        f.Ball(SegmentKind.Foot, side, 0.095, 0.058, 0, 0.012),
        f.Ball(SegmentKind.Foot, side, 0.115, -0.014, -0.036, 0.01),
        f.Ball(SegmentKind.Foot, side, 0.11, -0.014, 0.044, 0.01),
    ];

    private static IEnumerable<BodyPart> InHands(PlacedFigure f, Prop prop)
    {
        var (own, other) = (new Ball(HeldThings.Grip(f, f.Working), Half), new Ball(HeldThings.Grip(f, f.Working.Other()), Half));
        Ball[][] hulls;
        if (prop.At is not { } at || f.SegmentOf(at) == SegmentKind.Hand)
            hulls = [[own, other]];
        else if (f.SegmentOf(at) is SegmentKind.Foot or SegmentKind.Toes)
            hulls = RoundFeet(f, prop, own, other);
        else if (f.HasTwin(at) && prop.Limb is null)
            hulls = Chain(own, new Ball(f.Surface(at, Limb.Working), Half), new Ball(f.Surface(at, Limb.Other), Half), other);
        else
            hulls = Chain(own, new Ball(f.Surface(at, prop.Limb), Half), other);
        yield return new BodyPart("longBand", new Layer(Tone.Band, hulls)) { Role = ShapeRole.Held };
    }

    private static Ball[][] RoundFeet(PlacedFigure f, Prop prop, Ball own, Ball other)
    {
        if (prop.Limb is { } limb)
        {
            var edges = SoleEdges(f, limb.On(f.Working));
            var (mine, others) = limb == Limb.Working ? (own, other) : (other, own);
            return Chain(mine, edges[1], edges[0], others);
        }

        var (near, far) = (SoleEdges(f, f.Working), SoleEdges(f, f.Working.Other()));
        return Chain(own, near[1], near[0], far[0], far[1], other);
    }

    private static Ball[][] Chain(params Ball[] balls) => [.. balls.Skip(1).Select((ball, i) => (Ball[])[balls[i], ball])];

    /// <summary>A plain post, or the edge of a door, with the mark where the band is made fast.</summary>
    private static BodyPart Post(Vec3 at)
    {
        var top = Math.Max(at.Y + 0.22, 0.5);
        Ball On(double y, double radius) => new(new Vec3(at.X, y, at.Z), radius);
        return new BodyPart(
            "post",
            new Layer(Tone.Prop, [[On(0.012, 0.022), On(top, 0.022)]]),
            new Layer(Tone.PropShade, [[On(0.012, 0.05) with { Radius = 0.012 }, On(0.012, 0.012)]], false),
            new Layer(Tone.Weight, [[On(at.Y - 0.014, 0.026), On(at.Y + 0.014, 0.026)]], false))
        {
            Role = ShapeRole.Held,
            Reach = [.. Enumerable.Range(0, 12).Select(i => On(top * i / 11, 0.022))],
        };
    }
}
