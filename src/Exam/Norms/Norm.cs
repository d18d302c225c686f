using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>In what a norm is given.</summary>
public enum NormUnit
{
    /// <summary>The stored unit of the measure.</summary>
    Measure,

    /// <summary>Measured torque per body mass, N m/kg.</summary>
    TorquePerMass,

    /// <summary>Measured torque as percent of body weight times height.</summary>
    PercentWeightHeight,

    /// <summary>Force as percent of body weight.</summary>
    PercentWeight,

    /// <summary>Force per body mass, N/kg.</summary>
    ForcePerMass,
}

/// <summary>What a norm row may be used for.</summary>
public enum NormUse
{
    /// <summary>Shown beside the value; never sets a tone or makes a finding.</summary>
    Beside,

    /// <summary>May call a value low for age and sex.</summary>
    Grade,
}

/// <summary>One row of a table of norms. Content checks that a grading row is verified and has a spread between people.</summary>
public sealed record Norm
{
    /// <summary>The measure it belongs to.</summary>
    public required string MeasureId { get; init; }

    /// <summary>Sex of the people; null for both together or not stated.</summary>
    public Sex? Sex { get; init; }

    /// <summary>Youngest age, years.</summary>
    public required double AgeFrom { get; init; }

    /// <summary>Oldest age, years, that year included; null for no upper end.</summary>
    public double? AgeTo { get; init; }

    /// <summary>Mean, or median where that is what was published, in <see cref="Unit"/>; null when only a band or a limit was.</summary>
    public double? Mean { get; init; }

    /// <summary>Whether <see cref="Mean"/> is a median.</summary>
    public bool IsMedian { get; init; }

    /// <summary>A quarter of the people lie below, in <see cref="Unit"/>; null when not published.</summary>
    public double? Quarter { get; init; }

    /// <summary>A quarter of the people lie above, in <see cref="Unit"/>; null when not published.</summary>
    public double? ThreeQuarters { get; init; }

    /// <summary>The limit that the source itself calls low on the worse side of it, in <see cref="Unit"/>; null when it names none.</summary>
    public double? Limit { get; init; }

    /// <summary>Standard deviation between people; null when not published.</summary>
    public double? Sd { get; init; }

    /// <summary>Lower end of the 95 % confidence interval of the mean. Never a normal range.</summary>
    public double? MeanFrom { get; init; }

    /// <summary>Upper end of the 95 % confidence interval of the mean. Never a normal range.</summary>
    public double? MeanTo { get; init; }

    /// <summary>People in this very cell; null when not known.</summary>
    public int? N { get; init; }

    /// <summary>Unit of mean and SD.</summary>
    public required NormUnit Unit { get; init; }

    /// <summary>Who they were.</summary>
    public required string Population { get; init; }

    /// <summary>How they were measured.</summary>
    public required string Method { get; init; }

    /// <summary>Active or passive, where stated.</summary>
    public MotionMode Mode { get; init; }

    /// <summary>What the row may be used for.</summary>
    public required NormUse Use { get; init; }

    /// <summary>Key into content/sources.json.</summary>
    public required string Source { get; init; }

    /// <summary>Whether the figures were read in the source.</summary>
    public required bool Verified { get; init; }

    /// <summary>Remark, if any.</summary>
    public string? Note { get; init; }

    /// <summary>
    /// Spread between people: the SD, or the SD that follows from the interval of the mean when the number of people in
    /// the cell is known; else null, and then nobody can be called low or high by this row.
    /// </summary>
    public double? Spread =>
        Sd ?? (MeanFrom is { } low && MeanTo is { } high && N is >= 2 ? NormMath.SdFromConfidenceInterval(low, high, N.Value) : null);

    /// <summary>Whether the row is about people of this age; the last year of a band counts whole.</summary>
    /// <param name="ageYears">Age in years.</param>
    /// <returns>True when inside the band.</returns>
    public bool CoversAge(double ageYears) => ageYears >= AgeFrom && (AgeTo is null || ageYears < AgeTo + 1);
}
