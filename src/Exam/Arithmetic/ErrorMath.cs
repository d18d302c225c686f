namespace MomentArm.Exam;

/// <summary>
/// Arithmetic of measurement error. SEM = SD sqrt(1 - ICC); MDC = z sqrt(2) SEM with z 1.96 (95 %) or 1.645 (90 %);
/// reliable change after Jacobson and Truax 1991 (J Consult Clin Psychol 59:12-19). See docs/models/exam.md section 2.
/// </summary>
public static class ErrorMath
{
    /// <summary>Two-sided 95 % point of the normal curve as papers round it.</summary>
    public const double Z95 = 1.96;

    /// <summary>Two-sided 90 % point of the normal curve as papers round it.</summary>
    public const double Z90 = 1.645;

    /// <summary>Standard error of measurement from the spread between people and a reliability coefficient.</summary>
    /// <param name="sd">Standard deviation between people, not negative.</param>
    /// <param name="reliability">Reliability coefficient, 0 to 1.</param>
    /// <returns>SEM in the unit of the SD.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range or NaN.</exception>
    public static double Sem(double sd, double reliability)
    {
        if (!(sd >= 0 && double.IsFinite(sd)))
            throw new ArgumentOutOfRangeException(nameof(sd), sd, "Give a standard deviation of 0 or more.");
        if (!(reliability is >= 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(reliability), reliability, "Give a reliability from 0 to 1.");
        return sd * Math.Sqrt(1 - reliability);
    }

    /// <summary>Smallest change beyond error with 95 % confidence.</summary>
    /// <param name="sem">Standard error of measurement.</param>
    /// <returns>MDC95 in the same unit.</returns>
    public static double Mdc95(double sem) => Z95 * Math.Sqrt(2) * sem;

    /// <summary>Smallest change beyond error with 90 % confidence.</summary>
    /// <param name="sem">Standard error of measurement.</param>
    /// <returns>MDC90 in the same unit.</returns>
    public static double Mdc90(double sem) => Z90 * Math.Sqrt(2) * sem;

    /// <summary>Reliable change index: the change in units of the standard error of a difference.</summary>
    /// <param name="before">Score before.</param>
    /// <param name="after">Score after.</param>
    /// <param name="sd">Standard deviation between people.</param>
    /// <param name="reliability">Reliability coefficient.</param>
    /// <returns>The index; beyond 1.96 either way the change is reliable.</returns>
    public static double ReliableChangeIndex(double before, double after, double sd, double reliability) =>
        (after - before) / (Math.Sqrt(2) * Sem(sd, reliability));

    /// <summary>The change that must be exceeded to be both real and worth having.</summary>
    /// <param name="mdc">Smallest detectable change.</param>
    /// <param name="mcid">Smallest change that matters to patients, if known.</param>
    /// <returns>The larger of the two.</returns>
    public static double RequiredChange(double mdc, double? mcid) => Math.Max(mdc, mcid ?? 0);
}
