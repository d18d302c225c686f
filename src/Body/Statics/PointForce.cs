namespace MomentArm.Body;

/// <summary>A force on a point of a segment.</summary>
/// <param name="Segment">Index of the segment.</param>
/// <param name="Point">Where it acts, in the room, metres.</param>
/// <param name="Force">The force in the room, newtons; weight points down (negative y).</param>
public readonly record struct PointForce(int Segment, Vec3 Point, Vec3 Force);
