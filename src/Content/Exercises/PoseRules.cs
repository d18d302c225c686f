using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>What a posed frame in a file must keep to, whatever file it stands in: angles a person can take, contacts the body has.</summary>
/// <param name="points">The named points of the body.</param>
/// <param name="file">The file named in messages.</param>
/// <param name="faults">Gathers every fault.</param>
internal sealed class PoseRules(SurfacePoints points, string file, FaultList faults)
{
    /// <summary>Checks a pose; a free one may touch nothing.</summary>
    internal void CheckPose(PoseFile pose, string path, bool free = false)
    {
        foreach (var (limb, name) in new[] { (pose.Working, "working"), (pose.Other, "other") })
            CheckLimb(limb, $"{path}.{name}");
        CheckRange(pose.Axial.TrunkFlexionDeg, -45, 110, $"{path}.axial.trunkFlexionDeg", "degrees");
        CheckRange(pose.Axial.TrunkBendToWorkingDeg, -45, 45, $"{path}.axial.trunkBendToWorkingDeg", "degrees");
        CheckRange(pose.Axial.TrunkTurnToWorkingDeg, -60, 60, $"{path}.axial.trunkTurnToWorkingDeg", "degrees");
        CheckRange(pose.Axial.NeckFlexionDeg, -70, 70, $"{path}.axial.neckFlexionDeg", "degrees");
        CheckRange(pose.Axial.NeckBendToWorkingDeg, -50, 50, $"{path}.axial.neckBendToWorkingDeg", "degrees");
        CheckRange(pose.Axial.NeckTurnToWorkingDeg, -90, 90, $"{path}.axial.neckTurnToWorkingDeg", "degrees");
        CheckRange(pose.PitchHintDeg, -120, 120, $"{path}.pitchHintDeg", "degrees");
        if (pose.Contacts.Count == 0 && !free)
            Fault($"{path}.contacts", "Nothing touches anything.", "Name at least one contact.");
        for (var i = 0; i < pose.Contacts.Count; i++)
        {
            var contact = pose.Contacts[i];
            CheckPoint(contact.Point, $"{path}.contacts[{i}].point");
            if (contact.Limb is null && points.Has(contact.Point) && points.Resolve(contact.Point).Any(p => p.BothSides))
                Fault($"{path}.contacts[{i}].limb", $"\"{contact.Point}\" is there on both sides.", "Say whose: working or other.");
            CheckRange(contact.HeightM, 0, 1.5, $"{path}.contacts[{i}].heightM", "m");
        }
    }

    private void CheckLimb(LimbFile limb, string path)
    {
        CheckRange(limb.HipFlexionDeg, -40, 140, path + ".hipFlexionDeg", "degrees");
        CheckRange(limb.HipAbductionDeg, -45, 70, path + ".hipAbductionDeg", "degrees");
        CheckRange(limb.HipInternalRotationDeg, -70, 60, path + ".hipInternalRotationDeg", "degrees");
        CheckRange(limb.KneeFlexionDeg, -10, 155, path + ".kneeFlexionDeg", "degrees");
        CheckRange(limb.AnkleDorsiflexionDeg, -60, 45, path + ".ankleDorsiflexionDeg", "degrees");
        CheckRange(limb.SubtalarEversionDeg, -35, 25, path + ".subtalarEversionDeg", "degrees");
        CheckRange(limb.ToeExtensionDeg, -45, 80, path + ".toeExtensionDeg", "degrees");
        CheckRange(limb.ShoulderFlexionDeg, -70, 185, path + ".shoulderFlexionDeg", "degrees");
        CheckRange(limb.ShoulderAbductionDeg, -60, 185, path + ".shoulderAbductionDeg", "degrees");
        CheckRange(limb.ShoulderInternalRotationDeg, -100, 100, path + ".shoulderInternalRotationDeg", "degrees");
        CheckRange(limb.ElbowFlexionDeg, -10, 155, path + ".elbowFlexionDeg", "degrees");
        CheckRange(limb.ForearmPronationDeg, 0, 180, path + ".forearmPronationDeg", "degrees");
        CheckRange(limb.WristFlexionDeg, -90, 90, path + ".wristFlexionDeg", "degrees");
    }

    /// <summary>Checks added loads; without a dose their mass must be given.</summary>
    internal void CheckLoads(IReadOnlyList<AddedLoadFile> loads, string path, bool massNeeded = false)
    {
        for (var i = 0; i < loads.Count; i++)
        {
            CheckPoint(loads[i].At, $"{path}addedLoads[{i}].at");
            CheckRange(loads[i].MassKg, massNeeded ? 0.01 : 0, 240, $"{path}addedLoads[{i}].massKg", "kg");
        }
    }

    internal void CheckPoint(string? name, string path)
    {
        if (name is not null && !points.Has(name))
            Fault(path, $"The body has no point \"{name}\".", "Use a name of body/surface-points.json.");
    }

    internal void CheckRange(double value, double least, double most, string path, string unit)
    {
        if (!(value >= least && value <= most))
        {
            Fault(path, FormattableString.Invariant($"{value} {unit} lies outside {least} to {most}.").Replace("  ", " ", StringComparison.Ordinal), "Correct the number.");
        }
    }

    private void Fault(string path, string what, string mend) => faults.Add(file, null, path, what, mend);
}
