namespace MomentArm.Body;

/// <summary>On what a capacity rests.</summary>
public enum CapacityBasis
{
    /// <summary>This action was tested on this side.</summary>
    Tested,

    /// <summary>Tested, but pain stopped it: the true capacity is at least this.</summary>
    TestedPainLimited,

    /// <summary>Not tested: published curve times the mean factor of what was tested on this person.</summary>
    ScaledFromTested,

    /// <summary>Not tested: published curve for sex and age only.</summary>
    PublishedOnly,
}

/// <summary>A torque that a person can hold, as an interval.</summary>
/// <param name="Low">Lower end, N m.</param>
/// <param name="Middle">Best estimate, N m.</param>
/// <param name="High">Upper end, N m.</param>
/// <param name="Basis">On what it rests.</param>
/// <param name="BeyondCurve">Whether the joint angle lies beyond the published curve, whose end value then counts.</param>
public readonly record struct Capacity(double Low, double Middle, double High, CapacityBasis Basis, bool BeyondCurve);

/// <summary>A strength test made into a torque of muscle: pad force times lever arm, with the limb's weight taken off or added.</summary>
/// <param name="Action">The action tested.</param>
/// <param name="Side">The side tested.</param>
/// <param name="MuscleTorque">What the muscles gave, N m, above 0.</param>
/// <param name="ClinicalAngle">Joint angle of the test pose in clinical sign, radians.</param>
/// <param name="PainLimited">Whether pain stopped the test.</param>
public sealed record StrengthTest(JointAction Action, Side Side, double MuscleTorque, double ClinicalAngle, bool PainLimited);
