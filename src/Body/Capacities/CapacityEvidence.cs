namespace MomentArm.Body;

/// <summary>Where a piece of evidence of capacity comes from.</summary>
public enum CapacityEvidenceKind
{
    /// <summary>A strength test with a force reader.</summary>
    Force,

    /// <summary>Repetitions to a stated effort.</summary>
    Repetitions,

    /// <summary>Seconds held to a stated effort.</summary>
    Hold,
}

/// <summary>One piece of evidence of what a person's action can hold on one side.</summary>
/// <param name="Kind">Where it comes from.</param>
/// <param name="Factor">Capacity over the published figure for this person's sex, age, mass and stature; above 0.</param>
/// <param name="Spread">Standard deviation of the factor's logarithm: near enough its relative standard error.</param>
/// <param name="PainLimited">Whether pain ended it: then the factor is a lower bound.</param>
public readonly record struct CapacityEvidence(CapacityEvidenceKind Kind, double Factor, double Spread, bool PainLimited);
