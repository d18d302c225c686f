using MomentArm.Body;

namespace MomentArm.Exam.Tests.Reasoning;

/// <summary>Small made-up tests and figures.</summary>
internal static class Made
{
    public const string PatternId = "made";

    public static AccuracyFigure Figure(double? positive = null, double? negative = null, string id = "f") => new()
    {
        Id = id,
        Pattern = PatternId,
        Condition = "made",
        Positive = positive is { } p ? new Ratio(p, new RatioSpan(Math.Sqrt(p), Math.Pow(p, 1.5))) : null,
        Negative = negative is { } n ? new Ratio(n, new RatioSpan(Math.Pow(n, 1.5), Math.Sqrt(n))) : null,
        Origin = RatioOrigin.Reported,
        Use = TestUse.Both,
        Standing = FigureStanding.Usable,
        Source = "made",
        Confirmation = "made",
    };

    public static ClinicalTest Test(string id, string family, AccuracyFigure figure) => new()
    {
        Id = id,
        Name = id,
        Region = BodyRegion.Knee,
        Kind = TestKind.Test,
        PositiveMeans = "made",
        Family = family,
        Minutes = 1,
        Burden = TestBurden.None,
        Figures = [figure],
    };

    public static TestReading Reading(string id, string family, AccuracyFigure figure, bool positive = true) =>
        TestReader.Read(
            Test(id, family, figure), new TestResult(id, null, positive ? TestOutcome.Positive : TestOutcome.Negative), PatternId, new ReasoningInput())!;

    /// <summary>The reading of a shipped test.</summary>
    public static TestReading Shipped(string test, string pattern, TestOutcome outcome, int? count = null, int? days = null) =>
        TestReader.Read(
            Tests.Shipped.Exam.Reasoning.Test(test)!, new TestResult(test, null, outcome, count), pattern,
            new ReasoningInput { DaysSinceInjury = days })!;
}
