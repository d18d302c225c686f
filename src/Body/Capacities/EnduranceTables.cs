using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Published relations of repetitions and holding time to the share of maximal strength, with their spread.</summary>
/// <param name="Repetitions">One curve for each kind of task.</param>
/// <param name="PersonSpreadAt80">Standard deviation between people of the repetitions possible at 80 % of the one-repetition maximum.</param>
/// <param name="PersonSpreadAt60">The same at 60 %; straight line between and beyond.</param>
/// <param name="TaskSpread">Standard deviation of the logarithm of the share: other exercise, endurance trained or not.</param>
/// <param name="LiftedSpread">The same for taking a lifted maximum for a held one at the same angle.</param>
/// <param name="MostRepetitions">Repetitions above this count as this many.</param>
/// <param name="Holding">Holding time by region.</param>
/// <param name="HoldingStudySpread">Standard deviation of the logarithm of holding time between studies.</param>
/// <param name="HoldingPersonSpread">The same between people.</param>
/// <param name="NearestRegionSpread">Standard deviation of the logarithm of the share where another region's curve had to be taken.</param>
/// <param name="LeastHoldingShare">Shares below this are not read from a holding time, 0 to 1.</param>
/// <param name="DemandSpread">Standard deviation of the logarithm of the computed demand.</param>
public sealed record EnduranceTables(
    ImmutableArray<RepetitionCurve> Repetitions,
    double PersonSpreadAt80,
    double PersonSpreadAt60,
    double TaskSpread,
    double LiftedSpread,
    double MostRepetitions,
    ImmutableArray<HoldingCurve> Holding,
    double HoldingStudySpread,
    double HoldingPersonSpread,
    double NearestRegionSpread,
    double LeastHoldingShare,
    double DemandSpread);

/// <summary>Repetitions to failure against share of the one-repetition maximum.</summary>
/// <param name="Task">Kind of task.</param>
/// <param name="Points">Rising repetitions (first is 1) with falling shares (first is 1), 0 to 1.</param>
public sealed record RepetitionCurve(RepetitionTask Task, ImmutableArray<(double Repetitions, double Share)> Points);

/// <summary>A region with a holding-time curve of its own.</summary>
public enum HoldingRegion
{
    /// <summary>All regions pooled.</summary>
    Pooled,

    /// <summary>Ankle.</summary>
    Ankle,

    /// <summary>Trunk.</summary>
    Trunk,

    /// <summary>Hand and grip.</summary>
    Grip,

    /// <summary>Elbow.</summary>
    Elbow,

    /// <summary>Knee.</summary>
    Knee,

    /// <summary>Shoulder.</summary>
    Shoulder,
}

/// <summary>
/// Holding time to failure in seconds = B x share^M, share of the isometric maximum from 0 to 1.
/// Source: Frey Law and Avin 2010, Ergonomics 53:109, doi:10.1080/00140130903389068, Table 2.
/// </summary>
/// <param name="Region">Region of the body.</param>
/// <param name="B">Seconds at the maximum, above 0.</param>
/// <param name="M">Exponent, below 0.</param>
public sealed record HoldingCurve(HoldingRegion Region, double B, double M);
