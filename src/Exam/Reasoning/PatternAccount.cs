using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>What speaks for a pattern, what against it, what is missing, and how well it fits. Weights are our choice.</summary>
internal sealed record PatternAccount(
    PatternFit Fit, ImmutableArray<PatternLine> Supporting, ImmutableArray<PatternLine> Opposing, ImmutableArray<PatternLine> Missing)
{
    private const int Heavy = 2;

    public static PatternAccount Of(ReasoningBasis basis, ReasoningInput input, Pattern pattern, ImmutableArray<TestResult> results)
    {
        var (forIt, against, missing) = (new List<PatternLine>(), new List<PatternLine>(), new List<PatternLine>());
        var weight = 0;
        foreach (var (id, role) in Entries(pattern))
        {
            var answer = AnswerOf(basis, input, results, id);
            var line = new PatternLine(id, SaysOf(basis, id, answer), role == Role.Defining);
            if (answer == ItemAnswer.Unknown)
                missing.Add(line);
            else if (answer == ItemAnswer.Yes && role == Role.Opposing)
                (weight, _) = (weight - Heavy, Add(against, line));
            else if (answer == ItemAnswer.Yes)
                (weight, _) = (weight + (role == Role.Defining ? Heavy : 1), Add(forIt, line));
            else if (role == Role.Defining)
                (weight, _) = (weight - Heavy, Add(against, line));
        }
        foreach (var reading in Reasoner.Readings(basis, input, pattern, results).Where(r => r.Ratio is { Strength: > 0 }))
        {
            var supports = reading.Ratio!.Used.Value > 1;
            var list = supports ? forIt : against;
            weight += supports ? 1 : -1;
            if (forIt.Concat(against).All(l => l.Id != reading.Test.Id))
                list.Add(new PatternLine(reading.Test.Id, $"{reading.Test.Name}: {reading.ResultWords}", false));
        }
        var defining = pattern.Defining.Length;
        var present = forIt.Count(l => l.Defining);
        var fit = forIt.Count == 0 && against.Count == 0 ? PatternFit.NotAsked
            : weight <= 0 ? PatternFit.Against
            : defining > 0 && present * 2 >= defining ? PatternFit.Fits
            : PatternFit.Partly;
        return new PatternAccount(fit, [.. forIt], [.. against], [.. missing]);
    }

    private enum Role
    {
        Defining,
        Supporting,
        Opposing,
    }

    private static IEnumerable<(string Id, Role Role)> Entries(Pattern pattern) =>
        pattern.Defining.Select(id => (id, Role.Defining))
            .Concat(pattern.Supporting.Select(id => (id, Role.Supporting)))
            .Concat(pattern.Opposing.Select(id => (id, Role.Opposing)));

    private static bool Add(List<PatternLine> list, PatternLine line)
    {
        list.Add(line);
        return true;
    }

    private static ItemAnswer AnswerOf(ReasoningBasis basis, ReasoningInput input, ImmutableArray<TestResult> results, string id)
    {
        if (basis.Question(id) is { } question)
            return Reasoner.AnswerTo(question, input);
        return results.FirstOrDefault(r => r.TestId == id)?.Outcome switch
        {
            TestOutcome.Positive => ItemAnswer.Yes,
            TestOutcome.Negative => ItemAnswer.No,
            _ => ItemAnswer.Unknown,
        };
    }

    private static string SaysOf(ReasoningBasis basis, string id, ItemAnswer answer)
    {
        var says = basis.Question(id)?.Says ?? (basis.Test(id) is { } test ? $"{test.Name} positive" : id);
        return answer == ItemAnswer.No ? "not so: " + says : says;
    }
}
