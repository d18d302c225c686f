namespace MomentArm.Body;

/// <summary>A direction told from the body as it lies at the start of a movement; it then stays fixed in the room.</summary>
public enum BodyDirection
{
    /// <summary>Straight up in the room.</summary>
    Up,

    /// <summary>Straight down in the room.</summary>
    Down,

    /// <summary>Where the front of the pelvis faces.</summary>
    Forward,

    /// <summary>Where the back of the pelvis faces.</summary>
    Backward,

    /// <summary>From pelvis to head.</summary>
    Headward,

    /// <summary>From pelvis to feet.</summary>
    Footward,

    /// <summary>Sideways, from the other side to the working one.</summary>
    TowardWorking,

    /// <summary>Sideways, from the working side to the other.</summary>
    TowardOther,
}

/// <summary>Helpers for <see cref="BodyDirection"/>.</summary>
public static class BodyDirections
{
    /// <summary>The direction in the room.</summary>
    /// <param name="direction">Which.</param>
    /// <param name="start">The body at the start of the movement.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>A unit vector.</returns>
    public static Vec3 In(this BodyDirection direction, BodyState start, Side working)
    {
        ArgumentNullException.ThrowIfNull(start);
        var pelvis = start.Rotations[0];
        var toWorking = working == Side.Right ? 1.0 : -1.0;
        return direction switch
        {
            BodyDirection.Up => Vec3.UnitY,
            BodyDirection.Down => -Vec3.UnitY,
            BodyDirection.Forward => pelvis * Vec3.UnitX,
            BodyDirection.Backward => pelvis * -Vec3.UnitX,
            BodyDirection.Headward => pelvis * Vec3.UnitY,
            BodyDirection.Footward => pelvis * -Vec3.UnitY,
            BodyDirection.TowardWorking => pelvis * (toWorking * Vec3.UnitZ),
            BodyDirection.TowardOther => pelvis * (-toWorking * Vec3.UnitZ),
        };
    }

    /// <summary>The direction along the floor.</summary>
    /// <param name="direction">Which.</param>
    /// <param name="start">The body at the start of the movement.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>A level unit vector; null when the direction is too steep (over 60 degrees) to point anywhere along the floor.</returns>
    public static Vec3? AlongFloor(this BodyDirection direction, BodyState start, Side working)
    {
        var whole = direction.In(start, working);
        var level = new Vec3(whole.X, 0, whole.Z);
        return level.Length < 0.5 ? null : level.Normalized();
    }

    /// <summary>The direction in words.</summary>
    /// <param name="direction">Which.</param>
    /// <returns>Such as "toward the head".</returns>
    public static string Words(this BodyDirection direction) => direction switch
    {
        BodyDirection.Up => "up",
        BodyDirection.Down => "down",
        BodyDirection.Forward => "forward",
        BodyDirection.Backward => "backward",
        BodyDirection.Headward => "toward the head",
        BodyDirection.Footward => "toward the feet",
        BodyDirection.TowardWorking => "toward the working side",
        BodyDirection.TowardOther => "toward the other side",
    };
}
