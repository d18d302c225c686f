namespace MomentArm.Body;

/// <summary>A strength test made into a torque of muscle: pad force times lever arm, with the limb's weight taken off or added.</summary>
/// <param name="Action">The action tested.</param>
/// <param name="Side">The side tested; of no meaning for flexion and extension of trunk and neck.</param>
/// <param name="MuscleTorque">What the muscles gave, N m, above 0 up to 2000.</param>
/// <param name="ClinicalAngle">Joint angle of the test pose in clinical sign, radians.</param>
/// <param name="PainLimited">Whether pain stopped the test.</param>
/// <param name="Reader">What read the force.</param>
public sealed record StrengthTest(
    JointAction Action, Side Side, double MuscleTorque, double ClinicalAngle, bool PainLimited, ForceReader Reader = ForceReader.HandHeld);
