namespace MomentArm.Drawing;

/// <summary>What a shape is made of; a palette gives each tone a color.</summary>
public enum Tone
{
    /// <summary>The page itself: gaps between overlapping parts.</summary>
    Paper,

    /// <summary>Bare floor.</summary>
    Floor,

    /// <summary>A mat on the floor, pillows.</summary>
    Mat,

    /// <summary>Edge of the mat.</summary>
    MatEdge,

    /// <summary>Upper faces of chair and step.</summary>
    PropTop,

    /// <summary>Faces of chair, step and wall toward the viewer.</summary>
    Prop,

    /// <summary>Faces of props in the shade.</summary>
    PropShade,

    /// <summary>Straps and bands.</summary>
    Band,

    /// <summary>Weights.</summary>
    Weight,

    /// <summary>The limb being treated.</summary>
    Working,

    /// <summary>The limb being treated where it is the farther one.</summary>
    FarWorking,

    /// <summary>The other limb.</summary>
    Other,

    /// <summary>The other limb where it is the farther one.</summary>
    FarOther,

    /// <summary>Shorts.</summary>
    Shorts,

    /// <summary>The farther leg of the shorts.</summary>
    FarShorts,

    /// <summary>Shirt.</summary>
    Shirt,

    /// <summary>The farther sleeve.</summary>
    FarShirt,

    /// <summary>Skin.</summary>
    Skin,

    /// <summary>Skin of the farther arm, and under the chin.</summary>
    FarSkin,

    /// <summary>Hair.</summary>
    Hair,

    /// <summary>Eye and ear lines.</summary>
    Feature,

    /// <summary>Shoes.</summary>
    Shoe,

    /// <summary>Soles of the shoes.</summary>
    Sole,

    /// <summary>The start pose behind the end pose.</summary>
    Ghost,

    /// <summary>The treated limb in the start pose behind the end pose.</summary>
    GhostWorking,

    /// <summary>The arrow of the motion.</summary>
    Arrow,

    /// <summary>An area whose muscles should work.</summary>
    TintWork,

    /// <summary>An area that should feel a stretch.</summary>
    TintStretch,

    /// <summary>Stripes of tinted areas where colors can't tell them apart.</summary>
    TintMark,

    /// <summary>Names and the lines to what they name.</summary>
    Label,
}
