namespace MomentArm.Exam;

/// <summary>What one result of one test says about one pattern.</summary>
/// <param name="Test">The test.</param>
/// <param name="Result">The result.</param>
/// <param name="Ratio">The ratio that would count; null when none may.</param>
/// <param name="WhyNot">Why it does not count; null when it may.</param>
public sealed record TestReading(ClinicalTest Test, TestResult Result, UsedRatio? Ratio, string? WhyNot)
{
    /// <summary>The result in words: "positive", "3 of 6".</summary>
    public string ResultWords => Result.Outcome switch
    {
        TestOutcome.Positive => "positive",
        TestOutcome.Negative => "negative",
        TestOutcome.Unclear => "unclear",
        TestOutcome.Counted => $"{Result.Count} of {Test.CountOf}",
    };
}

/// <summary>Reads one result against the figures of its test.</summary>
public static class TestReader
{
    /// <summary>Reads a result.</summary>
    /// <param name="test">The test.</param>
    /// <param name="result">Its result.</param>
    /// <param name="pattern">The pattern asked about.</param>
    /// <param name="input">Days since the injury and figures confirmed by the clinician.</param>
    /// <returns>The reading; null when the test has no figure about this pattern.</returns>
    public static TestReading? Read(ClinicalTest test, TestResult result, string pattern, ReasoningInput input)
    {
        ArgumentNullException.ThrowIfNull(test);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(input);
        var all = test.Figures.Where(f => f.Pattern == pattern).ToArray();
        if (all.Length == 0)
            return null;
        TestReading Not(string why) => new(test, result, null, why);
        if (result.Outcome == TestOutcome.Unclear)
            return Not("an unclear result shifts nothing");
        if (all.All(f => f.Origin == RatioOrigin.None))
            return Not("no accuracy data: it counts as a finding of the pattern only");
        var usable = all.Where(f => MayMove(f, input)).ToArray();
        if (usable.Length == 0)
            return Not(WhyNone(all));
        var inTime = usable.Where(f => InTime(f, input.DaysSinceInjury)).ToArray();
        if (inTime.Length == 0)
            return Not(WhyTime(usable, input.DaysSinceInjury));
        var (figure, positive) = Pick(inTime, result);
        if (figure is null)
            return Not(result.Outcome == TestOutcome.Counted ? "this number of signs shifts nothing" : "no figure is known for this result");
        if (figure.Use == (positive ? TestUse.RuleOut : TestUse.RuleIn) || figure.Use == TestUse.None)
            return Not(figure.Use == TestUse.None ? "the test tells too little either way" : positive ? "only a negative result tells enough" : "only a positive result tells enough");
        return RatioRules.Of(figure, positive) is { } ratio ? new TestReading(test, result, ratio, null) : Not("no ratio is known for this result");
    }

    /// <summary>Whether a figure may move a probability.</summary>
    public static bool MayMove(AccuracyFigure figure, ReasoningInput input)
    {
        ArgumentNullException.ThrowIfNull(figure);
        ArgumentNullException.ThrowIfNull(input);
        return figure.Origin != RatioOrigin.None && (figure.Standing == FigureStanding.Usable
            || (figure.Standing == FigureStanding.CheckFirst && input.Confirmed.Contains(figure.Id)));
    }

    private static (AccuracyFigure? Figure, bool Positive) Pick(AccuracyFigure[] figures, TestResult result)
    {
        if (result.Outcome != TestOutcome.Counted)
            return (figures.FirstOrDefault(f => f.PositiveFrom is null), result.Outcome == TestOutcome.Positive);
        var count = result.Count ?? 0;
        var reached = figures.Where(f => f.PositiveFrom <= count).OrderByDescending(f => f.PositiveFrom).FirstOrDefault();
        return reached is not null ? (reached, true) : (figures.FirstOrDefault(f => f.NegativeAtMost >= count), false);
    }

    private static bool InTime(AccuracyFigure figure, int? days) =>
        (figure.DaysFrom is null && figure.DaysTo is null)
        || (days is { } d && d >= (figure.DaysFrom ?? 0) && d <= (figure.DaysTo ?? int.MaxValue));

    private static string WhyNone(AccuracyFigure[] figures)
    {
        var check = figures.FirstOrDefault(f => f.Standing == FigureStanding.CheckFirst);
        return check is null
            ? "its figures are not fit for use: it counts as a finding of the pattern only"
            : "its figures are from memory: confirm them in the paper first";
    }

    private static string WhyTime(AccuracyFigure[] figures, int? days)
    {
        var first = figures.Min(f => f.DaysFrom ?? 0);
        var last = figures.Max(f => f.DaysTo ?? first);
        return days is null
            ? $"its figures hold from day {first} after the injury: say when it happened"
            : days < first
                ? $"on day {days} it has no weight: examine again on day {first} to {Math.Max(last, first)}"
                : $"its figures hold up to day {last} after the injury";
    }
}
