namespace MomentArm.Body;

/// <summary>How far a band is stretched, as a kind.</summary>
public enum BandStretch
{
    /// <summary>Not longer than at rest: it does not pull.</summary>
    Slack,

    /// <summary>Inside the usual range.</summary>
    Usual,

    /// <summary>Beyond 200 %: warned about.</summary>
    Long,

    /// <summary>Beyond 250 %, or beyond what was measured: refused, no force is given.</summary>
    TooLong,
}

/// <summary>What a band does at one length.</summary>
/// <param name="Elongation">Stretch beyond the rest length over the rest length; negative when slack.</param>
/// <param name="ForceN">Pull of all strands together, newtons; 0 when slack, NaN when refused.</param>
/// <param name="EnergyJ">Energy stored, joules; 0 when slack, NaN when refused.</param>
/// <param name="Stretch">Which kind of stretch this is.</param>
public readonly record struct BandTension(double Elongation, double ForceN, double EnergyJ, BandStretch Stretch)
{
    /// <summary>Whether the length is refused, so that there is no force to use.</summary>
    public bool Refused => Stretch == BandStretch.TooLong;
}
