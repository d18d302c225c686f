using MomentArm.Body;

namespace MomentArm.Drawing;

/// <summary>What the muscles of a tinted area should do.</summary>
public enum TintKind
{
    /// <summary>They should work.</summary>
    Work,

    /// <summary>They should feel a stretch.</summary>
    Stretch,
}

/// <summary>An area of the body tinted in a picture.</summary>
/// <param name="Area">Where.</param>
/// <param name="Limb">The limb being treated or the other; null for both sides. Areas of the midline (belly, low back, front and back of the neck) have no side.</param>
/// <param name="Kind">Work or stretch.</param>
/// <param name="Label">What is written beside it in a still picture, in the reader's language; null for nothing.</param>
public sealed record Tint(BodyArea Area, Limb? Limb, TintKind Kind, string? Label = null)
{
    /// <summary>The area of the muscles that give an action.</summary>
    /// <param name="action">The action.</param>
    /// <param name="limb">Whose; null for both.</param>
    /// <param name="label">The label, or null.</param>
    /// <returns>The tint.</returns>
    public static Tint Work(JointAction action, Limb? limb, string? label = null) => new(BodyAreas.Of(action), limb, TintKind.Work, label);

    /// <summary>The area of a muscle group that is lengthened.</summary>
    /// <param name="group">The group.</param>
    /// <param name="limb">Whose; null for both.</param>
    /// <param name="label">The label, or null.</param>
    /// <returns>The tint.</returns>
    public static Tint Stretch(MuscleGroup group, Limb? limb, string? label = null) => new(BodyAreas.Of(group), limb, TintKind.Stretch, label);
}
