namespace MomentArm.Body;

/// <summary>A point where a posed body touches a surface that may push and rub but never pull.</summary>
/// <param name="Segment">Index of the segment that touches.</param>
/// <param name="Point">Where, in the room, metres.</param>
/// <param name="Normal">Unit vector from the surface into the body: up for a floor.</param>
/// <param name="Friction">Largest tangential over normal force, 0 for a smooth surface.</param>
/// <param name="RestingN">
/// Normal force the contact would carry of the parts that rest on it, newtons; only chooses among splits of equal effort.
/// See <see cref="RestingWeight"/>.
/// </param>
public readonly record struct ContactPoint(int Segment, Vec3 Point, Vec3 Normal, double Friction, double RestingN);

/// <summary>A strap or grip that may pull two points of the body together, never push them apart. Its tension is found with the rest.</summary>
/// <param name="SegmentA">Segment of one end.</param>
/// <param name="PointA">That end in the room, metres.</param>
/// <param name="SegmentB">Segment of the other end.</param>
/// <param name="PointB">That end in the room, metres.</param>
public readonly record struct BodyTie(int SegmentA, Vec3 PointA, int SegmentB, Vec3 PointB);

/// <summary>A share of the body's weight that an author gives to some contacts (70 % on the front leg).</summary>
/// <param name="First">Index of the first contact point it counts.</param>
/// <param name="Count">How many contact points.</param>
/// <param name="Share">Sum of their normal forces over the whole weight, 0 to 1.</param>
public readonly record struct WeightSplit(int First, int Count, double Share);

/// <summary>How effort is shared out.</summary>
/// <param name="Cubes">
/// Least sum of cubes of the activations in place of squares (Crowninshield and Brand 1981, J Biomech 14:793): the sensitivity run.
/// </param>
/// <param name="EndStops">Whether a joint at the very end of its usual range may rest on its ligaments.</param>
public readonly record struct EffortRule(bool Cubes = false, bool EndStops = true)
{
    /// <summary>Squares, with joints resting on their ends.</summary>
    public static EffortRule Usual => new(false, true);
}
