namespace MomentArm.Exam;

/// <summary>In which form an error of measurement was published.</summary>
public enum ErrorForm
{
    /// <summary>Standard error of measurement in the stored unit; both MDCs follow.</summary>
    Sem,

    /// <summary>Standard error of measurement as a fraction of the value.</summary>
    RelativeSem,

    /// <summary>A printed smallest detectable change in the stored unit.</summary>
    PrintedMdc,

    /// <summary>A printed smallest detectable change, or half-width of the limits of agreement, as a fraction of the value.</summary>
    RelativePrintedMdc,
}

/// <summary>A published error of measurement, in the form it was published in.</summary>
public sealed record MeasurementError
{
    /// <summary>Form of <see cref="Value"/>.</summary>
    public required ErrorForm Form { get; init; }

    /// <summary>The number, in the stored unit or as a fraction.</summary>
    public required double Value { get; init; }

    /// <summary>Confidence level of a printed MDC, 95 or 90; null when the source does not say, or for an SEM.</summary>
    public int? Level { get; init; }

    /// <summary>Whether one examiner took both readings, or two did.</summary>
    public required bool SameExaminer { get; init; }

    /// <summary>Who was measured, and how.</summary>
    public required string Population { get; init; }

    /// <summary>Key into content/sources.json.</summary>
    public required string Source { get; init; }

    /// <summary>Whether the error is a fraction of the value.</summary>
    public bool IsRelative => Form is ErrorForm.RelativeSem or ErrorForm.RelativePrintedMdc;

    /// <summary>
    /// Smallest difference beyond error between two readings, at 95 % where the level is known (a 90 % value is scaled up
    /// by 1.96/1.645), as printed where it is not.
    /// </summary>
    /// <param name="first">One reading, in any unit; used by relative errors only, which are taken of the mean of both.</param>
    /// <param name="second">The other reading in the same unit.</param>
    /// <returns>The smallest detectable difference, in the stored unit, or in the unit of the readings for a relative error.</returns>
    public double Detectable(double first, double second)
    {
        var scale = IsRelative ? (Math.Abs(first) + Math.Abs(second)) / 2 : 1;
        return scale * Form switch
        {
            ErrorForm.Sem or ErrorForm.RelativeSem => ErrorMath.Mdc95(Value),
            ErrorForm.PrintedMdc or ErrorForm.RelativePrintedMdc =>
                Level == 90 ? Value * ErrorMath.Z95 / ErrorMath.Z90 : Value,
        };
    }

    /// <summary>How sure <see cref="Detectable"/> is, in words.</summary>
    public string LevelText => Form switch
    {
        ErrorForm.Sem or ErrorForm.RelativeSem => "95 %",
        ErrorForm.PrintedMdc or ErrorForm.RelativePrintedMdc => Level is null ? "level not stated" : "95 %",
    };
}
