using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>A pose held still, with everything that was calculated for it.</summary>
/// <param name="Model">The body.</param>
/// <param name="Placed">The settled body.</param>
/// <param name="State">Where its segments are.</param>
/// <param name="Moments">Net moment of each joint coordinate, N m, in the model's sign: what holds it against weight, loads and contacts.</param>
/// <param name="Supports">Force on each contact that bears weight, newtons, in the room.</param>
/// <param name="Refusal">Why the pose cannot be held; null when it can.</param>
/// <param name="Problems">What makes the numbers doubtful, in sentences.</param>
/// <param name="JointForces">Force between the bones of each joint, body weights; null when it is not calculated.</param>
/// <param name="Efforts">Effort of each muscle group, 0 to 1; null when it is not calculated.</param>
/// <param name="Lines">Activation, 0 to 1, and strength, newtons, of each muscle line; null when they are not calculated.</param>
internal sealed record HeldBody(
    BodyModel Model,
    PlacedBody Placed,
    BodyState State,
    double[] Moments,
    ImmutableArray<SupportLoad> Supports,
    string? Refusal,
    ImmutableArray<string> Problems,
    IReadOnlyDictionary<(LoadedJoint Joint, Side Side), double>? JointForces = null,
    IReadOnlyDictionary<(MuscleFunction Function, Side Side), double>? Efforts = null,
    IReadOnlyDictionary<(string Muscle, Side Side), (double Activation, double StrengthN)>? Lines = null);

/// <summary>
/// The one way by which checks and the pose command hold a pose: whoever calculates forces in another way gives another function here.
/// </summary>
/// <param name="person">The person.</param>
/// <param name="input">The pose and its added loads. A pose without contacts is free: the room carries the pelvis.</param>
/// <param name="working">The working side.</param>
/// <param name="centerShiftM">How far the center of pressure is moved forward, metres; 0 for what balance asks.</param>
/// <returns>The held pose, or one with a refusal.</returns>
internal delegate HeldBody HoldPose(PersonBody person, PoseInput input, Side working, double centerShiftM);
