namespace MomentArm.Body;

/// <summary>Ties a joint action to the model's coordinate and sign.</summary>
public static class JointActions
{
    /// <summary>The coordinate of an action and the sign in which the action raises it.</summary>
    /// <param name="action">The action.</param>
    /// <param name="side">The side; for a side bend or turn of trunk or neck, the side toward which it goes.</param>
    /// <returns>The motion, and +1 or -1.</returns>
    public static (Motion Motion, int Sign) Coordinate(this JointAction action, Side side) => action switch
    {
        JointAction.HipFlexion => (Motion.HipFlexion, 1),
        JointAction.HipExtension => (Motion.HipFlexion, -1),
        JointAction.HipAbduction => (Motion.HipAdduction, -1),
        JointAction.HipAdduction => (Motion.HipAdduction, 1),
        JointAction.HipInternalRotation => (Motion.HipRotation, 1),
        JointAction.HipExternalRotation => (Motion.HipRotation, -1),
        JointAction.KneeFlexion => (Motion.KneeExtension, -1),
        JointAction.KneeExtension => (Motion.KneeExtension, 1),
        JointAction.AnkleDorsiflexion => (Motion.AnkleDorsiflexion, 1),
        JointAction.AnklePlantarflexion => (Motion.AnkleDorsiflexion, -1),
        JointAction.TrunkFlexion => (Motion.TrunkExtension, -1),
        JointAction.TrunkExtension => (Motion.TrunkExtension, 1),
        JointAction.TrunkSideBend => (Motion.TrunkBending, side == Side.Right ? 1 : -1),
        JointAction.ShoulderFlexion => (Motion.ShoulderFlexion, 1),
        JointAction.ShoulderExtension => (Motion.ShoulderFlexion, -1),
        JointAction.ShoulderAbduction => (Motion.ShoulderAdduction, -1),
        JointAction.ShoulderAdduction => (Motion.ShoulderAdduction, 1),
        JointAction.ElbowFlexion => (Motion.ElbowFlexion, 1),
        JointAction.ElbowExtension => (Motion.ElbowFlexion, -1),
        JointAction.TrunkRotation => (Motion.TrunkRotation, side == Side.Left ? 1 : -1),
        JointAction.NeckFlexion => (Motion.NeckExtension, -1),
        JointAction.NeckExtension => (Motion.NeckExtension, 1),
        JointAction.NeckSideBend => (Motion.NeckBending, side == Side.Right ? 1 : -1),
        JointAction.NeckRotation => (Motion.NeckRotation, side == Side.Left ? 1 : -1),
        JointAction.ShoulderInternalRotation => (Motion.ShoulderRotation, 1),
        JointAction.ShoulderExternalRotation => (Motion.ShoulderRotation, -1),
        JointAction.ForearmPronation => (Motion.ForearmPronation, 1),
        JointAction.ForearmSupination => (Motion.ForearmPronation, -1),
        JointAction.WristFlexion => (Motion.WristFlexion, 1),
        JointAction.WristExtension => (Motion.WristFlexion, -1),
        JointAction.WristUlnarDeviation => (Motion.WristDeviation, 1),
        JointAction.WristRadialDeviation => (Motion.WristDeviation, -1),
        JointAction.AnkleInversion => (Motion.SubtalarInversion, 1),
        JointAction.AnkleEversion => (Motion.SubtalarInversion, -1),
    };

    /// <summary>Whether the action belongs to the midline.</summary>
    /// <param name="action">The action.</param>
    /// <returns>True for trunk and neck.</returns>
    public static bool IsMidline(this JointAction action) =>
        action is JointAction.TrunkSideBend or JointAction.TrunkRotation or JointAction.NeckSideBend or JointAction.NeckRotation
        || !action.HasSides();

    /// <summary>Whether left and right differ for the action: false for flexion and extension of trunk and neck.</summary>
    /// <param name="action">The action.</param>
    /// <returns>True when a side means something.</returns>
    public static bool HasSides(this JointAction action) =>
        action is not (JointAction.TrunkFlexion or JointAction.TrunkExtension or JointAction.NeckFlexion or JointAction.NeckExtension);

    /// <summary>The index of the action's coordinate in a body.</summary>
    /// <param name="action">The action.</param>
    /// <param name="model">The body.</param>
    /// <param name="side">The side.</param>
    /// <returns>Index into the model's coordinates, and the sign.</returns>
    public static (int Index, int Sign) On(this JointAction action, BodyModel model, Side side)
    {
        ArgumentNullException.ThrowIfNull(model);
        var (motion, sign) = action.Coordinate(side);
        return (model.IndexOf(motion, action.IsMidline() ? null : side), sign);
    }

    /// <summary>
    /// The angle in clinical sign that the strength curves use: hip flexion, knee flexion, ankle dorsiflexion positive.
    /// </summary>
    /// <param name="action">The action.</param>
    /// <param name="modelAngle">The coordinate in the model's sign, radians.</param>
    /// <returns>The angle in clinical sign, radians.</returns>
    public static double ClinicalAngle(this JointAction action, double modelAngle) =>
        action is JointAction.KneeExtension or JointAction.KneeFlexion ? -modelAngle : modelAngle;
}
