using System.Collections.Immutable;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Reads the reasoning part of a case file against the content.</summary>
internal sealed class CaseReasoningReader(ReasoningBasis basis, Action<string, string, string> fault)
{
    private const int LongestDays = 20000;

    /// <summary>What the reasoning is told, without findings; faults for what it does not know.</summary>
    internal ReasoningInput Read(CaseReasoning file, CaseFile whole)
    {
        if (file.DaysSinceInjury is { } days && days is < 0 or > LongestDays)
            fault("reasoning.daysSinceInjury", $"{days} days is not usable.", $"Give 0 to {LongestDays}.");
        Known(file.Answers.Keys, "answers", id => basis.Question(id) is not null, "question", basis.Questions.Select(q => q.Id));
        Known(file.Priors.Keys, "priors", id => basis.Pattern(id) is not null, "pattern", basis.Patterns.Select(p => p.Id));
        Known(file.YellowFlags.Keys, "yellowFlags", id => basis.YellowFlags.Any(f => f.Id == id), "yellow flag", basis.YellowFlags.Select(f => f.Id));
        var figures = basis.Tests.SelectMany(t => t.Figures).Where(f => f.Standing == FigureStanding.CheckFirst).Select(f => f.Id).ToArray();
        Known(file.ConfirmedFigures, "confirmedFigures", figures.Contains, "figure to confirm", figures);
        if (file.Irritability?.FlareHours is { } hours && !(hours >= 0 && double.IsFinite(hours)))
            fault("reasoning.irritability.flareHours", "The hours are not usable.", "Give 0 or more.");
        return new ReasoningInput
        {
            Side = whole.Complaint.Side,
            Region = file.Region,
            AgeYears = whole.Patient.AgeYears,
            Sex = whole.Patient.Sex,
            DaysSinceInjury = file.DaysSinceInjury,
            Tests = [.. file.Tests.Select((t, i) => Test(t, i, whole)).OfType<TestResult>()],
            Answers = file.Answers.ToImmutableDictionary(),
            Priors = file.Priors.Select(p => (p.Key, Prior: Prior(p.Key, p.Value))).Where(p => p.Prior is not null)
                .ToImmutableDictionary(p => p.Key, p => p.Prior!),
            Confirmed = [.. file.ConfirmedFigures],
        };
    }

    private TestResult? Test(CaseTest given, int index, CaseFile whole)
    {
        var path = $"reasoning.tests[{index}]";
        if (basis.Test(given.Test) is not { } test)
        {
            fault(path + ".test", $"There is no test \"{given.Test}\".", "Known: " + string.Join(", ", basis.Tests.Select(t => t.Id)) + ".");
            return null;
        }
        var side = test.Sided ? given.Side ?? whole.Complaint.Side : null;
        if (test.CountOf is not { } most)
        {
            if (given.Count is not null || given.Outcome is null or TestOutcome.Counted)
            {
                fault(path, $"{test.Name} is positive, negative or unclear.", "Give that as result, and no count.");
                return null;
            }
            return new TestResult(test.Id, side, given.Outcome.Value);
        }
        if (given.Outcome == TestOutcome.Unclear && given.Count is null)
            return new TestResult(test.Id, side, TestOutcome.Unclear);
        if (given.Count is not { } count || count < 0 || count > most || given.Outcome is not (null or TestOutcome.Counted))
        {
            fault(path, $"{test.Name} is counted.", $"Give count from 0 to {most}, and no result.");
            return null;
        }
        return new TestResult(test.Id, side, TestOutcome.Counted, count);
    }

    private OwnPrior? Prior(string pattern, CasePrior given)
    {
        var (low, high) = (given.Low ?? given.Value, given.High ?? given.Value);
        if (given.Value is > 0 and < 1 && low > 0 && low <= given.Value && given.Value <= high && high < 1)
            return new OwnPrior(given.Value, given.Low is null && given.High is null ? null : new RatioSpan(low, high));
        fault($"reasoning.priors.{pattern}", "The starting value or its range is not usable.", "Give shares above 0 and below 1, with low, value and high in order.");
        return null;
    }

    private void Known(IEnumerable<string> ids, string key, Func<string, bool> known, string what, IEnumerable<string> all)
    {
        foreach (var id in ids.Where(id => !known(id)).Order(StringComparer.Ordinal))
            fault($"reasoning.{key}.{id}", $"There is no {what} \"{id}\".", "Known: " + string.Join(", ", all) + ".");
    }
}
