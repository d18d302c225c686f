namespace MomentArm.Body;

/// <summary>
/// What a contact point should meet: n . (p - p_reference) = offset. Level surfaces have no reference; the points of a board
/// are held to its first point, those of a wall to the wall's own unknown distance.
/// </summary>
/// <param name="Normal">Unit normal n, from the surface into the body.</param>
/// <param name="Offset">The wished value, metres.</param>
/// <param name="Reference">Index of the contact point it is measured from; -1 for the room's origin.</param>
/// <param name="Wall">Index of the wall whose distance is unknown; -1 for none.</param>
internal readonly record struct Plane(Vec3 Normal, double Offset, int Reference, int Wall);
