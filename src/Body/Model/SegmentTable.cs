using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Masses, lengths and mass centres of body parts as fractions, for one sex.
/// Source: de Leva 1996, J Biomech 29:1223-1230, doi:10.1016/0021-9290(95)00178-6, Table 4.
/// </summary>
/// <param name="Sex">Sex of the row set.</param>
/// <param name="ReferenceStatureM">Stature of the sample, metres; the default when stature is missing.</param>
/// <param name="ReferenceMassKg">Mass of the sample, kilograms; the default when mass is missing.</param>
/// <param name="Parts">The parts.</param>
public sealed record SegmentTable(
    Sex Sex, double ReferenceStatureM, double ReferenceMassKg, ImmutableDictionary<BodyPart, BodyPartRow> Parts);

/// <summary>Parts of the mass table.</summary>
public enum BodyPart
{
    /// <summary>Head, vertex to cervicale.</summary>
    Head,

    /// <summary>Upper trunk, suprasternale to xiphion.</summary>
    UpperTrunk,

    /// <summary>Middle trunk, xiphion to omphalion.</summary>
    MiddleTrunk,

    /// <summary>Lower trunk (pelvis), omphalion to mid-hip.</summary>
    LowerTrunk,

    /// <summary>Mid-shoulder to mid-hip: a length only.</summary>
    ShoulderToHip,

    /// <summary>Upper arm, shoulder centre to elbow centre.</summary>
    UpperArm,

    /// <summary>Forearm, elbow centre to wrist centre.</summary>
    Forearm,

    /// <summary>Hand, wrist centre to third metacarpale.</summary>
    Hand,

    /// <summary>Thigh, hip centre to knee centre.</summary>
    Thigh,

    /// <summary>Shank, knee centre to ankle centre.</summary>
    Shank,

    /// <summary>Foot, heel to longest toe tip.</summary>
    Foot,
}

/// <summary>One row of the mass table.</summary>
/// <param name="MassFraction">Mass as a fraction of body mass; 0 for a length only.</param>
/// <param name="LengthFraction">Length as a fraction of stature.</param>
/// <param name="CenterFraction">Mass centre as a fraction of the length from the first-named end.</param>
public sealed record BodyPartRow(double MassFraction, double LengthFraction, double CenterFraction);
