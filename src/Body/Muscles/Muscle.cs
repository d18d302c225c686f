namespace MomentArm.Body;

/// <summary>One line of action of a person's body: a muscle, a part of one, or a part of the iliotibial band, on one side.</summary>
/// <param name="Id">Short name in kebab case; the same on both sides.</param>
/// <param name="Name">Name for the screen, without the side.</param>
/// <param name="Side">Side of the body.</param>
/// <param name="Function">What it mainly does.</param>
/// <param name="LengthGroup">The group a length test measures; null for none.</param>
/// <param name="IsBand">Whether it is a part of the iliotibial band rather than a published line.</param>
/// <param name="PublishedForceN">Largest isometric force as published, newtons; for the band the share it takes.</param>
/// <param name="ForceN">Largest force to share out along this line: the published one less what the band takes over. May be 0.</param>
/// <param name="OptimalFiberM">Optimal fiber length, scaled to the person, metres.</param>
/// <param name="TendonSlackM">Tendon slack length, scaled to the person, metres.</param>
/// <param name="PennationRad">Pennation at optimal length, radians.</param>
/// <param name="NeutralLengthM">Path length with all angles zero, metres.</param>
/// <param name="FirstArm">Index of its first arm in <see cref="MuscleSet.ArmCoordinates"/> and <see cref="MuscleState.Arms"/>.</param>
/// <param name="ArmCount">How many coordinates it acts on.</param>
/// <param name="Caution">Where the line is known to mislead; null when nothing was found.</param>
public sealed record Muscle(
    string Id,
    string Name,
    Side Side,
    MuscleFunction Function,
    MuscleGroup? LengthGroup,
    bool IsBand,
    double PublishedForceN,
    double ForceN,
    double OptimalFiberM,
    double TendonSlackM,
    double PennationRad,
    double NeutralLengthM,
    int FirstArm,
    int ArmCount,
    string? Caution);
