namespace MomentArm.Body;

/// <summary>Where walls stand around a person and which way they face.</summary>
internal static class Walls
{
    /// <summary>Whether a wall at that place would be vertical for a body in that orientation.</summary>
    internal static bool Stands(Orientation orientation, WallPlace place) => orientation switch
    {
        Orientation.Upright => place is not (WallPlace.AtHead or WallPlace.AtFeet),
        Orientation.Supine or Orientation.Prone => place is not (WallPlace.Behind or WallPlace.InFront),
        Orientation.SideLyingOnWorking or Orientation.SideLyingOnOther =>
            place is not (WallPlace.BesideWorking or WallPlace.BesideOther),
    };

    /// <summary>The wall's horizontal unit normal, from the wall into the body, in the room.</summary>
    internal static Vec3 Normal(Orientation orientation, WallPlace place, Side working)
    {
        var start = ClinicalPose.Start(orientation, 0, working);
        var rightward = start * Vec3.UnitZ;
        var toWorking = working == Side.Right ? rightward : -rightward;
        var outward = place switch
        {
            WallPlace.Behind => -(start * Vec3.UnitX),
            WallPlace.InFront => start * Vec3.UnitX,
            WallPlace.BesideWorking => toWorking,
            WallPlace.BesideOther => -toWorking,
            WallPlace.AtHead => start * Vec3.UnitY,
            WallPlace.AtFeet => -(start * Vec3.UnitY),
        };

        // The quarter turns of lying bodies carry a rounding of 1e-16; walls are upright exactly.
        return new Vec3(-Math.Round(outward.X, 9), 0, -Math.Round(outward.Z, 9));
    }

    /// <summary>
    /// The place of a wall whose place the author left open: the side of the body that faces it (our choice). Trunk, legs and
    /// head tell by the skin that touches, arms by where they reach from the pelvis.
    /// </summary>
    internal static WallPlace Derive(Orientation orientation, Side working, Vec3 evidence)
    {
        var best = orientation == Orientation.Upright ? WallPlace.Behind : WallPlace.AtFeet;
        var most = double.NegativeInfinity;
        foreach (var place in (ReadOnlySpan<WallPlace>)
            [WallPlace.Behind, WallPlace.InFront, WallPlace.BesideWorking, WallPlace.BesideOther, WallPlace.AtHead, WallPlace.AtFeet])
        {
            if (!Stands(orientation, place))
                continue;
            var agreement = -Normal(orientation, place, working).Dot(evidence);
            if (agreement > most + 1e-9)
                (most, best) = (agreement, place);
        }

        return best;
    }

    /// <summary>Which way a point of the skin faces, level in the room and at most of length 1.</summary>
    internal static Vec3 Facing(BodyState state, int segment, Vec3 local)
    {
        var outward = state.Model.Segments[segment].Kind switch
        {
            SegmentKind.UpperArm or SegmentKind.Ulna or SegmentKind.Radius or SegmentKind.Hand =>
                state.Point(segment, local) - state.Origins[0],
            SegmentKind.Pelvis => state.Rotations[segment] * (local - new Vec3(-0.08, 0, 0)),
            SegmentKind.Foot => state.Rotations[segment] * (local - new Vec3(0.08, 0, 0)),
            SegmentKind.Toes => state.Rotations[segment] * local,
            SegmentKind.Thigh or SegmentKind.Shank or SegmentKind.Talus or SegmentKind.Torso or SegmentKind.Head =>
                state.Rotations[segment] * new Vec3(local.X, 0, local.Z),
        };
        var level = new Vec3(outward.X, 0, outward.Z);
        return level.Length > 0.01 ? level.Normalized() : Vec3.Zero;
    }
}
