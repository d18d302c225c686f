using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>Camera, accent and options for the pictures of one movement.</summary>
internal sealed class Studio
{
    /// <summary>What moves by less is not drawn as a ghost, meters.</summary>
    private const double GhostM = 0.03;

    private readonly BodyModel model;
    private readonly SurfacePoints points;
    private readonly Movement movement;
    private readonly Side working;
    private readonly PictureOptions options;
    private readonly Settler settler;
    private readonly PlacedFigure?[] named;
    private readonly bool bare;
    private PlacedBody? last;
    private HeldSetting? setting;
    private Box? hiding;
    private (PlacedFigure? Figure, List<BodyPart> Parts) made = (null, []);

    internal Studio(BodyModel model, SurfacePoints points, Movement movement, Side working, PictureOptions options)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(movement);
        ArgumentNullException.ThrowIfNull(options);
        this.model = model;
        this.points = points;
        this.movement = movement;
        this.working = working;
        this.options = options;
        settler = new Settler(model, points);
        named = new PlacedFigure?[movement.Frames.Length];
        bare = BareFoot.Wanted(points, movement.CloseUp);
        Camera = Camera.For(movement.View, movement.Frames[0].Orientation, working, bare);
        Accent = options.Accent ?? movement.Focus ?? FocusOf(movement);
    }

    internal Camera Camera { get; }

    internal MovementFocus Accent { get; }

    internal bool IsHold => movement.Frames.Length == 1;

    /// <summary>The body at a fraction of the way; where the anchor changes on the way, the body glides from one to the other.</summary>
    internal PlacedFigure Figure(double fraction)
    {
        var frames = movement.Frames;
        var along = Math.Clamp(fraction, 0, 1) * (frames.Length - 1);
        var before = Math.Min((int)along, Math.Max(0, frames.Length - 2));
        var t = along - before;
        if (IsHold || t <= 0)
            return Named(before);
        if (t >= 1)
            return Named(before + 1);
        var between = FrameBetween.At(movement, fraction);

        // A neighbor is a good start: the same pose, sooner.
        var figure = Place(between, Math.Clamp(fraction, 0, 1), last ?? Named(before).Placed);
        last = figure.Placed;
        if (Anchor(between) == Anchor(frames[before]))
            return figure;
        var (from, to) = (Named(before), Named(before + 1));
        var wanted = from.Placed.Pose.PelvisPosition.Toward(to.Placed.Pose.PelvisPosition, t);
        return figure.Slide(wanted - figure.Placed.Pose.PelvisPosition);
    }

    /// <summary>The body in a pose that the movement names, settled once.</summary>
    private PlacedFigure Named(int index)
    {
        var steps = movement.Frames.Length - 1;
        return named[index] ??= Place(movement.Frames[index], steps == 0 ? 0 : (double)index / steps, null);
    }

    /// <summary>What stands still behind the body. A table that hides the legs is left to the bodies that are drawn next.</summary>
    internal ImmutableArray<SceneShape> Backdrop(PlacedFigure[] figures)
    {
        if (movement.Frames[0].Orientation == Orientation.Upright && movement.Props.FirstOrDefault(p => p.Kind == PropKind.Table) is { } table
            && Furniture.TableTop(figures, table) is var top && Furniture.Hides(top, figures[0], Camera))
            (hiding, made) = (top, (null, []));
        return Drawing.Backdrop.Of(figures, movement.Props, Camera, hiding is not null);
    }

    /// <summary>The body and what it holds.</summary>
    internal ImmutableArray<SceneShape> Body(PlacedFigure figure) => [.. Parts(figure).SelectMany(Shapes)];

    /// <summary>What of the start pose has moved, as plain silhouettes.</summary>
    internal IEnumerable<SceneShape> Ghost(PlacedFigure start, PlacedFigure end)
    {
        var least = movement.CloseUp is null ? GhostM : GhostM / 2;
        var there = Parts(end).Where(IsFlesh).ToDictionary(p => p.Name);
        var moved = Parts(start)
            .Where(p => IsFlesh(p) && Distance(p, there[p.Name]) > least)
            .ToArray();
        foreach (var works in (bool[])[false, true])
        {
            ImmutableArray<ImmutableArray<Arc>> loops =
            [
                .. moved.Where(part => IsAccent(part) == works)
                    .SelectMany(Silhouette),
            ];
            if (loops.Length > 0)
            {
                yield return new SceneShape
                {
                    Name = works ? "ghostWorking" : "ghost",
                    Tone = works ? Tone.GhostWorking : Tone.Ghost,
                    Role = ShapeRole.Ghost,
                    Loops = loops,
                };
            }
        }
    }

    /// <summary>The arrows of the movement: a turn in place, an effort in place, or the way of what moves.</summary>
    /// <param name="path">The body at even fractions of the way, start first.</param>
    /// <param name="drawn">What is drawn already.</param>
    internal ImmutableArray<SceneShape> Arrows(PlacedFigure[] path, IEnumerable<SceneShape> drawn)
    {
        var ink = ArrowInk.For(FrameOf(drawn).Height);
        var end = path[^1];
        var turn = TurnArrow.Of(movement, Accent, path[0], end, Camera, ink);
        if (!turn.IsEmpty)
            return turn;
        var cover = new Cover(Parts(end), Camera);
        var press = PressArrow.Of(movement, Setting, end, Camera, cover, ink);
        return press.IsEmpty ? MotionArrow.Of(path, Accent, Camera, cover, ink) : press;
    }

    /// <summary>The names of tinted areas; of two sides of one area, the nearer is named.</summary>
    /// <param name="figure">The body that is drawn.</param>
    /// <param name="drawn">What is drawn already.</param>
    internal IEnumerable<SceneShape> Labels(PlacedFigure figure, IReadOnlyList<SceneShape> drawn)
    {
        var labels = TintParts.Of(figure, options.Tints)
            .Where(placed => !string.IsNullOrWhiteSpace(placed.Tint.Label))
            .Select(placed => (placed.Tint, At: TintParts.Middle(placed.Shape)))
            .GroupBy(placed => placed.Tint)
            .Select(same => (Text: same.Key.Label!, At: Camera.Project(same.MaxBy(placed => Math.Round(Camera.Toward.Dot(placed.At), 6)).At)));
        return options.Tints.IsEmpty ? [] : LabelLayout.Of([.. labels], drawn, Frame.Round(drawn, options.Aspect).Width);
    }

    /// <summary>Lines of muscle over the body, of the side being treated.</summary>
    internal IEnumerable<SceneShape> Lines(PlacedFigure figure, MuscleSet muscles, IReadOnlyList<string> ids)
    {
        var (state, lines) = (new BodyState(muscles.Model), new MuscleState(muscles));
        var pose = figure.Placed.Pose;
        state.Update(pose);
        lines.Update(state, pose);
        foreach (var id in ids)
        {
            Disc[] discs = [.. lines.PathPoints(muscles.IndexOf(id, working), state, pose).Select(p => Camera.See(new Ball(p, 0.011)))];
            yield return new SceneShape
            {
                Name = "line",
                Tone = Tone.Band,
                Role = ShapeRole.Held,
                Loops = [.. discs.Zip(discs.Skip(1), (a, b) => CircleHull.Of([a, b]))],
                Gap = true,
            };
        }
    }

    /// <summary>The frame of a picture: round everything, close round the point that the movement names, from start to end, or round an upright head.</summary>
    internal Frame FrameOf(IEnumerable<SceneShape> shapes)
    {
        if (options.Whole)
            return Frame.Round(shapes, options.Aspect);
        if (movement.CloseUp is { } point)
            return Close(f => f.Surface(point, Limb.Working), bare ? Frame.FootRoom : Frame.HandRoom);
        return Accent == MovementFocus.Neck && movement.Frames[0].Orientation == Orientation.Upright
            ? Close(f => f.At(SegmentKind.Torso, working, 0, 0.4, 0), Frame.HeadRoom)
            : Frame.Round(shapes, options.Aspect);
    }

    private Frame Close(Func<PlacedFigure, Vec3> place, double room) =>
        Frame.Close(Camera.Project(place(Figure(0))), Camera.Project(place(Figure(1))), options.Aspect, room);

    /// <summary>Frames and flips the shapes, and writes them.</summary>
    internal Picture Finish(IReadOnlyList<SceneShape> shapes)
    {
        var frame = FrameOf(shapes);
        var scene = new Scene(frame.Place(shapes, Camera.Flip), frame.Width, frame.Height);
        return new Picture(scene, options.Palette, SvgWriter.Inner(scene.Shapes, options.Palette));
    }

    private PlacedFigure Place(PosedFrame frame, double fraction, PlacedBody? near) =>
        new(model, points, frame, working, settler.Settle(frame, working, near)) { Fraction = fraction, Barefoot = bare };

    private static SurfaceContact? Anchor(PosedFrame frame) => frame.Contacts.IsEmpty ? null : frame.Contacts[0];

    private List<BodyPart> Parts(PlacedFigure figure)
    {
        if (!ReferenceEquals(made.Figure, figure))
            made = (figure, Make(figure));
        return made.Parts;
    }

    private List<BodyPart> Make(PlacedFigure figure)
    {
        var held = HeldThings.Of(figure, Setting, Camera.Toward);
        if (hiding is { } table)
            held = held.Append(Furniture.TablePart(table, Camera));
        var gripping = HeldThings.GrippingHands(figure, Setting);
        var tinted = TintParts.Paint(TintParts.Of(figure, options.Tints), Camera, options.Palette.Marked);
        return FigureParts.Of(
            figure, Camera, Accent, options.Hair, side => HeldThings.GraspOf(figure, Setting, gripping, side), tinted, held);
    }

    private HeldSetting Setting => setting ??= HeldSetting.Of(points, movement, working, Figure(0), Figure(1));

    private IEnumerable<SceneShape> Shapes(BodyPart part)
    {
        var depth = part.Layers.Any(l => l.Gap) ? PaintOrder.Depth(part, Camera) : 0;
        return part.Layers.Select(layer => new SceneShape
        {
            Name = part.Name,
            Tone = layer.Tone,
            Role = part.Role,
            Depth = depth,
            Loops = [.. layer.Loops(Camera)],
            Gap = layer.Gap,
        });
    }

    private static bool IsFlesh(BodyPart part) => part.Role == ShapeRole.Body && part.Name != "seam";

    // Fingers and laces are more than a ghost needs.
    private IEnumerable<ImmutableArray<Arc>> Silhouette(BodyPart part)
    {
        var layers = part.Layers.Where(layer => layer.Gap);
        return part.Name.EndsWith("Hand", StringComparison.Ordinal) || part.Name.EndsWith("Shoe", StringComparison.Ordinal)
            ? [CircleHull.Of([.. layers.SelectMany(layer => layer.Hulls).SelectMany(hull => hull).Select(Camera.See)])]
            : layers.SelectMany(layer => layer.Loops(Camera));
    }

    private static bool IsAccent(BodyPart part) => part.Layers[^1].Tone is Tone.Working or Tone.FarWorking;

    private static double Distance(BodyPart a, BodyPart b) =>
        a.Layers[0].Hulls.SelectMany(h => h).Zip(b.Layers[0].Hulls.SelectMany(h => h), (p, q) => (p.Center - q.Center).Length).Max();

    /// <summary>The arm when it moves and the leg does not, else the leg.</summary>
    private static MovementFocus FocusOf(Movement movement)
    {
        var (a, b) = (movement.Frames[0].Working, movement.Frames[^1].Working);
        double[] leg =
        [
            a.HipFlexion - b.HipFlexion, a.HipAbduction - b.HipAbduction, a.HipInternalRotation - b.HipInternalRotation,
            a.KneeFlexion - b.KneeFlexion, a.AnkleDorsiflexion - b.AnkleDorsiflexion,
        ];
        double[] arm =
        [
            a.ShoulderFlexion - b.ShoulderFlexion, a.ShoulderAbduction - b.ShoulderAbduction,
            a.ShoulderInternalRotation - b.ShoulderInternalRotation, a.ElbowFlexion - b.ElbowFlexion,
            a.ForearmPronation - b.ForearmPronation, a.WristFlexion - b.WristFlexion,
        ];
        return leg.Max(Math.Abs) < 0.1 && arm.Max(Math.Abs) > 0.15 ? MovementFocus.Arm : MovementFocus.Leg;
    }
}
