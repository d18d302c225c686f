namespace MomentArm.Exam;

/// <summary>
/// Says what one measure means at one visit: the value, the other side, people of the same age and sex, measurement error,
/// and change over time. The rules and their sources are in docs/models/exam.md.
/// </summary>
public static class Interpreter
{
    /// <summary>Interprets one measure at one visit.</summary>
    /// <param name="input">The measure, the readings and what is known of the person.</param>
    /// <returns>Numbers and sentences; without any reading an interpretation without sentences.</returns>
    public static Interpretation Interpret(InterpretationInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var readings = ReadingFacts.All(input);
        var bare = new Interpretation
        {
            Measure = input.Measure,
            Readings = readings,
            MeanOfActivities = input.Measure.Kind == MeasureKind.PatientSpecific
                ? ChangeMath.Mean(input.Measure, readings.Select(r => r.Measurement))
                : null,
            Sides = input.Measure.Sided ? SideMath.Compare(input.Measure, readings, input.AffectedSide) : null,
            Norms = NormChoice.Compare(input, readings),
            Changes = ChangeMath.All(input, readings),
            Statements = [],
        };
        return readings.IsEmpty ? bare : bare with { Statements = Sentences.Of(bare, input) };
    }
}
