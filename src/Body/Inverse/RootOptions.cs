namespace MomentArm.Body;

/// <summary>How finely a root is searched.</summary>
public sealed record RootOptions
{
    /// <summary>The usual search.</summary>
    public static RootOptions Usual { get; } = new();

    /// <summary>Equal steps into which the range is cut first, 1 to 10000. What rises and falls again within one step may be missed.</summary>
    public int Steps { get; init; } = 24;

    /// <summary>How near two x must be to count as one, as a part of the range, 1e-12 to 0.1.</summary>
    public double ToleranceX { get; init; } = 1e-4;

    /// <summary>How near f must come to the target, in the unit of f, above 0.</summary>
    public double ToleranceF { get; init; } = 1e-4;

    /// <summary>Most calls of f; at least those of the first steps are made.</summary>
    public int MostCalls { get; init; } = 400;

    /// <summary>The value of x to stay near; null for the smallest x.</summary>
    public double? Near { get; init; }
}
