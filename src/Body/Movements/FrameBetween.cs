using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Frames between the poses an author gave.</summary>
public static class FrameBetween
{
    /// <summary>The frame at a fraction of the way through a movement, angles interpolated evenly between its poses.</summary>
    /// <param name="movement">The movement.</param>
    /// <param name="fraction">0 start, 1 end; held inside that range.</param>
    /// <returns>The frame; contacts and ties are those common to the two poses around it (those of the pose itself at a pose).</returns>
    public static PosedFrame At(Movement movement, double fraction)
    {
        ArgumentNullException.ThrowIfNull(movement);
        var frames = movement.Frames;
        var along = Math.Clamp(fraction, 0, 1) * (frames.Length - 1);
        var before = Math.Min((int)along, Math.Max(0, frames.Length - 2));
        var t = along - before;
        var a = frames[before];
        if (t <= 0 || frames.Length == 1)
            return a;
        var b = frames[before + 1];
        if (t >= 1)
            return b;
        return new PosedFrame
        {
            Name = "between",
            Orientation = t < 0.5 ? a.Orientation : b.Orientation,
            PitchHint = Mix(a.PitchHint, b.PitchHint, t),
            Working = Mix(a.Working, b.Working, t),
            Other = Mix(a.Other, b.Other, t),
            Axial = Mix(a.Axial, b.Axial, t),
            Contacts = Common(a.Contacts, b.Contacts, t),
            Ties = Common(a.Ties, b.Ties, t),
        };
    }

    private static double Mix(double a, double b, double t) => a + (b - a) * t;

    private static LimbAngles Mix(LimbAngles a, LimbAngles b, double t) => new()
    {
        HipFlexion = Mix(a.HipFlexion, b.HipFlexion, t),
        HipAbduction = Mix(a.HipAbduction, b.HipAbduction, t),
        HipInternalRotation = Mix(a.HipInternalRotation, b.HipInternalRotation, t),
        KneeFlexion = Mix(a.KneeFlexion, b.KneeFlexion, t),
        AnkleDorsiflexion = Mix(a.AnkleDorsiflexion, b.AnkleDorsiflexion, t),
        SubtalarEversion = Mix(a.SubtalarEversion, b.SubtalarEversion, t),
        ToeExtension = Mix(a.ToeExtension, b.ToeExtension, t),
        ShoulderFlexion = Mix(a.ShoulderFlexion, b.ShoulderFlexion, t),
        ShoulderAbduction = Mix(a.ShoulderAbduction, b.ShoulderAbduction, t),
        ShoulderInternalRotation = Mix(a.ShoulderInternalRotation, b.ShoulderInternalRotation, t),
        ElbowFlexion = Mix(a.ElbowFlexion, b.ElbowFlexion, t),
        ForearmPronation = Mix(a.ForearmPronation, b.ForearmPronation, t),
        WristFlexion = Mix(a.WristFlexion, b.WristFlexion, t),
    };

    private static AxialAngles Mix(AxialAngles a, AxialAngles b, double t) => new()
    {
        TrunkFlexion = Mix(a.TrunkFlexion, b.TrunkFlexion, t),
        TrunkBendToWorking = Mix(a.TrunkBendToWorking, b.TrunkBendToWorking, t),
        TrunkTurnToWorking = Mix(a.TrunkTurnToWorking, b.TrunkTurnToWorking, t),
        NeckFlexion = Mix(a.NeckFlexion, b.NeckFlexion, t),
        NeckBendToWorking = Mix(a.NeckBendToWorking, b.NeckBendToWorking, t),
        NeckTurnToWorking = Mix(a.NeckTurnToWorking, b.NeckTurnToWorking, t),
    };

    /// <summary>
    /// Contacts that both poses have. A surface that both touch, but with different points (a roller under which the thigh slides), is touched by the
    /// point of the nearer pose; without that it would bear nothing on the way. A share of the weight that changes between them changes evenly, one left open in either is left open.</summary>
    private static ImmutableArray<SurfaceContact> Common(ImmutableArray<SurfaceContact> a, ImmutableArray<SurfaceContact> b, double t)
    {
        var common = ImmutableArray.CreateBuilder<SurfaceContact>();
        foreach (var contact in a)
        {
            var there = b.FirstOrDefault(other => other with { ShareOfWeight = null } == contact with { ShareOfWeight = null });
            if (there is not null)
                common.Add(contact with { ShareOfWeight = contact.ShareOfWeight is { } from && there.ShareOfWeight is { } to ? Mix(from, to, t) : null });
        }

        if (common.Count == 0)
            return a;
        var slidesOn = a.Select(c => c.Surface).Intersect(b.Select(c => c.Surface)).Except(common.Select(c => c.Surface)).ToArray();
        common.AddRange((t < 0.5 ? a : b).Where(c => slidesOn.Contains(c.Surface)));
        return common.ToImmutable();
    }

    /// <summary>Ties that both poses have; a strap shortened between them is shortened evenly, one let out in either is let out.</summary>
    private static ImmutableArray<Tie> Common(ImmutableArray<Tie> a, ImmutableArray<Tie> b, double t)
    {
        if (a.IsEmpty || b.IsEmpty)
            return [];
        var common = ImmutableArray.CreateBuilder<Tie>();
        foreach (var tie in a)
        {
            var there = b.FirstOrDefault(other => other with { LengthM = null } == tie with { LengthM = null });
            if (there is not null)
                common.Add(tie with { LengthM = tie.LengthM is { } from && there.LengthM is { } to ? Mix(from, to, t) : null });
        }

        return common.ToImmutable();
    }
}
