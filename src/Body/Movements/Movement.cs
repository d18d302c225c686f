using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>How the body lies in the room before its contacts settle it.</summary>
public enum Orientation
{
    /// <summary>Pelvis upright: standing, sitting, kneeling.</summary>
    Upright,

    /// <summary>On the back.</summary>
    Supine,

    /// <summary>On the front, or on hands and knees.</summary>
    Prone,

    /// <summary>On the working side.</summary>
    SideLyingOnWorking,

    /// <summary>On the other side.</summary>
    SideLyingOnOther,
}

/// <summary>One held pose of a movement, for a working and an other limb.</summary>
public sealed record PosedFrame
{
    /// <summary>Which pose: start, end, or a name for one between.</summary>
    public required string Name { get; init; }

    /// <summary>How the body lies before settling.</summary>
    public required Orientation Orientation { get; init; }

    /// <summary>Extra forward pitch of the pelvis before settling, radians, positive = leaning forward; a hint only.</summary>
    public double PitchHint { get; init; }

    /// <summary>Angles of the limb being treated.</summary>
    public required LimbAngles Working { get; init; }

    /// <summary>Angles of the limb on the other side.</summary>
    public required LimbAngles Other { get; init; }

    /// <summary>Angles of trunk and neck.</summary>
    public required AxialAngles Axial { get; init; }

    /// <summary>What touches what.</summary>
    public required ImmutableArray<SurfaceContact> Contacts { get; init; }

    /// <summary>Straps and closed chains: what holds what.</summary>
    public ImmutableArray<Tie> Ties { get; init; } = [];
}

/// <summary>Something the patient uses or leans on.</summary>
public enum PropKind
{
    /// <summary>A mat on the floor.</summary>
    Mat,

    /// <summary>A chair.</summary>
    Chair,

    /// <summary>A step.</summary>
    Step,

    /// <summary>A wall.</summary>
    Wall,

    /// <summary>A roller (foam or a rolled towel).</summary>
    Roller,

    /// <summary>A strap that does not stretch, from hand to foot.</summary>
    Strap,

    /// <summary>A loop band round both legs.</summary>
    LoopBand,

    /// <summary>A cuff weight.</summary>
    CuffWeight,

    /// <summary>A small weight in the hand.</summary>
    HandWeight,

    /// <summary>A pillow or folded towel.</summary>
    Pillow,

    /// <summary>A bench, couch or bed at a height.</summary>
    Bench,

    /// <summary>A table or worktop.</summary>
    Table,

    /// <summary>A tilted board.</summary>
    Board,

    /// <summary>A ball as big as a head.</summary>
    Ball,

    /// <summary>A ball as big as a fist.</summary>
    SmallBall,

    /// <summary>A long band or tubing; where it runs follows from the pulls.</summary>
    Band,

    /// <summary>A towel held, wrung or pulled.</summary>
    Towel,

    /// <summary>A stick in the hands.</summary>
    Stick,

    /// <summary>A stationary bicycle.</summary>
    Bicycle,
}

/// <summary>A prop and where it is.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="At">Name of the body point it is at or under; null for props that follow from contacts (mat, wall).</param>
/// <param name="Limb">The limb of that point; null for midline or both.</param>
/// <param name="HeightM">Height in metres (chair seat, step top, roller diameter); 0 where it has none.</param>
public sealed record Prop(PropKind Kind, string? At, Limb? Limb, double HeightM);

/// <summary>A load that the exercise adds to the body's own weight.</summary>
/// <param name="Kind">A weight; bands and help are <see cref="Pull"/>s.</param>
/// <param name="At">Name of the body point that carries it.</param>
/// <param name="Limb">The limb of that point.</param>
/// <param name="MassKg">Mass in kilograms; 0 when the dose sets it.</param>
public sealed record AddedLoad(LoadKind Kind, string At, Limb Limb, double MassKg)
{
    /// <summary>A second point of the same segment, when the load sits between the two; null when it sits at the first.</summary>
    public string? Toward { get; init; }

    /// <summary>How far the load sits from the first point toward the second, 0 to 1.</summary>
    public double Fraction { get; init; }

    /// <summary>Where it sits.</summary>
    public BodyPlace Place => new(At, Limb, Toward, Fraction);
}

/// <summary>Kinds of added load.</summary>
public enum LoadKind
{
    /// <summary>A weight: cuff, hand weight, bag of water.</summary>
    Weight,
}

/// <summary>Direction from which a movement is best seen.</summary>
public enum ViewKind
{
    /// <summary>From the side, looking at the working limb; lying poses seen from beside the mat.</summary>
    Side,

    /// <summary>From in front.</summary>
    Front,

    /// <summary>From behind.</summary>
    Back,

    /// <summary>Between front and side, a little from above.</summary>
    Oblique,
}

/// <summary>
/// An exercise as body poses: the same poses are drawn, loaded and lengthened. Side-neutral; the working side is chosen at use.
/// </summary>
public sealed record Movement
{
    /// <summary>Poses in order, start first, end last; at least one (a single pose is a hold).</summary>
    public required ImmutableArray<PosedFrame> Frames { get; init; }

    /// <summary>Props in the picture.</summary>
    public required ImmutableArray<Prop> Props { get; init; }

    /// <summary>Loads added to the body's own weight.</summary>
    public required ImmutableArray<AddedLoad> Loads { get; init; }

    /// <summary>Bands, pulleys and helping hands that pull on the body.</summary>
    public ImmutableArray<Pull> Pulls { get; init; } = [];

    /// <summary>Best direction of view.</summary>
    public required ViewKind View { get; init; }

    /// <summary>Name of the point of the working limb that pictures are drawn close round, for small movements of hand or foot; null for the whole body.</summary>
    public string? CloseUp { get; init; }

    /// <summary>Whether the working and the other limb trade places in the movement (both sides work at once).</summary>
    public bool Bilateral { get; init; }

    /// <summary>The part of the body it is for; null leaves it to the motion.</summary>
    public MovementFocus? Focus { get; init; }

    /// <summary>Joint actions of the working limb it is meant to load, most important first; for pictures of efforts without motion.</summary>
    public ImmutableArray<JointAction> Aims { get; init; } = [];
}
