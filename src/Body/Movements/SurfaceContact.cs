namespace MomentArm.Body;

/// <summary>A surface that the body may touch.</summary>
public enum SurfaceKind
{
    /// <summary>The floor, or a mat on it: height 0.</summary>
    Floor,

    /// <summary>The seat of a chair at a height.</summary>
    Seat,

    /// <summary>The top of a step at a height.</summary>
    Step,

    /// <summary>A vertical wall; its place follows from the body, and all contacts with one wall lie in one plane.</summary>
    Wall,

    /// <summary>The top of a roller or ball lying on the floor.</summary>
    Roller,

    /// <summary>The top of a bench, couch or table at a height.</summary>
    Bench,

    /// <summary>Something soft under a part at rest, at a height: a pillow, a folded towel, the person's own arm on the floor.</summary>
    Pillow,

    /// <summary>A tilted board: its height is that under the first contact point on it.</summary>
    Board,
}

/// <summary>Where a wall stands, seen from the person in the position they are in.</summary>
public enum WallPlace
{
    /// <summary>Behind the person: standing or sitting, or lying on the side.</summary>
    Behind,

    /// <summary>In front of the person: standing or sitting, or lying on the side.</summary>
    InFront,

    /// <summary>Beside the working limb: upright, or lying on back or front.</summary>
    BesideWorking,

    /// <summary>Beside the other limb: upright, or lying on back or front.</summary>
    BesideOther,

    /// <summary>Beyond the head of someone lying.</summary>
    AtHead,

    /// <summary>At the feet of someone lying.</summary>
    AtFeet,
}

/// <summary>A named point of the body that touches a surface.</summary>
/// <param name="Point">Name of the point in content/body/surface-points.json, such as heel or kneeFront.</param>
/// <param name="Limb">The limb it belongs to; null for points of the midline.</param>
/// <param name="Surface">What it touches.</param>
/// <param name="HeightM">Height of the surface over the floor in metres, 0 to 1.5; of a board under its first contact point; ignored for walls.</param>
/// <param name="BearsWeight">Whether it may carry weight; false for a light touch for balance.</param>
public sealed record SurfaceContact(string Point, Limb? Limb, SurfaceKind Surface, double HeightM, bool BearsWeight)
{
    /// <summary>
    /// Tilt of a board in radians, up to 45 degrees either way, toes down positive: the board falls toward where an upright
    /// person faces (room +x). A decline board under a squat is positive, a slope for calf stretching negative. 0 for all else.
    /// </summary>
    public double Tilt { get; init; }

    /// <summary>
    /// Part of the whole weight that rests on this contact, 0 to 1; null to leave it to the balance. Counts only where statics leaves the
    /// split open: against gravity nothing can be wished.
    /// </summary>
    public double? ShareOfWeight { get; init; }

    /// <summary>Where the wall stands; null to derive it from the side of the body that touches. For walls only.</summary>
    public WallPlace? Wall { get; init; }
}
