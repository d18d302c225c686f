namespace MomentArm.Body;

/// <summary>
/// A limb of an exercise before the side is chosen: exercises are stored once, for a working and an other limb.
/// </summary>
public enum Limb
{
    /// <summary>The limb being treated.</summary>
    Working,

    /// <summary>The limb on the other side.</summary>
    Other,
}

/// <summary>Helpers for <see cref="Limb"/>.</summary>
public static class Limbs
{
    /// <summary>The side a limb has once the working side is known.</summary>
    /// <param name="limb">Working or other.</param>
    /// <param name="working">The side being treated.</param>
    /// <returns>The person's side of that limb.</returns>
    public static Side On(this Limb limb, Side working) => limb == Limb.Working ? working : working.Other();
}
