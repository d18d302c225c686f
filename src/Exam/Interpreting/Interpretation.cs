using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>The readings of one measure at one earlier visit.</summary>
/// <param name="Order">Order of the visit in the episode of care, 1 first.</param>
/// <param name="Day">Day of the visit.</param>
/// <param name="Measurements">Readings of that visit.</param>
public sealed record EarlierVisit(int Order, DateOnly Day, ImmutableArray<Measurement> Measurements);

/// <summary>Everything an interpretation is made from.</summary>
public sealed record InterpretationInput
{
    /// <summary>The measure.</summary>
    public required Measure Measure { get; init; }

    /// <summary>This visit's readings; those of other measures are left out.</summary>
    public required ImmutableArray<Measurement> Now { get; init; }

    /// <summary>Earlier visits in any order.</summary>
    public ImmutableArray<EarlierVisit> Earlier { get; init; } = [];

    /// <summary>What is known of the person's build.</summary>
    public Physique Person { get; init; } = new();

    /// <summary>The affected side, if one is named.</summary>
    public Side? AffectedSide { get; init; }

    /// <summary>Norm rows; those of other measures are left out.</summary>
    public ImmutableArray<Norm> Norms { get; init; } = [];

    /// <summary>
    /// Torque of gravity that the left muscles also held during the test, N m; positive adds to what the pad felt.
    /// Null when it was not computed.
    /// </summary>
    public double? GravityTorqueLeftNm { get; init; }

    /// <summary>The same for the right.</summary>
    public double? GravityTorqueRightNm { get; init; }
}

/// <summary>One reading with what follows from it alone.</summary>
public sealed record SideReading
{
    /// <summary>The reading as taken.</summary>
    public required Measurement Measurement { get; init; }

    /// <summary>The trials combined by the rule of the measure, stored unit.</summary>
    public required double Value { get; init; }

    /// <summary>The value in its shown unit.</summary>
    public required string Shown { get; init; }

    /// <summary>Torque felt by the pad, N m; null without lever arm.</summary>
    public double? TorqueNm { get; init; }

    /// <summary>Measured torque per body mass, N m/kg; null without lever arm or mass.</summary>
    public double? TorquePerKg { get; init; }

    /// <summary>Measured torque as percent of body weight times height; null without lever arm, mass or stature.</summary>
    public double? PercentWeightHeight { get; init; }

    /// <summary>Measured torque plus the limb's own weight, N m: what the muscles did; null when gravity was not given.</summary>
    public double? TotalTorqueNm { get; init; }

    /// <summary>Whether pain during the test makes the value a lower bound of what the muscles can do.</summary>
    public required bool PainLimited { get; init; }
}

/// <summary>How a difference stands against error.</summary>
public enum ErrorVerdict
{
    /// <summary>Larger than error.</summary>
    BeyondError,

    /// <summary>Not larger than error.</summary>
    WithinError,

    /// <summary>No error is published for this measure.</summary>
    NoErrorKnown,

    /// <summary>The two readings were not taken alike; both are shown and neither is judged.</summary>
    NotComparable,
}

/// <summary>Left against right.</summary>
public sealed record SideComparison
{
    /// <summary>The side that is worse; null when equal or neither direction is better.</summary>
    public Side? WorseSide { get; init; }

    /// <summary>
    /// Limb symmetry index, percent: affected over other (other over affected where lower is better); without an affected
    /// side the worse over the better. Null for angles, whose zero is a convention, and when not comparable.
    /// </summary>
    public double? Index { get; init; }

    /// <summary>Size of the difference, 0 or more: in the stored unit, or in N m when <see cref="ByTorque"/>.</summary>
    public required double Difference { get; init; }

    /// <summary>Whether torque was compared and not force.</summary>
    public required bool ByTorque { get; init; }

    /// <summary>Smallest difference beyond error, same unit; null when unknown.</summary>
    public double? Detectable { get; init; }

    /// <summary>Verdict.</summary>
    public required ErrorVerdict Verdict { get; init; }

    /// <summary>
    /// The lack of the worse side as a fraction of the way from the worst possible value to the better side's value, 0 to 1.
    /// For strength it equals 1 - worse/better.
    /// </summary>
    public required double Deficit { get; init; }
}

/// <summary>A value against one norm row.</summary>
/// <param name="Side">Side of the value; null where there is none.</param>
/// <param name="Norm">The row.</param>
/// <param name="Value">The value in the unit of the row.</param>
/// <param name="ZScore">Standard score, from an SD only; null without one.</param>
/// <param name="Percentile">Percentile under the normal curve; null without an SD.</param>
/// <param name="Low">
/// Whether the row may grade and the value lies on the worse side of what 95 in 100 people reach; null when the row may not grade.
/// </param>
public sealed record NormComparison(Side? Side, Norm Norm, double Value, double? ZScore, double? Percentile, bool? Low);

/// <summary>What a change over time amounts to.</summary>
public enum ChangeVerdict
{
    /// <summary>Not larger than error.</summary>
    WithinError,

    /// <summary>Larger than error.</summary>
    Real,

    /// <summary>Larger than error and than the smallest change that matters to patients.</summary>
    RealAndWorthwhile,

    /// <summary>No error is published for this measure.</summary>
    NoErrorKnown,

    /// <summary>The readings were not taken alike; both are shown and neither is judged.</summary>
    NotComparable,
}

/// <summary>A change between an earlier visit and now.</summary>
public sealed record ChangeOverTime
{
    /// <summary>Side; null where there is none.</summary>
    public Side? Side { get; init; }

    /// <summary>Activity; null for the mean of activities and for other measures.</summary>
    public string? Activity { get; init; }

    /// <summary>The earlier visit.</summary>
    public required int SinceVisit { get; init; }

    /// <summary>Its day.</summary>
    public required DateOnly SinceDay { get; init; }

    /// <summary>Whether that is the first visit with this reading; false for the latest before now.</summary>
    public required bool SinceFirst { get; init; }

    /// <summary>Value then: stored unit, or N m when <see cref="ByTorque"/>.</summary>
    public required double Before { get; init; }

    /// <summary>Value now, same unit.</summary>
    public required double After { get; init; }

    /// <summary>Whether torque was compared and not force.</summary>
    public required bool ByTorque { get; init; }

    /// <summary>Smallest change beyond error, same unit; null when unknown.</summary>
    public double? Detectable { get; init; }

    /// <summary>Smallest change that matters to patients from that baseline, same unit; null when unknown.</summary>
    public double? Mcid { get; init; }

    /// <summary>Better (true), worse (false), or null when equal or neither direction is better.</summary>
    public bool? Better { get; init; }

    /// <summary>Verdict.</summary>
    public required ChangeVerdict Verdict { get; init; }
}

/// <summary>What one measure says at one visit, side by side.</summary>
public sealed record Interpretation
{
    /// <summary>The measure.</summary>
    public required Measure Measure { get; init; }

    /// <summary>The readings, left first.</summary>
    public required ImmutableArray<SideReading> Readings { get; init; }

    /// <summary>Mean of the named activities, patient-specific function only.</summary>
    public double? MeanOfActivities { get; init; }

    /// <summary>Left against right; null unless both were measured.</summary>
    public SideComparison? Sides { get; init; }

    /// <summary>Values against norms; the most fitting row of each side first.</summary>
    public required ImmutableArray<NormComparison> Norms { get; init; }

    /// <summary>Changes since the first and the last earlier visit.</summary>
    public required ImmutableArray<ChangeOverTime> Changes { get; init; }

    /// <summary>The sentences to show, in order.</summary>
    public required ImmutableArray<Statement> Statements { get; init; }

    /// <summary>The reading of a side.</summary>
    /// <param name="side">The side; null for measures without side.</param>
    /// <returns>The reading, or null when that side was not measured.</returns>
    public SideReading? Of(Side? side) => Readings.FirstOrDefault(r => r.Measurement.Side == side);
}
