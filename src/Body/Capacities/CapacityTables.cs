using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Published strength of joint actions.</summary>
/// <param name="Curves">Torque by angle, sex and age.</param>
/// <param name="Angles">Angles over which each action's curve is used, radians, clinical sign; beyond them its end value counts.</param>
/// <param name="Constants">Torques known at one position only.</param>
/// <param name="UntestedSpread">Standard deviation between people as a fraction of the mean (coefficient of variation).</param>
/// <param name="TestedRelativeError">Standard error of a tested torque as a fraction.</param>
public sealed record CapacityTables(
    ImmutableArray<CapacityCurve> Curves,
    ImmutableDictionary<JointAction, (double Least, double Most)> Angles,
    ImmutableArray<CapacityConstant> Constants,
    double UntestedSpread,
    double TestedRelativeError);

/// <summary>
/// Isometric torque = C1 x mass x 9.81 x stature x cos(C2 (q - C3)), the argument held inside a right angle either way.
/// Source: Anderson, Madigan and Nussbaum 2007, J Biomech 40:3105, doi:10.1016/j.jbiomech.2007.03.022, Table 3.
/// </summary>
/// <param name="Action">Joint action.</param>
/// <param name="Sex">Sex of the sample.</param>
/// <param name="AgeYears">Middle of the published age group, years.</param>
/// <param name="C1">Peak torque over weight times stature.</param>
/// <param name="C2">Breadth of the curve, 1/rad.</param>
/// <param name="C3">Angle of the peak, rad; hip and knee flexion and ankle dorsiflexion positive.</param>
public sealed record CapacityCurve(JointAction Action, Sex Sex, double AgeYears, double C1, double C2, double C3);

/// <summary>A torque known at one position.</summary>
/// <param name="Action">Joint action.</param>
/// <param name="Sex">Sex of the sample.</param>
/// <param name="FractionOfWeightTimesStature">Torque over weight times stature.</param>
/// <param name="StandardDeviation">Standard deviation between people, same unit.</param>
public sealed record CapacityConstant(JointAction Action, Sex Sex, double FractionOfWeightTimesStature, double StandardDeviation);
