namespace MomentArm.Body;

/// <summary>Turns angles as clinicians name them into the model's coordinates, for a chosen working side.</summary>
public static class ClinicalPose
{
    /// <summary>Writes a frame's joint angles and starting orientation into a pose; the pelvis stays at the room's origin.</summary>
    /// <param name="model">The body.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The pose before settling.</returns>
    public static BodyPose Of(BodyModel model, PosedFrame frame, Side working)
    {
        ArgumentNullException.ThrowIfNull(frame);
        var pose = new BodyPose(model);
        WriteLimb(model, pose, frame.Working, working);
        WriteLimb(model, pose, frame.Other, working.Other());
        WriteAxial(model, pose, frame.Axial, working);
        pose.PelvisRotation = Start(frame.Orientation, frame.PitchHint, working);
        return pose;
    }

    private static void WriteLimb(BodyModel model, BodyPose pose, LimbAngles limb, Side side)
    {
        void Set(Motion motion, double angle) => pose.Angles[model.IndexOf(motion, side)] = angle;
        Set(Motion.HipFlexion, limb.HipFlexion);
        Set(Motion.HipAdduction, -limb.HipAbduction);
        Set(Motion.HipRotation, limb.HipInternalRotation);
        Set(Motion.KneeExtension, -limb.KneeFlexion);
        Set(Motion.AnkleDorsiflexion, limb.AnkleDorsiflexion);
        Set(Motion.SubtalarInversion, -limb.SubtalarEversion);
        Set(Motion.ToeExtension, limb.ToeExtension);
        Set(Motion.ShoulderFlexion, limb.ShoulderFlexion);
        Set(Motion.ShoulderAdduction, -limb.ShoulderAbduction);
        Set(Motion.ShoulderRotation, limb.ShoulderInternalRotation);
        Set(Motion.ElbowFlexion, limb.ElbowFlexion);
        Set(Motion.ForearmPronation, limb.ForearmPronation);
        Set(Motion.WristFlexion, limb.WristFlexion);
    }

    private static void WriteAxial(BodyModel model, BodyPose pose, AxialAngles axial, Side working)
    {
        // The model bends to the right and turns to the left as positive.
        var right = working == Side.Right ? 1 : -1;
        void Set(Motion motion, double angle) => pose.Angles[model.IndexOf(motion, null)] = angle;
        Set(Motion.TrunkExtension, -axial.TrunkFlexion);
        Set(Motion.TrunkBending, right * axial.TrunkBendToWorking);
        Set(Motion.TrunkRotation, -right * axial.TrunkTurnToWorking);
        Set(Motion.NeckExtension, -axial.NeckFlexion);
        Set(Motion.NeckBending, right * axial.NeckBendToWorking);
        Set(Motion.NeckRotation, -right * axial.NeckTurnToWorking);
    }

    /// <summary>
    /// The pelvis in the room before settling. On back and side the head lies toward -x, on the front toward +x. Mirror images for the two working sides.
    /// </summary>
    internal static Mat3 Start(Orientation orientation, double pitch, Side working)
    {
        const double quarter = Math.PI / 2;
        var lean = Mat3.Rotation(Vec3.UnitZ, -pitch);
        var down = orientation == Orientation.SideLyingOnWorking ? working : working.Other();
        return orientation switch
        {
            Orientation.Upright => lean,
            Orientation.Supine => lean * Mat3.Rotation(Vec3.UnitZ, quarter),
            Orientation.Prone => lean * Mat3.Rotation(Vec3.UnitZ, -quarter),

            // Head toward -x, the lower side down: forward axis toward the viewer's side of the room.
            Orientation.SideLyingOnWorking or Orientation.SideLyingOnOther => down == Side.Right
                ? new Mat3(0, -1, 0, 0, 0, -1, 1, 0, 0)
                : new Mat3(0, -1, 0, 0, 0, 1, -1, 0, 0),
        };
    }
}
