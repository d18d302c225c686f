using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>The whole figure as parts in painting order.</summary>
internal static class FigureParts
{
    /// <summary>Parts and the patches between them, in painting order.</summary>
    /// <param name="figure">The placed body.</param>
    /// <param name="camera">Where from.</param>
    /// <param name="accent">Which part carries the accent.</param>
    /// <param name="hair">Hair.</param>
    /// <param name="grasp">How each hand is closed.</param>
    /// <param name="tinted">Tinted areas, each painted over the parts that carry it.</param>
    /// <param name="held">Bands and weights that move with the body.</param>
    internal static List<BodyPart> Of(
        PlacedFigure figure, Camera camera, MovementFocus accent, HairStyle hair, Func<Side, Grasp> grasp,
        IEnumerable<(string Under, string Over, BodyPart Part)> tinted, IEnumerable<BodyPart> held)
    {
        var parts = new List<BodyPart>();
        var patches = new List<Patch>();
        foreach (var side in (Side[])[figure.Working, figure.Working.Other()])
        {
            var farLeg = IsFar(figure, camera, SegmentKind.Thigh, side);
            var farArm = IsFar(figure, camera, SegmentKind.UpperArm, side);
            var works = side == figure.Working;
            var leg = works && accent == MovementFocus.Leg
                ? farLeg ? Tone.FarWorking : Tone.Working
                : farLeg ? Tone.FarOther : Tone.Other;
            var shorts = farLeg ? Tone.FarShorts : Tone.Shorts;
            var hand = farArm ? Tone.FarSkin : Tone.Skin;
            var lit = farArm ? Tone.FarWorking : Tone.Working;
            var forearm = works && accent is MovementFocus.Shoulder or MovementFocus.Arm or MovementFocus.Forearm ? lit : hand;
            var arm = works && accent is MovementFocus.Shoulder or MovementFocus.Arm ? lit : hand;
            var sleeve = works && accent == MovementFocus.Shoulder ? lit : farArm ? Tone.FarShirt : Tone.Shirt;
            var tones = new ArmTones(hand, forearm, arm, sleeve, accent != MovementFocus.Trunk && !(works && accent == MovementFocus.Shoulder));
            parts.AddRange(LegParts.Of(figure, side, camera.Toward, leg, shorts));
            parts.AddRange(ArmParts.Of(figure, side, tones, grasp(side)));
            patches.AddRange(LegParts.Patches(figure, side, leg, shorts));
            patches.AddRange(ArmParts.Patches(figure, side, tones));
        }

        parts.AddRange(TrunkParts.Of(figure, camera.Toward, hair, accent));
        parts.AddRange(held);
        List<BodyPart> ordered = [.. PaintOrder.Of(parts, camera).Select(i => parts[i])];
        Lighten(ordered, patches);
        return WithPatches(WithTints(ordered, tinted), patches);
    }

    /// <summary>A farther sleeve that is painted over the shirt takes its tone: in the shade lies only what is behind.</summary>
    private static void Lighten(List<BodyPart> ordered, List<Patch> patches)
    {
        var shirt = ordered.FindIndex(part => part.Name == "shirt");
        for (var i = shirt + 1; i < ordered.Count; i++)
        {
            if (ordered[i].Layers[0].Tone != Tone.FarShirt)
                continue;
            var name = ordered[i].Name;
            ordered[i] = new BodyPart(name, [.. ordered[i].Layers.Select(Lit)]);
            patches.AddRange(patches.Where(patch => patch.Over == name && patch.Layer.Tone == Tone.FarShirt).ToArray().Select(patch => patch with { Layer = Lit(patch.Layer) }));
            patches.RemoveAll(patch => patch.Over == name && patch.Layer.Tone == Tone.FarShirt);
        }

        static Layer Lit(Layer layer) => layer with { Tone = Tone.Shirt };
    }

    private static bool IsFar(PlacedFigure figure, Camera camera, SegmentKind kind, Side side)
    {
        var own = camera.Toward.Dot(figure.At(kind, side, 0, 0, 0));
        var other = camera.Toward.Dot(figure.At(kind, side.Other(), 0, 0, 0));
        return own < other - 0.05;
    }

    // Patches are put right over their parts later, and so come to lie under the tints.
    private static List<BodyPart> WithTints(List<BodyPart> parts, IEnumerable<(string Under, string Over, BodyPart Part)> tinted)
    {
        foreach (var (under, over, part) in tinted)
        {
            var at = Math.Max(parts.FindIndex(p => p.Name == under), parts.FindIndex(p => p.Name == over));
            parts.Insert(at + 1, part);
        }

        return parts;
    }

    private static List<BodyPart> WithPatches(List<BodyPart> parts, List<Patch> patches)
    {
        foreach (var patch in patches)
        {
            var under = parts.FindIndex(p => p.Name == patch.Under);
            var over = parts.FindIndex(p => p.Name == patch.Over);
            if (over < under && !patch.EitherOrder)
                continue;
            parts.Insert(Math.Max(under, over) + 1, new BodyPart("seam", patch.Layer));
        }

        return parts;
    }
}
