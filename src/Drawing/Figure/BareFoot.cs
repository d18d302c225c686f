using MomentArm.Body;
using static MomentArm.Body.SegmentKind;

namespace MomentArm.Drawing;

/// <summary>A foot without shoe, for close-ups: heel, arch, ball and five toes.</summary>
internal static class BareFoot
{
    /// <summary>Where the joint of the toes lies in the foot of the published model, meters.</summary>
    private const double ToeX = 0.179;
    private const double ToeY = -0.002;

    /// <summary>Height of the arch under the middle of the foot at no eversion, how much it gives per radian, and its bounds, meters; our choice.</summary>
    private const double ArchAtRest = 0.025;
    private const double ArchPerRadian = 0.2;
    private const double LeastArch = 0.005;
    private const double MostArch = 0.04;

    /// <summary>Toes from the big one outward: root, tip and radius, in the frame of the toes.</summary>
    private static readonly (double Z, double Length, double Radius)[] Toe =
    [
        (-0.021, 0.052, 0.0135), (0.001, 0.05, 0.0095), (0.0145, 0.042, 0.009), (0.0265, 0.032, 0.0085), (0.0365, 0.02, 0.008),
    ];

    /// <summary>Whether pictures close round this point show the foot bare.</summary>
    internal static bool Wanted(SurfacePoints points, string? closeUp) =>
        closeUp is not null && points.Resolve(closeUp)[0].Segment is Foot or SegmentKind.Toes or Talus;

    /// <summary>Height of the arch; the skeleton's foot is one piece, so the drawn arch follows the joint below the ankle: it rises as the foot rolls outward.</summary>
    internal static double Arch(PlacedFigure f, Side side) =>
        Math.Clamp(ArchAtRest - ArchPerRadian * f.AnglesOf(side).SubtalarEversion, LeastArch, MostArch);

    internal static BodyPart Of(PlacedFigure f, Side side, string s, Vec3 toward)
    {
        Ball F(double x, double y, double z, double r) => f.Ball(Foot, side, x, y, z, r);
        var arch = F(0.088, Arch(f, side) - 0.002, -0.022, 0.016);
        Ball[] heel = [F(0.01, 0.009, -0.006, 0.027), F(0.012, 0.009, 0.008, 0.026), F(0.032, 0.04, -0.004, 0.029)];
        Ball[] ankle = [f.Ball(Shank, side, 0.001, -0.385, 0, 0.0295), F(0.042, 0.062, -0.006, 0.03), F(0.032, 0.04, -0.004, 0.029)];
        Ball[] instep = [F(0.045, 0.06, -0.006, 0.029), F(0.08, 0.042, -0.006, 0.025), F(0.128, 0.017, -0.006, 0.021)];
        Ball[] outer = [F(0.02, 0.004, 0.012, 0.022), F(0.08, 0.001, 0.024, 0.018), F(0.145, -0.002, 0.034, 0.0155)];
        Ball inner = F(0.162, 0.0, -0.021, 0.018);
        Ball small = F(0.15, -0.003, 0.032, 0.015);
        Ball[][] outerSide = [outer, [.. outer, .. instep]];
        Ball[][] innerSide = [[heel[0], heel[2], instep[0], instep[1], arch], [arch, instep[1], instep[2], inner]];
        Ball[][] front = [[instep[1], instep[2], inner, small]];
        var innerSeen = (f.At(Foot, side, 0, 0, -1) - f.At(Foot, side, 0, 0, 0)).Dot(toward) > 0;
        Layer Flesh(Tone tone, params Ball[][] hulls) => new(tone, hulls, false);
        Layer[] sides = innerSeen
            ? [Flesh(Tone.FarSkin, outerSide), Flesh(Tone.Skin, [heel, ankle, .. innerSide, .. front])]
            : [Flesh(Tone.FarSkin, innerSide), Flesh(Tone.Skin, [heel, ankle, .. outerSide, .. front])];
        return new BodyPart(s + "Shoe", [new Layer(Tone.Skin, [heel, ankle, .. outerSide, .. innerSide, .. front, .. Bent(f, side)]), .. sides, .. Rimmed(f, side, toward)]);
    }

    private static IEnumerable<Ball[]> Bent(PlacedFigure f, Side side) => Enumerable.Range(0, Toe.Length).Select(i => One(f, side, i, 0));

    /// <summary>Each toe with a darker rim, the farthest first.</summary>
    private static IEnumerable<Layer> Rimmed(PlacedFigure f, Side side, Vec3 toward) => Enumerable.Range(0, Toe.Length)
        .OrderBy(i => Math.Round(toward.Dot(One(f, side, i, 0)[^1].Center), 6))
        .SelectMany(i => (Layer[])
        [
            new Layer(Tone.Feature, [One(f, side, i, 0.0012)], false),
            new Layer(Tone.Skin, [One(f, side, i, -0.0006)], false),
        ]);

    private static Ball[] One(PlacedFigure f, Side side, int index, double wider)
    {
        var (z, length, radius) = Toe[index];

        // With the whole foot on the ground the small toes stay down; only the big one follows the joint.
        var free = index == 0 || !Flat(f, side);
        Ball At(double x, double y, double r) =>
            free ? f.Ball(SegmentKind.Toes, side, x, y, z, r + wider) : f.Ball(Foot, side, ToeX + x, ToeY + y, z, r + wider);
        var back = -0.006 - 0.24 * Math.Max(0, z);
        return [At(back, radius - 0.016, radius), At(back + 0.5 * length, radius - 0.0145, radius * 0.92), At(back + length, radius - 0.0165, radius * 0.96)];
    }

    private static bool Flat(PlacedFigure f, Side side)
    {
        var limb = side == f.Working ? Limb.Working : Limb.Other;
        return ((string[])["heel", "ballInner", "ballOuter"]).All(point => f.Placed.Contacts.Any(c => c.Contact.Limb == limb && f.IsAt(c, point)));
    }
}
