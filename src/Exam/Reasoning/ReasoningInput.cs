using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>An answer to a yes-or-no question.</summary>
public enum ItemAnswer
{
    /// <summary>Not asked or not known.</summary>
    Unknown,

    /// <summary>Yes.</summary>
    Yes,

    /// <summary>No.</summary>
    No,
}

/// <summary>The outcome of a clinical test.</summary>
public enum TestOutcome
{
    /// <summary>Done, and it could not be told.</summary>
    Unclear,

    /// <summary>Positive.</summary>
    Positive,

    /// <summary>Negative.</summary>
    Negative,

    /// <summary>A count of signs; see the count.</summary>
    Counted,
}

/// <summary>A test that was done.</summary>
/// <param name="TestId">The test.</param>
/// <param name="Side">The side it was done on; null when it has none.</param>
/// <param name="Outcome">What came out.</param>
/// <param name="Count">Signs present, for a counted test.</param>
public sealed record TestResult(string TestId, Side? Side, TestOutcome Outcome, int? Count = null);

/// <summary>A starting value of the clinician's own.</summary>
/// <param name="Value">Probability, above 0 and below 1.</param>
/// <param name="Range">The range it may lie in; null when none was given.</param>
public sealed record OwnPrior(double Value, RatioSpan? Range = null);

/// <summary>What the reasoning is told about one complaint.</summary>
public sealed record ReasoningInput
{
    /// <summary>The affected side; null when there is none or it is not known.</summary>
    public Side? Side { get; init; }

    /// <summary>The part of the body; null for every part.</summary>
    public BodyRegion? Region { get; init; }

    /// <summary>Age, years; null when not known.</summary>
    public double? AgeYears { get; init; }

    /// <summary>Sex; null when not known.</summary>
    public Sex? Sex { get; init; }

    /// <summary>Days since the injury; null for no injury or not known.</summary>
    public int? DaysSinceInjury { get; init; }

    /// <summary>Tests done.</summary>
    public ImmutableArray<TestResult> Tests { get; init; } = [];

    /// <summary>Answers by question id.</summary>
    public ImmutableDictionary<string, ItemAnswer> Answers { get; init; } = ImmutableDictionary<string, ItemAnswer>.Empty;

    /// <summary>Findings of the exam.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <summary>Starting values of the clinician's own, by pattern id.</summary>
    public ImmutableDictionary<string, OwnPrior> Priors { get; init; } = ImmutableDictionary<string, OwnPrior>.Empty;

    /// <summary>Figures marked "check first" that the clinician has confirmed in the paper, by figure id.</summary>
    public ImmutableHashSet<string> Confirmed { get; init; } = [];
}
