using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.Pages.Designer;

/// <summary>The named places of the body as choices: by part of the body, in trade words.</summary>
public static class BodyPlaces
{
    private static readonly (string Part, SegmentKind[] Segments)[] Parts =
    [
        ("Foot", [SegmentKind.Foot, SegmentKind.Toes]),
        ("Lower leg and knee", [SegmentKind.Shank]),
        ("Thigh", [SegmentKind.Thigh]),
        ("Pelvis and hip", [SegmentKind.Pelvis]),
        ("Trunk", [SegmentKind.Torso]),
        ("Head", [SegmentKind.Head]),
        ("Arm and hand", [SegmentKind.UpperArm, SegmentKind.Ulna, SegmentKind.Radius, SegmentKind.Hand]),
    ];

    /// <summary>What a tied band, a load or a hand needs, or what a contact may name too.</summary>
    /// <param name="points">The body's points.</param>
    /// <param name="groups">Whether groups of points may be named, such as the whole foot.</param>
    /// <param name="beside">Only the other points of this point's segment; null for all.</param>
    public static IReadOnlyList<(string Part, ImmutableArray<string> Names)> Choices(SurfacePoints points, bool groups, string? beside = null)
    {
        ArgumentNullException.ThrowIfNull(points);
        SegmentKind? only = beside is not null && points.Has(beside) ? points.Resolve(beside)[0].Segment : null;
        var grouped = groups ? points.Groups.Keys.Order(StringComparer.Ordinal) : Enumerable.Empty<string>();
        var names = grouped.Concat(points.Ordered.Select(p => p.Name).Where(n => !points.Groups.ContainsKey(n)))
            .Where(n => n != beside && (only is null || points.Resolve(n)[0].Segment == only));
        return
        [
            .. Parts.Select(part => (part.Part, names.Where(n => part.Segments.Contains(points.Resolve(n)[0].Segment))
                .OrderBy(n => groups && points.Groups.ContainsKey(n) ? 0 : 1).ThenBy(BodyWords.Place, StringComparer.Ordinal).ToImmutableArray()))
                .Where(part => part.Item2.Length > 0),
        ];
    }

    /// <summary>Whether a place is there on both sides, so that a side must be named.</summary>
    public static bool HasSides(SurfacePoints points, string? name)
    {
        ArgumentNullException.ThrowIfNull(points);
        return name is not null && points.Has(name) && points.Resolve(name)[0].BothSides;
    }

    /// <summary>The side that goes with a place: none in the midline, else the one there was, else the working one.</summary>
    public static Limb? LimbFor(SurfacePoints points, string? name, Limb? limb) => HasSides(points, name) ? limb ?? Limb.Working : null;

    /// <summary>A place with its side: "palm, working side".</summary>
    public static string Say(string name, Limb? limb) => BodyWords.Place(name) + limb switch
    {
        Limb.Working => ", working side",
        Limb.Other => ", other side",
        _ => "",
    };
}
