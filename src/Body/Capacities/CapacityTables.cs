using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Published strength of joint actions, and how well tests know it.</summary>
/// <param name="Curves">Torque by angle, sex and age.</param>
/// <param name="Angles">Angles over which each action's curve is used, radians, clinical sign; beyond them its end value counts.</param>
/// <param name="Constants">Torques known at one position only.</param>
/// <param name="UntestedSpread">Standard deviation between people as a fraction of the mean (coefficient of variation), at least.</param>
/// <param name="ReaderErrors">Standard errors of tested torques.</param>
/// <param name="Endurance">Relations of repetitions and holding time to strength.</param>
public sealed record CapacityTables(
    ImmutableArray<CapacityCurve> Curves,
    ImmutableDictionary<JointAction, (double Least, double Most)> Angles,
    ImmutableArray<CapacityConstant> Constants,
    double UntestedSpread,
    ImmutableArray<ReaderError> ReaderErrors,
    EnduranceTables Endurance)
{
    /// <summary>Whether a figure is published for an action, so that a test can scale it.</summary>
    /// <param name="action">The action.</param>
    /// <returns>True when there is a curve or a constant.</returns>
    public bool Has(JointAction action) => Curves.Any(c => c.Action == action) || Constants.Any(c => c.Action == action);

    /// <summary>Standard error of a tested torque as a fraction: the action's own where published, else the reader's.</summary>
    /// <param name="reader">What read the force.</param>
    /// <param name="action">The action.</param>
    /// <returns>The fraction.</returns>
    /// <exception cref="ArgumentException">No error is published for the reader.</exception>
    public double ErrorOf(ForceReader reader, JointAction action) =>
        (ReaderErrors.FirstOrDefault(e => e.Reader == reader && e.Action == action)
            ?? ReaderErrors.FirstOrDefault(e => e.Reader == reader && e.Action is null)
            ?? throw new ArgumentException($"The error of a {reader} reader is not known.", nameof(reader))).RelativeError;
}

/// <summary>Standard error of a torque tested with a reader.</summary>
/// <param name="Reader">What read the force.</param>
/// <param name="Action">The action for which it holds, or null for all others.</param>
/// <param name="RelativeError">Standard error as a fraction, 0 to 1.</param>
public sealed record ReaderError(ForceReader Reader, JointAction? Action, double RelativeError);

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

/// <summary>A torque of young adults known at one position, used at every angle.</summary>
/// <param name="Action">Joint action.</param>
/// <param name="Sex">Sex of the sample.</param>
/// <param name="FractionOfWeightTimesStature">Torque over weight times stature; 0 when the torque does not follow build.</param>
/// <param name="TorqueNm">Torque that does not follow build, N m; 0 otherwise.</param>
/// <param name="Spread">Standard deviation between people, and between sources where they differ, as a fraction of the torque.</param>
/// <param name="CarriedToOtherAges">Whether the hip curves carry it to other ages.</param>
/// <param name="Weak">Whether the figure is weak: few people, another contraction, or recalled.</param>
public sealed record CapacityConstant(
    JointAction Action, Sex Sex, double FractionOfWeightTimesStature, double TorqueNm, double Spread, bool CarriedToOtherAges, bool Weak);
