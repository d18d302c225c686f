using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>Kinds of pull in a file.</summary>
public enum PullKind
{
    /// <summary>A loop band round both limbs at the same place.</summary>
    Loop,

    /// <summary>A band between two places of the body.</summary>
    Link,

    /// <summary>A band from the body to a fixed point in the room.</summary>
    Anchored,

    /// <summary>A force of a given size: a helper, the other hand, or a rope over a pulley.</summary>
    Help,
}

/// <summary>A pull in a file.</summary>
public sealed record PullFile
{
    /// <summary>What pulls.</summary>
    public required PullKind Kind { get; init; }

    /// <summary>Name of the body point where it is tied.</summary>
    public required string At { get; init; }

    /// <summary>The limb of that point; left out for loops and for points of the midline.</summary>
    public Limb? Limb { get; init; }

    /// <summary>A second point of the same segment, when it is tied between the two.</summary>
    public string? Toward { get; init; }

    /// <summary>How far from the first point toward the second, 0 to 1.</summary>
    public double Fraction { get; init; }

    /// <summary>Other end of a link; for help, the place of the person's own hand that gives the force.</summary>
    public PlaceFile? To { get; init; }

    /// <summary>Fixed point of an anchored band or of a rope.</summary>
    public AnchorFile? Anchor { get; init; }

    /// <summary>The band of a loop, a link or an anchored band.</summary>
    public ElasticFile? Band { get; init; }

    /// <summary>Radius of the limb under a loop, metres, 0 to 0.2.</summary>
    public double? LimbRadiusM { get; init; }

    /// <summary>Which way help points, told from the body at the start.</summary>
    public BodyDirection? Direction { get; init; }

    /// <summary>Size of help, newtons, -2000 to 2000.</summary>
    public double? ForceN { get; init; }

    /// <summary>Key into sources.json for the size of help, or "common-practice".</summary>
    public string? Source { get; init; }
}

/// <summary>A place on the body in a file.</summary>
public sealed record PlaceFile(string At, Limb? Limb = null, string? Toward = null, double Fraction = 0);

/// <summary>A point fixed in the room in a file, told from the tied place at the start.</summary>
public sealed record AnchorFile
{
    /// <summary>Which way along the floor.</summary>
    public required BodyDirection Direction { get; init; }

    /// <summary>How far along the floor, metres, 0 to 5.</summary>
    public required double DistanceM { get; init; }

    /// <summary>Height over the floor, metres, 0 to 3.</summary>
    public required double HeightM { get; init; }
}

/// <summary>A band in a file. Give either its rest length or its stretch at the start.</summary>
public sealed record ElasticFile
{
    /// <summary>Pull of one strand at 100 % elongation (twice its rest length), newtons, 0.1 to 2000.</summary>
    public required double F100N { get; init; }

    /// <summary>Pull of one strand at 200 % elongation, newtons, when known.</summary>
    public double? F200N { get; init; }

    /// <summary>Rest length, metres, 0.02 to 10; of a loop its whole way round.</summary>
    public double? RestLengthM { get; init; }

    /// <summary>Stretch at the start in percent of the rest length, 0 to 250.</summary>
    public double? PreStretchPercent { get; init; }

    /// <summary>Strands side by side, 1 to 8.</summary>
    public int Strands { get; init; } = 1;

    /// <summary>Key into sources.json for F100, or "common-practice".</summary>
    public required string Source { get; init; }
}
