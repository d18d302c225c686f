namespace MomentArm.Drawing;

/// <summary>Why a shape is in the picture.</summary>
public enum ShapeRole
{
    /// <summary>Ground, chair, step, wall, roller: what does not move.</summary>
    Backdrop,

    /// <summary>The start pose behind the end pose.</summary>
    Ghost,

    /// <summary>A part of the body.</summary>
    Body,

    /// <summary>A strap, band or weight that moves with the body.</summary>
    Held,

    /// <summary>The arrow of the motion.</summary>
    Arrow,

    /// <summary>A tinted area on the body.</summary>
    Tint,

    /// <summary>A name, or the line to what it names.</summary>
    Label,
}
