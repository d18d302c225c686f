namespace MomentArm.Body;

/// <summary>How two points of the body are tied.</summary>
public enum TieKind
{
    /// <summary>A strap that does not stretch, pulled straight between the two points.</summary>
    Strap,

    /// <summary>A hand (or another part) holds a point of the body: the two points meet.</summary>
    Hold,
}

/// <summary>A strap between two points of the body, or a hand that holds one: closes a chain.</summary>
/// <param name="Kind">Strap or hold.</param>
/// <param name="From">Name of the first point, usually palm; a group counts as its middle and must lie on one segment.</param>
/// <param name="FromLimb">The limb of the first point; null in the midline.</param>
/// <param name="To">Name of the second point: forefootSole, thighBack, shinFront, palm of the other hand and the like.</param>
/// <param name="ToLimb">The limb of the second point; null in the midline.</param>
/// <param name="LengthM">Straight length of a strap in metres, 0.02 to 3; null when the strap is let out to what the pose needs. None for a hold.</param>
public sealed record Tie(TieKind Kind, string From, Limb? FromLimb, string To, Limb? ToLimb, double? LengthM = null);
