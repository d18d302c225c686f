namespace MomentArm.Exam;

/// <summary>Conversions between what a dynamometer shows and what a muscle group can do.</summary>
public static class StrengthMath
{
    /// <summary>Standard gravity, m/s2, exact by definition.</summary>
    public const double Gravity = 9.80665;

    /// <summary>Kilograms in an international pound, exact by definition.</summary>
    public const double KilogramsPerPound = 0.45359237;

    /// <summary>Metres in an inch, exact by definition.</summary>
    public const double MetresPerInch = 0.0254;

    /// <summary>Newtons from kilogram-force.</summary>
    /// <param name="kilogramForce">Reading in kilograms of force.</param>
    /// <returns>Newtons.</returns>
    public static double FromKilogramForce(double kilogramForce) => kilogramForce * Gravity;

    /// <summary>Newtons from pound-force.</summary>
    /// <param name="poundForce">Reading in pounds of force.</param>
    /// <returns>Newtons.</returns>
    public static double FromPoundForce(double poundForce) => poundForce * KilogramsPerPound * Gravity;

    /// <summary>Torque about the joint from the force on a pad at right angles to the limb.</summary>
    /// <param name="forceN">Force, newtons.</param>
    /// <param name="leverArmM">Distance from joint centre to pad, metres.</param>
    /// <returns>Newton metres.</returns>
    public static double Torque(double forceN, double leverArmM) => forceN * leverArmM;

    /// <summary>Torque as a percentage of body weight times height.</summary>
    /// <param name="torqueNm">Torque, N m.</param>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="statureM">Stature, m.</param>
    /// <returns>Percent of (weight in newtons x height in metres).</returns>
    public static double PercentWeightHeight(double torqueNm, double massKg, double statureM) =>
        100 * torqueNm / (massKg * Gravity * statureM);

    /// <summary>Torque from a percentage of body weight times height.</summary>
    /// <param name="percent">Percent of (weight x height).</param>
    /// <param name="massKg">Body mass, kg.</param>
    /// <param name="statureM">Stature, m.</param>
    /// <returns>Newton metres.</returns>
    public static double FromPercentWeightHeight(double percent, double massKg, double statureM) =>
        percent / 100 * massKg * Gravity * statureM;

    /// <summary>
    /// Limb symmetry index, percent: affected over other where higher is better, other over affected where lower is better,
    /// so that under 100 always means that the affected side is worse.
    /// </summary>
    /// <param name="affected">Value of the affected side.</param>
    /// <param name="other">Value of the other side.</param>
    /// <param name="direction">Which way is better.</param>
    /// <returns>Percent, or null when a value is not above zero.</returns>
    public static double? SymmetryIndex(double affected, double other, Direction direction)
    {
        if (!(affected > 0 && other > 0 && double.IsFinite(affected) && double.IsFinite(other)))
            return null;
        return 100 * (direction == Direction.LowerBetter ? other / affected : affected / other);
    }

    /// <summary>Distance of an index from 100, so that a value above 100 hides no asymmetry.</summary>
    /// <param name="index">Limb symmetry index, percent.</param>
    /// <returns>Percentage points.</returns>
    public static double Asymmetry(double index) => Math.Abs(100 - index);
}
