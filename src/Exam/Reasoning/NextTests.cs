using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>What one test would tell about one hypothesis.</summary>
/// <param name="PatternId">The hypothesis.</param>
/// <param name="Bits">Expected information, bits, 0 or more.</param>
/// <param name="PositiveShare">Expected share of positive results, 0 to 1.</param>
/// <param name="IfPositive">Probability after a positive result.</param>
/// <param name="IfNegative">Probability after a negative result.</param>
public sealed record TestPromise(string PatternId, double Bits, double PositiveShare, double IfPositive, double IfNegative);

/// <summary>A test that was not done yet.</summary>
/// <param name="Test">The test.</param>
/// <param name="Bits">Expected information over the hypotheses, bits; null when it cannot be computed.</param>
/// <param name="Promises">What it would tell, the most telling first.</param>
/// <param name="Why">In words: what it would do, what it costs, or why nothing can be said.</param>
public sealed record NextTest(ClinicalTest Test, double? Bits, ImmutableArray<TestPromise> Promises, string Why);

/// <summary>
/// What to test next: the expected information of each remaining test, as expected relative entropy between the probability
/// after and before, in bits. Where both ratios of a test count in full this is the mutual information of test and condition.
/// Equations: docs/models/exam-reasoning.md section 5.
/// </summary>
public static class NextTests
{
    /// <summary>Ranks the tests that were not done.</summary>
    /// <param name="basis">Patterns, questions and tests.</param>
    /// <param name="input">What is known.</param>
    /// <param name="hypotheses">The hypotheses to tell about; those spoken against are left out by the caller if so wished.</param>
    /// <returns>Tests, the most telling first, equal ones by minutes; tests without a computable value after them.</returns>
    public static ImmutableArray<NextTest> Rank(ReasoningBasis basis, ReasoningInput input, IReadOnlyList<Hypothesis> hypotheses)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(hypotheses);
        var results = Reasoner.ResultsOn(basis, input);
        return
        [
            .. basis.Tests
                .Where(t => results.All(r => r.TestId != t.Id))
                .Where(t => t.Figures.Any(f => hypotheses.Any(h => h.Pattern.Id == f.Pattern)))
                .Select(t => Of(basis, input, t, hypotheses, results))
                .OrderByDescending(n => Math.Round(n.Bits ?? -1, 6))
                .ThenBy(n => n.Test.Minutes)
                .ThenBy(n => n.Test.Burden)
                .ThenBy(n => n.Test.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>Relative entropy of two probabilities of a yes-or-no condition, bits: what moving from one to the other tells.</summary>
    /// <param name="after">Probability after, above 0 and below 1.</param>
    /// <param name="before">Probability before, above 0 and below 1.</param>
    /// <returns>Bits, 0 or more.</returns>
    public static double RelativeEntropy(double after, double before) =>
        (after * Math.Log2(after / before)) + ((1 - after) * Math.Log2((1 - after) / (1 - before)));

    private static NextTest Of(
        ReasoningBasis basis, ReasoningInput input, ClinicalTest test, IReadOnlyList<Hypothesis> hypotheses, ImmutableArray<TestResult> results)
    {
        var promises = hypotheses.Where(h => h.Prior is not null)
            .Select(h => Promise(basis, input, test, h, results)).OfType<TestPromise>()
            .OrderByDescending(p => p.Bits).ThenBy(p => p.PatternId, StringComparer.Ordinal).ToImmutableArray();
        return promises.IsEmpty
            ? new NextTest(test, null, [], WhyUnknown(input, test, hypotheses))
            : new NextTest(test, promises.Sum(p => p.Bits), promises, Words(hypotheses, test, promises[0]));
    }

    private static TestPromise? Promise(
        ReasoningBasis basis, ReasoningInput input, ClinicalTest test, Hypothesis hypothesis, ImmutableArray<TestResult> results)
    {
        var figure = test.Figures.Where(f => f.Pattern == hypothesis.Pattern.Id && TestReader.MayMove(f, input))
            .OrderBy(f => f.PositiveFrom ?? 0).FirstOrDefault();
        if (figure is null || AccuracyOf(figure) is not var (sensitivity, specificity))
            return null;
        double After(TestResult result) => ProbabilityChain.From(
            hypothesis.Prior!.Value, hypothesis.Prior.Range,
            Reasoner.Readings(basis, input, hypothesis.Pattern, results.Add(result))).Value;
        var before = hypothesis.Probability!.Value;
        var positive = After(Made(test, figure, true));
        var negative = After(Made(test, figure, false));
        var chance = (before * sensitivity) + ((1 - before) * (1 - specificity));
        var bits = (chance * RelativeEntropy(positive, before)) + ((1 - chance) * RelativeEntropy(negative, before));
        return new TestPromise(hypothesis.Pattern.Id, Math.Max(0, bits), chance, positive, negative);
    }

    private static TestResult Made(ClinicalTest test, AccuracyFigure figure, bool positive) => test.CountOf is null
        ? new TestResult(test.Id, null, positive ? TestOutcome.Positive : TestOutcome.Negative)
        : new TestResult(test.Id, null, TestOutcome.Counted, positive ? figure.PositiveFrom : figure.NegativeAtMost ?? figure.PositiveFrom - 1);

    private static (double Sensitivity, double Specificity)? AccuracyOf(AccuracyFigure figure) =>
        figure is { Sensitivity: { } se, Specificity: { } sp } ? (se, sp)
        : figure is { Positive.Value: > 1 and var lrPositive, Negative.Value: < 1 and var lrNegative, PositiveFrom: null }
            ? AccuracyMath.FromRatios(lrPositive, lrNegative)
            : null;

    private static string Words(IReadOnlyList<Hypothesis> hypotheses, ClinicalTest test, TestPromise best)
    {
        var about = hypotheses.First(h => h.Pattern.Id == best.PatternId);
        var cost = $"{Say.Number(test.Minutes)} min, {BurdenWords(test.Burden)}";
        return best.Bits < 0.0005
            ? $"Neither result would move {about.Pattern.Name} from {Say.Percent(about.Probability!.Value)}; {cost}."
            : $"{about.Pattern.Name}: {Say.Percent(best.IfPositive)} if positive, {Say.Percent(best.IfNegative)} if negative, now {Say.Percent(about.Probability!.Value)}; {cost}.";
    }

    private static string WhyUnknown(ReasoningInput input, ClinicalTest test, IReadOnlyList<Hypothesis> hypotheses)
    {
        var figures = test.Figures.Where(f => hypotheses.Any(h => h.Pattern.Id == f.Pattern)).ToArray();
        return figures.All(f => f.Origin == RatioOrigin.None) ? "No accuracy data: useful as a finding of the pattern only."
            : !figures.Any(f => TestReader.MayMove(f, input)) ? "Its figures are from memory or in conflict: it would move nothing."
            : figures.Any(f => TestReader.MayMove(f, input) && AccuracyOf(f) is not null)
                ? "Its hypothesis has no starting value yet."
                : "How often it comes out positive is not published: what it would tell cannot be computed.";
    }

    /// <summary>What a test asks of the person, in words.</summary>
    public static string BurdenWords(TestBurden burden) => burden switch
    {
        TestBurden.None => "nothing to feel",
        TestBurden.Provokes => "may bring on the pain",
        TestBurden.Loads => "loads the limb",
    };
}
