using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>Which part of the body an exercise is for. Our choice: the region it is kept under; the first load decides where the region leaves it open.</summary>
internal static class FocusOf
{
    /// <summary>The part, or null where neither region nor loads tell.</summary>
    /// <param name="region">The region.</param>
    /// <param name="loads">The joint actions it is meant to load, most important first.</param>
    internal static MovementFocus? Exercise(BodyRegion region, ImmutableArray<JointAction> loads) => region switch
    {
        BodyRegion.Hip or BodyRegion.Knee or BodyRegion.AnkleFoot => MovementFocus.Leg,
        BodyRegion.Trunk => MovementFocus.Trunk,
        BodyRegion.Neck => MovementFocus.Neck,
        BodyRegion.Shoulder => MovementFocus.Shoulder,
        BodyRegion.ElbowWrist => loads.IsEmpty ? MovementFocus.Forearm : Of(loads[0]),
        BodyRegion.WholeBody => loads.IsEmpty ? null : Of(loads[0]),
    };

    private static MovementFocus Of(JointAction action) => action switch
    {
        JointAction.TrunkFlexion or JointAction.TrunkExtension or JointAction.TrunkSideBend or JointAction.TrunkRotation => MovementFocus.Trunk,
        JointAction.NeckFlexion or JointAction.NeckExtension or JointAction.NeckSideBend or JointAction.NeckRotation => MovementFocus.Neck,
        JointAction.ShoulderFlexion or JointAction.ShoulderExtension or JointAction.ShoulderAbduction or JointAction.ShoulderAdduction
            or JointAction.ShoulderInternalRotation or JointAction.ShoulderExternalRotation => MovementFocus.Shoulder,
        JointAction.ElbowFlexion or JointAction.ElbowExtension => MovementFocus.Arm,
        JointAction.ForearmPronation or JointAction.ForearmSupination or JointAction.WristFlexion or JointAction.WristExtension
            or JointAction.WristUlnarDeviation or JointAction.WristRadialDeviation => MovementFocus.Forearm,
        _ => MovementFocus.Leg,
    };
}
