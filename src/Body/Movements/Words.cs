namespace MomentArm.Body;

/// <summary>Trade words for the sentences of checks and refusals.</summary>
internal static class Words
{
    internal static string Of(SurfaceKind surface) => surface switch
    {
        SurfaceKind.Floor => "floor",
        SurfaceKind.Seat => "seat",
        SurfaceKind.Step => "step",
        SurfaceKind.Wall => "wall",
        SurfaceKind.Roller => "roller",
        SurfaceKind.Bench => "bench",
        SurfaceKind.Pillow => "pillow",
        SurfaceKind.Board => "board",
    };

    internal static string Of(WallPlace place) => place switch
    {
        WallPlace.Behind => "behind",
        WallPlace.InFront => "in front of",
        WallPlace.BesideWorking => "beside the working limb of",
        WallPlace.BesideOther => "beside the other limb of",
        WallPlace.AtHead => "at the head of",
        WallPlace.AtFeet => "at the feet of",
    };

    internal static string Of(Orientation orientation) => orientation switch
    {
        Orientation.Upright => "upright",
        Orientation.Supine => "lying on the back",
        Orientation.Prone => "lying on the front",
        Orientation.SideLyingOnWorking or Orientation.SideLyingOnOther => "lying on the side",
    };

    /// <summary>The places a wall may have in a position, as files name them.</summary>
    internal static string Places(Orientation orientation) => orientation switch
    {
        Orientation.Upright => "behind, inFront, besideWorking or besideOther",
        Orientation.Supine or Orientation.Prone => "besideWorking, besideOther, atHead or atFeet",
        Orientation.SideLyingOnWorking or Orientation.SideLyingOnOther => "behind, inFront, atHead or atFeet",
    };

    internal static string Whose(Limb? limb) =>
        limb is null ? "" : limb == Limb.Working ? " of the working limb" : " of the other limb";

    /// <summary>The motion toward the upper or the lower end of a coordinate, as clinicians name it.</summary>
    internal static string Of(Motion motion, bool upper)
    {
        var (rising, falling) = motion switch
        {
            Motion.HipFlexion => ("hip flexion", "hip extension"),
            Motion.HipAdduction => ("hip adduction", "hip abduction"),
            Motion.HipRotation => ("hip internal rotation", "hip external rotation"),
            Motion.KneeExtension => ("knee extension", "knee flexion"),
            Motion.AnkleDorsiflexion => ("ankle dorsiflexion", "ankle plantarflexion"),
            Motion.SubtalarInversion => ("subtalar inversion", "subtalar eversion"),
            Motion.ToeExtension => ("toe extension", "toe flexion"),
            Motion.TrunkExtension => ("trunk extension", "trunk flexion"),
            Motion.TrunkBending => ("trunk bending to the right", "trunk bending to the left"),
            Motion.TrunkRotation => ("trunk turning to the left", "trunk turning to the right"),
            Motion.NeckExtension => ("neck extension", "neck flexion"),
            Motion.NeckBending => ("neck bending to the right", "neck bending to the left"),
            Motion.NeckRotation => ("neck turning to the left", "neck turning to the right"),
            Motion.ShoulderFlexion => ("shoulder flexion", "shoulder extension"),
            Motion.ShoulderAdduction => ("shoulder adduction", "shoulder abduction"),
            Motion.ShoulderRotation => ("shoulder internal rotation", "shoulder external rotation"),
            Motion.ElbowFlexion => ("elbow flexion", "elbow extension"),
            Motion.ForearmPronation => ("forearm pronation", "forearm supination"),
            Motion.WristFlexion => ("wrist flexion", "wrist extension"),
            Motion.WristDeviation => ("wrist ulnar deviation", "wrist radial deviation"),
        };
        return upper ? rising : falling;
    }
}
