namespace MomentArm.Body;

/// <summary>One person's body as the engine needs it: constant and shareable.</summary>
/// <param name="Model">Segments and joints, scaled to the person.</param>
/// <param name="Points">Named surface points.</param>
/// <param name="Muscles">Muscle paths on this body.</param>
/// <param name="Capacity">What the person's joints can hold.</param>
public sealed record PersonBody(BodyModel Model, SurfacePoints Points, MuscleSet Muscles, PatientCapacity Capacity);
