using System.Collections.Immutable;
using System.Globalization;
using System.Security;
using System.Text;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Drawing;
using MomentArm.Exam;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.Pages.BodyChart;

/// <summary>A named place of the body in one picture of the chart.</summary>
/// <param name="Key">Point and side, for a list.</param>
/// <param name="Words">Its words with the side.</param>
/// <param name="X">Fraction of the width.</param>
/// <param name="Y">Fraction of the height.</param>
public sealed record ChartPlace(string Key, string Words, double X, double Y);

/// <summary>The four pictures of the body chart, drawn once from the body model itself, with the places that can be named in them.</summary>
public sealed class ChartFigures(ContentLibrary content)
{
    /// <summary>Width of a picture on the page, CSS pixels. A click is counted in these, so nothing may scale the picture.</summary>
    public const int Width = 200;

    /// <summary>Height of a picture on the page, CSS pixels.</summary>
    public const int Height = 400;

    private static readonly string[] FromFront =
    [
        "forehead", "shoulderOuter", "chestFront", "belly", "pelvisFront", "thighFront", "thighFrontLower", "thighInner", "kneeFront", "kneeInner",
        "kneeOuter", "shinFront", "ankleFront", "ankleInner", "instep", "palm",
    ];

    private static readonly string[] FromBehind =
    [
        "headBack", "shoulderOuter", "upperBack", "lowerBack", "sacrum", "pelvisBack", "sitBone", "thighBack", "kneeBack", "calfBack", "heelBack", "elbow", "handBack",
    ];

    private static readonly string[] FromTheSide =
    [
        "headSide", "shoulderOuter", "ribOuter", "pelvisSide", "trochanter", "thighOuterUpper", "thighOuter", "thighOuterLower", "kneeOuter",
        "shinFront", "calfBack", "ankleOuter", "heel", "toeTop", "elbow",
    ];

    private readonly Lazy<ImmutableDictionary<ChartView, (Picture Picture, ImmutableArray<ChartPlace> Places)>> drawn =
        new(() => Enum.GetValues<ChartView>().ToImmutableDictionary(v => v, v => Draw(content, v)));

    /// <summary>The places that can be named in a picture, from the top down.</summary>
    public ImmutableArray<ChartPlace> Places(ChartView view) => drawn.Value[view].Places;

    /// <summary>The named place nearest to a point of a picture.</summary>
    public ChartPlace Nearest(ChartView view, double x, double y) =>
        Places(view).MinBy(p => Math.Pow((p.X - x) * Width, 2) + Math.Pow((p.Y - y) * Height, 2))!;

    /// <summary>A picture with its marks, as a whole SVG document.</summary>
    public string Svg(ChartView view, IEnumerable<ChartMark> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        var picture = drawn.Value[view].Picture;
        var here = marks.Where(m => m.View == view).ToList();
        var svg = new StringBuilder();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"{picture.ViewBox}\" width=\"{Width}\" height=\"{Height}\">")
            .Append("<title>").Append(Name(view)).Append("</title><desc>")
            .Append(SecurityElement.Escape(here.Count == 0 ? "No mark." : string.Join("; ", here.Select(m => m.Words)))).Append("</desc>")
            .Append(picture.Inner);
        foreach (var mark in here)
            WriteMark(svg, mark, picture);
        return svg.Append("</svg>").ToString();
    }

    /// <summary>What a picture shows.</summary>
    public static string Name(ChartView view) => view switch
    {
        ChartView.Front => "Front",
        ChartView.Back => "Back",
        ChartView.Right => "Right side",
        ChartView.Left => "Left side",
    };

    // Each feeling has a shape of its own, so that gray prints and color-blind readers see which is which.
    private static void WriteMark(StringBuilder svg, ChartMark mark, Picture picture)
    {
        var unit = picture.Width / Width;
        var (x, y, r) = (mark.X * picture.Width, mark.Y * picture.Height, 8 * unit);
        var shape = mark.Feeling switch
        {
            Feeling.Pain => Told($"<circle cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"{r:0.#}\" fill=\"#a5342b\""),
            Feeling.Numbness => Told($"<circle cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"{r:0.#}\" fill=\"#1d2430\""),
            Feeling.Tingling => Told($"<path d=\"M{x:0.#} {y - r:0.#}L{x + r:0.#} {y:0.#}L{x:0.#} {y + r:0.#}L{x - r:0.#} {y:0.#}Z\" fill=\"#9a6700\""),
            Feeling.Stiffness => Told($"<rect x=\"{x - r:0.#}\" y=\"{y - r:0.#}\" width=\"{2 * r:0.#}\" height=\"{2 * r:0.#}\" fill=\"#1f6f5c\""),
        };
        svg.Append(shape).Append(CultureInfo.InvariantCulture, $" stroke=\"#ffffff\" stroke-width=\"{1.5 * unit:0.#}\"/>");
        var label = mark.Level is { } level ? level.ToString(CultureInfo.InvariantCulture) : mark.Feeling.ToString()[..1];
        svg.Append(Told($"<text x=\"{x:0.#}\" y=\"{y + (0.42 * r):0.#}\" font-size=\"{1.25 * r:0.#}\" text-anchor=\"middle\" font-family=\"sans-serif\" font-weight=\"700\" fill=\"#ffffff\">"))
            .Append(label).Append("</text>");
    }

    private static string Told(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static (Picture, ImmutableArray<ChartPlace>) Draw(ContentLibrary content, ChartView view)
    {
        var model = content.Body.Build(new Physique());
        var working = view == ChartView.Left ? Side.Left : Side.Right;
        var limb = LimbAngles.Neutral with { ShoulderAbduction = 12 * Math.PI / 180, HipAbduction = 4 * Math.PI / 180 };
        var movement = new Movement
        {
            Frames =
            [
                new PosedFrame
                {
                    Name = "stand", Orientation = Orientation.Upright, Working = limb, Other = limb, Axial = AxialAngles.Neutral,
                    Contacts = [Floor("heel", Limb.Working), Floor("heel", Limb.Other), Floor("ballInner", Limb.Working), Floor("ballInner", Limb.Other)],
                },
            ],
            Props = [],
            Loads = [],
            View = view switch
            {
                ChartView.Front => ViewKind.Front,
                ChartView.Back => ViewKind.Back,
                ChartView.Right or ChartView.Left => ViewKind.Side,
            },
        };
        var options = PictureOptions.Usual with { Aspect = (double)Width / Height, Accent = MovementFocus.None };
        var posed = PosedPicture.Of(model, content.Body.Points, movement, working, 0, options);
        return (posed.Picture, Places(content, model, posed, view));
    }

    private static ImmutableArray<ChartPlace> Places(ContentLibrary content, BodyModel model, PosedPicture posed, ChartView view)
    {
        var state = new BodyState(model);
        state.Update(posed.Placed.Pose);
        var (names, sides) = view switch
        {
            ChartView.Front => (FromFront, new[] { Side.Left, Side.Right }),
            ChartView.Back => (FromBehind, [Side.Left, Side.Right]),
            ChartView.Right => (FromTheSide, [Side.Right]),
            ChartView.Left => (FromTheSide, [Side.Left]),
        };
        var places = from name in names
                     let point = content.Body.Points.Points[name]
                     from side in point.BothSides ? sides : sides[..1]
                     let at = point.On(model, point.BothSides ? side : null)
                     let seen = posed.At(state.Point(at.Segment, at.Local))
                     let words = BodyWords.Place(name) + (point.BothSides ? ", " + Say.Side(side) : "")
                     orderby seen.Y, side
                     select new ChartPlace($"{name}/{(point.BothSides ? side : null)}", words, seen.X / posed.Picture.Width, seen.Y / posed.Picture.Height);
        return [.. places];
    }

    private static SurfaceContact Floor(string point, Limb limb) => new(point, limb, SurfaceKind.Floor, 0, true);
}
