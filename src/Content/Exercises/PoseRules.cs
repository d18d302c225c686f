using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>What a held pose in a file must keep to, outside the exercises: angles a person can take, contacts and loads the body has.</summary>
/// <param name="points">The named points of the body.</param>
/// <param name="file">The file named in messages.</param>
/// <param name="faults">Gathers every fault.</param>
internal sealed class PoseRules(SurfacePoints points, string file, FaultList faults)
{
    /// <summary>Checks a pose; a free one may touch nothing.</summary>
    internal void CheckPose(PoseFile pose, string path, bool free = false)
    {
        if (pose.Contacts.Count == 0 && !free)
            faults.Add(file, null, $"{path}.contacts", "Nothing touches anything.", "Name at least one contact.");
        foreach (var fault in FrameCheck.Faults(PoseConversion.ToFrame(pose), points))
            faults.Add(file, null, $"{path}.{fault.Place}", fault.What, fault.Mend);
    }

    /// <summary>Checks added loads: there is no dose here to set their mass.</summary>
    internal void CheckLoads(IReadOnlyList<AddedLoadFile> loads, string path)
    {
        var places = new PullReader(points, new HashSet<string>(), file, faults);
        for (var i = 0; i < loads.Count; i++)
        {
            places.CheckPlace(new BodyPlace(loads[i].At, loads[i].Limb, loads[i].Toward, loads[i].Fraction), $"{path}addedLoads[{i}]");
            if (!(loads[i].MassKg is > 0 and <= 240))
                faults.Add(file, null, $"{path}addedLoads[{i}].massKg", FormattableString.Invariant($"{loads[i].MassKg} kg lies outside 0 to 240, or is nothing."), "Give the mass.");
        }
    }
}
