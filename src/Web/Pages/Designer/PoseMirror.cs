using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Web.Pages.Designer;

/// <summary>A pose with working and other side in each other's place.</summary>
public static class PoseMirror
{
    /// <summary>Mirrors a pose: limbs and contacts change sides, bends and turns their sign.</summary>
    public static PoseFile Of(PoseFile pose)
    {
        ArgumentNullException.ThrowIfNull(pose);
        return pose with
        {
            Orientation = pose.Orientation switch
            {
                Orientation.SideLyingOnWorking => Orientation.SideLyingOnOther,
                Orientation.SideLyingOnOther => Orientation.SideLyingOnWorking,
                var same => same,
            },
            Working = pose.Other,
            Other = pose.Working,
            Axial = pose.Axial with
            {
                TrunkBendToWorkingDeg = 0 - pose.Axial.TrunkBendToWorkingDeg,
                TrunkTurnToWorkingDeg = 0 - pose.Axial.TrunkTurnToWorkingDeg,
                NeckBendToWorkingDeg = 0 - pose.Axial.NeckBendToWorkingDeg,
                NeckTurnToWorkingDeg = 0 - pose.Axial.NeckTurnToWorkingDeg,
            },
            Contacts = [.. pose.Contacts.Select(c => c with { Limb = Swapped(c.Limb), Wall = Swapped(c.Wall) })],
            Ties = [.. pose.Ties.Select(t => t with { FromLimb = Swapped(t.FromLimb), ToLimb = Swapped(t.ToLimb) })],
        };
    }

    private static Limb? Swapped(Limb? limb) => limb switch
    {
        Limb.Working => Limb.Other,
        Limb.Other => Limb.Working,
        _ => null,
    };

    private static WallPlace? Swapped(WallPlace? wall) => wall switch
    {
        WallPlace.BesideWorking => WallPlace.BesideOther,
        WallPlace.BesideOther => WallPlace.BesideWorking,
        var same => same,
    };
}
