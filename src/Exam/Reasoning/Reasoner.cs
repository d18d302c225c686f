using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Ranks working hypotheses. It proposes; accepting or dismissing is the clinician's.</summary>
public static class Reasoner
{
    /// <summary>Judges every pattern of the region, and every other one that fits.</summary>
    /// <param name="basis">Patterns, questions and tests.</param>
    /// <param name="input">What is known.</param>
    /// <returns>Hypotheses, the best fitting first, then by probability. Conditions of one region are kept apart: they coexist.</returns>
    public static ImmutableArray<Hypothesis> Judge(ReasoningBasis basis, ReasoningInput input)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(input);
        var results = ResultsOn(basis, input);
        return
        [
            .. basis.Patterns
                .Select(p => (Here: input.Region is not { } region || p.Regions.Contains(region), Hypothesis: Of(basis, input, p, results)))
                .Where(h => h.Here || h.Hypothesis.Fit == PatternFit.Fits)
                .Select(h => h.Hypothesis)
                .OrderBy(h => h.Fit)
                .ThenByDescending(h => h.Probability?.Value ?? -1)
                .ThenByDescending(h => h.Supporting.Count(l => l.Defining))
                .ThenByDescending(h => h.Supporting.Length - h.Opposing.Length)
                .ThenBy(h => h.Pattern.Group)
                .ThenBy(h => h.Pattern.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>The answer to a question: as given, else from findings on the affected side, age or sex.</summary>
    /// <param name="question">The question.</param>
    /// <param name="input">What is known.</param>
    /// <returns>Yes, no, or unknown.</returns>
    public static ItemAnswer AnswerTo(PatternQuestion question, ReasoningInput input)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(input);
        if (input.Answers.GetValueOrDefault(question.Id) is var given and not ItemAnswer.Unknown)
            return given;
        if (input.Findings.Any(f => Matches(question, f, input)))
            return ItemAnswer.Yes;
        if ((question.AgeFrom ?? question.AgeTo) is not null)
        {
            return input.AgeYears is not { } age ? ItemAnswer.Unknown
                : age >= (question.AgeFrom ?? 0) && age <= (question.AgeTo ?? double.MaxValue) ? ItemAnswer.Yes : ItemAnswer.No;
        }
        return question.Sex is not { } sex || input.Sex is not { } own ? ItemAnswer.Unknown : own == sex ? ItemAnswer.Yes : ItemAnswer.No;
    }

    /// <summary>Results that belong to the affected side; one per test.</summary>
    internal static ImmutableArray<TestResult> ResultsOn(ReasoningBasis basis, ReasoningInput input) =>
    [
        .. input.Tests.Concat(ByAge(basis, input))
            .Where(r => basis.Test(r.TestId) is { } test && (!test.Sided || r.Side is null || input.Side is null || r.Side == input.Side))
            .GroupBy(r => r.TestId, StringComparer.Ordinal)
            .Select(g => g.Distinct().Count() == 1 || g.Select(r => (r.Outcome, r.Count)).Distinct().Count() == 1
                ? g.First()
                : new TestResult(g.Key, null, TestOutcome.Unclear)),
    ];

    /// <summary>The readings of results about one pattern.</summary>
    internal static List<TestReading> Readings(ReasoningBasis basis, ReasoningInput input, Pattern pattern, IEnumerable<TestResult> results) =>
        [.. results.Select(r => TestReader.Read(basis.Test(r.TestId)!, r, pattern.Id, input)).OfType<TestReading>()];

    internal static ChosenPrior? PriorOf(ReasoningBasis basis, ReasoningInput input, Pattern pattern)
    {
        if (input.Priors.TryGetValue(pattern.Id, out var own))
            return new ChosenPrior(own.Value, own.Range, "your own starting value", null);
        var fitting = pattern.Priors.FirstOrDefault(p => p.Usable
            && p.When.All(id => basis.Question(id) is { } q && AnswerTo(q, input) == ItemAnswer.Yes));
        return fitting is null ? null : new ChosenPrior(fitting.Value, fitting.Range, fitting.Population, fitting.Source);
    }

    /// <summary>Tests that the age answers, unless they were answered otherwise.</summary>
    private static IEnumerable<TestResult> ByAge(ReasoningBasis basis, ReasoningInput input) => input.AgeYears is not { } age
        ? []
        : basis.Tests.Where(t => t.AgeFrom is not null && input.Tests.All(r => r.TestId != t.Id))
            .Select(t => new TestResult(t.Id, null, age >= t.AgeFrom ? TestOutcome.Positive : TestOutcome.Negative));

    private static Hypothesis Of(ReasoningBasis basis, ReasoningInput input, Pattern pattern, ImmutableArray<TestResult> results)
    {
        var account = PatternAccount.Of(basis, input, pattern, results);
        var prior = PriorOf(basis, input, pattern);
        var readings = Readings(basis, input, pattern, results);
        var estimate = prior is null ? null : ProbabilityChain.From(prior.Value, prior.Range, readings);
        return new Hypothesis
        {
            Pattern = pattern,
            Fit = account.Fit,
            Supporting = account.Supporting,
            Opposing = account.Opposing,
            Missing = account.Missing,
            Prior = prior,
            Probability = estimate,
            NotKnown = ChainWords.NotKnown(basis, input, pattern, prior),
            InWords = ChainWords.Of(prior, estimate, readings),
        };
    }

    private static bool Matches(PatternQuestion question, Finding finding, ReasoningInput input)
    {
        if (finding.BeyondError == false || finding.Impairment is not { } impairment)
            return false;
        var onSide = impairment.Side is null || input.Side is null || impairment.Side == input.Side;
        return onSide && question.Findings.Any(want => finding.MeasureIds.Any(
            id => string.Equals(want, $"{id}:{impairment.Kind.ToString().ToLowerInvariant()}", StringComparison.OrdinalIgnoreCase)));
    }
}
