namespace MomentArm.Body;

/// <summary>Something that pulls on the body during a movement: a band, a pulley, a helping hand.</summary>
/// <param name="At">Where it is tied or holds.</param>
public abstract record Pull(BodyPlace At)
{
    /// <summary>What it is, in words, for messages.</summary>
    public abstract string Name { get; }
}

/// <summary>A pull by an elastic band.</summary>
/// <param name="At">Where it is tied.</param>
/// <param name="Band">Which band.</param>
public abstract record BandPull(BodyPlace At, BandDose Band) : Pull(At);

/// <summary>
/// A loop round both limbs at the same place of each: way round = 2 distance + 2 pi radius, and it draws the two places together
/// with twice its tension (friction on the skin neglected).
/// </summary>
/// <param name="At">Where it lies, on the working limb; on the other limb it lies at the same place. The middle of the limb, not its skin.</param>
/// <param name="LimbRadiusM">Radius of the limb there, metres, 0 to 0.2.</param>
/// <param name="Band">The band; its rest length is the whole way round.</param>
public sealed record LoopPull(BodyPlace At, double LimbRadiusM, BandDose Band) : BandPull(At, Band)
{
    /// <inheritdoc/>
    public override string Name => $"loop band at {At.At}";
}

/// <summary>A band from one place of the body to another.</summary>
/// <param name="At">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Band">The band.</param>
public sealed record LinkPull(BodyPlace At, BodyPlace To, BandDose Band) : BandPull(At, Band)
{
    /// <inheritdoc/>
    public override string Name => $"band from {At.At} to {To.At}";
}

/// <summary>A band from a place of the body to a point fixed in the room, such as a door anchor.</summary>
/// <param name="At">The end on the body.</param>
/// <param name="Anchor">The fixed point.</param>
/// <param name="Band">The band.</param>
public sealed record AnchorPull(BodyPlace At, RoomAnchor Anchor, BandDose Band) : BandPull(At, Band)
{
    /// <inheritdoc/>
    public override string Name => $"band from {At.At} to its anchor";
}

/// <summary>
/// A force of a given size: a helper or the other hand that supports, or a rope over a pulley with a weight. It points in a direction
/// that stays the same in the room, or, for a rope, always to a fixed point.
/// </summary>
/// <param name="At">Where it acts.</param>
/// <param name="ForceN">Its size, newtons, -2000 to 2000; positive along the direction or toward the fixed point, negative against it.</param>
/// <param name="Direction">Which way; not used when there is a fixed point.</param>
/// <param name="Anchor">The fixed point of a rope; null for a direction.</param>
/// <param name="By">The place of the person's own body that gives the force, such as the other palm, and bears its opposite; null for a force from outside.</param>
public sealed record HelpPull(BodyPlace At, double ForceN, BodyDirection Direction, RoomAnchor? Anchor = null, BodyPlace? By = null) : Pull(At)
{
    /// <inheritdoc/>
    public override string Name => Anchor is null ? $"help at {At.At}" : $"rope at {At.At}";
}

/// <summary>
/// A point fixed in the room, told from the body as it is at the start: so far along the floor from the tied place in that
/// direction, and so high over the floor. It stays there while the body moves.
/// </summary>
/// <param name="Direction">Which way along the floor; up and down are no way along the floor, except with no distance.</param>
/// <param name="DistanceM">How far along the floor from the tied place at the start, metres, 0 to 5.</param>
/// <param name="HeightM">Height over the floor, metres, 0 to 3.</param>
public sealed record RoomAnchor(BodyDirection Direction, double DistanceM, double HeightM);
