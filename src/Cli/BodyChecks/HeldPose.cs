using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>A pose held still on its contacts, with everything that was calculated for it.</summary>
/// <param name="Model">The body.</param>
/// <param name="Placed">The settled body.</param>
/// <param name="State">Where its segments are.</param>
/// <param name="Moments">Moment of each joint coordinate that the muscles must give, N m, in the model's sign.</param>
/// <param name="Supports">Force on each contact that bears weight, newtons, in the room.</param>
/// <param name="Refusal">Why the pose cannot be held; null when it can.</param>
/// <param name="Problems">What makes the numbers doubtful, in sentences.</param>
/// <param name="JointForces">Force between the bones of each joint, newtons; null while it is not calculated.</param>
/// <param name="Efforts">Effort of each muscle group, 0 to 1; null while it is not calculated.</param>
internal sealed record HeldPose(
    BodyModel Model,
    PlacedBody Placed,
    BodyState State,
    double[] Moments,
    ImmutableArray<HeldContact> Supports,
    string? Refusal,
    ImmutableArray<string> Problems,
    IReadOnlyDictionary<(LoadedJoint Joint, Side Side), double>? JointForces = null,
    IReadOnlyDictionary<(MuscleFunction Function, Side Side), double>? Efforts = null);

/// <summary>A contact of a held pose and its force.</summary>
/// <param name="Contact">The contact.</param>
/// <param name="Force">The force of the surface on the body, newtons, in the room.</param>
internal sealed record HeldContact(PlacedContact Contact, Vec3 Force);

/// <summary>
/// The one way by which checks and the pose command hold a pose: whoever calculates forces in another way gives another function here.
/// </summary>
/// <param name="model">The body.</param>
/// <param name="points">Named surface points.</param>
/// <param name="input">The pose and its added loads.</param>
/// <param name="working">The working side.</param>
/// <param name="centerShiftM">How far the center of pressure is moved forward, metres; 0 for what balance asks.</param>
/// <returns>The held pose, or one with a refusal.</returns>
internal delegate HeldPose HoldPose(BodyModel model, SurfacePoints points, PoseInput input, Side working, double centerShiftM);
