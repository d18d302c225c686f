namespace MomentArm.Body;

/// <summary>A side of the body, always the person's own left or right, never the viewer's.</summary>
public enum Side
{
    /// <summary>The person's left.</summary>
    Left,

    /// <summary>The person's right.</summary>
    Right,
}

/// <summary>Helpers for <see cref="Side"/>.</summary>
public static class Sides
{
    /// <summary>The opposite side.</summary>
    /// <param name="side">A side.</param>
    /// <returns>Left for right, right for left.</returns>
    public static Side Other(this Side side) => side == Side.Left ? Side.Right : Side.Left;
}
