using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>What speaks for a pattern, what against it, what is missing, and how well it fits. Weights are our choice.</summary>
internal sealed record PatternAccount(
    PatternFit Fit, ImmutableArray<PatternLine> Supporting, ImmutableArray<PatternLine> Opposing, ImmutableArray<PatternLine> Missing)
{
    private const int Heavy = 2;

    /// <summary>What one entry adds: what defines a pattern or opposes it weighs twice what supports it.</summary>
    public static PatternAccount Of(ReasoningBasis basis, ReasoningInput input, Pattern pattern, ImmutableArray<TestResult> results)
    {
        var (forIt, against, missing) = (new List<PatternLine>(), new List<PatternLine>(), new List<PatternLine>());
        var weight = 0;
        foreach (var (id, role) in Entries(pattern))
        {
            var answer = AnswerOf(basis, input, results, id);
            var line = new PatternLine(id, SaysOf(basis, id, answer), role == Role.Defining);
            var (list, step) = (answer, role) switch
            {
                (ItemAnswer.Unknown, _) => (missing, 0),
                (ItemAnswer.Yes, Role.Opposing) => (against, -Heavy),
                (ItemAnswer.Yes, Role.Defining) => (forIt, Heavy),
                (ItemAnswer.Yes, _) => (forIt, 1),
                (_, Role.Defining) => (against, -Heavy),
                _ => (null, 0),
            };
            list?.Add(line);
            weight += step;
        }
        foreach (var reading in Reasoner.Readings(basis, input, pattern, results).Where(r => r.Ratio is { Strength: > 0 }))
        {
            var supports = reading.Ratio!.Used.Value > 1;
            weight += supports ? 1 : -1;
            if (forIt.Concat(against).All(l => l.Id != reading.Test.Id))
                (supports ? forIt : against).Add(new PatternLine(reading.Test.Id, $"{reading.Test.ShortName}, {reading.ResultWords}", false));
        }
        var defining = pattern.Defining.Length;
        var present = forIt.Count(l => l.Defining);
        var told = forIt.Concat(against).Any(l => !IsPersonal(basis, l.Id));
        var fit = !told ? PatternFit.NotAsked
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

    /// <summary>Age and sex alone speak for nothing.</summary>
    private static bool IsPersonal(ReasoningBasis basis, string id) =>
        basis.Question(id) is { } question && (question.AgeFrom is not null || question.AgeTo is not null || question.Sex is not null);

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
        if (basis.Question(id) is { } question)
            return answer == ItemAnswer.No ? "absent: " + question.Says : question.Says;
        var name = basis.Test(id)?.Name ?? id;
        return answer switch
        {
            ItemAnswer.Yes => name + ", positive",
            ItemAnswer.No => name + ", negative",
            ItemAnswer.Unknown => name,
        };
    }
}
