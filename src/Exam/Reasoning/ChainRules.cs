namespace MomentArm.Exam;

/// <summary>
/// The limits of the calculation. All are our choice unless a source is named; reasons in docs/models/exam-reasoning.md section 3.
/// </summary>
public static class ChainRules
{
    /// <summary>Largest product of ratios.</summary>
    public const double HighestRatio = 20;

    /// <summary>Smallest product of ratios.</summary>
    public const double LowestRatio = 0.05;

    /// <summary>Lowest probability shown.</summary>
    public const double LowestShown = 0.02;

    /// <summary>Highest probability shown.</summary>
    public const double HighestShown = 0.95;

    /// <summary>Weight on the log scale of every family after the first.</summary>
    public const double LaterWeight = 0.5;

    /// <summary>People below which a ratio without any interval is pulled halfway to 1.</summary>
    public const int SmallStudy = 50;

    /// <summary>The limits of the product of ratios.</summary>
    public static double Capped(double ratio) => Math.Clamp(ratio, LowestRatio, HighestRatio);

    /// <summary>The limits of what is shown.</summary>
    public static double Shown(double probability) => Math.Clamp(probability, LowestShown, HighestShown);

    /// <summary>The band a probability is shown as: under 20, 20 to under 50, 50 to 80, above 80 %.</summary>
    public static ProbabilityBand Band(double probability) => probability switch
    {
        < 0.2 => ProbabilityBand.Unlikely,
        < 0.5 => ProbabilityBand.Possible,
        <= 0.8 => ProbabilityBand.Probable,
        _ => ProbabilityBand.VeryProbable,
    };
}

/// <summary>A probability in words.</summary>
public enum ProbabilityBand
{
    /// <summary>Under 20 %.</summary>
    Unlikely,

    /// <summary>20 % to under 50 %.</summary>
    Possible,

    /// <summary>50 to 80 %.</summary>
    Probable,

    /// <summary>Above 80 %.</summary>
    VeryProbable,
}
